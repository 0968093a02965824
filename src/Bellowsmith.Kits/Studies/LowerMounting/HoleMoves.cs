using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.LowerMounting;

/// <summary>Which one hole of a bracket made elsewhere leaves its bolts most room.</summary>
internal static class HoleMoves
{
    private const int MostTries = 60;
    private const double Enough_m = 1e-6;

    // Less nobody could make.
    private const double Worth_m = 1e-5;

    /// <summary>Null where no move of one hole gains anything.</summary>
    public static HoleMove? Best(IReadOnlyList<BoltPair> pairs, BoltFit fit)
    {
        HoleMove best = Enumerable.Range(0, pairs.Count).Select(hole => Move(pairs, hole)).MaxBy(move => Math.Round(move.SureMargin_m / Enough_m))!;
        return best.SureMargin_m > fit.SureMargin_m + Worth_m ? best : null;
    }

    // Onto the car's hole, and the part laid anew, until they stay together: then the others lie as they would without it.
    private static HoleMove Move(IReadOnlyList<BoltPair> pairs, int hole)
    {
        BoltPair[] moved = [.. pairs];
        BoltFit fit = BoltFit.Of(moved);
        for (int n = 0; n < MostTries; n++)
        {
            HoleFit off = fit.Holes[hole];
            if (Math.Max(Math.Abs(off.OffX_m), Math.Abs(off.OffY_m)) < Enough_m) break;
            (double sin, double cos) = Math.SinCos(fit.Turn_rad);
            BoltHole at = moved[hole].Part;
            moved[hole] = moved[hole] with { Part = at with { X_m = at.X_m + cos * off.OffX_m + sin * off.OffY_m, Y_m = at.Y_m - sin * off.OffX_m + cos * off.OffY_m } };
            fit = BoltFit.Of(moved);
        }

        return new(hole, moved[hole].Part.X_m - pairs[hole].Part.X_m, moved[hole].Part.Y_m - pairs[hole].Part.Y_m, fit.SureMargin_m);
    }
}
