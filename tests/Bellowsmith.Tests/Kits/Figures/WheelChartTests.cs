using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Figures;

public sealed class WheelChartTests
{
    private static readonly Kit _street = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")) with { Rear = null };

    [Fact] // the slide reaches some −1.14° and +0.5°
    public void Camber_OfTheDemo_IsDashedPastTheSlide()
    {
        Chart chart = new WheelCharts(Ask(_street, -0.5 * Math.PI / 180), DisplayUnits.Metric).Camber()!;

        Assert.Equal("wheelCamber", chart.Id);
        Assert.Equal(["arch", "strut", "bellows to tower"], chart.Curves.Select(curve => curve.Label));
        Assert.Equal([6.0, 4.0, 8.0], chart.Limits.Select(limit => Math.Round(limit.Y[0], 9)));
        Assert.All(chart.Curves, curve => Assert.Equal((true, false), (double.IsNaN(curve.Y[0]), double.IsNaN(curve.Outside[0]))));
        ChartMark setting = chart.Marks.Single(mark => mark.Kind == MarkKind.Setting);
        Assert.Equal(-0.5, setting.X, 1e-9);
        int at = Array.FindIndex(chart.Curves[0].X, x => Math.Abs(x + 0.5) < 1e-9);
        Assert.Equal(chart.Curves[0].Y[at], setting.Y, 1e-6);
    }

    [Fact]
    public void Camber_InImperialUnits_IsInInches() =>
        Assert.Equal(6 / 25.4, new WheelCharts(Ask(_street), DisplayUnits.Imperial).Camber()!.Limits[0].Y[0], 1e-9);

    [Fact]
    public void Camber_WithoutPoints_IsNone() =>
        Assert.Null(new WheelCharts(Ask(_street with { Car = _street.Car with { Front = _street.Car.Front! with { Suspension = null } } }), DisplayUnits.Metric).Camber());

    private static WheelFitResult Ask(Kit kit, double camber_rad = 0)
    {
        WheelCorner corner = WheelCorner.Of(kit, new StudyConditions());
        return WheelFitStudy.Answer(corner, new(corner.MeasuredWheel, WheelText.Wheel("18x9 ET36 235/40R18")!, 0, camber_rad));
    }
}
