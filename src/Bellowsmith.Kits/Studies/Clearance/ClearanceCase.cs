using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Studies.WheelFit;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>One corner to be swept: its points, bodies and how far wheel and rack go.</summary>
public sealed class ClearanceCase
{
    /// <summary>Taken either way where the kit does not say how far the wheel goes. No source.</summary>
    public const double UsualTravel_m = 0.060;

    private ClearanceCase(Kit kit, WheelCorner corner)
    {
        (Corner, Part, Margins, Loads, Design) = (corner, corner.Axle.Suspension!, kit.Margins, kit.Car.Loads, kit.Struts().Single().Design);
        (double? least, double? greatest) = Ends(corner.Travel);
        TravelKnown = least is not null && greatest is not null;
        Travel_m = (least ?? -UsualTravel_m, greatest ?? UsualTravel_m);
    }

    public WheelCorner Corner { get; }

    public AxleEnd End => Corner.End;

    public SuspensionPart Part { get; }

    /// <summary>The kit's own over the usual ones.</summary>
    public ClearanceMargins Margins { get; }

    public IReadOnlyList<LoadCase> Loads { get; }

    /// <summary>From full droop or lifted to full bump or aired out, whichever is further.</summary>
    public (double Least_m, double Greatest_m) Travel_m { get; }

    public bool TravelKnown { get; }

    /// <summary>To either side; 0 where the wheel is not steered or nobody counted it.</summary>
    public double RackTravel_m => Part.RackTravel_m is { } rack && Corner.Adjuster.Linkage!.HasRack ? rack : 0;

    public StrutDesign Design { get; }

    /// <summary>The corners whose points and wheel the car names, front first.</summary>
    /// <exception cref="FaultsException">No axle has both its points and its wheel.</exception>
    public static IReadOnlyList<ClearanceCase> Of(Kit kit, StudyConditions conditions)
    {
        Kit[] known = [.. Singly(kit).Where(one => Lacks(one).Count == 0)];
        return known.Length > 0 ? [.. known.Select(one => Around(one, WheelCorner.Of(one, conditions)))] : throw new FaultsException([.. Singly(kit).SelectMany(Lacks)]);
    }

    /// <summary>Of a kit with one strut that lacks nothing, its corner settled before.</summary>
    public static ClearanceCase Around(Kit kit, WheelCorner corner) => new(kit, corner);

    /// <summary>What of points and wheel a kit with one strut lacks.</summary>
    public static IReadOnlyList<Fault> Lacks(Kit kit)
    {
        List<Fault> faults = [];
        return SuspensionNeeds.Points(kit, kit.Struts().Single().End, faults) is not null && HasWheel(kit, faults) ? [] : faults;
    }

    private static bool HasWheel(Kit kit, List<Fault> faults)
    {
        AxleEnd end = kit.Struts().Single().End;
        if (kit.Car.At(end)!.Wheel is not null) return true;
        faults.Add(new(kit.File, $"car.axles.{(end == AxleEnd.Front ? "front" : "rear")}.wheel", "nothing", "the wheel the car was measured with",
            $"Give it in the car document, such as \"{WheelText.WheelExample}\": its middle plane is where the wheel centre was measured."));
        return false;
    }

    private static IEnumerable<Kit> Singly(Kit kit) =>
        kit.Struts().Select(strut => kit.Only(strut.End));

    private static (double? Least_m, double? Greatest_m) Ends(TravelResult? travel) => travel is null ? default
        : (Further(travel.FullDroop, travel.Lifted, Math.Min), Further(travel.FullBump, travel.AiredOut, Math.Max));

    private static double? Further(TravelState one, TravelState other, Func<double, double, double> further) =>
        one.WheelTravel_m is { } first ? other.WheelTravel_m is { } second ? further(first, second) : first : other.WheelTravel_m;
}
