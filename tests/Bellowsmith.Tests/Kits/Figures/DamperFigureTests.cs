using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Kits.Studies.Damping;

namespace Bellowsmith.Tests.Kits.Figures;

/// <summary>Figures of dyno and damping as data. Clicks of 6000, 5000, 4000 and 3000 N·s/m give 0.7764, 0.6470, 0.5176 and 0.3882 of critical.</summary>
public sealed class DamperFigureTests
{
    private static readonly DynoPoint[] _rows = DampingTests.Rows(6000, 5000, 4000, 3000);

    [Fact] // 6000 N·s/m at 0.52 m/s: 3120 N, 701.4 lbf at 20.47 in/s
    public void Overlay_InImperialUnits_EndsAtTheMeasuredSpeed()
    {
        ChartCurve closed = Figures(units: DisplayUnits.Imperial).Overlay().Curves.Single(c => c.Label == "click 0");

        Assert.Equal((20.47, 701.4), (closed.X[^1], closed.Y[^1]), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.01 && Math.Abs(a.Item2 - b.Item2) < 0.1);
        Assert.Equal(-701.4, closed.Y[0], 0.1);
        Assert.All(closed.Outside, y => Assert.True(double.IsNaN(y)));
    }

    [Fact] // 15 % past 0.52 m/s on 2000 N·s/m: 3120 + 0.078·2000
    public void Overlay_DeclaredSlope_GoesOnDashed()
    {
        ChartCurve closed = Figures(beyond: (1000, 2000)).Overlay().Curves.Single(c => c.Label == "click 0");

        Assert.Equal((0.598, 3276.0), (Math.Round(closed.X[^1], 6), Math.Round(closed.Outside[^1], 6)));
        Assert.True(double.IsNaN(closed.Y[^1]));
        Assert.Contains(Enumerable.Range(0, closed.X.Length), k => closed.Y[k] == closed.Outside[k]);
    }

    [Theory]
    [InlineData(1.5, "click 1.5")]
    [InlineData(3.0, "click 3")]
    [InlineData(9.0, null)]
    [InlineData(null, null)]
    public void Overlay_Click_IsDrawnLastAndNamed(double? click, string? label)
    {
        Chart chart = Figures().Overlay(click);

        Assert.Equal(label, chart.Curves.SingleOrDefault(c => c.Kind == CurveKind.Setting)?.Label);
        Assert.Equal(label is null ? CurveKind.Beside : CurveKind.Setting, chart.Curves[^1].Kind);
        Assert.Equal(40, Assert.Single(chart.Measured).X.Length);
        Assert.Equal(label == "click 1.5" ? 5 : 4, chart.Curves.Count);
    }

    [Fact] // 0.05 and 0.13 m/s at 6000 N·s/m; 1.04 m/s was not reached
    public void Forces_OverClick_HoldEveryStrokeAndSpeedThatWasReached()
    {
        Chart chart = Figures().Forces();

        Assert.Equal(["0.05 m/s", "0.13 m/s", "0.26 m/s", "0.52 m/s", "0.05 m/s", "0.13 m/s", "0.26 m/s", "0.52 m/s"], chart.Curves.Select(c => c.Label));
        Assert.Equal([0, 1, 2, 3], chart.Curves[1].X);
        Assert.Equal([780, 650, 520, 390], chart.Curves[1].Y.Select(y => Math.Round(y, 6)));
        Assert.Equal([-300, -250, -200, -150], chart.Curves[4].Y.Select(y => Math.Round(y, 6)));
    }

    [Fact]
    public void Loops_WithoutRawSweeps_AreNone() => Assert.Null(Figures().Loops());

    [Fact] // 25 mm either way at 1 Hz, 1500 N·s/m: 235.6 N at mid-stroke, about a circle in the force's scale
    public void Loops_OfRawSweeps_AreOneCycleAboutMidStroke()
    {
        DynoResult dyno = Swept();
        DamperFigures figures = new(dyno, DisplayUnits.Metric);

        Chart fastest = figures.Loops()!, every = figures.Loops(4)!;

        ChartCurve loop = Assert.Single(fastest.Curves);
        Assert.Equal((-25, 25), (loop.X.Min(), loop.X.Max()), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.05 && Math.Abs(a.Item2 - b.Item2) < 0.05);
        Assert.Equal((loop.X[0], loop.Y[0]), (loop.X[^1], loop.Y[^1]));
        Assert.Equal(1500 * 2 * Math.PI * 2 * 0.025, loop.Y.Max(), 0.5);
        Assert.Equal(["0.08 m/s", "0.16 m/s", "0.31 m/s"], every.Curves.Select(c => c.Label));
        Assert.Null(figures.Loops(5));
    }

    [Fact] // no click of the corner was swept: every swept click stands for it
    public void Loops_OfADampedCorner_AreThoseOfItsClickElseOfAll()
    {
        DampingResult damped = DampingStudy.Answer(DampingTests.Corner(_rows), 0.5);

        Assert.Null(new DampingFigures(damped, DisplayUnits.Metric).Loops());
        damped = damped with { Case = damped.Case with { Fit = Swept().Fit } };
        Assert.Equal(3, new DampingFigures(damped, DisplayUnits.Metric, set: 4).Loops()!.Curves.Count);
        Assert.Single(new DampingFigures(damped, DisplayUnits.Metric, set: 2).Loops()!.Curves);
    }

    private static DynoResult Swept()
    {
        DynoSweep[] sweeps = [.. ((double[])[0.5, 1, 2]).Select(hz => new DynoSweep(4, null, [.. Enumerable.Range(0, 2000).Select(k => Sample(hz, k / 500.0))]))];
        return DynoStudy.Answer(new(DampingTests.Part, new DynoSweeps(sweeps, GasIn: false)));

        static DynoSample Sample(double hz, double t) => new(
            t, 0.3 + 0.025 * Math.Sin(2 * Math.PI * hz * t), 1500 * 2 * Math.PI * hz * 0.025 * Math.Cos(2 * Math.PI * hz * t));
    }

    [Fact] // steps at the damper times 0.95² over 6974.1 N·s/m
    public void Ratio_OverClick_MarksTheChosenWithItsNeighboursIntervals()
    {
        DampingResult result = DampingStudy.Answer(DampingTests.Corner(_rows), 0.6) with { Steps = [new(1, 2, -1000, -1200, -800)] };

        Chart chart = new DampingFigures(result, DisplayUnits.Metric).Ratio()!;

        Assert.Equal([0.7764, 0.6470, 0.5176, 0.3882], chart.Curves[0].Y.Select(y => Math.Round(y, 4)));
        ChartMark set = Assert.Single(chart.Marks);
        Assert.Equal((MarkKind.Setting, 1.0, 0.6470), (set.Kind, set.X, Math.Round(set.Y, 4)));
        Assert.Equal([0.6, 0.6], Assert.Single(chart.Limits).Y);
        ChartInterval step = Assert.Single(chart.Intervals);
        Assert.Equal([2, 0.4917, 0.5176, 0.5435], ((double[])[step.X, step.Low, step.Y, step.High]).Select(v => Math.Round(v, 4)));
    }

    [Fact]
    public void Ratio_WhereNoClickReaches_SaysTheNearestWithoutTheAccent()
    {
        ChartMark nearest = Assert.Single(new DampingFigures(DampingStudy.Answer(DampingTests.Corner(_rows), 0.9), DisplayUnits.Metric).Ratio()!.Marks);

        Assert.Equal((MarkKind.Caution, "nearest · click 0 · 0.78"), (nearest.Kind, nearest.Label));
    }

    [Fact]
    public void Amplitude_BeyondTheMeasuredSpeeds_Breaks()
    {
        DampingResult result = DampingStudy.Answer(DampingTests.Corner(_rows.Where(p => Math.Abs(p.Velocity_m_per_s) < 0.3)), 0.6);

        ChartCurve both = new DampingFigures(result, DisplayUnits.Metric).Amplitude()!.Curves[0];

        Assert.Equal([0.05, 0.1, 0.2, 0.3, 0.4, 0.5], both.X);
        Assert.Equal([true, true, true, false, false, false], both.Y.Select(double.IsFinite));
    }

    [Fact] // 300 to 500 kPa: 3 to 5 bar, in the order of the pressure
    public void GaugePressure_OverHeights_BreaksWhereNoClickKeepsTheRatio()
    {
        DampingResult result = DampingStudy.Answer(DampingTests.Corner(_rows), 0.6) with
        {
            Heights = [State("a", 5e5, null), State("a", 4e5, 1), State("a", 3e5, 2)],
            Loads = [State("a", 4e5, 1), State("four up", 4.5e5, 0)],
        };

        Chart chart = new DampingFigures(result, DisplayUnits.Metric).GaugePressure()!;

        Assert.Equal([3, 4, 5], chart.Curves[0].X.Select(x => Math.Round(x, 9)));
        Assert.Equal([2, 1, double.NaN], chart.Curves[0].Y);
        Assert.Equal(("four up", 0.0), (chart.Marks[0].Label, chart.Marks[0].Y));

        static StateDamping State(string load, double gauge, double? click) => new(new WheelState(load, 320, 38_000, 0.08, gauge), 0.6, click, click is null ? null : 0.6);
    }

    [Fact]
    public void All_OfALinearDamper_IsItsAmplitudeAlone() =>
        Assert.Equal(["dampingAmplitude"], new DampingFigures(DampingStudy.Answer(DampingTests.Corner(5023), 0.3), DisplayUnits.Metric).All().Select(c => c.Id));

    [Fact]
    public void All_WithoutAHeight_IsTheDampersCurvesAlone()
    {
        DampingCase resting = DampingTests.Corner(_rows) with { Drive = null };

        Assert.Equal(["damperOverlay"], new DampingFigures(DampingStudy.Answer(resting, 0.6), DisplayUnits.Metric).All().Select(c => c.Id));
    }

    private static DamperFigures Figures((double, double)? beyond = null, DisplayUnits? units = null) => new(
        DynoStudy.Answer(new(DampingTests.Part with { Beyond_N_s_per_m = beyond }, new DynoPoints(_rows, GasIn: false))), units ?? DisplayUnits.Metric);
}
