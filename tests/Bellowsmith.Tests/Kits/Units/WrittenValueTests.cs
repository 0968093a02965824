using Bellowsmith.Kits;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Tests.Kits.Units;

public sealed class WrittenValueTests
{
    [Theory]
    [InlineData("12.4", "mm", 12.4)]
    [InlineData("12,4", null, 12.4)]
    [InlineData("12.4 mm", "mm", 12.4)]
    [InlineData("0.5 in", "mm", 12.7)]
    [InlineData("-3 holes", "holes", -3)]
    [InlineData("20 °C", "degF", 68)]
    [InlineData("100 psi", "bar", 6.894757293168361)]
    public void In_AnyUnit_IsTheFiles(string text, string? unit, double number) =>
        Assert.Equal(number, WrittenValue.Read(text)!.Value.In(unit, "f.csv", "--lower"), 1e-12 * Math.Abs(number));

    [Theory]
    [InlineData("")]
    [InlineData("mm")]
    [InlineData("1 234")]
    [InlineData("1.2.3")]
    [InlineData("1e999")]
    public void Read_NoNumber_IsNothing(string text) => Assert.Null(WrittenValue.Read(text));

    [Theory]
    [InlineData("1 N", "mm")]
    [InlineData("1 mm", null)]
    [InlineData("1 mm", "holes")]
    public void In_OtherDimension_IsAFault(string text, string? unit) => Assert.Equal(
        ("--lower", text),
        Assert.Throws<FaultsException>(() => WrittenValue.Read(text)!.Value.In(unit, "f.csv", "--lower")).Faults.Select(f => (f.Where, f.Found)).Single());
}
