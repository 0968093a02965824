using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a wheel tried in place of another: the same on page, terminal and paper.</summary>
public sealed class WheelWords(WheelFitResult result, DisplayUnits units)
{
    private const double LeastToe_rad = 1e-4, Met_mm = 1e-6;

    public const string Signs = "Outward + is further out at the arch, toward the strut + is less room inside; camber + top out, bump +, per wheel.";

    /// <summary>The verdict in one sentence, with what it takes.</summary>
    public string Answer() => result.Verdict switch
    {
        WheelVerdict.Fits => $"It fits{With(result.Question.Camber_rad)}: {Free(result.New!)}.",
        WheelVerdict.FitsWithCamber when result.LeastCamber!.Camber_rad == 0 =>
            $"It fits as measured: {Free(result.LeastCamber)}; not{With(result.Question.Camber_rad)}: {string.Join("; ", Reasons())}.",
        WheelVerdict.FitsWithCamber => $"It fits{With(result.LeastCamber!.Camber_rad)}: {Free(result.LeastCamber!)}. {Takes(result.LeastCamber!)}",
        WheelVerdict.DoesNotFit => $"It does not fit{With(result.Question.Camber_rad)}: {string.Join("; ", Reasons())}. {Helps()}",
        _ => $"Whether it fits stays open: {string.Join("; ", Unknown())}.",
    };

    /// <summary>"The rim's edges stand 17.7 mm further out and 7.7 mm nearer to the strut, the tyre's sides …", then what camber does.</summary>
    public string Change()
    {
        var change = result.Question.Change;
        string stand = $"The rim's edges stand {Apart(change.RimOutward_m, change.RimTowardStrut_m)}, the tyre's sides {Apart(change.TyreOutward_m, change.TyreTowardStrut_m)}.";
        return result.Camber is not { } camber || result.Question.Camber_rad == 0 ? stand
            : $"{stand} {Angle(result.Question.Camber_rad)} of camber moves the rim's top {Signed(camber.RimOutward_m)} outward and {Signed(camber.RimTowardStrut_m)} toward the strut, the tyre's {Signed(camber.TyreOutward_m)} and {Signed(camber.TyreTowardStrut_m)}.";
    }

    /// <summary>Track, scrub radius and speed; where no setting makes the camber, speed alone.</summary>
    public string Road()
    {
        string speed = PlainNumbers.Fixed(100 * result.Question.Change.SpeedChange, 2);
        string stance = result.Stance is { } s ? $"{Signed(s.TrackChange_m)} of track a side, {Signed(s.ScrubRadiusChange_m)} of scrub radius, " : "";
        return $"{stance}{(speed.StartsWith('−') ? "" : "+")}{speed} % of true speed.";
    }

    /// <summary>Where the adjuster stands for a change of camber; an em dash about the hub.</summary>
    public string Place(WheelGaps gaps) => gaps.Setting is null ? "–"
        : gaps.Setting == 0 ? "as measured" : $"{Setting(gaps)}{(gaps.WithinAdjuster ? "" : ", past its end")}";

    /// <summary>What each miss is, and where.</summary>
    public IEnumerable<string> Reasons()
    {
        if (result.New is not { } gaps) yield return $"no setting of the {Adjuster} makes {Angle(result.Question.Camber_rad)} of camber";
        else if (!gaps.WithinAdjuster) yield return $"the {Adjuster} would have to stand {Setting(gaps)}, past its end";
        foreach (WheelMiss miss in result.Misses) yield return Reason(miss, result.New!);
    }

    /// <summary>How the change of camber is made.</summary>
    public static string MadeAt(AdjusterKind? kind) => kind switch
    {
        AdjusterKind.CamberSlide => "top mount slide, through the linkage",
        AdjusterKind.KnuckleSlot => "knuckle slot on the strut, through the linkage",
        AdjusterKind.EccentricBolt => "eccentric bolt, through the linkage",
        _ => "about the hub",
    };

    public static string Verdict(WheelVerdict verdict) => verdict switch
    {
        WheelVerdict.Fits => "fits",
        WheelVerdict.FitsWithCamber => "fits with camber",
        WheelVerdict.DoesNotFit => "does not fit",
        _ => "not known",
    };

    /// <summary>A gap's name on a drawing.</summary>
    public static string Where(WheelPlace place) => place switch
    {
        WheelPlace.Arch => "arch",
        WheelPlace.Strut => "strut",
        _ => "tower",
    };

    /// <summary>What stands behind the numbers, and what was not asked.</summary>
    public IEnumerable<Note> Notes()
    {
        WheelCorner corner = result.Corner;
        if (result.SectionSpread_m > 0)
            yield return new("section", $"The new tyre's section is known from its size alone, ±{Length(result.Question.New.SectionSpread_m)}: the gaps lie within ±{Length(result.SectionSpread_m)}. Give --new-section from the maker's sheet.");
        if (result.Question.New.RimLeads)
            yield return new("stretch", $"The new rim's edges stand {Length(result.Question.New.RimLead_m)} out past the tyre on either side: the rim touches first.");
        yield return new("camber", corner.Adjuster.MadeAt is null
            ? "Made about the hub, for the kit names no adjuster that the car's points take." : $"Made at the {MadeAt(corner.Adjuster.MadeAt)}.");
        if (corner.Adjuster.Linkage is not null && !corner.FullBumpKnown)
            yield return new("travel", TravelWords.Taken(corner.Unsettled, $"{Length(WheelCorner.UsualBump_m)} of bump", units));
        if (corner.Adjuster.Linkage is not null && corner.Tower.Count == 0)
            yield return new("tower", "The suspension document names no points of the tower: what camber takes from the bellows there is not asked.");
        if (corner.Adjuster.Linkage is not null) yield return new("straight ahead", "At full lock wheel, liner and strut pass elsewhere, and arms, tie rods, brackets and brakes are nearer than the strut: not asked here.");
        yield return new("speed", "True speed at the same speed shown goes as the free radii; under load and speed a tyre rolls on about 3 % less (from memory).");
        yield return new("margins", $"{Length(result.Question.ArchMargin_m)} to the arch, {Length(result.Question.StrutMargin_m)} to the strut [Wheel Clearance Guide 2026], {Length(result.Question.TowerMargin_m)} between bellows and tower (common practice, no source); the kit's clearance margins change them, --arch-margin and --strut-margin too.");
        if (result.Stance?.ToeChange_rad is { } toe && Math.Abs(toe) > LeastToe_rad)
            yield return new("toe", $"The change of camber makes {Angle(toe)} of toe a wheel: set it again.");
    }

    private string Adjuster => result.Corner.Adjuster.MadeAt is { } kind ? AlignmentWords.Name(kind) : "hub";

    private static string With(double camber_rad) => camber_rad == 0 ? "" : $" with {Angle(camber_rad)} of camber added";

    // "8.1 mm free at the arch, 9.0 mm at the strut, 12.3 mm between bellows and tower"
    private string Free(WheelGaps gaps) => string.Join(", ", ((string?[])
    [
        gaps.Arch is { } arch ? $"{Length(arch.Gap_m)}{Spread(arch.Of)} free at the arch" : null,
        gaps.Strut is { } strut ? $"{Length(strut.Gap_m)}{Spread(strut.Of)} at the strut" : null,
        gaps.Tower is { } tower ? $"{Length(tower.Gap_m)} between bellows and tower" : null,
    ]).OfType<string>());

    // Of a tyre whose section is known from its size only.
    private string Spread(WheelBody of) => of == WheelBody.Tyre && result.SectionSpread_m > 0 ? $" (±{Length(result.SectionSpread_m)})" : "";

    private string Takes(WheelGaps gaps)
    {
        AdjusterRange range = result.Corner.Adjuster.Range!.Value;
        double setting = gaps.Setting!.Value, left = setting < 0 ? setting - range.Least : range.Greatest - setting;
        string tower = gaps.Tower is { } then && result.Old.Tower is { } now ? $" Bellows to tower goes from {Length(now.Gap_m)} to {Length(then.Gap_m)}." : "";
        return $"The {Adjuster} then stands {Setting(gaps)}, which leaves {Measure(left)} of it.{tower}";
    }

    private string Setting(WheelGaps gaps) => $"{Measure(Math.Abs(gaps.Setting!.Value))} {(gaps.Setting < 0 ? "in" : "out")}ward";

    private string Measure(double setting) => result.Corner.Adjuster.MadeAt == AdjusterKind.KnuckleSlot ? Angle(setting) : Length(setting);

    private string Reason(WheelMiss miss, WheelGaps gaps)
    {
        (string what, double travel) = miss.Place switch
        {
            WheelPlace.Arch => ($"the {Name(gaps.Arch!.Of)} comes to the arch edge", gaps.Arch.Travel_m),
            WheelPlace.Strut => ($"the {Name(gaps.Strut!.Of)} comes to the {Name(gaps.Strut.To)}", gaps.Strut.Travel_m),
            _ => ("the bellows comes to the tower", gaps.Tower!.Travel_m),
        };
        int more = Length(miss.Gap_m) == Length(miss.Margin_m) ? 1 : 0; // so that a miss by a hair reads as one
        string gap = miss.Gap_m < 0 ? "and touches" : $"within {units.Number(Dimension.Length, miss.Gap_m, more)} {units.Symbol(Dimension.Length)}";
        if (miss.Place != WheelPlace.Tower) gap += Spread(miss.Place == WheelPlace.Arch ? gaps.Arch!.Of : gaps.Strut!.Of);
        return $"{what} {gap} {(travel == 0 ? "at drive height" : $"at {Length(travel)} of bump")}, where {Length(miss.Margin_m)} are asked";
    }

    // The nearest that would fit: as measured, else with all the camber the adjuster makes.
    private string Helps()
    {
        if (result is { LeastCamber: { Setting: null } camber, Offsets: not [{ Any: true }, ..] } && WheelFitStudy.Misses(camber, result.Question).Length == 0)
            return $"{Angle(camber.Camber_rad)} of camber would do, but the kit names nothing that makes it.";
        if (result.Offsets.Count == 0) return "";
        if (result.Offsets.FirstOrDefault(o => o.Any) is not { } offsets)
            return $"No offset of this wheel fits{With(result.Offsets[^1].Camber_rad)}: arch and strut together are {Length(result.Offsets[^1].Least_m - result.Offsets[^1].Greatest_m)} too near.";
        string and = offsets.Camber_rad == 0 ? " with" : " and", spread = Ends();
        string more = offsets.Camber_rad == 0 ? "" : $"; with {Angle(result.Offsets[^1].Camber_rad)}, the most the {Adjuster} makes, {Instead(result.Offsets[^1])}";
        return $"It would fit{With(offsets.Camber_rad)}{and} {Instead(offsets)}{more}{spread}.";
    }

    // "ET34 to ET36, or 1.4 mm to 5.0 mm of spacer"
    private string Instead(WheelOffsets offsets)
    {
        double spacer = result.Question.Spacer_m, further = result.Question.New.Rim.Offset_m - spacer - offsets.Greatest_m, most = further + offsets.Greatest_m - offsets.Least_m;
        string between = Length(further) == Length(most) ? Length(most) : $"{Length(further)} to {Length(most)}";
        return Offsets(offsets.Least_m + spacer, offsets.Greatest_m + spacer) + (further > 0 ? $", or {between} {(spacer > 0 ? "more " : "")}of spacer" : "");
    }

    // The arch sets how far out, the strut how far in; a tyre known from its size only leaves either open.
    private string Ends()
    {
        if (result.SectionSpread_m == 0 || result.New is not { } gaps) return "";
        string where = (gaps.Arch?.Of, gaps.Strut?.Of) switch
        {
            (WheelBody.Tyre, WheelBody.Tyre) => "at arch and strut",
            (WheelBody.Tyre, _) => "at the arch",
            (_, WheelBody.Tyre) => "at the strut",
            _ => "",
        };
        return where.Length == 0 ? "" : $", ±{Length(result.SectionSpread_m)} {where}";
    }

    private IEnumerable<string> Unknown()
    {
        if (result.Corner.Axle.Suspension is null) yield return "the car's axle names no suspension document with its points";
        else
        {
            if (result.New!.Arch is null) yield return "the suspension document has no archEdge";
            if (result.New!.Strut is null) yield return "the kit does not say where the strut's parts stand (an air spring, a damper with lengths, springToDamper)";
        }
    }

    private static string Name(WheelBody body) => body == WheelBody.Tyre ? "tyre" : "rim";

    private static string Name(StrutBody body) => body == StrutBody.Bellows ? "bellows" : "strut";

    private string Apart(double outward_m, double toward_m) =>
        $"{Length(Math.Abs(outward_m))} further {(outward_m < 0 ? "in" : "out")} and {Length(Math.Abs(toward_m))} {(toward_m < 0 ? "further from" : "nearer to")} the strut";

    // Whole millimetres where there is one between them, as wheels are sold.
    private static string Offsets(double least_m, double greatest_m)
    {
        double least = Math.Ceiling(least_m * 1e3 - Met_mm), greatest = Math.Floor(greatest_m * 1e3 + Met_mm);
        if (least > greatest) return $"ET{PlainNumbers.Fixed((least_m + greatest_m) * 500, 1)}";
        string first = $"ET{PlainNumbers.Fixed(least, 0)}";
        return least == greatest ? first : $"{first} to ET{PlainNumbers.Fixed(greatest, 0)}";
    }

    private static string Angle(double angle_rad) => LinkageWords.Angle(angle_rad);

    private string Signed(double change_m) => units.Change(Dimension.Length, change_m, 0);

    private string Length(double length_m) => units.Text(Dimension.Length, length_m);
}
