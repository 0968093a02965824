using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits;

/// <summary>A kit for one car model: the struts of one or both axles.</summary>
public sealed record Kit(
    string Name,
    string File,
    Car Car,
    StrutDesign? Front,
    StrutDesign? Rear,
    double? Ambient_Pa = null,
    double? Altitude_m = null)
{
    /// <summary>The unit first written for each dimension, the kit's own before its parts': what its author thinks in.</summary>
    public IReadOnlyDictionary<Dimension, string> WrittenUnits { get; init; } = new Dictionary<Dimension, string>();

    /// <summary>Every file that was read for it, itself first.</summary>
    public IReadOnlyList<FileBytes> Inputs { get; init; } = [];

    /// <summary>Room the kit asks for between what passes each other.</summary>
    public ClearanceMargins Margins { get; init; } = ClearanceMargins.Usual;

    /// <summary>The struts this kit has, front first.</summary>
    public IEnumerable<(AxleEnd End, StrutDesign Design)> Struts()
    {
        if (Front is not null) yield return (AxleEnd.Front, Front);
        if (Rear is not null) yield return (AxleEnd.Rear, Rear);
    }

    /// <summary>The same with the strut of one axle only.</summary>
    public Kit Only(AxleEnd end) => end == AxleEnd.Front ? this with { Rear = null } : this with { Front = null };

    /// <summary>The same with another strut at one axle.</summary>
    public Kit With(AxleEnd end, StrutDesign strut) => end == AxleEnd.Front ? this with { Front = strut } : this with { Rear = strut };
}

/// <summary>What a designer has settled for one strut; what is null is not yet known and only some studies need it.</summary>
public sealed record StrutDesign(
    SpringPart Spring,
    DamperPart Damper,
    Target? Target,
    string? Load,
    double? DriveHeight_m,
    double? StrutLengthAtDrive_m,
    double? UpperStack_m,
    double? LowerStack_m,
    double? SpringToDamper_m,
    ThreadDesign? Thread,
    double? SealAreaInAir_m2,
    double? DisplacedVolume_m3,
    double? LineVolume_m3,
    TravelLimits Limits)
{
    /// <summary>The damper's click the kit drives with, counted from fully closed.</summary>
    public double? Click { get; init; }

    /// <summary>Friction of strut and seals that the damper's dyno data do not hold, N at the strut.</summary>
    public double? Friction_N { get; init; }

    /// <summary>What aligns the wheel; null where the kit says nothing of it.</summary>
    public Adjusters? Adjusters { get; init; }

    public TopMount? TopMount { get; init; }

    /// <summary>What leads the damper's rod; null where the kit does not say.</summary>
    public RodGuides? Guides { get; init; }

    /// <summary>The spring's line of force against the strut's axis at drive height, seen from ahead, its foot outward +, rad.</summary>
    public double SpringTilt_rad { get; init; }

    /// <summary>Middle of the lower end plate from the strut's axis, outward +; null: the line runs through the top mount's joint.</summary>
    public double? SpringOffset_m { get; init; }

    /// <summary>What joins its foot to the car's knuckle; null where the kit says nothing of it.</summary>
    public LowerMount? LowerMount { get; init; }
}

public enum TargetKind { RideFrequency, WheelRate, SpringRate }

/// <summary>The rate wanted at drive height: Value is in Hz for a frequency, N/m for a rate.</summary>
public readonly record struct Target(TargetKind Kind, double Value);

/// <summary>
/// The height thread. Exposed lengths are between outer faces; engagement is what can be checked against load where
/// diameter, thread engaged at the stop and the nut material's shear strength are given.
/// </summary>
public sealed record ThreadDesign(
    double Pitch_m,
    double Least_m,
    double Greatest_m,
    double ExposedAtStop_m,
    double? Diameter_m = null,
    double? EngagedAtStop_m = null,
    double? ShearStrength_Pa = null);

/// <summary>Limits of the travel findings; each may be changed by the user. Thread engagement is not among them.</summary>
public sealed record TravelLimits(
    double TopOutMargin_m = 0.0127,
    double SolidMargin_m = 0,
    double Droop_m = 0.035,
    double StopContact_m = 0.025);
