using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Calibration;

/// <summary>What keeps a reading from being turned back into a reference, or from having an interval.</summary>
public enum InverseTrouble
{
    None,

    /// <summary>The reading is not one the calibrated references give.</summary>
    OutsideRange,

    /// <summary>The curve turns or is flat within the calibrated references: a reading has two references or none.</summary>
    NotMonotone,

    /// <summary>No degrees of freedom are left for the scatter.</summary>
    NoScatterKnown,

    /// <summary>The band is so wide beside the slope that it never leaves the reading.</summary>
    BandOpen,
}

/// <summary>
/// The reference behind a reading: where the curve meets it, and between where the two 95 % prediction bands of a single
/// reading meet it [NIST Handbook 2012, 4.5.2.1], [Fieller 1954] for the straight line.
/// </summary>
/// <param name="Reading">What the instrument read.</param>
/// <param name="Value">The reference; null where refused.</param>
/// <param name="Low">Lower end of the interval; null where there is none.</param>
/// <param name="High">Upper end.</param>
/// <param name="RejectedRoot">The other reference that the quadratic gives for the reading, outside the calibration.</param>
/// <param name="Trouble">Why something is missing.</param>
public sealed record InverseReading(
    double Reading, double? Value, double? Low, double? High, double? RejectedRoot, InverseTrouble Trouble)
{
    public const double Confidence = 0.95;

    // The interval is sought to one whole calibrated range beyond its ends, in steps no band of a usable curve hides in.
    private const int StepsPerRange = 64;

    public static InverseReading Of(CalibrationCurve curve, double reading)
    {
        PolynomialFit fit = curve.Fit;
        (double atLeast, double atGreatest) = (fit.At(curve.Least), fit.At(curve.Greatest));
        if (!(fit.SlopeAt(curve.Least) * fit.SlopeAt(curve.Greatest) > 0)) return Refused(InverseTrouble.NotMonotone);
        if (reading < Math.Min(atLeast, atGreatest) || reading > Math.Max(atLeast, atGreatest)) return Refused(InverseTrouble.OutsideRange);
        (double value, double? other) = Roots(fit, reading, near: (curve.Least + curve.Greatest) / 2);
        value = Math.Clamp(value, curve.Least, curve.Greatest);
        if (fit.ResidualDeviation is not { } deviation) return new(reading, value, null, null, other, InverseTrouble.NoScatterKnown);
        double width = Quantiles.StudentT((1 + Confidence) / 2, fit.Degrees) * deviation, range = curve.Greatest - curve.Least;
        double? low = End(curve.Least - range, -range / StepsPerRange), high = End(curve.Greatest + range, range / StepsPerRange);
        bool closed = low is not null && high is not null;
        return new(reading, value, closed ? low : null, closed ? high : null, other, closed ? InverseTrouble.None : InverseTrouble.BandOpen);

        InverseReading Refused(InverseTrouble why) => new(reading, null, null, null, null, why);

        bool Inside(double x) => Math.Abs(fit.At(x) - reading) <= width * Math.Sqrt(1 + fit.Leverage(x));

        double? End(double last, double step)
        {
            for (double x = value; Math.Abs(x - value) <= Math.Abs(last - value); x += step)
                if (!Inside(x + step)) return Edge(x, x + step, Inside);
            return null;
        }
    }

    /// <summary>Where the curve gives a reading: the solution nearer to a reference, and the other one.</summary>
    internal static (double Value, double? Other) Roots(PolynomialFit fit, double reading, double near)
    {
        double c = fit.Coefficients[0] - reading, b = fit.Coefficients[1], a = fit.Coefficients.Count > 2 ? fit.Coefficients[2] : 0;
        if (a == 0) return (-c / b, null);
        double q = -(b + Math.CopySign(Math.Sqrt(Math.Max(0, b * b - 4 * a * c)), b)) / 2;
        (double first, double second) = (c / q, q / a);
        return Math.Abs(first - near) <= Math.Abs(second - near) ? (first, second) : (second, first);
    }

    private static double Edge(double inside, double outside, Func<double, bool> isInside)
    {
        for (int halving = 0; halving < 60; halving++)
        {
            double middle = (inside + outside) / 2;
            if (isInside(middle)) inside = middle;
            else outside = middle;
        }

        return (inside + outside) / 2;
    }
}
