using Bellowsmith.Kits.Units;

namespace Bellowsmith.Tests.Kits.Units;

public sealed class LastDigitTests
{
    [Theory]
    [InlineData("1.25 L", Dimension.Volume, 1e-5)]
    [InlineData("1,250 L", Dimension.Volume, 1e-6)]
    [InlineData("150 psi", Dimension.GaugePressure, 6894.757293168361)]
    [InlineData("147.1 psi", Dimension.GaugePressure, 689.4757293168361)]
    [InlineData(" 24 h ", Dimension.Time, 3600)]
    [InlineData("1.2e3 s", Dimension.Time, 100)]
    [InlineData("12E-1 s", Dimension.Time, 0.1)]
    [InlineData("21.5 degC", Dimension.Temperature, 0.1)]
    [InlineData("70 degF", Dimension.Temperature, 0.55555555555555556)]
    [InlineData("−3.50 °C", Dimension.Temperature, 0.01)]
    public void Of_AWrittenQuantity_IsOneUnitOfItsLastDigit(string text, Dimension dimension, double expected) =>
        Assert.Equal(expected, LastDigit.Of(Quantity.Read(text, dimension, out _)!.Value), expected * 1e-12);
}
