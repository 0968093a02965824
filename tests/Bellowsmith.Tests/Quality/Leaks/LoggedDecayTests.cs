using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.Tests.Quality.Leaks;

public sealed class LoggedDecayTests
{
    private const double Slope = -0.002; // Pa/(K·s)

    [Fact] // white residuals: the textbook slope error 0.5/√(n·(n² − 1)/12)/60 of n = 400 readings a minute apart is 3.608e-6·2
    public void Fit_IndependentScatter_HasTheTextbookErrorAndALittleMore()
    {
        LoggedDecay fit = Fit(400, coefficient: 0, seed: 1);

        Assert.InRange(fit.Slope.StandardUncertainty / 3.608e-6, 0.95, 1.25);
        Assert.InRange(fit.Slope.Value, Slope - 3 * fit.Slope.StandardUncertainty, Slope + 3 * fit.Slope.StandardUncertainty);
    }

    [Fact] // 500 logs whose neighbours share 0.8 of their scatter: the 95 % interval holds the true slope about so often
    public void Fit_AutocorrelatedScatter_CoversTheTrueSlope()
    {
        int covered = 0;
        for (int seed = 0; seed < 500; seed++)
        {
            LoggedDecay fit = Fit(400, coefficient: 0.8, seed);
            if (Math.Abs(fit.Slope.Value - Slope) <= Conformance.Factor(0.975, fit.Independent - 2) * fit.Slope.StandardUncertainty) covered++;
        }

        Assert.InRange(covered, 455, 490);
    }

    [Fact]
    public void Fit_Settling_DriftsUntilItIsLeftOut()
    {
        double[] time = Times(300), temperature = [.. time.Select(_ => 290.0)];
        double[] absolute = [.. Noise(300, 0, 4).Select((e, i) => 290 * (3000 + Slope * time[i] + 30 * Math.Exp(-i / 15.0) + 0.2 * e))];

        Assert.True(LoggedDecay.Fit(time, absolute, temperature)!.Drifts);
        Assert.False(LoggedDecay.Fit(time, absolute, temperature, settle_s: 7200)!.Drifts);
    }

    [Fact]
    public void Fit_Settle_LeavesOutTheFirstMinutes() => Assert.Equal(90, LoggedDecay.Fit(Times(100), Times(100), Times(100), 600)!.Count);

    [Theory]
    [InlineData(3)]
    [InlineData(0)]
    public void Fit_TooFewReadings_IsNull(int count) => Assert.Null(LoggedDecay.Fit(Times(count), Times(count), Times(count)));

    [Fact]
    public void Fit_AllEqual_HasNoScatter()
    {
        double[] same = [.. Enumerable.Repeat(300.0, 50)];
        LoggedDecay fit = LoggedDecay.Fit(Times(50), same, same)!;

        Assert.False(fit.HasScatter);
        Assert.Equal(0, fit.Slope.Value);
    }

    [Fact] // loss over an hour: 0.002·290·3600; rate: 0.001·293.15·0.002
    public void Estimate_OfALine_IsItsLeak()
    {
        LeakEstimate estimate = Fit(4000, 0, 3).Estimate(new(1e-3, 1e-5), 3600, 293.15, 0);

        Assert.Equal(2088, estimate.CorrectedLoss_Pa, 2.0);
        Assert.Equal(5.863e-4, estimate.Rate.Value_Pa_m3_per_s, 6e-7);
    }

    private static LoggedDecay Fit(int count, double coefficient, int seed)
    {
        double[] time = Times(count), temperature = [.. time.Select(_ => 290.0)];
        return LoggedDecay.Fit(time, [.. Noise(count, coefficient, seed).Select((e, i) => 290 * (3000 + Slope * time[i] + 0.5 * e))], temperature)!;
    }

    private static double[] Times(int count) => [.. Enumerable.Range(0, count).Select(i => i * 60.0)];

    private static double[] Noise(int count, double coefficient, int seed)
    {
        Random random = new(seed);
        double[] noise = new double[count];
        for (int i = 0; i < count; i++)
        {
            double white = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            noise[i] = i == 0 ? white : coefficient * noise[i - 1] + Math.Sqrt(1 - coefficient * coefficient) * white;
        }

        return noise;
    }
}
