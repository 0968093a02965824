namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>What camber, spacer and thread do to the gaps, and how much camber clears the wheel. Every place is swept anew for each.</summary>
internal static class ClearanceChanges
{
    private const double Degree = Math.PI / 180, Camber_rad = -Degree, Spacer_m = 0.005, Thread_m = 0.003;

    // About the hub there is no end; no wheel stands further in.
    private const double MostAboutHub_rad = -6 * Degree;

    private const double First_rad = 0.25 * Degree, Close_rad = 0.005 * Degree;

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
        (double tooLittle, double? enough) = (question.Camber_rad, null);
        for (double camber = question.Camber_rad - First_rad; enough is null && tooLittle > most; camber -= First_rad)
        {
            double tried = Math.Max(camber, most);
            if (Clear(At(tried, Density.Live))) enough = tried;
            else tooLittle = tried;
        }

        if (enough is null) return new(null, most, At(most, question.Density));
        while (tooLittle - enough.Value > Close_rad)
        {
            double middle = (tooLittle + enough.Value) / 2;
            if (Clear(At(middle, Density.Live))) enough = middle;
            else tooLittle = middle;
        }

        // Fewer places were looked at on the way; the last word is the full sweep's.
        PairGap[] gaps = At(enough.Value, question.Density);
        for (; !Clear(gaps) && enough > most; gaps = At(enough.Value, question.Density)) enough = Math.Max(enough.Value - Close_rad, most);
        return new(Clear(gaps) ? enough : null, most, gaps);

        PairGap[] At(double camber, Density density) => ClearanceStudy.Pairs(corner, question with { Camber_rad = camber, Density = density }) ?? [];
    }

    private static bool Clear(IReadOnlyList<PairGap> pairs) => pairs.Count > 0 && pairs.All(pair => !pair.Pair.IsOfWheel || pair.Holds);
}
