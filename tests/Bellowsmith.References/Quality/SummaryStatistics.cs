using Bellowsmith.Quality;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Certified means, standard deviations and lag-1 autocorrelations of the univariate sets [NIST StRD 1998]. NumAcc3 and
/// NumAcc4 are not representable in binary: 5.6e-10 is what doubles can do there, and the naive sum of squares gives a
/// negative variance.
/// </summary>
public sealed class SummaryStatistics
{
    private static readonly double[] _mavro =
    [
        2.00180, 2.00170, 2.00180, 2.00190, 2.00180, 2.00170, 2.00150, 2.00140, 2.00150, 2.00150,
        2.00170, 2.00180, 2.00180, 2.00190, 2.00190, 2.00210, 2.00200, 2.00160, 2.00140, 2.00130,
        2.00130, 2.00150, 2.00150, 2.00160, 2.00150, 2.00140, 2.00130, 2.00140, 2.00150, 2.00140,
        2.00150, 2.00160, 2.00150, 2.00160, 2.00190, 2.00200, 2.00200, 2.00210, 2.00220, 2.00230,
        2.00240, 2.00250, 2.00270, 2.00260, 2.00260, 2.00260, 2.00270, 2.00260, 2.00250, 2.00240,
    ];

    public static TheoryData<string, double[], double, double, double, double> Sets => new()
    {
        { "NumAcc1", [10000001, 10000003, 10000002], 10000002, 1, -0.5, 0 },
        { "NumAcc2", Alternating(1.2, 1.1, 1.3), 1.2, 0.1, -0.999, 1e-13 },
        { "NumAcc3", Alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, -0.999, 1e-10 },
        { "NumAcc4", Alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, -0.999, 1e-9 },
        { "Mavro", _mavro, 2.00185600000000, 0.000429123454003053, 0.937989183438248, 1e-15 },
    };

    [Theory]
    [MemberData(nameof(Sets))]
    public void StandardDeviation_OfACertifiedSet_IsTheCertified(
        string set, double[] values, double mean, double deviation, double autocorrelation, double tolerance)
    {
        Assert.True(Math.Abs(Sample.Mean(values) - mean) <= 1e-14 * mean, set);
        Assert.True(Math.Abs(Sample.StandardDeviation(values) - deviation) <= tolerance, set);
        Assert.True(Math.Abs(Sample.LagOneAutocorrelation(values) - autocorrelation) <= 1e-8, set);
    }

    private static double[] Alternating(double first, double low, double high) =>
        [first, .. Enumerable.Range(0, 1000).Select(i => i % 2 == 0 ? low : high)];
}
