using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>
/// The machine answer of <c>wheel</c>: unrounded, each number in the unit its name ends with. The first four include what the asked camber
/// does at the top of rim and tyre; null where no setting of the adjuster makes it.
/// </summary>
public sealed record WheelAnswer(
    double? RimOutward_mm, double? RimTowardStrut_mm, double? TyreOutward_mm, double? TyreTowardStrut_mm, double SectionOld_mm, double SectionNew_mm,
    double FreeRadiusChange_mm)
{
    public required double RimOutwardWithoutCamber_mm { get; init; }
    public required double RimTowardStrutWithoutCamber_mm { get; init; }
    public required double TyreOutwardWithoutCamber_mm { get; init; }
    public required double TyreTowardStrutWithoutCamber_mm { get; init; }
    public required double SectionSpreadOld_mm { get; init; }
    public required double SectionSpreadNew_mm { get; init; }
    public required bool RimLeadsOld { get; init; }
    public required bool RimLeadsNew { get; init; }

    /// <summary>How far the rim's edge stands out past the tyre, either side; − where the tyre does.</summary>
    public required double RimLeadOld_mm { get; init; }

    public required double RimLeadNew_mm { get; init; }
    public required double FreeRadiusOld_mm { get; init; }
    public required double FreeRadiusNew_mm { get; init; }
    public double? LoadedRadiusOld_mm { get; init; }
    public double? LoadedRadiusNew_mm { get; init; }
    public required double SpeedometerChange_percent { get; init; }
    public required string SpeedometerLaw { get; init; }
    public double? TrackChange_mm { get; init; }
    public double? ScrubRadiusChange_mm { get; init; }
    public double? ToeChange_deg { get; init; }
    public required string CamberMadeAt { get; init; }
    public double? ArchGapOld_mm { get; init; }
    public double? ArchGapNew_mm { get; init; }
    public double? ArchGapNewAtDrive_mm { get; init; }
    public double? ArchGapWheelTravel_mm { get; init; }
    public IReadOnlyList<double>? ArchGapPoint_mm { get; init; }
    public double? StrutGapOld_mm { get; init; }
    public double? StrutGapNew_mm { get; init; }
    public double? StrutGapNewAtDrive_mm { get; init; }
    public double? StrutGapWheelTravel_mm { get; init; }
    public double? TowerGap_mm { get; init; }
    public double? TowerGapAtDrive_mm { get; init; }
    public required double ArchMargin_mm { get; init; }
    public required double StrutMargin_mm { get; init; }
    public required double TowerMargin_mm { get; init; }

    /// <summary>How far the gaps may lie off because the section is known from the size only, ±.</summary>
    public required double GapSpread_mm { get; init; }

    public required double FullBump_mm { get; init; }

    /// <summary>fits | fits with camber | does not fit | not known.</summary>
    public required string Verdict { get; init; }

    public required string Sentence { get; init; }
    public required IReadOnlyList<string> Reasons { get; init; }
    public WheelCamberRow? AtCamber { get; init; }
    public WheelCamberRow? LeastCamber { get; init; }

    /// <summary>Camber as measured, the least with which any offset fits where that is not it, then at the most the adjuster makes.</summary>
    public required IReadOnlyList<WheelOffsetRange> Offsets { get; init; }

    public required IReadOnlyList<WheelCamberRow> TradeOff { get; init; }
    public required IReadOnlyList<Note> Notes { get; init; }

    public static WheelAnswer Of(WheelFitResult r)
    {
        WheelWords words = new(r, DisplayUnits.Metric);
        WheelChange change = r.Question.Change;
        (RoadWheel old, RoadWheel now) = (change.Old, change.New);
        return new(
            Kilo(change.RimOutward_m + r.Camber?.RimOutward_m), Kilo(change.RimTowardStrut_m + r.Camber?.RimTowardStrut_m),
            Kilo(change.TyreOutward_m + r.Camber?.TyreOutward_m), Kilo(change.TyreTowardStrut_m + r.Camber?.TyreTowardStrut_m),
            old.Section_m * 1e3, now.Section_m * 1e3, change.FreeRadiusChange_m * 1e3)
        {
            RimOutwardWithoutCamber_mm = change.RimOutward_m * 1e3,
            RimTowardStrutWithoutCamber_mm = change.RimTowardStrut_m * 1e3,
            TyreOutwardWithoutCamber_mm = change.TyreOutward_m * 1e3,
            TyreTowardStrutWithoutCamber_mm = change.TyreTowardStrut_m * 1e3,
            SectionSpreadOld_mm = old.SectionSpread_m * 1e3,
            SectionSpreadNew_mm = now.SectionSpread_m * 1e3,
            RimLeadsOld = old.RimLeads,
            RimLeadsNew = now.RimLeads,
            RimLeadOld_mm = old.RimLead_m * 1e3,
            RimLeadNew_mm = now.RimLead_m * 1e3,
            FreeRadiusOld_mm = old.FreeRadius_m * 1e3,
            FreeRadiusNew_mm = now.FreeRadius_m * 1e3,
            LoadedRadiusOld_mm = Kilo(r.Corner.LoadedRadius_m(old)),
            LoadedRadiusNew_mm = Kilo(r.Corner.LoadedRadius_m(now)),
            SpeedometerChange_percent = change.SpeedChange * 100,
            SpeedometerLaw = "ratio of free radii",
            TrackChange_mm = Kilo(r.Stance?.TrackChange_m),
            ScrubRadiusChange_mm = Kilo(r.Stance?.ScrubRadiusChange_m),
            ToeChange_deg = Degrees(r.Stance?.ToeChange_rad),
            CamberMadeAt = WheelWords.MadeAt(r.Corner.Adjuster.MadeAt),
            ArchGapOld_mm = Kilo(r.Old.Arch?.Gap_m),
            ArchGapNew_mm = Kilo(r.New?.Arch?.Gap_m),
            ArchGapNewAtDrive_mm = Kilo(r.New?.ArchAtDrive?.Gap_m),
            ArchGapWheelTravel_mm = Kilo(r.New?.Arch?.Travel_m),
            ArchGapPoint_mm = r.New?.Arch is { At: var at } ? [at.X * 1e3, at.Y * 1e3, at.Z * 1e3] : null,
            StrutGapOld_mm = Kilo(r.Old.Strut?.Gap_m),
            StrutGapNew_mm = Kilo(r.New?.Strut?.Gap_m),
            StrutGapNewAtDrive_mm = Kilo(r.New?.StrutAtDrive?.Gap_m),
            StrutGapWheelTravel_mm = Kilo(r.New?.Strut?.Travel_m),
            TowerGap_mm = Kilo(r.New?.Tower?.Gap_m),
            TowerGapAtDrive_mm = Kilo(r.New?.TowerAtDrive?.Gap_m),
            ArchMargin_mm = r.Question.ArchMargin_m * 1e3,
            StrutMargin_mm = r.Question.StrutMargin_m * 1e3,
            TowerMargin_mm = r.Question.TowerMargin_m * 1e3,
            GapSpread_mm = r.SectionSpread_m * 1e3,
            FullBump_mm = r.Corner.FullBump_m * 1e3,
            Verdict = WheelWords.Verdict(r.Verdict),
            Sentence = words.Answer(),
            Reasons = [.. words.Reasons()],
            AtCamber = WheelCamberRow.Of(r.New, r.Corner.Adjuster),
            LeastCamber = WheelCamberRow.Of(r.LeastCamber, r.Corner.Adjuster),
            Offsets = [.. r.Offsets.Select(o => new WheelOffsetRange(o.Camber_rad * 180 / Math.PI, o.Least_m * 1e3, o.Greatest_m * 1e3, o.Any))],
            TradeOff = [.. r.TradeOff.Select(gaps => WheelCamberRow.Of(gaps, r.Corner.Adjuster)!)],
            Notes = [.. words.Notes()],
        };
    }

    private static double? Kilo(double? si) => si * 1e3;

    private static double? Degrees(double? angle_rad) => angle_rad * 180 / Math.PI;
}

/// <summary>One change of camber: where its adjuster stands, and the least gaps over the bump.</summary>
public sealed record WheelCamberRow(
    double Camber_deg, double? Setting_mm, double? Setting_deg, bool WithinAdjuster, double? ArchGap_mm, double? StrutGap_mm, double? TowerGap_mm)
{
    internal static WheelCamberRow? Of(WheelGaps? gaps, CamberAdjuster adjuster)
    {
        if (gaps is null) return null;
        bool turned = adjuster.MadeAt == AdjusterKind.KnuckleSlot;
        return new(
            gaps.Camber_rad * 180 / Math.PI, turned ? null : gaps.Setting * 1e3, turned ? gaps.Setting * 180 / Math.PI : null, gaps.WithinAdjuster,
            gaps.Arch?.Gap_m * 1e3, gaps.Strut?.Gap_m * 1e3, gaps.Tower?.Gap_m * 1e3);
    }
}

/// <summary>Offsets, less the spacer, from the arch's least to the strut's greatest; none fits where the least is the greater.</summary>
public sealed record WheelOffsetRange(double Camber_deg, double Least_mm, double Greatest_mm, bool Any);
