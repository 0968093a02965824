using Bellowsmith.Kits.Studies.LowerMounting;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>What is wrong with the holes of a lower mount and its knuckle, and which to bore or make elsewhere.</summary>
internal sealed class HoleWords(LowerMountResult result, DisplayUnits units)
{
    private readonly LowerMount _mount = result.Mount;

    /// <summary>"the bracket's holes of 13.00 mm are smaller than the bolt of 14.00 mm"; null where both let it through.</summary>
    public string? Narrow()
    {
        string?[] narrow = [result.BracketIsNarrow ? $"the bracket's holes of {Fine(_mount.Bracket.HoleDiameter_m)}" : null, result.KnuckleHole_m is null ? null : $"the knuckle's holes of {Fine(_mount.Knuckle.HoleDiameter_m)}"];
        string which = string.Join(" and ", narrow.OfType<string>());
        return which.Length == 0 ? null : $"{which} are smaller than the bolt of {Fine(_mount.Bolts.Bolt.Diameter_m)}";
    }

    /// <summary>Where a bolt does not go in for sure.</summary>
    public string Mend()
    {
        string? knuckle = result.KnuckleHole_m is { } least ? $"bore the knuckle's holes to {Fine(least)}: they are smaller than the bolt" : null;
        string[] mends = [.. new[] { knuckle, Bore(), Moved() }.OfType<string>()];
        return $"{char.ToUpperInvariant(mends[0][0])}{string.Join("; ", mends)[1..]}.";
    }

    // To the next 0.1 mm, so that what is printed is enough; what the fit cannot tell apart asks for no more.
    private string? Bore()
    {
        if (result.HoleForSure_m is not { } hole) return null;
        string bored = $"bracket holes of {Fine(Math.Ceiling((hole - 2 * BoltFit.Accuracy_m) * 1e4) * 1e-4)} {(result.KnuckleHole_m is null ? "" : "then ")}let every bolt in for sure";
        return result.BracketIsNarrow ? $"{bored}, those there are smaller than the bolt" : bored;
    }

    private string? Moved()
    {
        if (result.BracketIsNarrow || result.KnuckleHole_m is not null) return null;
        if (result.Move is not { } move) return "no single hole made elsewhere helps";
        string[] ways = [.. new[] { Way(move.X_m, "outward", "inward"), Way(move.Y_m, "up", "down") }.OfType<string>()];
        string moved = $"hole {move.Hole + 1} made {string.Join(" and ", ways)}";
        return move.SureMargin_m >= -BoltFit.Accuracy_m ? $"or {moved}" : $"{moved} helps most of single moves and leaves {Fine(move.SureMargin_m)}";
    }

    // Null where it is less than anyone could make.
    private string? Way(double si, string positive, string negative) => Math.Abs(si) < 5e-6 ? null : $"{Fine(Math.Abs(si))} {(si < 0 ? negative : positive)}";

    private string Fine(double si) => $"{units.Number(Dimension.Length, si, 1)} {units.Symbol(Dimension.Length)}";
}
