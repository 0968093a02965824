using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

public enum AxleEnd { Front, Rear }

/// <summary>A measured car: corner loads by case, and what each axle carries and how it moves.</summary>
public sealed record Car(string Name, IReadOnlyList<LoadCase> Loads, Axle? Front, Axle? Rear)
{
    public Axle? At(AxleEnd end) => end == AxleEnd.Front ? Front : Rear;
}

/// <summary>Four scale readings as masses (a reading given as a force is divided by g = 9.80665 m/s²).</summary>
public sealed record LoadCase(
    string Name, double LeftFront_kg, double RightFront_kg, double LeftRear_kg, double RightRear_kg)
{
    public (double Left_kg, double Right_kg) At(AxleEnd end) =>
        end == AxleEnd.Front ? (LeftFront_kg, RightFront_kg) : (LeftRear_kg, RightRear_kg);

    /// <summary>Sprung mass of one corner: the mean of the axle's two readings less the unsprung mass.</summary>
    public double Sprung_kg(AxleEnd end, Axle axle) => (At(end).Left_kg + At(end).Right_kg) / 2 - axle.UnsprungMass_kg;
}

/// <summary>One axle. Unsprung mass is per corner; ratios are strut travel per wheel travel.</summary>
public sealed record Axle(
    double UnsprungMass_kg,
    MotionRatio SpringRatio,
    MotionRatio DamperRatio,
    double ParasiticRate_N_per_m = 0,
    double? TyreRate_N_per_m = null,
    double? Track_m = null,
    double? ArchHeightAtDrive_m = null,
    string? SuspensionFile = null)
{
    /// <summary>Its points, where they were measured.</summary>
    public SuspensionPart? Suspension { get; init; }

    /// <summary>Its motion ratios follow from its points: none was measured.</summary>
    public bool RatioFromPoints { get; init; }

    /// <summary>How the strut was measured to follow the wheel; null where its points say so alone.</summary>
    public MotionRatio? MeasuredRatio => RatioFromPoints ? null : SpringRatio;

    /// <summary>The wheel the car was measured with.</summary>
    public RoadWheel? Wheel { get; init; }
}
