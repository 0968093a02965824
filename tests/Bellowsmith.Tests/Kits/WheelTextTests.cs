using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Kits.Schemas;
using CsCheck;

namespace Bellowsmith.Tests.Kits;

public sealed class WheelTextTests
{
    private const double Inch = 0.0254;

    [Theory]
    [InlineData("18x8.5 ET35 225/40R18")]
    [InlineData("18 x 8,5J ET 35 225/40 ZR18")]
    [InlineData("18X8.5JJ et35mm 225 / 40 r 18")]
    [InlineData("  18×8.5 ET35.0 225/40R18 ")]
    [InlineData("8.5Jx18 ET35 225/40R18")]
    [InlineData("8.5J x 18 ET+35 225/40R18")]
    [InlineData("8,5Jx18H2 ET35 225/40R18")]
    [InlineData("8½Jx18 H2 ET35 225/40R18")]
    [InlineData("8.5JJx18 EH2+ ET35 225/40R18")]
    [InlineData("18x8.5JCH ET35 225/40R18")]
    [InlineData("18x8.5 ET35 225/40R18 92Y")]
    [InlineData("18x8.5 ET35 225/40ZR18 (92Y) XL")]
    [InlineData("18x8.5 ET35 225/40R18 XL 92 Y")]
    [InlineData("18x8.5 ET35 P225/40R18")]
    [InlineData("18x8.5 ET35 LT 225/40R18 112/109S")]
    public void Wheel_AsWorkshopsWriteIt_IsOne(string text) =>
        Assert.Equal(new RoadWheel(new(8.5 * Inch, 18 * Inch, 0.035), new(0.225, 0.40, 18 * Inch)), WheelText.Wheel(text));

    [Theory] // 8 in and an inch, half of it 114.3 mm; 149.3 mm to the face are 35 mm of offset
    [InlineData("18x8 BS149.3mm 225/40R18", 0.035)]
    [InlineData("18x8 BS 149,3 mm 225/40R18", 0.035)]
    [InlineData("18x8 BS5.5in 225/40R18", 0.0254)]
    [InlineData("8Jx18 BS 5.5 in 225/40R18", 0.0254)]
    [InlineData("18x8 bs5.5\" 225/40R18", 0.0254)]
    [InlineData("18x8 Bs 5.5 In 225/40R18", 0.0254)]
    [InlineData("18x8 Bs 149.3 Mm 225/40R18", 0.035)]
    [InlineData("18x8 BS 3.5 in 225/40R18", -0.0254)]
    public void Wheel_OfABackspacing_HasItsOffset(string text, double offset_m) =>
        Assert.Equal(offset_m, WheelText.Wheel(text)!.Rim.Offset_m, 1e-12);

    [Theory]
    [InlineData("15x8 ET-12 205/50R15")]
    [InlineData("15x8 ET\u221212 205/50R15")]
    public void Wheel_NegativeOffset_IsOne(string text) => Assert.Equal(-0.012, WheelText.Wheel(text)!.Rim.Offset_m);

    [Theory]
    [InlineData("", "Write it as")]
    [InlineData("18x8.5 225/40R18", "Write it as")]
    [InlineData("18x8.5 ET35 225/40R19", "The tyre is for a 19 in rim, the rim measures 18 in.")]
    [InlineData("18x8.5 ET350 225/40R18", "Check the offset: \"ET350\" is ET350, and a rim 8.5 in wide has ET-113 to ET113.")]
    [InlineData("18x9 ET-120 235/40R18", "Check the offset: \"ET-120\" is ET-120, and a rim 9 in wide has ET-119 to ET119.")]
    [InlineData("18x9 BS 6.5 mm 235/40R18", "Check the offset: \"BS 6.5 mm\" is ET-120.5, and a rim 9 in wide has ET-119 to ET119.")]
    [InlineData("18x9 BS6.5 235/40R18", "Give the backspacing its unit, such as \"BS 6.5 in\" or \"BS 165 mm\", not \"BS6.5\".")]
    [InlineData("18x9 BS 165 235/40R18", "Give the backspacing its unit, such as \"BS 6.5 in\" or \"BS 165 mm\", not \"BS 165\".")]
    [InlineData("18x9 ET1.5in 235/40R18", "Give the offset \"ET1.5in\" in mm, such as ET35.")]
    [InlineData("18x25 ET35 225/40R18", "Check the rim \"18x25\": it would be 25 in wide and 18 in across.")]
    [InlineData("8.5x18 ET35 225/40R18", "Check the rim \"8.5x18\": it would be 18 in wide and 8.5 in across. Write diameter x width, or width J x diameter.")]
    [InlineData("18x8.5 ET35 225/08R18", "Check the tyre size \"225/08R18\": 100 to 450 mm wide, aspect 15 to 100.")]
    [InlineData("wheel", "Write it as \"18x8.5 ET35 225/40R18\": \"wheel\" is no rim, such as 18x8.5 or 8.5Jx18 in inches.")]
    [InlineData("18x8.5 35 225/40R18", "Write it as \"18x8.5 ET35 225/40R18\": \"35 225/40R18\" is no offset")]
    [InlineData("18x8.5 ET35", "Write it as \"18x8.5 ET35 225/40R18\": the end is no tyre size, such as 225/40R18.")]
    [InlineData("18x8.5 ET35 225/40R18 soft", "Write it as \"18x8.5 ET35 225/40R18\": \"soft\" is no load index and speed symbol, such as 92Y, nor XL.")]
    public void Wheel_WhatIsNone_SaysHowToMendIt(string text, string fix)
    {
        Assert.Null(WheelText.Wheel(text));
        Assert.StartsWith(fix, WheelText.WheelFix(text), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("230 mm on 8 in", 0.230, 0.2032)]
    [InlineData("9.06 in on 203,2 mm", 0.230124, 0.2032)]
    public void Section_OnItsRim_IsBoth(string text, double section_m, double rim_m)
    {
        (double section, double rim) = WheelText.Section(text)!.Value;

        Assert.Equal(section_m, section, 1e-12);
        Assert.Equal(rim_m, rim, 1e-12);
    }

    [Theory]
    [InlineData("230 mm")]
    [InlineData("230 on 8 in")]
    [InlineData("230 mm on 8 in on 9 in")]
    [InlineData("23 mm on 8 in")]
    [InlineData("230 mm on 8 mm")]
    public void Section_WhatIsNone_IsNone(string text) => Assert.Null(WheelText.Section(text));

    [Theory]
    [InlineData("\"wheel\": \"18x8.5 ET35\"", "axles.front.wheel")]
    [InlineData("\"wheel\": 18", "axles.front.wheel")]
    [InlineData("\"wheel\": \"18x8.5 ET35 225/40R17\"", "axles.front.wheel")]
    [InlineData("\"wheel\": \"18x8.5 ET35 225/40R18\", \"wheelSection\": \"230 mm\"", "axles.front.wheelSection")]
    [InlineData("\"wheelSection\": \"230 mm on 8 in\"", "axles.front.wheelSection")]
    public void Car_AFaultyWheel_NamesThePlace(string fields, string where)
    {
        using SampleFolder folder = new();
        folder.Write("car.json", SampleFolder.Car.Replace("\"tyreRate\": \"220 N/mm\"", fields, StringComparison.Ordinal));

        Assert.Equal(where, Assert.Single(Assert.Throws<FaultsException>(() => CarReader.Read(folder.PathOf("car.json"))).Faults).Where);
    }

    [Fact]
    public void Car_WheelAndSection_AreTheAxles()
    {
        using SampleFolder folder = new();
        folder.Write("car.json", SampleFolder.Car.Replace("\"tyreRate\": \"220 N/mm\"", "\"wheel\": \"18x8.5 ET35 225/40R18\", \"wheelSection\": \"230 mm on 8 in\"", StringComparison.Ordinal));

        RoadWheel wheel = CarReader.Read(folder.PathOf("car.json")).Front!.Wheel!;

        Assert.Equal(235.08, wheel.Section_m * 1e3, 1e-9);
        Assert.Equal(0, wheel.SectionSpread_m);
    }

    [Fact]
    [Trait("Kind", "Fuzz")]
    public void Wheel_OfAnyWheelWritten_IsThatWheel() =>
        Gen.Select(Gen.Int[13, 22], Gen.Int[20, 52], Gen.Int[-100, 100], Gen.Int[125, 395], Gen.Int[20, 80]).Sample((diameter, quarters, share, section, aspect) =>
        {
            double offset = Math.Round(share / 100.0 * quarters / 8.0 * 254); // tenths of a mm, the mounting face between the flanges
            RoadWheel wheel = new(new(quarters / 4.0 * Inch, diameter * Inch, offset / 10 / 1000), new(section / 1000.0, aspect / 100.0, diameter * Inch));
            Assert.Equal(wheel, WheelText.Wheel(WheelText.Of(wheel)));
        }, iter: 2000);

    [Fact]
    [Trait("Kind", "Fuzz")]
    public void Wheel_AnyText_NeverThrows() =>
        Gen.Char["0123456789.,xX×ETBSJRZH+PL()in\"/ -−½m"].Array[0, 24].Select(chars => new string(chars)).Sample(text =>
        {
            if (WheelText.Wheel(text) is { } wheel) Assert.InRange(wheel.FreeRadius_m, wheel.Rim.Diameter_m / 2, 1);
            else Assert.NotEmpty(WheelText.WheelFix(text));
            _ = WheelText.Section(text);
        }, iter: 20_000);
}
