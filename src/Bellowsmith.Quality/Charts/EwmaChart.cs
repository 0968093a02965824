namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Exponentially weighted average <c>E = λx + (1 − λ)E₋₁</c>, begun at the centre in each phase, within
/// <c>centre ± width·σ·√(λ/(2 − λ))</c>, or, from the start, these limits times <c>√(1 − (1 − λ)²ⁱ)</c>: it sees small lasting
/// shifts sooner than single values do [NIST Handbook 2012, sec. 6.3.2.4].
/// </summary>
public static class EwmaChart
{
    /// <param name="values">Single values in order.</param>
    /// <param name="weight">λ of the newest value, above 0 and up to 1.</param>
    /// <param name="width">Limits in standard deviations of the average, above 0.</param>
    /// <param name="fromStart">Whether limits are narrower at first, as the average's own deviation is.</param>
    /// <param name="basis">Where centre and σ come from; estimated as for single values.</param>
    public static ControlChart Draw(double[] values, double weight, double width, bool fromStart, ChartBasis basis)
    {
        double[] averages = new double[values.Length];
        LimitStepList steps = new();
        List<ChartPhase> phases = [];
        foreach (Stretch stretch in basis.Stretches(values.Length))
        {
            ChartPhase phase = IndividualsChart.Phase(values, stretch, basis);
            phases.Add(phase);
            double average = phase.Judged ? phase.Centre : Sample.Mean(values.AsSpan(stretch.First, stretch.End - stretch.First));
            double steady = phase.Sd * Math.Sqrt(weight / (2 - weight)), past = 1;
            for (int i = stretch.First; i < stretch.End; i++)
            {
                averages[i] = average += weight * (values[i] - average);
                past *= (1 - weight) * (1 - weight);
                steps.Add(i, ControlLimits.Around(phase.Centre, fromStart ? steady * Math.Sqrt(1 - past) : steady, width), i == stretch.First);
            }
        }

        return ControlChart.Of(ChartKind.Ewma, ChartStatistic.WeightedAverage, steps.Line(averages), phases, [RunRule.BeyondLimit]);
    }
}
