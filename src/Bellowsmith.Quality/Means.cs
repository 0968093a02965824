namespace Bellowsmith.Quality;

/// <summary>
/// Sums taken from the first value, so that equal readings differ from their mean by exactly nothing and readings with a
/// large common part keep their digits.
/// </summary>
internal static class Means
{
    public static double Of(ReadOnlySpan<double> values)
    {
        double rest = 0;
        foreach (double value in values) rest += value - values[0];
        return values[0] + rest / values.Length;
    }

    /// <summary>Σ(v − mean)², in two passes.</summary>
    public static double SquaresAbout(ReadOnlySpan<double> values, double mean)
    {
        double squares = 0;
        foreach (double value in values) squares += (value - mean) * (value - mean);
        return squares;
    }

    /// <summary>Greatest less least.</summary>
    public static double Range(ReadOnlySpan<double> values)
    {
        (double least, double greatest) = (values[0], values[0]);
        foreach (double value in values) (least, greatest) = (Math.Min(least, value), Math.Max(greatest, value));
        return greatest - least;
    }

    /// <summary>
    /// What a sum of squares of so many readings can be from the rounding of their arithmetic alone: four units in the last
    /// place of the largest each. Below it, it is nothing.
    /// </summary>
    public static double RoundingSquares(ReadOnlySpan<double> values)
    {
        double largest = 0;
        foreach (double value in values) largest = Math.Max(largest, Math.Abs(value));
        double rounding = 4 * 2.2e-16 * largest;
        return values.Length * rounding * rounding;
    }
}
