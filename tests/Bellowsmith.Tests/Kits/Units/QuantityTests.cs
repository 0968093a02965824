using Bellowsmith.Kits.Units;

namespace Bellowsmith.Tests.Kits.Units;

public sealed class QuantityTests
{
    [Theory]
    [InlineData("24 bar", Dimension.GaugePressure, 2.4e6)]
    [InlineData("1,5 mm", Dimension.Length, 0.0015)]
    [InlineData("1.5mm", Dimension.Length, 0.0015)]
    [InlineData("1.5\u00a0mm", Dimension.Length, 0.0015)]
    [InlineData("1.5\u202fmm ", Dimension.Length, 0.0015)]
    [InlineData("1,234 mm", Dimension.Length, 0.001234)]
    [InlineData("1.2e5 N", Dimension.Force, 120_000)]
    [InlineData("1,2E-1 N", Dimension.Force, 0.12)]
    [InlineData("-80 mm", Dimension.Length, -0.08)]
    [InlineData("−80 mm", Dimension.Length, -0.08)]
    [InlineData("+.5 in", Dimension.Length, 0.0127)]
    [InlineData("20 °C", Dimension.Temperature, 293.15)]
    [InlineData("1500 N·s/m", Dimension.Damping, 1500)]
    public void Read_SoundText_GivesSi(string text, Dimension dimension, double expected)
    {
        var quantity = Quantity.Read(text, dimension, out var misreading);
        Assert.Null(misreading);
        Assert.Equal(expected, quantity!.Value.Si);
        Assert.Equal(text, quantity.Value.Written);
    }

    [Theory]
    [InlineData("", Misreading.NoNumber)]
    [InlineData("mm", Misreading.NoNumber)]
    [InlineData("- 5 mm", Misreading.NoNumber)]
    [InlineData("NaN mm", Misreading.NoNumber)]
    [InlineData("∞ mm", Misreading.NoNumber)]
    [InlineData("1e999 mm", Misreading.NoNumber)]
    [InlineData("٣ mm", Misreading.NoNumber)]
    [InlineData("5", Misreading.NoUnit)]
    [InlineData("1.234,5 mm", Misreading.Grouped)]
    [InlineData("1,234.5 mm", Misreading.Grouped)]
    [InlineData("1 234 mm", Misreading.Grouped)]
    [InlineData("1\u00a0234 mm", Misreading.Grouped)]
    [InlineData("1'234 mm", Misreading.Grouped)]
    [InlineData("1,234,567 mm", Misreading.Grouped)]
    [InlineData("5. mm", Misreading.Grouped)]
    [InlineData("5 MM", Misreading.UnknownUnit)]
    [InlineData("5 mm mm", Misreading.UnknownUnit)]
    [InlineData("5 x", Misreading.UnknownUnit)]
    [InlineData("5 bar", Misreading.OtherDimension)]
    public void Read_UnsoundText_SaysWhy(string text, Misreading expected)
    {
        Assert.Null(Quantity.Read(text, Dimension.Length, out var misreading));
        Assert.Equal(expected, misreading);
    }
}
