using System.Globalization;
using System.Text;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Charting;
using Bellowsmith.Papers;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Tests.Kits.Figures;

public sealed class ControlFigureTests
{
    [Fact]
    public void Of_ALongChart_KeepsWhatStandsOut()
    {
        double[] values = [.. Enumerable.Range(0, 100_000).Select(i => i % 7 - 3.0)];
        (values[12_345], values[67_890]) = (40, -50);

        IReadOnlyList<Chart> charts = ControlFigures.Of(Charted("value [mm]", values.Select(v => v.ToString(CultureInfo.InvariantCulture))));

        Assert.Equal(2, charts.Count);
        ChartCurve points = charts[0].Curves[0];
        Assert.InRange(points.X.Length, 500, 1000);
        Assert.Contains((12_346.0, 40.0), points.X.Zip(points.Y));
        Assert.Contains((67_891.0, -50.0), points.X.Zip(points.Y));
        Assert.Equal(points.X.Order(), points.X);
        Assert.Equal([12_346, 67_891], charts[0].Marks.Where(m => m.Kind == MarkKind.Signal).Select(m => m.X).Order());
        Assert.True(charts[0].Y is { Low: <= -50, High: >= 40 });
    }

    [Fact]
    public void Of_PhasesAndZones_DrawsStepsThatBreakAndSigmaLines()
    {
        string[] rows = [.. Enumerable.Range(0, 20).Select(i => $"{(i < 10 ? i % 2 : 10 + i % 2)},{(i < 10 ? "before" : "after")}")];

        Chart chart = ControlFigures.Of(Charted("value,phase", rows, RunRule.Beyond(2, 3, 2)))[0];

        ChartCurve centre = chart.Centres[0];
        Assert.Equal([0.5, 10.5, 10.5, 10.5, 20.5], centre.X);
        Assert.Equal([0.5, 0.5, double.NaN, 10.5, 10.5], centre.Y);
        Assert.Equal(2, chart.Zones.Count); // 2σ to 3σ on either side
        Assert.All(chart.Zones, zone => Assert.All(zone.Low.Zip(zone.High), level => Assert.False(level.First > level.Second)));
        Assert.Equal([("before", 0.5), ("after", 10.5)], chart.Uprights.Select(u => (u.Label, u.X)));
        Assert.Equal(20, chart.Measured[0].X.Length);
    }

    [Fact]
    public void Of_LimitsOfEachPoint_AreThinnedToTheNarrowestAndWidest()
    {
        string[] rows = [.. Enumerable.Range(0, 5_000).Select(i => $"5,{(i == 2_500 ? 10 : 100 + i % 3)}")];

        Chart chart = ControlFigures.Of(Charted("count,size", rows, kind: ChartKind.Shares))[0];

        Assert.InRange(chart.Limits[0].X.Length, 1_000, 4_000);
        Assert.Contains(chart.Limits[0].Y, upper => upper > 0.2); // the one lot of ten
    }

    [Fact]
    public void Of_AFewPoints_IsDrawnWithTheRuleBesideItsPoint()
    {
        string[] rows = [.. Enumerable.Range(0, 30).Select(i => i == 20 ? "9" : $"{i % 2}")];

        string svg = Encoding.UTF8.GetString(ChartSvg.Write(ControlFigures.Of(Charted("value [mm]", rows))[0]));

        Assert.Contains("21: one point beyond 3 sigma", svg, StringComparison.Ordinal);
        Assert.Contains("Point 21 (9 mm) lies above the upper limit", svg, StringComparison.Ordinal);
    }

    private static ChartResult Charted(string header, IEnumerable<string> rows, RunRule? rule = null, ChartKind kind = ChartKind.Individuals)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        File.WriteAllLines(path, [header, .. rows]);
        try
        {
            return ChartStudy.Answer(path, new() { Kind = kind, Rules = [rule ?? RunRule.BeyondThreeSigma] });
        }
        finally
        {
            File.Delete(path);
        }
    }
}
