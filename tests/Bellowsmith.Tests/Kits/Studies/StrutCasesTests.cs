using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies;

public sealed class StrutCasesTests
{
    private static readonly CharacteristicSpring _data = new([.. Enumerable.Range(0, 6).Select(k => 0.06 + 0.01 * k)
        .Select(h => new CharacteristicRow(h, SampleStrut.Area_m2(h), SampleStrut.Volume_m3(h)))]);

    private static readonly AirSpringPart _spring = new("sample", "sample", 0.06, 0.11, 8e5, null, null, _data, "sample.csv");

    [Fact] // corners 380 and 400 kg, 40 kg unsprung: 340 and 360, mean 350 kg
    public void Of_ACar_TakesTheMeanOfTheReadingsLessUnsprungMass()
    {
        var strut = Assert.Single(StrutCases.Of(Kit(Design(_spring)), new(), _ => { }));

        Assert.Equal((340, 360), strut.Sprung);
        Assert.Equal(350 * 9.80665, strut.WheelLoad_N, 1e-9);
        Assert.Equal(350 * 9.80665 / 0.8, strut.StrutForce_N, 1e-9);
        Assert.Equal(101_325, strut.Ambient_Pa, 1e-9);
        Assert.Equal("empty", strut.Load);
        Assert.Equal((1.38, ExponentSource.InServiceDefault), (strut.Exponent, strut.ExponentSource));
    }

    [Fact]
    public void Of_NamedLoad_TakesIt()
    {
        Assert.Equal(400, StrutCases.Of(Kit(Design(_spring)), new(Load: "full"), _ => { })[0].SprungMass_kg);
        Assert.Equal(400, StrutCases.Of(Kit(Design(_spring) with { Load = "full" }), new(), _ => { })[0].SprungMass_kg);
    }

    [Theory]
    [InlineData(80_000.0, null, null, 80_000)]
    [InlineData(null, 90_000.0, null, 90_000)]
    [InlineData(null, null, 1000.0, 89_874.6)] // [US Standard Atmosphere 1976]
    public void Of_Ambient_IsTheCallersThenTheKitsThenTheAltitudes(double? asked, double? ambient, double? altitude, double expected_Pa) =>
        Assert.Equal(expected_Pa, StrutCases.Of(
            Kit(Design(_spring)) with { Ambient_Pa = ambient, Altitude_m = altitude }, new(asked), _ => { })[0].Ambient_Pa, 0.1);

    [Fact]
    public void Of_ExponentInTheDocument_GoesFirst()
    {
        var strut = StrutCases.Of(Kit(Design(_spring with { Exponent = 1.3 })), new(), _ => { })[0];

        Assert.Equal((1.3, ExponentSource.Document), (strut.Exponent, strut.ExponentSource));
    }

    [Fact]
    public void Of_FastRows_AreReadAtTheSpringsOwnTestAmbient() // n = 1.32 at 84 kPa
    {
        var known = Tests.Physics.KnownSpring.Single;
        List<SpringRow> rows = known.Rows([2e5, 3.5e5, 5e5], 25);
        var kept = (3e5 + 84_000) * Math.Pow(known.Volume_m3(0.075, 3e5), 1.32);
        rows.AddRange(Enumerable.Range(0, 20).Select(k => 0.075 - 0.0015 * k).Select(h => new SpringRow(
            h, kept / Math.Pow(known.Volume_m3(h, 3e5), 1.32) - 84_000, 0, Mode: AirMode.SealedFast)));
        AirSpringPart part = new("s", "s", 0.04, 0.075, 8e5, null, null, new MeasuredSpring(rows), "rows.csv", TestAmbient_Pa: 84_000);

        var strut = StrutCases.Of(Kit(Design(part)), new(), _ => { })[0];

        Assert.Equal(ExponentSource.SealedFastRows, strut.ExponentSource);
        Assert.Equal(1.32, strut.Exponent, 1e-3);
    }

    [Fact]
    public void Of_EverythingLacking_NamesItAllAtOnce()
    {
        var design = Design(new LinearSpringPart(40_000)) with { Target = null };
        var kit = Kit(design) with { Rear = design with { Load = "holiday" } };

        var faults = Assert.Throws<FaultsException>(() => StrutCases.Of(kit, new(), InstalledHeightStudy.Needs)).Faults;

        Assert.Equal(
            ["struts.front.spring", "struts.front.target", "struts.rear.load", "struts.rear.spring", "struts.rear.target"],
            faults.Select(f => f.Where).Order(StringComparer.Ordinal));
        Assert.All(faults, f => Assert.NotEmpty(f.Fix));
    }

    [Fact]
    public void Of_TravelWithoutDamperLengths_NamesWhatItLacks()
    {
        var faults = Assert.Throws<FaultsException>(() => StrutCases.Of(
            Kit(Design(_spring) with { Target = null }), new(), TravelStudy.Needs)).Faults;

        Assert.Equal(["struts.front.damper", "struts.front.springToDamper", "struts.front.driveHeight"], faults.Select(f => f.Where));
    }

    [Fact]
    public void Of_UnsprungMassAboveTheReading_IsAFault()
    {
        var kit = Kit(Design(_spring));

        var faults = Assert.Throws<FaultsException>(() => StrutCases.Of(
            kit with { Car = kit.Car with { Front = kit.Car.Front! with { UnsprungMass_kg = 390 } } }, new(), _ => { })).Faults;

        Assert.Equal("struts.front.load", Assert.Single(faults).Where);
    }

    [Fact]
    public void Of_DataOutsideTheHeightRange_IsAFault() => Assert.Equal("struts.front.spring", Assert.Single(
        Assert.Throws<FaultsException>(() => StrutCases.Of(
            Kit(Design(_spring with { LeastHeight_m = 0.12, GreatestHeight_m = 0.15 })), new(), _ => { })).Faults).Where);

    private static StrutDesign Design(SpringPart spring) => new(
        spring, new LinearDamperPart(1500), SampleStrut.SpringRate(100_000), null, null, null, null, null, null, null, null, null, null, new TravelLimits());

    private static Kit Kit(StrutDesign front)
    {
        Axle axle = new(40, MotionRatio.Constant(0.8), MotionRatio.Constant(0.8));
        Car car = new("sample", [new LoadCase("empty", 380, 400, 300, 300), new LoadCase("full", 430, 450, 400, 400)], axle, axle);
        return new Kit("sample", "kit.json", car, front, null);
    }
}
