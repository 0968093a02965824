namespace Bellowsmith.Quality.Numerics;

/// <summary>
/// The root of a rising function by Newton's step, kept inside what is already known of its place: for one that gives its slope with its
/// value and is nearly straight, from a guess without a bracket. <see cref="BracketedRoot"/> needs no slope, but two ends and more values.
/// </summary>
internal static class RisingRoot
{
    private const int MostSteps = 200;

    /// <summary>
    /// The place where <paramref name="curve"/> (value and slope) passes zero. Brackets may be infinite: until one is known, a
    /// step is at most 1 long. Ends where the step falls below the spacing of doubles.
    /// </summary>
    public static double Find(Func<double, (double Value, double Slope)> curve, double low, double high, double start)
    {
        double x = start;
        for (int step = 0; step < MostSteps; step++)
        {
            (double value, double slope) = curve(x);
            if (value == 0) return x;
            if (value < 0) low = x;
            else high = x;
            double next = x - Math.Clamp(value / slope, -1, 1);
            if (!(next > low && next < high)) next = Between(low, high);
            if (Math.Abs(next - x) <= 2e-16 * Math.Max(1, Math.Abs(x))) return next;
            x = next;
        }

        return x;
    }

    private static double Between(double low, double high) =>
        double.IsNegativeInfinity(low) ? high - 1 : double.IsPositiveInfinity(high) ? low + 1 : (low + high) / 2;
}
