using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>
/// What is known of a corner that wheels are tried at: its points, its adjuster, its strut's bodies and how far it bumps. Whatever is not
/// known is null, and the answers that need it stay open.
/// </summary>
public sealed class WheelCorner
{
    /// <summary>Bump taken where the kit does not say how far the wheel goes.</summary>
    public const double UsualBump_m = 0.060;

    private readonly string _kitFile;
    private readonly Lazy<CornerBodies?> _bodies;

    private WheelCorner(string kitFile, AxleEnd end, Axle axle, CamberAdjuster adjuster, LoadCase load, StrutCase? strut, WheelCorner? before = null)
    {
        (_kitFile, End, Axle, Adjuster, Load) = (kitFile, end, axle, adjuster, load);
        Travel = strut is null ? null : TravelStudy.Answer(strut);
        Unsettled = Travel is null ? strut : null;
        (FullBump_m, FullBumpKnown) = Travel?.FullBump.WheelTravel_m is { } bump ? (bump, true) : (UsualBump_m, false);
        _bodies = new(() => Travel?.Drive.SpringHeight_m is not { } height ? null : before?.Bodies?.At(height) ?? new(Travel.Case, height));
    }

    public AxleEnd End { get; }

    public Axle Axle { get; }

    public LoadCase Load { get; }

    public CamberAdjuster Adjuster { get; }

    /// <summary>How far it moves, with its strut; null where the kit does not say enough.</summary>
    public TravelResult? Travel { get; }

    /// <summary>A strut that nothing lets stand: no height gives the rate wanted, or the spring cannot carry the load there. Else null.</summary>
    public StrutCase? Unsettled { get; }

    /// <summary>Bellows and strut; null where the kit has no air spring or does not say how high it stands.</summary>
    public CornerBodies? Bodies => _bodies.Value;

    /// <summary>The wheel the car was measured with.</summary>
    /// <exception cref="FaultsException">The car does not say.</exception>
    public RoadWheel MeasuredWheel => Axle.Wheel ?? throw new FaultsException(
        [new(_kitFile, $"car.axles.{(End == AxleEnd.Front ? "front" : "rear")}.wheel", "nothing", "the wheel the car was measured with", $"Give it in the car document, such as \"{WheelText.WheelExample}\", or ask with --old.")]);

    /// <summary>A wheel as asked; where it is the very one the car was measured with, that one, whose section the car may know.</summary>
    public RoadWheel Known(RoadWheel asked) => Axle.Wheel is { } own && WheelText.Of(own) == WheelText.Of(asked) ? own : asked;

    /// <summary>Points measured on the body; empty where none were.</summary>
    public IReadOnlyList<Point> ArchEdge => Axle.Suspension?.ArchEdge ?? [];

    public IReadOnlyList<Point> Tower => Axle.Suspension?.Tower ?? [];

    /// <summary>Wheel travel from drive height.</summary>
    public double FullBump_m { get; }

    public bool FullBumpKnown { get; }

    /// <summary>On the ground: the mean of the axle's two scale readings.</summary>
    public double GroundLoad_N => (Load.At(End).Left_kg + Load.At(End).Right_kg) / 2 * StandardGravity.Value_m_per_s2;

    /// <summary>Of a wheel under the load, on a tyre of the axle's rate; null where the car does not give one.</summary>
    public double? LoadedRadius_m(RoadWheel wheel) => Axle.TyreRate_N_per_m is { } rate ? wheel.LoadedRadius_m(GroundLoad_N, rate) : null;

    /// <summary>Of a kit with one strut.</summary>
    /// <exception cref="FaultsException">The load case is not the car's.</exception>
    public static WheelCorner Of(Kit kit, StudyConditions conditions)
    {
        (AxleEnd end, StrutDesign design) = kit.Struts().Single();
        List<Fault> faults = [];
        LoadCase? load = new StrutNeeds(kit, end, design, faults).LoadCase(conditions.Load);
        if (load is null) throw new FaultsException(faults);
        Axle axle = kit.Car.At(end)!;
        return new(kit.File, end, axle, new(end, axle.Suspension, design.Adjusters), load, StrutOf(kit, conditions));
    }

    /// <summary>The same with its spring at another height at drive: neither spring, wall nor linkage is settled anew.</summary>
    public WheelCorner At(double driveHeight_m) => (Travel?.Case ?? Unsettled) is { } strut
        ? new(_kitFile, End, Axle, Adjuster, Load, strut with { Design = strut.Design with { DriveHeight_m = driveHeight_m } }, this) : this;

    // A kit that lacks what only the strut's bodies need is sound here; those answers stay open.
    private static StrutCase? StrutOf(Kit kit, StudyConditions conditions)
    {
        try
        {
            return StrutCases.Of(kit, conditions, TravelStudy.Needs)[0];
        }
        catch (FaultsException)
        {
            return null;
        }
    }
}
