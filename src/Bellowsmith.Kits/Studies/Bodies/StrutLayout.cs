using Bellowsmith.Kits.Studies.Travel;

namespace Bellowsmith.Kits.Studies.Bodies;

/// <summary>
/// Where everything of a strut stands at an installed height, mm over the lower datum. The mount face stays where it is: more
/// spring height lowers plate, damper and thread together, as the thread does at fixed car height. What the kit does not say
/// (plate thickness, diameters, where rod and stop are seated) is drawn as usual and never dimensioned.
/// </summary>
internal sealed class StrutLayout
{
    private const double UsualPlate_mm = 6, UsualStack_mm = 40, UsualBody_mm = 180, UsualEngagement_mm = 30, UnderBody_mm = 30, UsualDiameter_mm = 50;

    public StrutLayout(StrutCase strut, double height_m)
    {
        StrutDesign design = strut.Design;
        (Height_mm, GaugePressure_Pa) = (height_m * 1000, strut.GaugePressure_Pa(height_m));
        Plate_mm = PlateOf_mm(strut);
        double upper = design.UpperStack_m * 1000 ?? UsualStack_mm;
        double length = double.IsNaN(strut.DamperLength_m(height_m)) || strut.Damper is null
            ? upper + Height_mm + UsualBody_mm
            : strut.DamperLength_m(height_m) * 1000;
        StrutLength_m = design.StrutLengthAtDrive_m ?? (design.Thread is null
            ? design.UpperStack_m + height_m + design.LowerStack_m : null);
        if (design.Thread is { } thread && design.StrutLengthAtDrive_m is { } set && design.UpperStack_m is { } up && design.LowerStack_m is { } low)
            Exposed_m = set - up - height_m - low;

        Mount = design.StrutLengthAtDrive_m * 1000
            ?? upper + strut.GreatestHeight_m * 1000 + (design.LowerStack_m * 1000 ?? length - upper - Height_mm + UnderBody_mm);
        Datum = StrutLength_m is { } s ? Mount - s * 1000 : Math.Min(0, Mount - length - UnderBody_mm);
        UpperPlate = Mount - upper;
        LowerPlate = UpperPlate - Height_mm;
        DamperBottom = Mount - length;
        Body = (design.Thread?.Diameter_m * 1000 ?? UsualDiameter_mm) / 2;
        Rod = (strut.Damper?.RodDiameter_m * 500) ?? 0;
        SleeveTop = DamperBottom + Engaged(design.Thread);
        ThreadEnd = SleeveTop + (Exposed_m * 1000 ?? 0);
        Settle(strut, height_m);
    }

    public double Height_mm { get; }

    /// <summary>NaN where it is not known.</summary>
    public double GaugePressure_Pa { get; }

    /// <summary>Thickness of each end plate.</summary>
    public double Plate_mm { get; }

    public double? StrutLength_m { get; }

    /// <summary>Exposed thread; null where the kit does not say enough.</summary>
    public double? Exposed_m { get; }

    public double Mount { get; }
    public double Datum { get; }

    /// <summary>Outer face of the upper end plate, and of the lower one.</summary>
    public double UpperPlate { get; }

    public double LowerPlate { get; }
    public double DamperBottom { get; }

    /// <summary>Radii of damper body and rod; no rod is drawn for a damper that is only a coefficient.</summary>
    public double Body { get; }

    public double Rod { get; }
    public double SleeveTop { get; }
    public double ThreadEnd { get; }
    public double StopSeat => UpperPlate - Plate_mm;
    public double HeadTop { get; private set; }

    /// <summary>Lower end of the stop as it stands, squeezed where it is; null without one.</summary>
    public double? StopEnd { get; private set; }

    public double StopFree_mm { get; private set; }

    /// <summary>Gap under the free stop, − where it is squeezed; null where there is none or the kit does not say.</summary>
    public double? StopGap_m { get; private set; }

    public double? DamperLength_m { get; private set; }

    /// <summary>As the spring's mould says, else usual.</summary>
    public static double PlateOf_mm(StrutCase strut) => strut.Part.Mould?.PlateThickness_m * 1000 ?? UsualPlate_mm;

    private void Settle(StrutCase strut, double height_m)
    {
        HeadTop = LowerPlate + Plate_mm;
        if (strut.Damper is not { } damper) return;
        StopFree_mm = damper.BumpStop?.FreeLength_m * 1000 ?? 0;
        if (damper.BumpStop is not null) StopEnd = StopSeat - StopFree_mm;
        if (strut.Design.SpringToDamper_m is null) return;
        StrutMotion motion = new(strut, height_m);
        DamperLength_m = motion.DriveLength_m;
        StopGap_m = motion.StopGap_m(0);
        double rod = (DamperLength_m.Value - damper.Shortest_m + (damper.BumpStop?.RodAtShortest_m ?? 0)) * 1000;
        HeadTop = StopSeat - Math.Max(rod, 0);
        if (StopEnd is { } end) StopEnd = Math.Max(end, HeadTop);
    }

    private double Engaged(ThreadDesign? thread) => thread?.EngagedAtStop_m is { } atStop && Exposed_m is { } exposed
        ? Math.Max((atStop + thread.ExposedAtStop_m - exposed) * 1000, 0)
        : thread is null ? UsualEngagement_mm : Math.Max(UsualEngagement_mm, UsualEngagement_mm + (thread.Greatest_m - (Exposed_m ?? 0)) * 1000);
}
