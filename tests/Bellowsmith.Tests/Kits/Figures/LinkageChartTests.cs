using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Kits.Studies;

namespace Bellowsmith.Tests.Kits.Figures;

public sealed class LinkageChartTests
{
    private static readonly LoweringResult _result =
        LoweringStudy.Answer(SampleSuspension.Strut, new(0.035) { Measured = MotionRatio.Constant(0.95) });

    private static readonly LinkageCharts _charts = new(_result, DisplayUnits.Metric);

    [Fact]
    public void All_MarkBothDriveHeights()
    {
        Assert.Equal(["linkageCamber", "linkageToe", "linkageRollCentre", "linkageRatio"], _charts.All().Select(chart => chart.Id));
        Assert.All(_charts.All(), chart =>
        {
            ChartMark now = Assert.Single(chart.Marks, mark => mark.Kind == MarkKind.Setting), old = Assert.Single(chart.Marks, mark => mark.Kind == MarkKind.State);
            Assert.Equal((0, -35, "old drive height"), (now.X, Math.Round(old.X, 9), old.Label));
            Assert.InRange(now.Y, chart.Y.Low, chart.Y.High);
            Assert.NotEmpty(chart.Summary);
        });
    }

    [Fact] // its toe stands still where the wheel is driven: level to either side
    public void Toe_Mended_StandsBesideAndStill()
    {
        ChartCurve mended = Assert.Single(_charts.Toe().Curves, curve => curve.Kind == CurveKind.Beside);
        int drive = Array.FindIndex(mended.X, x => Math.Abs(x) < 1e-9);

        Assert.Equal(mended.Y[drive - 1], mended.Y[drive + 1], 1e-4);
        Assert.Contains("tie-rod joint", mended.Label, StringComparison.Ordinal);
    }

    [Fact] // −0.012 rad at drive height
    public void Camber_InDegrees_IsWhatTheWheelHas() =>
        Assert.Equal(-0.687549, Assert.Single(_charts.Camber().Marks, mark => mark.Kind == MarkKind.Setting).Y, 1e-6);

    [Fact]
    public void Ratio_Measured_StandsBeside() =>
        Assert.All(Assert.Single(_charts.Ratio().Curves, curve => curve.Kind == CurveKind.Beside).Y, value => Assert.Equal(0.95, value));

    [Fact] // 35 mm are 1.378 in
    public void All_InImperialUnits_AreInInches() =>
        Assert.Equal(-1.37795, new LinkageCharts(_result, DisplayUnits.Imperial).RollCentre().Marks[0].X, 1e-5);
}
