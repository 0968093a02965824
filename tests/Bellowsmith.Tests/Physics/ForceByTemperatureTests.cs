using Bellowsmith.Physics;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Tests.Physics;

public sealed class ForceByTemperatureTests
{
    private const double Slope_per_K = -0.0015;

    private static readonly double[] _speeds = [0.05, 0.13, 0.26, 0.52];

    [Fact]
    public void Temperature_OfAnExactLaw_IsTheLaw()
    {
        ForceByTemperature law = Fit(Rows([20, 55, 21])).Temperature!;

        Assert.Equal(Slope_per_K, law.Slope_per_K, 1e-12);
        Assert.Equal(0, law.StandardError_per_K, 1e-9);
        Assert.Equal((293.15, 328.15), (law.Least_K, law.Greatest_K));
        Assert.Equal(273.15 + 32, law.Reference_K, 1e-9);
        Assert.Equal(47, law.Degrees); // 3 clicks × 8 velocities × 3 readings, less 24 means and the slope
    }

    [Fact] // the interval holds the law in 95 % of dynos; 600 of them stray by 0.9 %
    public void HalfInterval_OfNoisyReadings_CoversTheLaw()
    {
        SplitMix64 noise = new(5);
        int held = 0;
        for (int k = 0; k < 600; k++)
        {
            ForceByTemperature law = Fit([.. Rows([20, 40, 55]).Where(p => p.Click == 0).Select(p => p with { Force_N = p.Force_N + 4 * noise.Normal() })]).Temperature!;
            if (Math.Abs(law.Slope_per_K - Slope_per_K) <= law.HalfInterval_per_K) held++;
        }

        Assert.InRange(held / 600.0, 0.92, 0.98);
    }

    [Theory]
    [InlineData(20, 29.9)]
    [InlineData(26, 34)]
    public void Temperature_OverLessThanTenKelvin_IsNotKnown(double cold, double warm) => Assert.Null(Fit(Rows([cold, warm, cold])).Temperature);

    [Fact] // the file spans 30 K, no click and speed does
    public void Temperature_OfClicksEachAtItsOwn_IsNotKnown() =>
        Assert.Null(Fit([.. Rows([20, 21]).Where(p => p.Click == 0), .. Rows([50, 51]).Where(p => p.Click == 1)]).Temperature);

    [Theory]
    [InlineData(new double[] { 20, 40, 55 }, true)]
    [InlineData(new double[] { 55, 40 }, true)]
    [InlineData(new double[] { 20, 55, 21 }, false)]
    public void MixedWithRuns_WhereTemperatureGoesOneWayOnly_IsTrue(double[] runs_degC, bool mixed) =>
        Assert.Equal(mixed, Fit(Rows(runs_degC)).Temperature!.MixedWithRuns);

    [Theory]
    [InlineData(20)]
    [InlineData(37.5)]
    [InlineData(55)]
    public void At_ATemperature_GivesTheLawsForce(double degC)
    {
        DamperFit fit = Fit(Rows([20, 55, 21]), (500, 900)), at = fit.At(273.15 + degC);
        double fades = Math.Exp(Slope_per_K * (degC - 20)), beyond = Math.Exp(Slope_per_K * (degC - 32));

        Assert.All(new[] { 0.0, 1, 2 }, click => Assert.Equal(Force(click, 0.26) * fades, at.Damper!.Force_N(click, 0.26), 1e-9));
        Assert.Equal(Force(1, -0.13) * fades, at.Damper!.Force_N(1, -0.13), 1e-9);
        Assert.Equal(Force(0, 0.52) * fades + 0.1 * 900 * beyond, at.Damper.Force_N(0, 0.62), 1e-9);
        Assert.Equal(0, at.Repeatability_N!.Value, 1e-9);
        Assert.True(fit.Repeatability_N > 10);
    }

    [Theory] // one click cold alone, one warm alone, one both: each comes to the same temperature from its own
    [InlineData(30)]
    public void At_ClicksMeasuredApart_BringsEachFromItsOwn(double degC)
    {
        DamperFit fit = Fit([.. Rows([20, 55]).Where(p => p.Click == 0), .. Rows([20]).Where(p => p.Click == 1), .. Rows([55]).Where(p => p.Click == 2)]);

        Assert.All(new[] { 0.0, 1, 2 }, click => Assert.Equal(
            Force(click, 0.13) * Math.Exp(Slope_per_K * (degC - 20)), fit.At(273.15 + degC).Damper!.Force_N(click, 0.13), 1e-9));
    }

    [Fact]
    public void At_OutsideWhatWasMeasured_Throws()
    {
        DamperFit fit = Fit(Rows([20, 55]));

        Assert.Throws<ArgumentOutOfRangeException>(() => fit.At(273.15 + 60));
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.At(273.15 + 10));
        Assert.Throws<InvalidOperationException>(() => Fit(Rows([20])).At(273.15 + 20));
    }

    private static double Force(double click, double v) => Math.Sign(v) * (v > 0 ? 1600 : 600) * Math.Pow(0.8, click) * Math.Sqrt(Math.Abs(v));

    private static DynoPoint[] Rows(double[] runs_degC) =>
    [
        .. from run in Enumerable.Range(0, runs_degC.Length)
           from click in new[] { 0.0, 1, 2 }
           from speed in _speeds
           from v in new[] { speed, -speed }
           select new DynoPoint(click, v, Force(click, v) * Math.Exp(Slope_per_K * (runs_degC[run] - 20)), $"{run + 1}", 273.15 + runs_degC[run], 1 + run),
    ];

    private static DamperFit Fit(DynoPoint[] rows, (double, double)? beyond = null) => DamperFit.Of(new DynoPoints(rows, GasIn: false), beyond);
}
