using System.Reflection;
using Bellowsmith.App.Boards;
using Bellowsmith.Papers;

namespace Bellowsmith.App.Serving;

/// <summary>A board on paper.</summary>
internal static class Printing
{
    private static readonly string _version =
        typeof(Printing).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    public static byte[] Sheet(KitBoard board) => SheetPdf.Write(
        new Sheet(board.Kit, [.. board.Settled().Select(StrutAnswers.Of)], board.Units, TimeProvider.System.GetLocalNow(), _version), Paper.A4);
}
