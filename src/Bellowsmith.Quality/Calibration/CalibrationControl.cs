using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Calibration;

public enum ControlVerdict
{
    InControl,

    /// <summary>A check value lies beyond a limit.</summary>
    OutOfControl,

    /// <summary>None lies beyond, but they move with time.</summary>
    Drifting,

    NotJudged,
}

/// <summary>One check standard read once.</summary>
/// <param name="Day">When, in days or any other steady count.</param>
/// <param name="Reference">What is true of it.</param>
/// <param name="Value">What the calibrated instrument makes of it less the reference, in the reference's unit.</param>
/// <param name="Beyond">Whether that lies beyond a limit.</param>
/// <param name="Outside">Whether the reference lies outside the calibration, where the curve is only continued.</param>
public readonly record struct CheckValue(double Day, double Reference, double Value, bool Beyond, bool Outside);

/// <summary>
/// Does a calibration still hold? Check standards are read on later days through its inverse; what they miss their references
/// by stays within <c>±t(1 − α/2m)·s/|slope|</c>, m standards a day, s and its degrees those of the calibration
/// [NIST Handbook 2012, 2.3.7; the form of the limits from memory], and does not move with time. Of a quadratic the slope is the least within its range.
/// </summary>
/// <param name="Checks">In the order given.</param>
/// <param name="Limit">Half-width of the limits; null where the calibration left no degrees of freedom.</param>
/// <param name="Deviation">Standard deviation of the check values about their mean.</param>
/// <param name="Mean">Mean of the check values.</param>
/// <param name="DriftPerDay">Slope of the check values over the days; null where it cannot be told.</param>
/// <param name="DriftT">The slope over its standard error.</param>
/// <param name="DriftDegrees">Degrees of freedom of that.</param>
/// <param name="DriftP">Probability of a slope so far from zero where nothing drifts.</param>
/// <param name="Verdict">Of both together.</param>
public sealed record CalibrationControl(
    IReadOnlyList<CheckValue> Checks, double? Limit, double Deviation, double Mean,
    double? DriftPerDay, double? DriftT, int DriftDegrees, double? DriftP, ControlVerdict Verdict)
{
    /// <summary>Shared by the check standards of a day; that of the drift stands beside it.</summary>
    public const double Significance = 0.05;

    /// <summary>From fewer days than this nothing is said; common practice.</summary>
    public const int FewestDays = 3;

    /// <param name="curve">The calibration.</param>
    /// <param name="days">When each check was read.</param>
    /// <param name="references">What is true of each.</param>
    /// <param name="readings">What the instrument read.</param>
    public static CalibrationControl Of(CalibrationCurve curve, double[] days, double[] references, double[] readings)
    {
        PolynomialFit fit = curve.Fit;
        double[] values = [.. readings.Zip(references, (reading, reference) => InverseReading.Roots(fit, reading, reference).Value - reference)];
        int standards = references.Distinct().Count();
        double slope = Math.Min(Math.Abs(fit.SlopeAt(curve.Least)), Math.Abs(fit.SlopeAt(curve.Greatest)));
        double? limit = fit.ResidualDeviation is { } s && slope > 0
            ? Quantiles.StudentT(1 - Significance / (2 * standards), fit.Degrees) * s / slope : null;
        CheckValue[] checks = [.. values.Select((value, i) => new CheckValue(
            days[i], references[i], value, Math.Abs(value) > limit, references[i] < curve.Least || references[i] > curve.Greatest))];
        (double Slope, double T, int Degrees, double P)? drift = Drift(days, values);
        ControlVerdict verdict = days.Distinct().Count() < FewestDays || limit is null ? ControlVerdict.NotJudged
            : checks.Any(check => check.Beyond) ? ControlVerdict.OutOfControl
            : drift?.P < Significance ? ControlVerdict.Drifting : ControlVerdict.InControl;
        return new(checks, limit, Sample.StandardDeviation(values), Means.Of(values),
            drift?.Slope, drift?.T, drift?.Degrees ?? 0, drift?.P, verdict);
    }

    private static (double Slope, double T, int Degrees, double P)? Drift(double[] days, double[] values)
    {
        double first = days.Min();
        if (PolynomialFit.Of([.. days.Select(day => day - first)], values, 1) is not { } line || line.StandardError(1) is not { } error || error == 0) return null;
        double t = line.Coefficients[1] / error;
        return (line.Coefficients[1], t, line.Degrees, AnovaRow.UpperTail(t * t, 1, line.Degrees));
    }
}
