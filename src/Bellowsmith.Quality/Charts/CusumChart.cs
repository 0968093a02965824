namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Two one-sided sums of what lies further from the centre than an allowance: <c>high = max(0, high + x − centre − kσ)</c>,
/// <c>low = max(0, low + centre − kσ − x)</c>, each begun at 0 in each phase and going on after a signal; either beyond
/// <c>hσ</c> signals [NIST Handbook 2012, sec. 6.3.2.3]. The point plotted is the larger sum, the low one downwards.
/// </summary>
public static class CusumChart
{
    /// <param name="values">Single values in order.</param>
    /// <param name="allowance_sigma">k, half the shift to be found, 0 and up.</param>
    /// <param name="decision_sigma">h, above 0.</param>
    /// <param name="basis">Where centre and σ come from; estimated as for single values.</param>
    public static ControlChart Draw(double[] values, double allowance_sigma, double decision_sigma, ChartBasis basis)
    {
        double[] points = new double[values.Length], highs = new double[values.Length], lows = new double[values.Length];
        LimitStepList steps = new();
        List<ChartPhase> phases = [];
        foreach (Stretch stretch in basis.Stretches(values.Length))
        {
            ChartPhase phase = IndividualsChart.Phase(values, stretch, basis);
            phases.Add(phase);
            double allowance = allowance_sigma * phase.Sd, decision = decision_sigma * phase.Sd, high = 0, low = 0;
            for (int i = stretch.First; i < stretch.End; i++)
            {
                highs[i] = high = Math.Max(0, high + values[i] - phase.Centre - allowance);
                lows[i] = low = Math.Max(0, low + phase.Centre - allowance - values[i]);
                points[i] = high >= low ? high : -low;
            }

            steps.Add(stretch.First, new(phase.Judged ? 0 : double.NaN, -decision, decision, phase.Sd, phase.Centre), newPhase: true);
        }

        return ControlChart.Of(ChartKind.Cusum, ChartStatistic.CumulativeSum, steps.Line(points), phases, [RunRule.BeyondLimit]) with
        {
            Sums = new(highs, lows),
        };
    }
}
