using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Damping;

/// <summary>
/// Whether a click's damping differs from its neighbours' by more than runs differ: each run's own equivalent damping at 0.1 m/s,
/// the deviation pooled over all clicks, and t limits for the two steps together (each at half the 5 %).
/// </summary>
internal static class ClickSteps
{
    private const double Together = 0.05;

    /// <summary>Empty where no click was run twice, or a neighbour has no run of its own.</summary>
    public static IReadOnlyList<ClickStep> Of(DamperFit fit, double click, params ReadOnlySpan<double?> neighbours)
    {
        Dictionary<double, double[]> runs = fit.Runs(DampingStudy.Amplitude_m_per_s).GroupBy(run => run.Click)
            .ToDictionary(of => of.Key, of => of.Select(run => run.Damping_N_s_per_m).ToArray());
        int degrees = runs.Values.Sum(of => of.Length - 1);
        if (degrees < 1 || !runs.TryGetValue(click, out double[]? here)) return [];
        double deviation = Math.Sqrt(runs.Values.Sum(of => of.Sum(value => Math.Pow(value - of.Average(), 2))) / degrees);
        List<ClickStep> steps = [];
        foreach (double? neighbour in neighbours)
        {
            if (neighbour is not { } to) continue;
            if (!runs.TryGetValue(to, out double[]? there)) return [];
            double half = Critical(degrees) * deviation * Math.Sqrt(1.0 / here.Length + 1.0 / there.Length), step = there.Average() - here.Average();
            steps.Add(new(click, to, step, step - half, step + half));
        }

        return steps;
    }

    // Student's t by halving, its probability in the finite series of whole degrees [Abramowitz Stegun 1964, eqs 26.7.3, 26.7.4].
    private static double Critical(int degrees)
    {
        double low = 0, high = 1000;
        for (int step = 0; step < 80; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = Within(middle, degrees) < 1 - Together / 2 ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static double Within(double t, int degrees)
    {
        double angle = Math.Atan(t / Math.Sqrt(degrees)), square = Math.Pow(Math.Cos(angle), 2);
        bool odd = degrees % 2 == 1;
        double term = odd ? Math.Cos(angle) : 1, sum = 0;
        for (int k = odd ? 1 : 0; k < degrees - 1; k += 2)
        {
            sum += term;
            term *= square * (k + 1) / (k + 2);
        }

        return odd ? 2 / Math.PI * (angle + Math.Sin(angle) * sum) : Math.Sin(angle) * sum;
    }
}
