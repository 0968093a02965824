using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;

namespace Bellowsmith.Tests.Kits.Figures;

public class FigureTests
{
    [Fact]
    public void Rate_AtASolution_MarksItOnTheWantedLine()
    {
        InstalledHeightResult result = InstalledHeightStudy.Answer(ExampleStruts.At(AxleEnd.Front));
        Chart chart = Charts(result).Rate(result.Recommended!.Height_m);
        ChartMark setting = chart.Marks.Single(m => m.Kind == MarkKind.Setting);
        Assert.Equal(result.TargetSpringRate_N_per_m / 1000, setting.Y, 6);
        Assert.StartsWith("this setting · ", setting.Label, StringComparison.Ordinal);
        Assert.Equal(2, chart.Marks.Count(m => m.Kind is MarkKind.Recommended or MarkKind.Solution));
        Assert.Equal(("mm", "N/mm"), (chart.X.Unit, chart.Y.Unit));
        Assert.StartsWith("wanted ", chart.Limits.Single().Label, StringComparison.Ordinal);
    }

    [Fact]
    public void Charts_OfMeasuredSpring_HaveTheirCurveInsideTheBand()
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        foreach (Chart chart in Charts(InstalledHeightStudy.Answer(strut)).At(0.075).Where(c => c.Bands.Count > 0))
        {
            ChartBand band = chart.Bands.Single();
            ChartCurve curve = chart.Curves.Single();
            for (int k = 0; k < curve.X.Length; k++)
            {
                double y = double.IsNaN(curve.Y[k]) ? curve.Outside[k] : curve.Y[k];
                Assert.True(band.Low[k] < y && y < band.High[k], $"{chart.Id} at {curve.X[k]}");
            }
        }
    }

    [Fact]
    public void EffectiveArea_OfMeasuredSpring_ShowsRowsOfForceOverGaugePressure()
    {
        Chart chart = Charts(InstalledHeightStudy.Answer(ExampleStruts.At(AxleEnd.Front))).EffectiveArea(0.075);
        ChartPoints rows = chart.Measured.Single();
        Assert.True(rows.X.Length > 50);
        Assert.All(rows.X.Zip(rows.Y), p => Assert.True(p.First >= chart.X.Low && p.First <= chart.X.High && p.Second >= chart.Y.Low && p.Second <= chart.Y.High));
    }

    [Fact]
    public void Charts_InInches_AreTheSameCurve()
    {
        InstalledHeightResult result = InstalledHeightStudy.Answer(ExampleStruts.At(AxleEnd.Front));
        HeightSweep sweep = HeightSweep.Of(result.Case);
        Chart metric = new HeightCharts(sweep, result.Solutions, DisplayUnits.Metric).GaugePressure(0.0762);
        Chart imperial = new HeightCharts(sweep, result.Solutions, DisplayUnits.Imperial).GaugePressure(0.0762);
        Assert.Equal(3, imperial.Marks.Single(m => m.Kind == MarkKind.Setting).X, 9);
        Assert.Equal(metric.Curves[0].X[20] / 25.4, imperial.Curves[0].X[20], 9);
        Assert.Equal("psi", imperial.Y.Unit);
    }

    [Fact]
    public void Curve_PartlyTested_JoinsSolidAndDashedAtOnePoint()
    {
        ChartCurve curve = Axes.Curve("", [1, 2, 3, 4], [10, 20, 30, 40], [false, true, true, false]);
        Assert.Equal([double.NaN, 20, 30, double.NaN], curve.Y);
        Assert.Equal([10, 20, 30, 40], curve.Outside);
        ChartCurve tested = Axes.Curve("", [1, 2, 3], [10, 20, 30], [true, true, true]);
        Assert.All(tested.Outside, y => Assert.True(double.IsNaN(y)));
    }

    [Theory]
    [InlineData(37, 122, 6, "40 60 80 100 120")]
    [InlineData(1.95, 2.35, 5, "2 2.1 2.2 2.3")]
    [InlineData(-25, 20, 5, "-20 -10 0 10 20")]
    public void Ticks_OfARange_AreRoundNumbersInIt(double low, double high, int most, string ticks)
    {
        IReadOnlyList<double> found = new ChartAxis("", "", low, high, 0).Ticks(most);
        Assert.Equal(ticks, string.Join(' ', found.Select(t => t.ToString(System.Globalization.CultureInfo.InvariantCulture))));
    }

    [Theory] // steps of such a range are less than the spacing of doubles there
    [InlineData(1.375, 1.3750000000000002)]
    [InlineData(-8192.5, -8192.499999999998)]
    [InlineData(3, 3)]
    [InlineData(0, 0)]
    public void Ticks_BetweenEndsARoundingApart_IsTheOneValue(double low, double high) =>
        Assert.Equal([low], new ChartAxis("", "", low, high, 0).Ticks(8));

    [Theory]
    [InlineData(0, double.PositiveInfinity)]
    [InlineData(double.NaN, 1)]
    [InlineData(2, 1)]
    public void Ticks_OfNoRange_AreNone(double low, double high) => Assert.Empty(new ChartAxis("", "", low, high, 0).Ticks(8));

    [Fact] // of 5e-324, the least number there is, up to 1
    public void Logarithms_DownToTheLeastNumber_TickThePowersOfTen()
    {
        IReadOnlyList<ChartTick> ticks = Axes.Logarithms("life", "", [Math.Log(double.Epsilon), 0]).OwnTicks!;

        Assert.Equal("1", ticks[^1].Label);
        Assert.Equal(324, ticks.Count); // 1e-323 to 1
    }

    [Fact]
    public void Map_AtTheDriveLoad_IsTheRateOfTheSweep()
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        HeightSweep sweep = HeightSweep.Of(strut);
        RateMap map = RateMap.Of(strut, 0.075, DisplayUnits.Metric, columns: HeightSweep.Places, rows: 10);
        // Rows lie 0.1 of the drive load apart from 0.6 of it, so the fifth is the drive load.
        Assert.Equal(map.DriveLoad, map.Loads[4], 2);
        for (int c = 0; c < HeightSweep.Places; c += 8)
            Assert.Equal(sweep.SpringRate_N_per_m[c] / 1000, map.Rate[4 * HeightSweep.Places + c], 3);
    }

    [Fact]
    public void Map_OverThePressureLimit_IsBlank()
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        RateMap limited = RateMap.Of(strut with { Part = strut.Part with { MaxGaugePressure_Pa = 3.5e5 } }, 0.075, DisplayUnits.Metric);
        Assert.Equal(64 * 48, limited.Rate.Length);
        Assert.True(float.IsNaN(limited.Rate[^1]));
        Assert.False(float.IsNaN(limited.Rate[0]));
    }

    [Fact]
    public void Ladder_OfAStrut_DescendsFromBumpToDroopWithTheRulesOnIt()
    {
        TravelResult result = TravelStudy.Answer(ExampleStruts.At(AxleEnd.Front))!;
        TravelLadder ladder = new TravelFigures(result, DisplayUnits.Metric).Ladder();
        Assert.Equal("fullBump", ladder.Rungs[0].Id);
        Assert.Equal(ladder.Rungs.Select(r => r.Travel).OrderDescending(), ladder.Rungs.Select(r => r.Travel));
        Assert.Equal([-35.0, 25.0], ladder.Limits.Select(l => l.Travel));
        Assert.Equal(result.StopContact_m * 1000, ladder.Stop!.Value.From, 6);
        Assert.All(ladder.Rungs, r => Assert.InRange(r.Travel, ladder.Travel.Low, ladder.Travel.High));
    }

    [Fact]
    public void RideHeight_OfAStrut_RisesWithAirAndIsDashedOnTheStop()
    {
        TravelResult result = TravelStudy.Answer(ExampleStruts.At(AxleEnd.Rear))!;
        Chart chart = new TravelFigures(result, DisplayUnits.Metric).RideHeight();
        double[] solid = [.. chart.Curves[0].Y.Where(double.IsFinite)];
        Assert.Equal(solid.Order(), solid);
        Assert.Equal(0, chart.Marks.Single(m => m.Kind == MarkKind.Setting).Y);
    }

    [Fact]
    public void Figures_OfAStrut_CarryNoMarkup()
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        StrutSection section = new StrutDrawing(strut, "kit", DisplayUnits.Metric).At(0.075);
        string[] texts =
        [
            .. section.Shapes.OfType<DrawingText>().Select(t => t.Text), section.Summary, .. section.TitleBlock.Select(r => r.Text),
            .. Charts(InstalledHeightStudy.Answer(strut)).At(0.075).SelectMany(c => c.Marks.Select(m => m.Label).Append(c.Summary).Append(c.Title)),
        ];
        Assert.True(texts.Length > 20);
        Assert.All(texts, t => Assert.DoesNotContain(t, c => c is '<' or '>' or '&' or '#'));
    }

    private static HeightCharts Charts(InstalledHeightResult result) =>
        new(HeightSweep.Of(result.Case), result.Solutions, DisplayUnits.Metric);
}
