using Bellowsmith.Kits.Studies;

namespace Bellowsmith.Tests.Kits.Studies;

public sealed class MetTests
{
    [Theory]
    [InlineData(0.006, 0.006, true, true)]
    [InlineData(0.3 - 0.1 - 0.1, 0.1, true, true)] // 0.09999999999999998
    [InlineData(0.1 + 0.2, 0.3, true, true)] // 0.30000000000000004
    [InlineData(0.0059999995, 0.006, true, true)]
    [InlineData(0.0060000005, 0.006, true, true)]
    [InlineData(0.005999998, 0.006, false, true)]
    [InlineData(0.006000002, 0.006, true, false)]
    [InlineData(double.NegativeInfinity, 0.006, false, true)]
    [InlineData(double.NaN, 0.006, false, false)]
    public void Met_AValueBesideItsLimit_CountsTheLastDigitWritten(double value, double limit, bool atLeast, bool atMost)
    {
        Assert.Equal(atLeast, Met.AtLeast(value, limit));
        Assert.Equal(atMost, Met.AtMost(value, limit));
    }
}
