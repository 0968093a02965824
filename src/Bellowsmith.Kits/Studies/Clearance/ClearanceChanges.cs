namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>What camber, spacer and thread do to the gaps, and how much camber clears the wheel. Every place is swept anew for each.</summary>
internal static class ClearanceChanges
{
    private const double Degree = Math.PI / 180, Camber_rad = -Degree, Spacer_m = 0.005, Thread_m = 0.003;

    // About the hub there is no end; no wheel stands further in.
    private const double MostAboutHub_rad = -6 * Degree;

    public static IEnumerable<ClearanceSensitivity> Sensitivities(ClearanceCase corner, ClearanceQuestion question, IReadOnlyList<PairGap> pairs)
    {
        yield return Of(ClearanceChange.Camber, Camber_rad, question with { Camber_rad = question.Camber_rad + Camber_rad });
        yield return Of(ClearanceChange.Spacer, Spacer_m, question with { Spacer_m = question.Spacer_m + Spacer_m });
        if (corner.Corner.Bodies is not null) yield return Of(ClearanceChange.Thread, Thread_m, question with { Thread_m = question.Thread_m + Thread_m });

        ClearanceSensitivity Of(ClearanceChange change, double by, ClearanceQuestion asked)
        {
            PairGap[] then = ClearanceStudy.Pairs(corner, asked) ?? [];
            return new(change, by, [.. pairs.Select(now => (then.FirstOrDefault(pair => pair.Pair == now.Pair)?.Gap.Distance_m ?? double.NaN) - now.Gap.Distance_m)]);
        }
    }

    /// <summary>Null where every pair of the wheel keeps its margin as it stands.</summary>
    public static CamberToClear? Camber(ClearanceCase corner, ClearanceQuestion question, IReadOnlyList<PairGap> pairs)
    {
        if (Clear(pairs)) return null;
        double most = corner.Corner.Adjuster.Reach()?.Least_rad ?? MostAboutHub_rad;
        if (most >= question.Camber_rad) return new(null, most, pairs);
        if (LeastCamber.Of(question.Camber_rad, most, LeastCamber.Longest_rad, camber => Clear(At(camber, Density.Live))) is not { } live)
            return new(null, most, At(most, question.Density));

        // Fewer places were looked at on the way; the last word is the full sweep's.
        PairGap[] gaps = At(live, question.Density);
        if (Clear(gaps)) return new(live, most, gaps);
        double? enough = LeastCamber.Of(live, most, LeastCamber.Close_rad, camber => Clear(At(camber, question.Density)));
        return new(enough, most, At(enough ?? most, question.Density));

        PairGap[] At(double camber, Density density) => ClearanceStudy.Pairs(corner, question with { Camber_rad = camber, Density = density }) ?? [];
    }

    private static bool Clear(IReadOnlyList<PairGap> pairs) => pairs.Count > 0 && pairs.All(pair => !pair.Pair.IsOfWheel || pair.Holds);
}
