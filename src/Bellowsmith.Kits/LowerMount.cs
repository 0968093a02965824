namespace Bellowsmith.Kits;

/// <summary>
/// What joins a strut's foot to one car's knuckle: a plate bolted to it, and where there is one the clamp that holds the strut's tube. The
/// plate's axes: x from the strut's axis outward, y from the lower datum up along the strut.
/// </summary>
public sealed record LowerMount(BracketPlate Bracket, KnuckleHoles Knuckle, JointBolts Bolts)
{
    // Edge of a plate that is not said, counted from its outermost holes' centres (common practice, no source).
    private const double UsualEdge_holes = 1.5;

    /// <summary>Null where the tube is welded in or screwed in.</summary>
    public MountClamp? Clamp { get; init; }

    public PlanePoint? HoseBracket { get; init; }

    public PlanePoint? SensorBracket { get; init; }

    /// <summary>The plate: outward from the tube's surface, or the strut's axis without a clamp, and up from the lower datum.</summary>
    public (PlanePoint Least, PlanePoint Greatest) Plate
    {
        get
        {
            double inner = Clamp?.Diameter_m / 2 ?? 0, edge = UsualEdge_holes * Bracket.HoleDiameter_m;
            return (new(inner, 0), new(
                Bracket.Width_m is { } width ? inner + width : Bracket.Holes.Max(h => h.X_m) + edge, Bracket.Height_m ?? Bracket.Holes.Max(h => h.Y_m) + edge));
        }
    }

    /// <summary>The hole that is a slot along x, the uppermost; null without a slot.</summary>
    public int? SlottedHole => Bracket.Slot_m is null ? null : Bracket.Holes.Index().MaxBy(hole => hole.Item.Y_m).Index;
}

/// <summary>A place in a plate's plane.</summary>
public readonly record struct PlanePoint(double X_m, double Y_m);

/// <param name="Thickness_m">Of one plate.</param>
/// <param name="Holes">In the order of the knuckle's.</param>
/// <param name="HoleDiameter_m">And width of the slot.</param>
/// <param name="Position_m">How far from its place a hole's centre may be made, any way.</param>
public sealed record BracketPlate(double Thickness_m, IReadOnlyList<PlanePoint> Holes, double HoleDiameter_m, double Position_m = BracketPlate.UsualPosition_m)
{
    /// <summary>Drilled in a jig or milled (common practice, no source).</summary>
    public const double UsualPosition_m = 0.1e-3;

    /// <summary>As its maker calls it; null where it is not stated.</summary>
    public string? Material { get; init; }

    public double? Width_m { get; init; }

    public double? Height_m { get; init; }

    /// <summary>Length of the camber slot over its ends.</summary>
    public double? Slot_m { get; init; }

    /// <summary>Pressure on a hole's wall that somebody allows and answers for; null where nobody does.</summary>
    public double? AllowedBearing_Pa { get; init; }
}

/// <summary>The knuckle's holes as measured on the car, in a plane and axes of their own.</summary>
/// <param name="Holes">Seen from the same side as the bracket's.</param>
/// <param name="HoleDiameter_m">The bolt's where they are tapped.</param>
/// <param name="Position_m">How far from there a true centre may stand, any way.</param>
public sealed record KnuckleHoles(IReadOnlyList<PlanePoint> Holes, double HoleDiameter_m, double Position_m);

/// <param name="Bolt">One through each hole.</param>
/// <param name="Friction">μ of the faying surfaces; null where it is not said.</param>
/// <param name="ShearPlanes">1, or 2 where plates stand on both sides of the knuckle.</param>
public sealed record JointBolts(MetricBolt Bolt, double? Friction, int ShearPlanes)
{
    /// <summary>Untreated surfaces [EN 1993-1-8 2005, 3.9].</summary>
    public const double UsualFriction = 0.2;

    public double FrictionOrUsual => Friction ?? UsualFriction;
}

/// <summary>A slotted clamp round the strut's tube.</summary>
/// <param name="Diameter_m">Of the tube.</param>
/// <param name="Height_m">Along the tube.</param>
/// <param name="Bolt">Across the slot.</param>
/// <param name="Bolts">How many.</param>
/// <param name="Friction">μ of clamp and tube; null where it is not said.</param>
public sealed record MountClamp(double Diameter_m, double Height_m, MetricBolt Bolt, int Bolts, double? Friction)
{
    /// <summary>Dry steel on steel (common practice, no source).</summary>
    public const double UsualFriction = 0.15;

    public double FrictionOrUsual => Friction ?? UsualFriction;
}
