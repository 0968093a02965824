namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>Which wheel fits, and what it takes where it does not.</summary>
public static class WheelFitStudy
{
    public static WheelFitResult Answer(WheelCorner corner, WheelFitQuestion question)
    {
        WheelFitResult unasked = new(new(corner, question)) { Corner = corner, Question = question, New = null, Camber = null, Stance = null, Misses = [], Verdict = default };
        return Again(unasked, question.Camber_rad);
    }

    /// <summary>The same wheel at another change of camber, quick enough for a hand that drags it.</summary>
    public static WheelFitResult Again(WheelFitResult before, double camber_rad)
    {
        WheelFitQuestion question = before.Question with { Camber_rad = camber_rad };
        WheelCorner corner = before.Corner;
        WheelFitResult result = before with { Question = question, New = null, Camber = null, Stance = null, Misses = [], Verdict = WheelVerdict.DoesNotFit };
        if (CornerTravel.Of(corner, camber_rad) is not { } travel) return result;
        WheelGaps gaps = before.Search.Gaps(travel);
        WheelMiss[] misses = Misses(gaps, question);
        return result with
        {
            New = gaps,
            Camber = CamberShift.Of(corner.Adjuster, travel.Set, question),
            Stance = WheelStance.Of(corner, travel.Set, question),
            Misses = misses,
            Verdict = Verdict(gaps, misses, before.Search, question),
        };
    }

    internal static WheelMiss[] Misses(WheelGaps gaps, WheelFitQuestion question) =>
    [
        .. Miss(WheelPlace.Arch, gaps.Arch?.Gap_m, question.ArchMargin_m),
        .. Miss(WheelPlace.Strut, gaps.Strut?.Gap_m, question.StrutMargin_m),
        .. Miss(WheelPlace.Tower, gaps.Tower?.Gap_m, question.TowerMargin_m),
    ];

    private static IEnumerable<WheelMiss> Miss(WheelPlace place, double? gap, double margin)
    {
        if (gap is { } known && !Met.AtLeast(known, margin)) yield return new(place, known, margin);
    }

    private static WheelVerdict Verdict(WheelGaps gaps, WheelMiss[] misses, WheelSearch search, WheelFitQuestion question)
    {
        if (misses.Length == 0 && gaps.WithinAdjuster) return gaps.Arch is null || gaps.Strut is null ? WheelVerdict.NotKnown : WheelVerdict.Fits;
        return search.LeastCamber is { Setting: not null, Strut: not null } least && Misses(least, question).Length == 0 ? WheelVerdict.FitsWithCamber : WheelVerdict.DoesNotFit;
    }
}
