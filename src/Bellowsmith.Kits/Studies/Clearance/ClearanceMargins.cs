namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>What asks for room. The rim keeps the tyre's margins; arms are links, tie rod and halfshaft too.</summary>
public enum MarginKind
{
    TyreToArch, TyreToLiner, TyreToTower, TyreToBellows, TyreToStrut, TyreToArms, BellowsToTower, BellowsToArms, StrutToTower, StrutToArms, HalfshaftToArms,
}

/// <summary>Where a margin comes from.</summary>
public enum MarginSource { TradeGuide, CommonPractice, User }

/// <summary>
/// Room asked between what passes each other, m. Where the user says nothing, [Wheel Clearance Guide 2026]: 4 mm from the wheel to struts,
/// arms and tie rods, 6 mm to everything else. A bellows is not as round and still as its outline: 8 mm (common practice, 6 to 10 mm, no
/// source). Between strut, halfshaft and arms 4 mm as the wheel's (no source).
/// </summary>
/// <param name="Own">What the user asks for instead.</param>
public sealed record ClearanceMargins(IReadOnlyDictionary<MarginKind, double> Own)
{
    private const double Suspension_m = 0.004, Body_m = 0.006, Bellows_m = 0.008;

    public static readonly ClearanceMargins Usual = new(new Dictionary<MarginKind, double>());

    public double Of_m(MarginKind kind) => Own.TryGetValue(kind, out double own) ? own : kind switch
    {
        MarginKind.TyreToArch or MarginKind.TyreToLiner or MarginKind.TyreToTower => Body_m,
        MarginKind.TyreToBellows or MarginKind.BellowsToTower or MarginKind.BellowsToArms => Bellows_m,
        _ => Suspension_m,
    };

    public MarginSource SourceOf(MarginKind kind) => Own.ContainsKey(kind) ? MarginSource.User
        : kind is MarginKind.TyreToArch or MarginKind.TyreToLiner or MarginKind.TyreToTower or MarginKind.TyreToStrut or MarginKind.TyreToArms ? MarginSource.TradeGuide
        : MarginSource.CommonPractice;

    /// <summary>What a document and a prompt call it: "tyreToArch".</summary>
    public static string Name(MarginKind kind) => $"{char.ToLowerInvariant(kind.ToString()[0])}{kind.ToString()[1..]}";

    /// <summary>The same with others laid over it.</summary>
    public ClearanceMargins With(IReadOnlyDictionary<MarginKind, double> over) => new(Own.Where(own => !over.ContainsKey(own.Key)).Concat(over).ToDictionary());
}
