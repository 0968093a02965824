using Bellowsmith.Kits;

namespace Bellowsmith.App.Boards;

/// <summary>An answer, or what it lacks: a page shows either.</summary>
internal static class Faulty
{
    public static (T? Found, IReadOnlyList<Fault> Faults) Of<T>(Func<T> settle)
        where T : class
    {
        try
        {
            return (settle(), []);
        }
        catch (FaultsException faulty)
        {
            return (null, faulty.Faults);
        }
    }
}
