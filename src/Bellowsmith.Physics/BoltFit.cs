using Bellowsmith.Physics.Bolts;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>A hole as measured, in its own part's plane.</summary>
/// <param name="X_m">Centre.</param>
/// <param name="Y_m">Centre.</param>
/// <param name="Diameter_m">Its own; the bolt's where it is tapped.</param>
/// <param name="Position_m">How far from there the true centre may stand, any way.</param>
public readonly record struct BoltHole(double X_m, double Y_m, double Diameter_m, double Position_m = 0);

/// <summary>A bolt and the two holes it goes through: the car's and the part's.</summary>
public readonly record struct BoltPair(BoltHole Car, BoltHole Part, double Bolt_m)
{
    /// <summary>How far the centres may lie apart and the bolt still goes in, where it goes through each hole alone.</summary>
    public double Room_m => (Car.Diameter_m + Part.Diameter_m) / 2 - Bolt_m;

    /// <summary>
    /// What the narrower hole leaves the bolt. Below 0 the bolt does not go through it, wherever the other lies and however wide it is; at 0, as
    /// where it is tapped, it does.
    /// </summary>
    public double Play_m => Math.Min(Car.Diameter_m, Part.Diameter_m) - Bolt_m;

    /// <summary>A hole is narrower than the bolt by more than <see cref="BoltFit.Accuracy_m"/>.</summary>
    public bool IsTooNarrow => Play_m < -BoltFit.Accuracy_m;

    /// <summary>What both centres together may stand off.</summary>
    public double Position_m => Car.Position_m + Part.Position_m;
}

/// <summary>How far the car's hole stands from the part's, in the car's axes, and what room is left; below 0 the bolt does not go in.</summary>
public readonly record struct HoleFit(double OffX_m, double OffY_m, double Margin_m);

/// <summary>
/// Do all bolts go in? The part is laid on the car, shifted and turned so that the tightest bolt has the most room: the greatest of
/// (distance of centres − room) is least. It turns about the middle of its holes and is not turned over. Within
/// <see cref="Accuracy_m"/>; that no other turn is better holds for patterns that fit nearly, where the problem is convex.
/// A hole narrower than its bolt lets it in nowhere: what the bolt lacks there counts in its margin, and no placement mends it.
/// </summary>
public sealed record BoltFit
{
    public const double Accuracy_m = 1e-6;

    private readonly BoltPair[] _pairs;
    private readonly Placement _placement;

    private BoltFit(BoltPair[] pairs, in Placement placement)
    {
        (_pairs, _placement) = (pairs, placement);
        Placement sure = MostRoom.For([.. pairs.Select(Narrowed)], placement);
        Holes = [.. pairs.Select(pair => Through(pair, _placement.Of(pair)))];
        Margin_m = Holes.Min(hole => hole.Margin_m);
        SureMargin_m = pairs.Min(pair => Through(pair, sure.Of(Narrowed(pair))).Margin_m);
    }

    /// <summary>Room of the tightest bolt.</summary>
    public double Margin_m { get; }

    /// <summary>
    /// The same with every centre as far off as it may be, each the worst way, the part laid as it suits best on the whole: from 0 up all
    /// bolts go in for sure. Below, they may still, where the part can be laid anew.
    /// </summary>
    public double SureMargin_m { get; }

    /// <summary>From the part's axes to the car's, counter-clockwise.</summary>
    public double Turn_rad => _placement.Turn_rad;

    public IReadOnlyList<HoleFit> Holes { get; }

    /// <exception cref="ArgumentException">There is no bolt.</exception>
    public static BoltFit Of(params ReadOnlySpan<BoltPair> pairs)
    {
        if (pairs.IsEmpty) throw new ArgumentException("There must be a bolt.", nameof(pairs));
        return new([.. pairs], MostRoom.For(pairs, Placement.LeastSquares(pairs)));
    }

    /// <summary>
    /// Share of random parts and cars whose bolts all go in, each laid anew: every centre even over the disc it may stand in. A share p of n
    /// draws has a standard error of √(p(1 − p)/n).
    /// </summary>
    public double ShareThatGoIn(int draws, ulong seed)
    {
        if (_pairs.Any(pair => pair.IsTooNarrow)) return 0;
        SplitMix64 random = new(seed);
        Span<BoltPair> drawn = new BoltPair[_pairs.Length];
        int good = 0;
        for (int n = 0; n < draws; n++)
        {
            for (int i = 0; i < drawn.Length; i++) drawn[i] = _pairs[i] with { Car = Drawn(_pairs[i].Car, ref random), Part = Drawn(_pairs[i].Part, ref random) };
            if (MostRoom.GoIn(drawn, _placement)) good++;
        }

        return good / (double)draws;
    }

    private static HoleFit Through(BoltPair pair, HoleFit laid) => pair.IsTooNarrow ? laid with { Margin_m = Math.Min(laid.Margin_m, pair.Play_m) } : laid;

    private static BoltPair Narrowed(BoltPair pair) =>
        pair with { Part = pair.Part with { Diameter_m = pair.Part.Diameter_m - 2 * pair.Position_m } };

    private static BoltHole Drawn(BoltHole hole, ref SplitMix64 random)
    {
        while (true)
        {
            double x = 2 * random.Unit() - 1, y = 2 * random.Unit() - 1;
            if (x * x + y * y <= 1) return hole with { X_m = hole.X_m + x * hole.Position_m, Y_m = hole.Y_m + y * hole.Position_m };
        }
    }
}
