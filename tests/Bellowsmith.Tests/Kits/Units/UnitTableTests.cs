using Bellowsmith.Kits.Units;
using UnitsNet;

namespace Bellowsmith.Tests.Kits.Units;

public sealed class UnitTableTests
{
    // Its ForcePerLength rounds lbf/in and kgf/mm to nine digits, so these two are made of force and length.
    private static readonly Dictionary<(Dimension, string), Func<double, double>> _reference = new()
    {
        [(Dimension.Length, "mm")] = n => Length.FromMillimeters(n).Meters,
        [(Dimension.Length, "cm")] = n => Length.FromCentimeters(n).Meters,
        [(Dimension.Length, "m")] = n => Length.FromMeters(n).Meters,
        [(Dimension.Length, "in")] = n => Length.FromInches(n).Meters,
        [(Dimension.Length, "ft")] = n => Length.FromFeet(n).Meters,
        [(Dimension.Area, "mm2")] = n => Area.FromSquareMillimeters(n).SquareMeters,
        [(Dimension.Area, "cm2")] = n => Area.FromSquareCentimeters(n).SquareMeters,
        [(Dimension.Area, "m2")] = n => Area.FromSquareMeters(n).SquareMeters,
        [(Dimension.Area, "in2")] = n => Area.FromSquareInches(n).SquareMeters,
        [(Dimension.Volume, "cm3")] = n => Volume.FromCubicCentimeters(n).CubicMeters,
        [(Dimension.Volume, "mL")] = n => Volume.FromMilliliters(n).CubicMeters,
        [(Dimension.Volume, "L")] = n => Volume.FromLiters(n).CubicMeters,
        [(Dimension.Volume, "m3")] = n => Volume.FromCubicMeters(n).CubicMeters,
        [(Dimension.Volume, "in3")] = n => Volume.FromCubicInches(n).CubicMeters,
        [(Dimension.Force, "N")] = n => Force.FromNewtons(n).Newtons,
        [(Dimension.Force, "kN")] = n => Force.FromKilonewtons(n).Newtons,
        [(Dimension.Force, "lbf")] = n => Force.FromPoundsForce(n).Newtons,
        [(Dimension.Force, "kgf")] = n => Force.FromKilogramsForce(n).Newtons,
        [(Dimension.Mass, "g")] = n => Mass.FromGrams(n).Kilograms,
        [(Dimension.Mass, "kg")] = n => Mass.FromKilograms(n).Kilograms,
        [(Dimension.Mass, "lb")] = n => Mass.FromPounds(n).Kilograms,
        [(Dimension.GaugePressure, "Pa")] = n => Pressure.FromPascals(n).Pascals,
        [(Dimension.GaugePressure, "kPa")] = n => Pressure.FromKilopascals(n).Pascals,
        [(Dimension.GaugePressure, "MPa")] = n => Pressure.FromMegapascals(n).Pascals,
        [(Dimension.GaugePressure, "bar")] = n => Pressure.FromBars(n).Pascals,
        [(Dimension.GaugePressure, "psi")] = n => Pressure.FromPoundsForcePerSquareInch(n).Pascals,
        [(Dimension.Rate, "N/mm")] = n => ForcePerLength.FromNewtonsPerMillimeter(n).NewtonsPerMeter,
        [(Dimension.Rate, "N/m")] = n => ForcePerLength.FromNewtonsPerMeter(n).NewtonsPerMeter,
        [(Dimension.Rate, "lbf/in")] = n => Force.FromPoundsForce(n).Newtons / Length.FromInches(1).Meters,
        [(Dimension.Rate, "kgf/mm")] = n => Force.FromKilogramsForce(n).Newtons / Length.FromMillimeters(1).Meters,
        [(Dimension.Damping, "N*s/m")] = n => Force.FromNewtons(n).Newtons / Speed.FromMetersPerSecond(1).MetersPerSecond,
        [(Dimension.Damping, "lbf*s/in")] = n => Force.FromPoundsForce(n).Newtons / Speed.FromInchesPerSecond(1).MetersPerSecond,
        [(Dimension.Frequency, "Hz")] = n => Frequency.FromHertz(n).Hertz,
        [(Dimension.Frequency, "cpm")] = n => Frequency.FromCyclesPerMinute(n).Hertz,
        [(Dimension.Speed, "m/s")] = n => Speed.FromMetersPerSecond(n).MetersPerSecond,
        [(Dimension.Speed, "mm/s")] = n => Speed.FromMillimetersPerSecond(n).MetersPerSecond,
        [(Dimension.Speed, "in/s")] = n => Speed.FromInchesPerSecond(n).MetersPerSecond,
        [(Dimension.Speed, "km/h")] = n => Speed.FromKilometersPerHour(n).MetersPerSecond,
        [(Dimension.Speed, "mph")] = n => Speed.FromMilesPerHour(n).MetersPerSecond,
        [(Dimension.Time, "s")] = n => Duration.FromSeconds(n).Seconds,
        [(Dimension.Time, "min")] = n => Duration.FromMinutes(n).Seconds,
        [(Dimension.Time, "h")] = n => Duration.FromHours(n).Seconds,
        [(Dimension.Temperature, "degC")] = n => Temperature.FromDegreesCelsius(n).Kelvins,
        [(Dimension.Temperature, "degF")] = n => Temperature.FromDegreesFahrenheit(n).Kelvins,
        [(Dimension.Temperature, "K")] = n => Temperature.FromKelvins(n).Kelvins,
        [(Dimension.Angle, "deg")] = n => Angle.FromDegrees(n).Radians,
        [(Dimension.Angle, "rad")] = n => Angle.FromRadians(n).Radians,
    };

    public static TheoryData<Dimension, string> EveryUnit() =>
        [.. Enum.GetValues<Dimension>().SelectMany(dimension => UnitTable.Of(dimension).Select(unit => (dimension, unit.Name)))];

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void ToSi_EveryUnit_AgreesWithUnitsNet(Dimension dimension, string name)
    {
        var reference = _reference[(dimension is Dimension.AbsolutePressure or Dimension.Stress ? Dimension.GaugePressure : dimension, name)];
        var unit = UnitTable.Find(dimension, name)!;
        foreach (var number in new[] { 1, -37.5, 1234.5 })
        {
            var expected = reference(number);
            Assert.Equal(expected, unit.ToSi(number), Math.Abs(expected) * 1e-12);
            Assert.Equal(number, unit.FromSi(expected), Math.Abs(number) * 1e-11);
        }
    }

    [Fact]
    public void Of_EveryDimension_HasTheContractsUnitsAndNoOthers()
    {
        var names = Enum.GetValues<Dimension>().SelectMany(UnitTable.Of).Select(unit => unit.Name).Distinct();
        Assert.Equal(
            "mm cm m in ft mm2 cm2 m2 in2 cm3 mL L m3 in3 N kN lbf kgf g kg lb Pa kPa MPa bar psi N/mm N/m lbf/in kgf/mm "
            + "N*s/m lbf*s/in Hz cpm m/s mm/s in/s km/h mph s min h degC degF K deg rad",
            string.Join(' ', names));
    }

    [Theory]
    [InlineData(Dimension.Area, "mm²", "mm2")]
    [InlineData(Dimension.Area, "cm^2", "cm2")]
    [InlineData(Dimension.Volume, "cm³", "cm3")]
    [InlineData(Dimension.Damping, "N·s/m", "N*s/m")]
    [InlineData(Dimension.Temperature, "°C", "degC")]
    [InlineData(Dimension.Angle, "°", "deg")]
    public void Find_UsualSymbol_GivesTheUnit(Dimension dimension, string symbol, string name) =>
        Assert.Equal(name, UnitTable.Find(dimension, symbol)?.Name);

    [Theory]
    [InlineData(2.413e6, Dimension.GaugePressure, "bar", "24.13 bar")]
    [InlineData(0.08, Dimension.Length, "mm", "80 mm")]
    [InlineData(85812.16, Dimension.Rate, "lbf/in", "490 lbf/in")]
    [InlineData(123456.0, Dimension.GaugePressure, "Pa", "123456 Pa")]
    [InlineData(0, Dimension.Force, "N", "0 N")]
    [InlineData(-0.0012346, Dimension.Length, "m", "-0.001235 m")]
    [InlineData(293.15, Dimension.Temperature, "degC", "20 degC")]
    public void Write_SiValue_KeepsSensibleDigits(double si, Dimension dimension, string unit, string expected) =>
        Assert.Equal(expected, UnitTable.Find(dimension, unit)!.Write(si));
}
