using Bellowsmith.Kits.Figures;
using Bellowsmith.Quality.Capability;
using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.Tests.Kits.Figures;

/// <summary>Histogram and Weibull plot as data.</summary>
public sealed class QualityFigureTests
{
    private static readonly double[] _readings = [.. Enumerable.Range(0, 50).Select(i => 10 + 0.1 * (i * 7 % 11 - i * 3 % 7))];

    [Fact]
    public void Histogram_Bars_HoldEveryReadingOnce()
    {
        Chart chart = Histogram(_readings, new(8, 12, 10))!;

        ChartBars bars = Assert.Single(chart.Bars);
        Assert.Equal(_readings.Length, bars.Heights.Sum());
        Assert.Equal(bars.Heights.Length + 1, bars.Edges.Length);
        Assert.True(bars.Edges[0] <= _readings.Min() && bars.Edges[^1] >= _readings.Max());
    }

    [Fact]
    public void Histogram_Axis_ReachesBothLimits()
    {
        Chart chart = Histogram(_readings, new(5, 20))!;

        Assert.True(chart.X.Low <= 5 && chart.X.High >= 20);
        Assert.Equal(2, chart.Uprights.Count(upright => upright.Kind == UprightKind.Limit));
    }

    [Fact]
    public void Histogram_WithoutAnAnswer_IsNone() => Assert.Null(Histogram([1, 1, 1, 1, 1], new(0, 2)));

    [Fact] // a straight line: the law is linear on its own paper
    public void WeibullPlot_Line_IsStraight()
    {
        Chart chart = Plot([100, 200, 300, 400, 400], [true, true, true, true, false], null)!;
        ChartCurve line = Assert.Single(chart.Curves);

        double slope = (line.Y[^1] - line.Y[0]) / (line.X[^1] - line.X[0]);
        Assert.All(Enumerable.Range(0, line.X.Length), k => Assert.Equal(line.Y[0] + slope * (line.X[k] - line.X[0]), line.Y[k], 1e-9));
        Assert.Equal(4, Assert.Single(chart.Measured).X.Length);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(2.0)]
    public void WeibullPlot_Band_HoldsTheLine(double? shape)
    {
        Chart chart = Plot([100, 200, 300, 400, 400], [true, true, true, true, false], shape)!;
        (ChartCurve line, ChartBand band) = (Assert.Single(chart.Curves), Assert.Single(chart.Bands));

        double slope = (line.Y[^1] - line.Y[0]) / (line.X[^1] - line.X[0]);
        for (int k = 0; k < band.X.Length; k++)
        {
            double on = Math.Clamp(line.Y[0] + slope * (band.X[k] - line.X[0]), chart.Y.Low, chart.Y.High);
            Assert.InRange(on, band.Low[k] - 1e-9, band.High[k] + 1e-9);
        }
    }

    [Fact]
    public void WeibullPlot_OfSurvivorsAndAShape_HasTheLineAloneAndFiniteAxes()
    {
        Chart chart = Plot([100, 200], [false, false], 2)!;

        Assert.Empty(chart.Measured);
        Assert.True(double.IsFinite(chart.X.Low) && double.IsFinite(chart.X.High) && chart.X.High > chart.X.Low);
    }

    private static Chart? Histogram(double[] values, SpecificationLimits limits) =>
        new CapabilityFigures(ProcessCapability.Of(values, new(limits)), values, "mm").Histogram();

    private static Chart? Plot(double[] lives, bool[] failed, double? shape) =>
        new LifeFigures(LifeAnalysis.Of(lives, failed, new(Shape: shape)), "h").WeibullPlot();
}
