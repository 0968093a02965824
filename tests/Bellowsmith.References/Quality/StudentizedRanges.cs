using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.References.Quality;

/// <summary>
/// The studentized range against SciPy 1.10.1 (reference library, itself good to about 1e-11), among them the critical values of
/// the four groups of [NIST Handbook 2012, section 7.4.7.1] (printed there as 4.05), and the exact mean and deviation of the
/// range of normal values: closed forms of two and three, and six printed digits recomputed by integration. Printed factor tables
/// give D₄ = 1 + 3d₃/d₂ of three as 2.574; the exact 2.574591 rounds to 2.575.
/// </summary>
public sealed class StudentizedRanges
{
    [Theory]
    [InlineData(1, 3, 1, 0.19683858159631004)]
    [InlineData(20, 3, 1, 0.9326304847758619)]
    [InlineData(3.5, 2, 10, 0.9671702460134695)]
    [InlineData(0.5, 5, 7, 0.004159063198937789)]
    [InlineData(5.5, 20, 100, 0.9765863913202574)]
    [InlineData(6, 50, 1000, 0.9792412185955237)]
    [InlineData(6.5, 200, 30, 0.8287886729212225)]
    [InlineData(3, 10, 5, 0.42387606189253874)]
    public void Probability_IsTheComputed(double q, int groups, double degrees, double probability) =>
        Assert.Equal(probability, StudentizedRange.Cdf(q, groups, degrees), 1e-12);

    [Theory]
    [InlineData(0.95, 4, 16, 4.046093061)]
    [InlineData(0.95, 8, 32, 4.581059735)]
    [InlineData(0.95, 8, 28, 4.624789445)]
    [InlineData(0.95, 3, 1, 26.97552986950002)]
    [InlineData(0.99, 2, 10, 4.482028396473151)]
    [InlineData(0.9, 20, 60, 4.864335174111358)]
    [InlineData(0.999, 6, 12, 8.127079284434963)]
    [InlineData(0.95, 100, 50, 6.535511504301573)]
    public void Quantile_IsTheComputed(double probability, int groups, double degrees, double q) =>
        Assert.Equal(q, StudentizedRange.Quantile(probability, groups, degrees), 1e-9);

    [Theory]
    [InlineData(2, 1.1283791671, 0.8525024664, 1e-10)]
    [InlineData(3, 1.6925687506, 0.888368, 1e-6)]
    [InlineData(4, 2.058751, 0.879808, 1e-6)]
    [InlineData(5, 2.325929, 0.864082, 1e-6)]
    [InlineData(6, 2.534413, 0.848040, 1e-6)]
    [InlineData(7, 2.704357, 0.833205, 1e-6)]
    [InlineData(8, 2.847201, 0.819831, 1e-6)]
    [InlineData(9, 2.970026, 0.807834, 1e-6)]
    [InlineData(10, 3.077505, 0.797051, 1e-6)]
    [InlineData(11, 3.172873, 0.787315, 1e-6)]
    [InlineData(12, 3.258455, 0.778478, 1e-6)]
    [InlineData(13, 3.335980, 0.770416, 1e-6)]
    [InlineData(14, 3.406763, 0.763023, 1e-6)]
    [InlineData(15, 3.471827, 0.756211, 1e-6)]
    [InlineData(20, 3.734950, 0.728686, 1e-6)]
    [InlineData(25, 3.930629, 0.708441, 1e-6)]
    public void Range_OfNormalValues_HasTheTabulatedMoments(int size, double mean, double deviation, double tolerance)
    {
        Assert.Equal(mean, NormalRange.Mean(size), tolerance);
        Assert.Equal(deviation, NormalRange.StandardDeviation(size), tolerance);
    }
}
