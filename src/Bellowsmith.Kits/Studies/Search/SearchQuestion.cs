using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Search;

/// <summary>Which spring with which damper, at which height, on which click, within which limits.</summary>
/// <param name="Pairs">What is on the shelf for this strut, the kit's own pair first.</param>
/// <param name="LeftOut">Documents on the shelf that cannot be used.</param>
/// <param name="Road">What each setting is driven over.</param>
/// <param name="Limits">What a setting must keep to be chosen.</param>
public sealed record SearchQuestion(
    IReadOnlyList<SearchPair> Pairs, IReadOnlyList<UnusedDocument> LeftOut, RoadQuestion Road, IReadOnlyList<SearchLimit> Limits)
{
    /// <summary>Heights that are tried lie so far apart, on round numbers.</summary>
    public const double HeightStep_mm = 2;

    /// <summary>Whether the limits must hold for every neighbour of a setting too, not only where all is set exactly.</summary>
    public bool Robust { get; init; }

    /// <summary>The kit's own setting, driven for comparison; null where it has none.</summary>
    public RideSetting? Present { get; init; }

    /// <summary>The question for a kit's strut and what is at hand beside its own parts.</summary>
    /// <param name="kit">With the strut in question alone.</param>
    /// <param name="shelf">Springs and dampers.</param>
    /// <param name="conditions">Load case and air outside.</param>
    /// <param name="road">What each setting is driven over.</param>
    /// <param name="limits">What a setting must keep.</param>
    /// <exception cref="FaultsException">The kit's own strut cannot be driven, or has no air spring.</exception>
    public static SearchQuestion Of(Kit kit, Shelf shelf, StudyConditions conditions, RoadQuestion road, IReadOnlyList<SearchLimit> limits)
    {
        (IReadOnlyList<SearchPair> pairs, IReadOnlyList<UnusedDocument> leftOut) = SearchPairs.Of(kit, shelf, conditions);
        double? height = kit.Struts().Single().Design.DriveHeight_m ?? pairs[0].Strut.DriveHeight_m();
        return new(pairs, leftOut, road, limits) { Present = height is null ? null : new(Height_m: height, Click: pairs[0].Strut.Click) };
    }

    /// <summary>The strut with the kit's own parts.</summary>
    public RideStrut Strut => Pairs[0].Strut;

    /// <summary>By how much a ride exceeds the limit it exceeds most, as a share of it; 0 where it keeps all.</summary>
    public double Excess(RideFigures figures) => Limits.Select(limit => limit.Excess(limit.Quantity.Of(figures, Road))).DefaultIfEmpty(0).Max();

    /// <summary>Every pair at every height spring and data share, on every whole click measured.</summary>
    internal IEnumerable<(SearchPair Pair, Trial Trial)> Candidates() =>
        from pair in Pairs
        from height in Heights(pair.Strut.Case!)
        from click in MapAxis.WholeClicks(pair.Strut.Damper)
        select (pair, new Trial(pair.Strut, Road, new RideSetting(Height_m: height, Click: click)));

    // Round numbers a person can type again and get the same setting to the last bit.
    private static IEnumerable<double> Heights(StrutCase strut)
    {
        Unit millimetre = UnitTable.Find(Dimension.Length, "mm")!;
        int first = (int)Math.Ceiling(millimetre.FromSi(strut.LeastHeight_m) / HeightStep_mm - 1e-9);
        int last = (int)Math.Floor(millimetre.FromSi(strut.GreatestHeight_m) / HeightStep_mm + 1e-9);
        return Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(k => millimetre.ToSi(k * HeightStep_mm));
    }
}

/// <summary>A spring and a damper in the strut, everything else as the kit says.</summary>
/// <param name="Spring">The spring's name.</param>
/// <param name="Damper">The damper's name; empty for one given by its coefficient.</param>
/// <param name="Strut">The strut with both.</param>
public sealed record SearchPair(string Spring, string Damper, RideStrut Strut);

/// <summary>The most a ride's answer may come to, without regard to its sign.</summary>
/// <param name="Quantity">Which answer.</param>
/// <param name="Greatest">SI.</param>
public sealed record SearchLimit(RideQuantity Quantity, double Greatest)
{
    // A limit met to the last digit written holds.
    private const double Met = 1e-9;

    /// <summary>How far a ride exceeds it, as a share of it (of one of its unit where the limit is 0); 0 where it holds.</summary>
    public double Excess(double value)
    {
        double excess = (Math.Abs(value) - Greatest) / Size(Quantity, Greatest);
        return excess > Met ? excess : 0;
    }

    /// <summary>What a change of an answer is held against: the answer itself; of stop contacts, which are often none, at least one a kilometre.</summary>
    internal static double Size(RideQuantity quantity, double value) =>
        quantity == RideQuantity.StopContacts ? Math.Max(value, 1) : value > 0 ? value : 1 / quantity.Scale;
}
