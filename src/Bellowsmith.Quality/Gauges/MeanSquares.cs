using Bellowsmith.Quality.Distributions;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Gauges;

/// <summary>
/// Intervals of sums and differences of independent mean squares by the modified large-sample method: of a sum by
/// [Graybill Wang 1980], with differences by [Ting Burdick Graybill Jeyaratnam Lu 1990]. Exact for one mean square, and in
/// the limits where one of them rules; in between the coverage keeps within about two per cent of what is asked.
/// </summary>
internal static class MeanSquares
{
    /// <summary>Of <c>Σ cᵢ·MSᵢ</c>, as variance, cut at zero.</summary>
    /// <param name="terms">Coefficient of either sign, mean square, degrees of freedom.</param>
    /// <param name="confidence">Two-sided, 0.95.</param>
    public static (double Low, double High) Interval(ReadOnlySpan<(double Coefficient, AnovaRow Row)> terms, double confidence)
    {
        double tail = (1 - confidence) / 2, estimate = 0, below = 0, above = 0;
        for (int i = 0; i < terms.Length; i++)
        {
            double size = terms[i].Coefficient * terms[i].Row.MeanSquare;
            (double low, double high) = Reach(terms[i].Row.Degrees, tail);
            (double down, double up) = size < 0 ? (high, low) : (low, high);
            estimate += size;
            below += down * down * size * size;
            above += up * up * size * size;
            for (int j = 0; j < terms.Length; j++)
            {
                double product = size * -terms[j].Coefficient * terms[j].Row.MeanSquare;
                if (!(terms[i].Coefficient > 0 && terms[j].Coefficient < 0 && product > 0)) continue;
                (double crossLow, double crossHigh) = Cross(terms[i].Row.Degrees, terms[j].Row.Degrees, tail);
                below += crossLow * product;
                above += crossHigh * product;
            }
        }

        return (Math.Max(0, estimate - Math.Sqrt(Math.Max(0, below))), Math.Max(0, estimate + Math.Sqrt(Math.Max(0, above))));
    }

    // How far one mean square's own interval reaches below and above it, as shares of it.
    private static (double Low, double High) Reach(int degrees, double tail) =>
        (1 - degrees / ChiSquared.InvCDF(degrees, 1 - tail), degrees / ChiSquared.InvCDF(degrees, tail) - 1);

    // Chosen so that the interval of a difference ends at zero exactly where the F test of the two is on its edge.
    private static (double Low, double High) Cross(int degrees, int lessDegrees, double tail)
    {
        (double low, double high) = Reach(degrees, tail);
        (double lessLow, double lessHigh) = Reach(lessDegrees, tail);
        double f = Quantiles.F(1 - tail, degrees, lessDegrees), g = Quantiles.F(tail, degrees, lessDegrees);
        return (
            ((f - 1) * (f - 1) - low * low * f * f - lessHigh * lessHigh) / f,
            ((1 - g) * (1 - g) - high * high * g * g - lessLow * lessLow) / g);
    }
}
