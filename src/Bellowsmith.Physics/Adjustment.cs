namespace Bellowsmith.Physics;

/// <summary>
/// What is moved to align one wheel, from where its suspension's points stand: 0 leaves it as it is. Outward + on either side.
/// </summary>
public sealed record Adjustment
{
    public static readonly Adjustment None = new();

    /// <summary>The top mount slides across the car, m, outward +. MacPherson struts only: it leads no other wheel.</summary>
    public double StrutTopOutward_m { get; init; }

    /// <summary>
    /// The knuckle, with the wheel, turns against the strut about the lower of its bolts, rad, top outward +. The bolt lies fore and aft:
    /// square to the strut's axis and to the wheel's. MacPherson struts only.
    /// </summary>
    public double KnuckleTurned_rad { get; init; }

    /// <summary>Where that bolt is; needed where the knuckle turns.</summary>
    public Point? KnucklePivot { get; init; }

    /// <summary>The tie rod or toe link is made longer, m, longer +.</summary>
    public double TieRodLonger_m { get; init; }

    /// <summary>An inner end moves across the car, m, outward +.</summary>
    public double EccentricOutward_m { get; init; }

    /// <summary>Which one; needed where it moves.</summary>
    public InnerPoint? EccentricPoint { get; init; }

    // A radian counts as what it moves a third of a metre away.
    internal double Size_m =>
        Math.Abs(StrutTopOutward_m) + Math.Abs(KnuckleTurned_rad) / 3 + Math.Abs(TieRodLonger_m) + Math.Abs(EccentricOutward_m);

    internal bool MovesStrut => StrutTopOutward_m != 0 || KnuckleTurned_rad != 0;

    /// <summary>So much of it.</summary>
    public static Adjustment operator *(double share, Adjustment whole) => whole with
    {
        StrutTopOutward_m = share * whole.StrutTopOutward_m,
        KnuckleTurned_rad = share * whole.KnuckleTurned_rad,
        TieRodLonger_m = share * whole.TieRodLonger_m,
        EccentricOutward_m = share * whole.EccentricOutward_m,
    };

    internal bool Moves(params ReadOnlySpan<InnerPoint> known) =>
        EccentricOutward_m == 0 || (EccentricPoint is { } point && known.Contains(point));
}

/// <summary>The inner ends of arms and links, by their points' names.</summary>
public enum InnerPoint
{
    LowerArmFront, LowerArmRear, UpperArmFront, UpperArmRear, LowerFrontInner, LowerRearInner, UpperFrontInner, UpperRearInner,
}

/// <summary>A suspension after its adjusters were moved.</summary>
/// <param name="Suspension">Its points where the wheel centre has kept its height; null where the parts cannot be put together so.</param>
/// <param name="Knuckle">Where points of the knuckle went, as far as the adjustment went.</param>
/// <param name="Share">How much of the adjustment could be made, 1 where all of it.</param>
public sealed record AdjustedSuspension(Suspension? Suspension, BodyMotion Knuckle, double Share);
