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

    private WheelCorner(AxleEnd end, Axle axle, StrutDesign design, LoadCase load, StrutCase? strut)
    {
        (End, Axle, Load, Strut) = (end, axle, load, strut);
        Adjuster = new(axle.Suspension, design.Adjusters);
        var travel = strut is null ? null : TravelStudy.Answer(strut);
        (FullBump_m, FullBumpKnown) = travel?.FullBump.WheelTravel_m is { } bump ? (bump, true) : (UsualBump_m, false);
        if (strut is not null && travel?.Drive.SpringHeight_m is { } height) Bodies = new(strut, height);
    }

    public AxleEnd End { get; }

    public Axle Axle { get; }

    public LoadCase Load { get; }

    public StrutCase? Strut { get; }

    public CamberAdjuster Adjuster { get; }

    /// <summary>Bellows and strut; null where the kit has no air spring or does not say how high it stands.</summary>
    public CornerBodies? Bodies { get; }

    /// <summary>Wheel travel from drive height.</summary>
    public double FullBump_m { get; }

    public bool FullBumpKnown { get; }

    /// <summary>On the ground: the mean of the axle's two scale readings.</summary>
    public double GroundLoad_N => (Load.At(End).Left_kg + Load.At(End).Right_kg) / 2 * StandardGravity.Value_m_per_s2;

    /// <summary>Of a kit with one strut.</summary>
    /// <exception cref="FaultsException">The load case is not the car's.</exception>
    public static WheelCorner Of(Kit kit, StudyConditions conditions)
    {
        (AxleEnd end, StrutDesign design) = kit.Struts().Single();
        List<Fault> faults = [];
        LoadCase? load = new StrutNeeds(kit, end, design, faults).LoadCase(conditions.Load);
        if (load is null) throw new FaultsException(faults);
        return new(end, kit.Car.At(end)!, design, load, StrutOf(kit, conditions));
    }

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
