using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// How many runs it takes to show a step of a given size. With r runs of k clicks a step divided by its standard error
/// <c>s√(2/r)</c> is noncentral t with <c>(k − 1)(r − 1)</c> degrees and noncentrality size over standard error; it is shown where
/// that exceeds the simultaneous critical value of r runs. The scatter seen is taken for the true one.
/// </summary>
internal sealed class StepPower(int clicks, double deviation, double confidence)
{
    public const double Wanted = 0.9;
    public const int MostRuns = 1000;
    private readonly Dictionary<int, double> _critical = [];

    /// <summary>The least number of runs that shows such a step nine times in ten; null where it is more than a thousand.</summary>
    public int? Runs(double size)
    {
        if (!(Of(size, MostRuns) >= Wanted)) return null;
        int few = 1, enough = MostRuns;
        while (enough - few > 1)
        {
            int runs = (few + enough) / 2;
            if (Of(size, runs) >= Wanted) enough = runs;
            else few = runs;
        }

        return enough;
    }

    /// <summary>The probability that so many runs show it.</summary>
    public double Of(double size, int runs)
    {
        double degrees = (clicks - 1.0) * (runs - 1), noncentrality = Math.Abs(size) / (deviation * Math.Sqrt(2.0 / runs));
        if (!_critical.TryGetValue(runs, out double critical))
            _critical[runs] = critical = AdjacentSteps.TwoSidedQuantile(confidence, clicks, degrees);
        // Where the sizes are worlds apart the integral has nothing to find.
        return noncentrality > critical + 100 ? 1 : 1 - NoncentralT.Cdf(critical, degrees, noncentrality);
    }
}
