using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Figures;

/// <summary>Figures of a ride and of a bump as data, from runs of a few literal steps.</summary>
public sealed class RideChartTests
{
    [Fact]
    public void Speeds_WithAGap_StandEmptyThereAndSumToTheWhole()
    {
        Chart chart = Charts(Detail([]) with { DamperSpeeds = [(-0.1, -0.05, 0.25), (0.05, 0.1, 0.5), (0.5, 0.55, 0.25)], OutsideMeasuredSpeed = 0.25 }).Speeds()!;

        Assert.Equal([-0.1, -0.05, 0, 0.05, 0.1], chart.Bars[0].Edges[..5].Select(e => Math.Round(e, 9)));
        Assert.Equal([25, 0, 0, 50, 0], chart.Bars[0].Heights[..5]);
        Assert.Equal(100, chart.Bars.Sum(b => b.Heights.Sum()), 1e-9);
        Assert.True(chart.Bars[1].IsOutside);
        Assert.Equal((25.0, 0.0), (chart.Bars[1].Heights[^1], chart.Bars[0].Heights[^1]));
        Assert.Equal([-0.4, 0.5], chart.Uprights.Select(u => u.X));
        Assert.Contains("For 25 % of the time", chart.Summary, StringComparison.Ordinal);
    }

    [Fact] // 0.05 m/s are 1.9685 in/s
    public void Speeds_InImperialUnits_AreInInches() => Assert.Equal(
        -1.9685, Charts(Detail([]) with { DamperSpeeds = [(-0.05, 0, 1)] }, DisplayUnits.Imperial).Speeds()!.Bars[0].Edges[0], 1e-4);

    [Fact] // five seconds settle; of the four that count two stand in 1 to 1.5 mm
    public void Travel_Bars_HoldEveryStepOnceAfterSettling()
    {
        Chart chart = Charts(Detail([9, 9, 9, 9, 9, 0.0001, 0.0012, 0.0012, -0.003])).Travel()!;

        ChartBars bars = Assert.Single(chart.Bars);
        Assert.Equal(100, bars.Heights.Sum(), 1e-9);
        Assert.Equal([50.0], bars.Heights.Where((_, k) => Math.Abs(bars.Edges[k] - 1) < 1e-9));
        Assert.Equal([0.0, 25.0], chart.Uprights.Select(u => u.X));
        Assert.True(chart.X.High >= 25);
    }

    [Fact] // Wk at 2 Hz is 0.531 [ISO 2631-1 1997, table 3]
    public void Spectrum_OfASine_PeaksThereAndIsWeightedByWk()
    {
        double[] sine = [.. Enumerable.Range(0, 30_000).Select(k => Math.Sin(2 * Math.PI * 2 * k / 1000.0))];
        RideTrace trace = new(1e-3, sine, sine, sine, sine, sine, sine, sine);

        Chart chart = Charts(Detail([]) with { Trace = trace }).Spectrum()!;

        int peak = Array.IndexOf(chart.Curves[0].Y, chart.Curves[0].Y.Max());
        Assert.Equal(2, Math.Exp(chart.Curves[0].X[peak]), 0.06);
        Assert.Equal(0.531, Math.Exp((chart.Curves[1].Y[peak] - chart.Curves[0].Y[peak]) / 2), 0.01);
        Assert.Equal([0.5, 5, 25], chart.Uprights.Select(u => Math.Round(Math.Exp(u.X), 9)));
        Assert.Contains(chart.X.OwnTicks!, t => t.Label == "2");
    }

    [Fact]
    public void Spectrum_OfAShortRunOrOneBump_IsNone()
    {
        double[] still = new double[30_000];
        RideResult bump = Result(Detail([]) with { Trace = new(1e-3, still, still, still, still, still, still, still) }) with { Road = new(new RoadWithBump(Bump.Usual(BumpShape.Round)), 10) };

        Assert.Null(Charts(Detail([])).Spectrum());
        Assert.Null(new RideCharts(bump, DisplayUnits.Metric).Spectrum());
    }

    [Fact]
    public void Neighbours_OneThatCannotStand_IsNamedWithoutAPoint()
    {
        RideResult result = Result(Detail([])) with { Neighbours = [new("one click softer", Figures(0.55)), new("2 psi less", null)] };

        Chart chart = new RideCharts(result, DisplayUnits.Metric).Neighbours()!;

        Assert.Equal([(MarkKind.Setting, 0.5), (MarkKind.State, 0.55)], chart.Marks.Select(m => (m.Kind, m.X)));
        Assert.Equal(["this setting", "one click softer", "2 psi less: cannot stand"], chart.Y.OwnTicks!.Select(t => t.Label));
        Assert.Equal(chart.Y.OwnTicks![1].At, chart.Marks[1].Y);
    }

    [Fact]
    public void All_NotDriven_IsEmpty() =>
        Assert.Empty(new RideCharts(Result(null) with { Figures = null, Reason = "the car rests on its stop there" }, DisplayUnits.Metric).All());

    [Fact] // wheel is body and travel: 10 and 5 mm; every second step is drawn
    public void Bump_Motion_IsInMillimetresFromRest()
    {
        Chart chart = new BumpCharts(Ride(), DisplayUnits.Metric).Motion();

        Assert.Equal([[0, 20], [0, 15], [0, 10]], chart.Curves.Select(c => c.Y.Select(y => Math.Round(y, 9)).ToArray()));
        Assert.Equal(["road", "wheel", "body"], chart.Curves.Select(c => c.Label));
        Assert.All(chart.Curves, c => Assert.Equal([0, 0.002], c.X));
    }

    [Fact] // the greatest stand where they are even if no drawn step meets them
    public void Bump_Acceleration_MarksItsGreatestEachWay() => Assert.Equal(
        [(0.001, 6.0), (0.003, -3.0)], new BumpCharts(Ride(), DisplayUnits.Metric).Acceleration().Marks.Select(m => (m.X, m.Y)));

    private static RideCharts Charts(RideDetail? detail, DisplayUnits? units = null) => new(Result(detail), units ?? DisplayUnits.Metric);

    private static RideResult Result(RideDetail? detail) => new()
    {
        Strut = Strut(),
        Road = new(new RoadOfVelocity(1e-4), 20),
        Setting = new(Click: 0),
        Figures = Figures(0.5),
        Detail = detail,
    };

    private static RideDetail Detail(double[] travel) => new()
    {
        Trace = new(1, travel, travel, travel, travel, travel, travel, travel),
        PrimaryRms_m_per_s2 = 0.4,
        SecondaryRms_m_per_s2 = 0.3,
        GreatestUp_m_per_s2 = 1,
        GreatestDown_m_per_s2 = 1,
        OutsideMeasuredSpeed = 0,
        OutsideMeasuredHeight = 0,
        TravelShares = [],
        DamperSpeeds = [],
        StopContact_m = 0.025,
    };

    private static RideFigures Figures(double weighted) => new()
    {
        Rms_m_per_s2 = weighted,
        WeightedRms_m_per_s2 = weighted,
        CrestFactor = 4,
        VibrationDose_m_per_s175 = 1,
        GreatestRunningRms_m_per_s2 = 1,
        TravelRms_m = 0.005,
        TyreLoadRms_N = 300,
        LiftOffShare = 0,
        StopContacts = 0,
        PeakStopForce_N = 0,
        LeastTravel_m = -0.01,
        GreatestTravel_m = 0.01,
        GreatestCompression_m_per_s = 0.5,
        GreatestRebound_m_per_s = 0.5,
        Time_s = 55,
    };

    private static RideStrut Strut() => new()
    {
        End = AxleEnd.Front,
        Load = "one",
        SprungMass_kg = 240,
        UnsprungMass_kg = 36,
        TyreRate_N_per_m = 160e3,
        SpringRatio = MotionRatio.Constant(1),
        DamperRatio = MotionRatio.Constant(1),
        ParasiticRate_N_per_m = 0,
        Damper = Damper.Of([0], [MonotoneCurve.Through([-0.4, 0, 0.5], [-400, 0, 900])]),
        Click = 0,
        LinearRate_N_per_m = 16e3,
    };

    private static BumpRide Ride() => new()
    {
        Strut = Strut(),
        Bump = Bump.Usual(BumpShape.Round),
        Speed_m_per_s = 10,
        Road_m = [0, 0.01, 0.02, 0.01],
        Trace = new(1e-3, [0, 0.005, 0.01, 0.01], [0, 6, 1, -3], [0, 0.002, 0.005, 0], new double[4], [2000, 2000, 2000, 2000], new double[4], new double[4]),
        StopContact_m = null,
    };
}
