using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>One corner with its top mount: points, travel, lock, load, and what leads its rod.</summary>
public sealed class MountCase
{
    private MountCase(WheelCorner corner, StrutDesign design)
    {
        (Corner, Design) = (corner, design);
        Part = corner.Axle.Suspension!;
        Linkage = Part.Linkage();
        (FullBump_m, FullDroop_m, TravelKnown) = corner.Travel is { FullBump.WheelTravel_m: { } bump, FullDroop.WheelTravel_m: { } droop }
            ? (bump, droop, true) : (WheelCorner.UsualBump_m, -WheelCorner.UsualBump_m, false);
    }

    public WheelCorner Corner { get; }

    public StrutDesign Design { get; }

    public SuspensionPart Part { get; }

    public Linkage Linkage { get; }

    public TopMount Mount => Design.TopMount!;

    /// <summary>Wheel travel from drive height; usual travel either way where the kit does not say.</summary>
    public double FullBump_m { get; }

    public double FullDroop_m { get; }

    public bool TravelKnown { get; }

    /// <summary>Rack travel to either lock; 0 where the wheel is not steered.</summary>
    public double Lock_m => Steers(Corner.End, Part) ? Part.RackTravel_m!.Value : 0;

    /// <summary>Only a MacPherson strut leads the wheel and is bent by it.</summary>
    public bool BearsSideLoad => Part.Kind == SuspensionKind.MacPherson;

    /// <summary>
    /// On the wheel, upward at the contact point: the load on the ground less the unsprung weight, which hangs on the same upright.
    /// </summary>
    public double WheelLoad_N => Corner.Load.Sprung_kg(Corner.End, Corner.Axle) * StandardGravity.Value_m_per_s2;

    /// <summary>Spring height at drive; null where the kit does not say enough.</summary>
    public double? SpringHeight_m => Corner.Travel?.Drive.SpringHeight_m;

    /// <summary>Wheel rate about drive height, valve shut; null where the kit does not say enough.</summary>
    public double? WheelRate_N_per_m => Corner.Travel is { Drive: { SpringHeight_m: { } height, GaugePressure_Pa: { } gauge }, Case: var strut }
        ? strut.WheelRate_N_per_m(strut.Spring(height).SealedRate_N_per_m(height, gauge, strut.Exponent), height) : null;

    /// <summary>Of a kit with one strut.</summary>
    /// <exception cref="FaultsException">The kit lacks something this question takes; all of it is named.</exception>
    public static MountCase Of(Kit kit, StudyConditions conditions)
    {
        (AxleEnd end, StrutDesign design) = kit.Struts().Single();
        List<Fault> faults = [];
        StrutNeeds need = new(kit, end, design, faults);
        if (need.LoadCase(conditions.Load) is { } load) need.SprungMass_kg(load);
        SuspensionPart? part = SuspensionNeeds.Points(kit, end, faults);
        need.Need(design.TopMount is not null, "topMount", "an object { … }", "Say what holds the strut's upper end: \"topMount\": { \"sphericalBearing\": { … }, \"turningBearing\": { … } }.");
        if (part is { RackTravel_m: null } && Steers(end, part))
            faults.Add(new(part.File, "rackTravel", "nothing", "a length", "Count the rack's travel from the middle to either lock: \"rackTravel\": \"62 mm\"."));
        if (part?.Kind == SuspensionKind.MacPherson) NeedRod(need);
        return faults.Count == 0 ? new(WheelCorner.Of(kit, conditions), design) : throw new FaultsException(faults);
    }

    private static bool Steers(AxleEnd end, SuspensionPart part) => end == AxleEnd.Front && part.Points.ContainsKey("tieRodInner");

    private static void NeedRod(StrutNeeds need)
    {
        need.Need(need.Design.Damper is TelescopicDamperPart, "damper", "a damper with its rod's diameter", "Give a damper document: the side load bends its rod.");
        need.Need(need.Design.Guides is not null, "guides", "an object { … }",
            "Say where the rod is led, at drive height: \"guides\": { \"topToGuide\": \"210 mm\", \"guideToPiston\": \"150 mm\" }.");
    }
}
