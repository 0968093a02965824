using System.Reflection;
using Bellowsmith.App.Boards;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Papers;

namespace Bellowsmith.App.Serving;

/// <summary>A board on paper.</summary>
internal static class Printing
{
    private static readonly string _version =
        typeof(Printing).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    public static byte[] Sheet(KitBoard board)
    {
        StrutAnswers[] struts = [.. board.Settled().Select(StrutAnswers.Of)];
        CornerAnswers[] corners = [.. struts.Select(strut => CornerAnswers.Of(board.Kit, strut, new StudyConditions(Load: strut.Case.Load))).OfType<CornerAnswers>()];
        return SheetPdf.Write(new Sheet(board.Kit, struts, corners, board.Units, TimeProvider.System.GetLocalNow(), _version), Paper.A4);
    }
}
