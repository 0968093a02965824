namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>Which wheel fits, and what it takes where it does not.</summary>
public static class WheelFitStudy
{
    private const double Degree = Math.PI / 180, TradeOffLeast_deg = -3, TradeOffGreatest_deg = 1, TradeOffStep_deg = 0.25, MostTilt_rad = 6 * Degree;
    private const double Farthest_m = 0.1, Close_m = 1e-5, CloseCamber_rad = 1e-5;

    // A margin met to the last digit written holds.
    private const double Met_m = 1e-9;

    public static WheelFitResult Answer(WheelCorner corner, WheelFitQuestion question)
    {
        WheelTrial old = new(corner, question.Old, 0), trial = Trial(corner, question);
        return Again(new()
        {
            Corner = corner,
            Question = question,
            Old = old.Gaps(0)!,
            LeastCamber = LeastCamber(corner, trial, question),
            TradeOff = corner.Adjuster.Linkage is null ? [] : TradeOff(trial),
            New = null,
            Camber = null,
            Stance = null,
            Misses = [],
            Verdict = default,
            Offsets = null,
        }, question.Camber_rad);
    }

    /// <summary>The same wheel at another change of camber, quick enough for a hand that drags it.</summary>
    public static WheelFitResult Again(WheelFitResult before, double camber_rad)
    {
        WheelFitQuestion question = before.Question with { Camber_rad = camber_rad };
        WheelCorner corner = before.Corner;
        WheelFitResult result = before with { Question = question, New = null, Camber = null, Stance = null, Misses = [], Verdict = WheelVerdict.DoesNotFit, Offsets = null };
        if (CornerTravel.Of(corner, camber_rad) is not { } travel) return result;
        WheelTrial trial = Trial(corner, question);
        WheelGaps gaps = trial.Gaps(travel);
        WheelMiss[] misses = Misses(gaps, question);
        WheelVerdict verdict = Verdict(gaps, misses, before.LeastCamber, question);
        return result with
        {
            New = gaps,
            Camber = CamberShift.Of(corner.Adjuster, travel.Set, question),
            Stance = WheelStance.Of(corner, travel.Set, question),
            Misses = misses,
            Verdict = verdict,
            Offsets = verdict == WheelVerdict.DoesNotFit ? Offsets(corner, trial, travel, question) : null,
        };
    }

    internal static WheelMiss[] Misses(WheelGaps gaps, WheelFitQuestion question) =>
    [
        .. Miss(WheelPlace.Arch, gaps.Arch?.Gap_m, question.ArchMargin_m),
        .. Miss(WheelPlace.Strut, gaps.Strut?.Gap_m, question.StrutMargin_m),
        .. Miss(WheelPlace.Tower, gaps.Tower?.Gap_m, question.ArchMargin_m),
    ];

    private static WheelTrial Trial(WheelCorner corner, WheelFitQuestion question) => new(corner, question.New, question.Change.Shift_m);

    private static IEnumerable<WheelMiss> Miss(WheelPlace place, double? gap, double margin)
    {
        if (gap < margin - Met_m) yield return new(place, gap.Value, margin);
    }

    private static WheelVerdict Verdict(WheelGaps gaps, WheelMiss[] misses, WheelGaps? least, WheelFitQuestion question)
    {
        if (misses.Length == 0 && gaps.WithinAdjuster) return gaps.Arch is null || gaps.Strut is null ? WheelVerdict.NotKnown : WheelVerdict.Fits;
        return least is { Setting: not null, Strut: not null } && Misses(least, question).Length == 0 ? WheelVerdict.FitsWithCamber : WheelVerdict.DoesNotFit;
    }

    private static WheelGaps[] TradeOff(WheelTrial trial)
    {
        int count = (int)Math.Round((TradeOffGreatest_deg - TradeOffLeast_deg) / TradeOffStep_deg) + 1;
        return [.. Enumerable.Range(0, count).Select(k => trial.Gaps((TradeOffLeast_deg + k * TradeOffStep_deg) * Degree)).OfType<WheelGaps>()];
    }

    // The arch gap falls as the top goes out.
    private static WheelGaps? LeastCamber(WheelCorner corner, WheelTrial trial, WheelFitQuestion question)
    {
        if (corner.ArchEdge.Count == 0) return null;
        double most = corner.Adjuster.Reach()?.Least_rad ?? -MostTilt_rad;
        if (Lacking(0) <= 0) return trial.Gaps(0);
        if (!(Lacking(most) <= 0)) return null;
        (double enough, double tooLittle) = (most, 0);
        while (tooLittle - enough > CloseCamber_rad)
        {
            double middle = (enough + tooLittle) / 2;
            (enough, tooLittle) = Lacking(middle) <= 0 ? (middle, tooLittle) : (enough, middle);
        }

        return trial.Gaps(enough);

        double Lacking(double camber) => CornerTravel.Of(corner, camber) is { } travel && trial.Arch(travel) is { } arch ? question.ArchMargin_m - arch.Gap_m : double.NaN;
    }

    private static WheelOffsets? Offsets(WheelCorner corner, WheelTrial trial, CornerTravel travel, WheelFitQuestion question)
    {
        if (travel.Set.Within && OffsetsAt(trial, travel, question) is { } asked && (asked.Any || corner.Adjuster.Range is null)) return asked;
        return corner.Adjuster.Reach() is { } reach && CornerTravel.Of(corner, reach.Least_rad) is { } most ? OffsetsAt(trial, most, question) : null;
    }

    // Further out takes from the arch what it gives the strut.
    private static WheelOffsets? OffsetsAt(WheelTrial trial, CornerTravel travel, WheelFitQuestion question)
    {
        if (trial.Arch(travel) is null || trial.Strut(travel) is null) return null;
        double farthest = Last(outward => trial.At(outward).Arch(travel)!.Gap_m >= question.ArchMargin_m);
        double nearest = -Last(inward => trial.At(-inward).Strut(travel)!.Gap_m >= question.StrutMargin_m);
        return new(travel.Set.Camber_rad, question.Old.Rim.Offset_m - farthest, question.Old.Rim.Offset_m - nearest);
    }

    // The greatest shift that holds, of those between the farthest either way.
    private static double Last(Func<double, bool> holds)
    {
        (double held, double not) = (-Farthest_m, Farthest_m);
        while (not - held > Close_m)
        {
            double middle = (held + not) / 2;
            (held, not) = holds(middle) ? (middle, not) : (held, middle);
        }

        return held;
    }
}
