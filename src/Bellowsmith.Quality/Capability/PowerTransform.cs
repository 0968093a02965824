using Bellowsmith.Quality.Numerics;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Capability;

/// <summary>
/// The power that makes skewed positive readings most nearly normal [Box Cox 1964]: <c>y = ((x/g)^λ − 1)/λ</c>, ln(x/g) at 0, with g
/// the geometric mean; λ by maximum likelihood, <c>−(n/2)·ln(Σ(y − ȳ)²/n)</c>, with its 95 % likelihood-ratio interval. Sought from
/// −5 to 5: a λ beyond that says the readings stand too far from zero for a power to bend them.
/// </summary>
public sealed class PowerTransform
{
    private const double Least = -5, Greatest = 5;
    private static readonly double _drop = ChiSquared.InvCDF(1, 0.95) / 2;

    private readonly double _geometricMean;

    private PowerTransform(double power, double low, double high, double geometricMean) =>
        (Power, Low, High, _geometricMean) = (power, low, high, geometricMean);

    /// <summary>λ.</summary>
    public double Power { get; }

    public double Low { get; }

    public double High { get; }

    /// <summary>Null where a reading is not positive, or where no λ within ±5 is the most likely.</summary>
    public static PowerTransform? Of(ReadOnlySpan<double> values)
    {
        double[] logs = new double[values.Length];
        for (int i = 0; i < logs.Length; i++)
        {
            if (!(values[i] > 0)) return null;
            logs[i] = Math.Log(values[i]);
        }

        double mean = Sample.Mean(logs);
        for (int i = 0; i < logs.Length; i++) logs[i] -= mean;
        double power = MostLikely(logs);
        double drop = Likelihood(logs, power) - _drop;
        if (Beyond(Least) > 0 || Beyond(Greatest) > 0) return null;
        return new(power, BracketedRoot.Find(Beyond, Least, power), BracketedRoot.Find(Beyond, power, Greatest), Math.Exp(mean));

        double Beyond(double at) => Likelihood(logs, at) - drop;
    }

    /// <summary>The value on the bent scale; it rises with the reading. <paramref name="value"/> is greater than nothing.</summary>
    public double Apply(double value) => Bend(Math.Log(value / _geometricMean), Power);

    // The best of a coarse row, then the golden section about it.
    private static double MostLikely(double[] logs)
    {
        double best = Least, likelihood = double.NegativeInfinity;
        for (double at = Least; at <= Greatest; at++)
            if (Likelihood(logs, at) is var next && next > likelihood) (best, likelihood) = (at, next);
        double low = best - 1, high = best + 1;
        while (high - low > 1e-8)
        {
            double first = high - (Constants.GoldenRatio - 1) * (high - low), second = low + high - first;
            if (Likelihood(logs, first) > Likelihood(logs, second)) high = second;
            else low = first;
        }

        return (low + high) / 2;
    }

    // Bent readings lie about zero, so one pass keeps its digits.
    private static double Likelihood(double[] logs, double power)
    {
        double sum = 0, squares = 0;
        foreach (double log in logs)
        {
            double bent = Bend(log, power);
            (sum, squares) = (sum + bent, squares + bent * bent);
        }

        return -logs.Length / 2.0 * Math.Log((squares - sum * sum / logs.Length) / logs.Length);
    }

    private static double Bend(double log, double power) =>
        Math.Abs(power) < 1e-12 ? log : SpecialFunctions.Expm1(power * log) / power;
}
