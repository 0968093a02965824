using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.LifeTests;

/// <summary>
/// Weibull life with a shape known from elsewhere, for few failures or none [Nelson 1985]: t^β is then exponential, so
/// <c>2·Σt^β/η^β</c> is χ² with 2r degrees of freedom where the last failure ends the test, and the low side keeps its confidence with
/// 2r + 2 where the clock does. The lower bound takes 2r + 2 and holds for both; exact without failures:
/// <c>η^β = Σt^β/(−ln(1−C))</c>. All of it stands on the shape given.
/// </summary>
public sealed class Weibayes
{
    private readonly CensoredLives _lives;
    private readonly double _powers;

    public Weibayes(ReadOnlySpan<double> lives, ReadOnlySpan<bool> failed, double shape)
    {
        if (!(shape > 0)) throw new ArgumentOutOfRangeException(nameof(shape), shape, "A shape is greater than nothing.");
        (_lives, Shape) = (new(lives, failed), shape);
        _powers = _lives.Powers(shape).Sum;
    }

    public double Shape { get; }

    public int Failures => _lives.Failures;

    public int Survivors => _lives.Count - _lives.Failures;

    /// <summary>η with its two-sided interval; without failures only the low side exists.</summary>
    public LifeInterval ScaleInterval(double confidence)
    {
        double miss = (1 - confidence) / 2;
        return new(
            Failures == 0 ? null : Scale(Failures),
            LeastScale(1 - miss),
            Failures == 0 ? null : Scale(ChiSquared.InvCDF(2 * Failures, miss) / 2));
    }

    /// <summary>The life by which a share has failed, with its two-sided interval.</summary>
    public LifeInterval LifeInterval(double failedShare, double confidence)
    {
        LifeInterval scale = ScaleInterval(confidence);
        double ratio = Ratio(failedShare);
        return new(scale.Value * ratio, scale.Low * ratio, scale.High * ratio);
    }

    /// <summary>The life that is shown with one-sided confidence: the share has not failed before it.</summary>
    public double LifeShown(double failedShare, double confidence) => LeastScale(confidence) * Ratio(failedShare);

    private double LeastScale(double confidence) =>
        Scale(Failures == 0 ? -Math.Log(1 - confidence) : ChiSquared.InvCDF(2 * Failures + 2, confidence) / 2);

    private double Scale(double divisor) => _lives.Longest * Math.Pow(_powers / divisor, 1 / Shape);

    private double Ratio(double failedShare) => Math.Pow(-Math.Log(1 - failedShare), 1 / Shape);
}
