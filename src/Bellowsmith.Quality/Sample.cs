namespace Bellowsmith.Quality;

/// <summary>
/// What a row of readings says of itself: mean, standard deviation with n − 1, and lag-1 autocorrelation. Two passes with
/// compensated sums, because the one-pass sum of squares loses every digit where the readings are large beside their spread.
/// </summary>
public static class Sample
{
    /// <summary>The arithmetic mean; NaN of nothing.</summary>
    public static double Mean(ReadOnlySpan<double> values)
    {
        double mean = Sum(values, 0, 0) / values.Length;
        return mean + Sum(values, mean, 0) / values.Length;
    }

    /// <summary>Standard deviation with n − 1, same unit as the values; NaN of fewer than two.</summary>
    public static double StandardDeviation(ReadOnlySpan<double> values)
    {
        if (values.Length < 2) return double.NaN;
        double mean = Mean(values), squares = 0, rest = 0;
        foreach (double value in values)
        {
            double difference = value - mean;
            squares += difference * difference;
            rest += difference;
        }

        return Math.Sqrt((squares - rest * rest / values.Length) / (values.Length - 1));
    }

    /// <summary><c>Σ(yᵢ − ȳ)(yᵢ₊₁ − ȳ)/Σ(yᵢ − ȳ)²</c>; NaN where all values are equal.</summary>
    public static double LagOneAutocorrelation(ReadOnlySpan<double> values)
    {
        double mean = Mean(values), products = 0, squares = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double difference = values[i] - mean;
            squares += difference * difference;
            if (i > 0) products += difference * (values[i - 1] - mean);
        }

        return products / squares;
    }

    // Neumaier's compensated sum of the differences from an origin.
    private static double Sum(ReadOnlySpan<double> values, double origin, double start)
    {
        double sum = start, lost = 0;
        foreach (double value in values)
        {
            double term = value - origin, next = sum + term;
            lost += Math.Abs(sum) >= Math.Abs(term) ? sum - next + term : term - next + sum;
            sum = next;
        }

        return sum + lost;
    }
}
