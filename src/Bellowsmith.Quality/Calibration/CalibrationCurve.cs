using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Calibration;

/// <summary>Why a curve's degree was taken.</summary>
public enum CurveChoice
{
    /// <summary>Asked for.</summary>
    Given,

    /// <summary>Straight: it misses the level means by no more than repeats explain.</summary>
    LineFitsRepeats,

    /// <summary>Quadratic: the line misses by more than repeats explain.</summary>
    LineMissesRepeats,

    /// <summary>Quadratic, and even that misses by more than repeats explain.</summary>
    BothMissRepeats,

    /// <summary>Straight: there are no repeats to judge by, and the curvature is not shown.</summary>
    CurvatureNotShown,

    /// <summary>Quadratic: there are no repeats to judge by, but the curvature is shown.</summary>
    CurvatureShown,

    /// <summary>Straight: there are too few levels for anything else.</summary>
    TooFewLevels,
}

/// <summary>
/// What an instrument reads against what is true: reading = f(reference), straight or quadratic, and its inverse
/// [NIST Handbook 2012, 2.3.6 and 4.6]. Holds within the references it was calibrated at and nowhere else.
/// </summary>
/// <param name="Fit">The curve.</param>
/// <param name="Choice">Why it has its degree.</param>
/// <param name="LineMisfit">Lack of fit of the straight line; null where it could not be tested.</param>
/// <param name="QuadraticMisfit">Lack of fit of the quadratic; null where it could not be tested.</param>
/// <param name="Least">Least reference.</param>
/// <param name="Greatest">Greatest reference.</param>
public sealed record CalibrationCurve(
    PolynomialFit Fit, CurveChoice Choice, LackOfFit? LineMisfit, LackOfFit? QuadraticMisfit, double Least, double Greatest)
{
    /// <summary>Level of the tests that choose the degree.</summary>
    public const double Significance = 0.05;

    public int Degree => Fit.Coefficients.Count - 1;

    /// <summary>Null where there are fewer different references than the curve has coefficients.</summary>
    /// <param name="references">What is true, finite.</param>
    /// <param name="readings">What the instrument read, finite.</param>
    /// <param name="degree">1 or 2; null chooses.</param>
    public static CalibrationCurve? Of(double[] references, double[] readings, int? degree = null)
    {
        PolynomialFit? line = PolynomialFit.Of(references, readings, 1), quadratic = PolynomialFit.Of(references, readings, 2);
        LackOfFit? lineMisfit = Misfit(line), quadraticMisfit = Misfit(quadratic);
        if (line is null) return null;
        CurveChoice choice = degree is not null ? CurveChoice.Given : Choose(quadratic, lineMisfit, quadraticMisfit, line.ResidualSquares <= Means.RoundingSquares(readings));
        bool bent = degree is { } given ? given == 2
            : choice is CurveChoice.LineMissesRepeats or CurveChoice.BothMissRepeats or CurveChoice.CurvatureShown;
        return (bent ? quadratic : line) is { } fit
            ? new(fit, choice, lineMisfit, quadraticMisfit, references.Min(), references.Max()) : null;

        LackOfFit? Misfit(PolynomialFit? fit) => fit is null ? null : LackOfFit.Of(fit, references, readings);
    }

    private static CurveChoice Choose(PolynomialFit? quadratic, LackOfFit? line, LackOfFit? bent, bool lineIsExact)
    {
        if (quadratic is null) return CurveChoice.TooFewLevels;
        if (line is not null)
            return !(line.Misfit.P < Significance) ? CurveChoice.LineFitsRepeats
                : bent?.Misfit.P < Significance ? CurveChoice.BothMissRepeats : CurveChoice.LineMissesRepeats;
        if (lineIsExact || quadratic.StandardError(2) is not { } error) return CurveChoice.CurvatureNotShown;
        double critical = Quantiles.StudentT(1 - Significance / 2, quadratic.Degrees);
        return Math.Abs(quadratic.Coefficients[2]) > critical * error ? CurveChoice.CurvatureShown : CurveChoice.CurvatureNotShown;
    }
}
