using System.Globalization;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a wheel tried in place of another: the same on page, terminal and paper.</summary>
public sealed class WheelWords(WheelFitResult result, DisplayUnits units)
{
    public const string Signs = "Outward + is further out at the arch, toward the strut + is less room inside; camber + top out, bump +, per wheel.";

    /// <summary>The verdict in one sentence, with what it takes.</summary>
    public string Answer() => result.Verdict switch
    {
        WheelVerdict.Fits => $"It fits{With(result.New!)}: {Free(result.New!)}.",
        WheelVerdict.FitsWithCamber => $"It fits{With(result.LeastCamber!)}: {Free(result.LeastCamber!)}. {Takes(result.LeastCamber!)}",
        WheelVerdict.DoesNotFit => $"It does not fit{With(result.New)}: {string.Join("; ", Reasons())}. {Helps()}",
        _ => $"Whether it fits stays open: {string.Join("; ", Unknown())}.",
    };

    /// <summary>"Rim 17.7 mm further out and 7.7 mm nearer to the strut; tyre …" — without what camber does.</summary>
    public string Change()
    {
        var change = result.Question.Change;
        return $"The rim's edges stand {Apart(change.RimOutward_m, change.RimTowardStrut_m)}, the tyre's sides {Apart(change.TyreOutward_m, change.TyreTowardStrut_m)}.";
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
    public static string MadeAt(CamberMadeAt madeAt) => madeAt switch
    {
        CamberMadeAt.TopMount => "top mount slide, through the linkage",
        CamberMadeAt.KnuckleSlot => "knuckle slot on the strut, through the linkage",
        CamberMadeAt.EccentricBolt => "eccentric bolt, through the linkage",
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
        if (corner.Adjuster.MadeAt == CamberMadeAt.Hub)
            yield return new("camber", "Made about the hub, for the kit names no adjuster that the car's points take.");
        if (corner.Adjuster.Linkage is not null && !corner.FullBumpKnown)
            yield return new("travel", $"The kit does not say how far the wheel goes: {Length(WheelCorner.UsualBump_m)} of bump are taken.");
        if (corner.Adjuster.Linkage is not null) yield return new("straight ahead", "At full lock wheel, liner and strut pass elsewhere: not asked here.");
        yield return new("speed", "True speed at the same speed shown goes as the free radii; under load and speed a tyre rolls on about 3 % less (from memory).");
        yield return new("margins", $"{Length(result.Question.ArchMargin_m)} to arch and tower, {Length(result.Question.StrutMargin_m)} to the strut [Wheel Clearance Guide 2026]; --arch-margin and --strut-margin change them.");
        if (result.Stance?.ToeChange_rad is { } toe && Math.Abs(toe) > LeastToe_rad)
            yield return new("toe", $"The change of camber makes {Angle(toe)} of toe a wheel: set it again.");
    }

    private const double LeastToe_rad = 1e-4;

    private string Adjuster => result.Corner.Adjuster.MadeAt switch
    {
        CamberMadeAt.TopMount => "top mount",
        CamberMadeAt.KnuckleSlot => "knuckle",
        CamberMadeAt.EccentricBolt => "eccentric bolt",
        _ => "hub",
    };

    private string With(WheelGaps? gaps) => (gaps?.Camber_rad ?? result.Question.Camber_rad) is var camber && camber == 0 ? "" : $" with {Angle(camber)} of camber";

    // "8.1 mm free at the arch, 9.0 mm at the strut, 12.3 mm between bellows and tower"
    private string Free(WheelGaps gaps) => string.Join(", ", ((string?[])
    [
        gaps.Arch is { } arch ? $"{Length(arch.Gap_m)} free at the arch" : null,
        gaps.Strut is { } strut ? $"{Length(strut.Gap_m)} at the strut" : null,
        gaps.Tower is { } tower ? $"{Length(tower.Gap_m)} between bellows and tower" : null,
    ]).OfType<string>());

    private string Takes(WheelGaps gaps)
    {
        AdjusterRange range = result.Corner.Adjuster.Range!.Value;
        double setting = gaps.Setting!.Value, left = setting < 0 ? setting - range.Least : range.Greatest - setting;
        string tower = gaps.Tower is { } then && result.Old.Tower is { } now ? $" Bellows to tower goes from {Length(now.Gap_m)} to {Length(then.Gap_m)}." : "";
        return $"The {Adjuster} then stands {Setting(gaps)}, which leaves {Measure(left)} of it.{tower}";
    }

    private string Setting(WheelGaps gaps) => $"{Measure(Math.Abs(gaps.Setting!.Value))} {(gaps.Setting < 0 ? "in" : "out")}ward";

    private string Measure(double setting) => result.Corner.Adjuster.MadeAt == CamberMadeAt.KnuckleSlot ? Angle(setting) : Length(setting);

    private string Reason(WheelMiss miss, WheelGaps gaps)
    {
        (string what, double travel) = miss.Place switch
        {
            WheelPlace.Arch => ($"the {Name(gaps.Arch!.Of)} comes to the arch edge", gaps.Arch.Travel_m),
            WheelPlace.Strut => ($"the {Name(gaps.Strut!.Of)} comes to the {Name(gaps.Strut.To)}", gaps.Strut.Travel_m),
            _ => ("the bellows comes to the tower", gaps.Tower!.Travel_m),
        };
        string gap = miss.Gap_m < 0 ? "and touches" : $"within {Length(miss.Gap_m)}";
        return $"{what} {gap} {(travel == 0 ? "at drive height" : $"at {Length(travel)} of bump")}, where {Length(miss.Margin_m)} are asked";
    }

    // The nearest that would fit.
    private string Helps()
    {
        if (result.Offsets is not { } offsets) return "";
        string with = offsets.Camber_rad == 0 ? "" : $" with {Angle(offsets.Camber_rad)} of camber";
        if (!offsets.Any) return $"No offset of this wheel fits{with}: arch and strut together are {Length(offsets.Least_m - offsets.Greatest_m)} too near.";
        double spacer = result.Question.Spacer_m, least = offsets.Least_m + spacer, greatest = offsets.Greatest_m + spacer, further = result.Question.New.Rim.Offset_m - greatest;
        string instead = further > 0 ? $"; so would {(spacer > 0 ? "another " : "a spacer of ")}{Length(further)} to {Length(further + greatest - least)}{(spacer > 0 ? " of spacer" : "")}" : "";
        return $"From {Offset(least, up: true)} to {Offset(greatest, up: false)} it would fit{with}{instead}.";
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

    private static string Offset(double offset_m, bool up)
    {
        double tenths = up ? Math.Ceiling(offset_m * 1e4 - 1e-6) / 10 : Math.Floor(offset_m * 1e4 + 1e-6) / 10;
        return string.Create(CultureInfo.InvariantCulture, $"ET{tenths:0.#}");
    }

    private static string Angle(double angle_rad) => LinkageWords.Angle(angle_rad);

    private string Signed(double change_m) => units.Change(Dimension.Length, change_m, 0);

    private string Length(double length_m) => units.Text(Dimension.Length, length_m);
}
