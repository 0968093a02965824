using Bellowsmith.Quality.Distributions;
using MathNet.Numerics;

namespace Bellowsmith.Quality.Charts;

/// <summary>
/// The factors of control charts for normal values in subgroups of one size, exact to about 1e-9 for any size from 2 (printed
/// tables round, and all of them print 2.574 for <see cref="D4"/> of 3, which is 2.574591) [NIST Handbook 2012, sec. 6.3.2].
/// </summary>
public sealed record ChartConstants
{
    private const double Width = 3;

    private ChartConstants(int size)
    {
        Size = size;
        (RangeMean, RangeDeviation) = (NormalRange.Mean(size), NormalRange.StandardDeviation(size));
        DeviationMean = Math.Sqrt(2.0 / (size - 1)) * Math.Exp(SpecialFunctions.GammaLn(size / 2.0) - SpecialFunctions.GammaLn((size - 1) / 2.0));
        DeviationDeviation = Math.Sqrt((1 - DeviationMean) * (1 + DeviationMean));
    }

    public int Size { get; }

    /// <summary>d2: mean range over σ.</summary>
    public double RangeMean { get; }

    /// <summary>d3: standard deviation of the range over σ.</summary>
    public double RangeDeviation { get; }

    /// <summary>c4 = √(2/(n − 1))·Γ(n/2)/Γ((n − 1)/2): mean standard deviation over σ.</summary>
    public double DeviationMean { get; }

    /// <summary>√(1 − c4²): standard deviation of the standard deviation over σ.</summary>
    public double DeviationDeviation { get; }

    /// <summary>3/(d2·√n): limits of averages from the mean range.</summary>
    public double A2 => Width / (RangeMean * Math.Sqrt(Size));

    /// <summary>3/(c4·√n): limits of averages from the mean standard deviation.</summary>
    public double A3 => Width / (DeviationMean * Math.Sqrt(Size));

    /// <summary>max(0, 1 − 3·d3/d2): lower limit of ranges.</summary>
    public double D3 => Math.Max(0, 1 - Width * RangeDeviation / RangeMean);

    /// <summary>1 + 3·d3/d2: upper limit of ranges.</summary>
    public double D4 => 1 + Width * RangeDeviation / RangeMean;

    /// <summary>max(0, 1 − 3·√(1 − c4²)/c4): lower limit of standard deviations.</summary>
    public double B3 => Math.Max(0, 1 - Width * DeviationDeviation / DeviationMean);

    /// <summary>1 + 3·√(1 − c4²)/c4: upper limit of standard deviations.</summary>
    public double B4 => 1 + Width * DeviationDeviation / DeviationMean;

    /// <exception cref="ArgumentOutOfRangeException">A size under 2.</exception>
    public static ChartConstants Of(int size)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(size, 2);
        return new(size);
    }
}
