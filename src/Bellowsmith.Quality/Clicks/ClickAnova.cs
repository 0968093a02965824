using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// One line of an analysis of variance; the ratio of mean squares and its probability where it is tested against the residual,
/// null where it is not or the residual is none.
/// </summary>
public sealed record AnovaLine(double SumOfSquares, int Degrees, double? MeanSquare, double? Ratio, double? Probability)
{
    internal static AnovaLine Of(double squares, int degrees, AnovaLine? residual = null)
    {
        double? mean = degrees > 0 ? squares / degrees : null, ratio = residual?.MeanSquare > 0 ? mean / residual.MeanSquare : null;
        return new(squares, degrees, mean, ratio, ratio is { } f ? Beyond(f, degrees, residual!.Degrees) : null);
    }

    // P(F > f) by the beta's lower tail, which keeps its digits where one less the distribution function would lose them.
    private static double Beyond(double f, double numerator, double denominator) =>
        Beta.CDF(denominator / 2, numerator / 2, denominator / (denominator + numerator * f));
}

/// <summary>
/// Analysis of variance of clicks in runs as blocks. Clicks are adjusted for runs and runs for clicks; where every click was
/// measured in every run, clicks, runs and residual add up to the total.
/// </summary>
public sealed record ClickAnova(AnovaLine Clicks, AnovaLine Runs, AnovaLine Residual, AnovaLine Total);
