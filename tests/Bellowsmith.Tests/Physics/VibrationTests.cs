using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class VibrationTests
{
    private static readonly Gen<double[]> _motions = Gen.Double[-3, 3].Array[1500, 3000];

    [Theory] // by hand, x = f/edge: x²/√(1 + x⁴) above the lower edge, 1/√(1 + x⁴) below the upper one
    [InlineData(0.5, 0.7071, 0.01)]
    [InlineData(1.5, 0.9899, 0.0896)]
    [InlineData(5, 0.7071, 0.7071)]
    [InlineData(11, 0.2023, 0.9615)]
    [InlineData(25, 0.04, 0.7065)]
    public void PrimaryAndSecondary_AtAFrequency_AreButterworth(double frequency_Hz, double primary, double secondary)
    {
        Assert.Equal(primary, Gain(RideWeighting.Primary(1000), frequency_Hz / 1000), 0.002);
        Assert.Equal(secondary, Gain(RideWeighting.Secondary(1000), frequency_Hz / 1000), 0.002);
    }

    [Theory] // tolerances of the meter standard hold at the slowest rates too, where half of the rate ends them
    [InlineData(200)]
    [InlineData(256)]
    [InlineData(400)]
    [InlineData(10_000)]
    public void Vertical_AtAnyRate_StaysNearTheAnalogue(double rate_Hz)
    {
        var sections = RideWeighting.Vertical(rate_Hz);
        for (var n = -6; n <= 22 && Math.Pow(10, n / 10.0) < rate_Hz / 2; n++)
        {
            var frequency_Hz = Math.Pow(10, n / 10.0);
            var error = Gain(sections, frequency_Hz / rate_Hz) / RideWeighting.VerticalAt(frequency_Hz).Magnitude - 1;
            Assert.InRange(error, n <= 18 ? -0.07 : -0.19, 0.07);
        }
    }

    [Fact]
    public void Vertical_TooSlow_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => RideWeighting.Vertical(199));

    [Fact] // run on a sine, the sections do what their gain says
    public void Filter_OnASine_HasTheSectionsGain()
    {
        const double rate_Hz = 500, frequency_Hz = 8;
        double[] sine = [.. Enumerable.Range(0, 20_000).Select(i => Math.Sin(2 * Math.PI * frequency_Hz * i / rate_Hz))];
        var vibration = WeightedVibration.Of(sine, rate_Hz, RideWeighting.Vertical(rate_Hz), settle_s: 20);

        Assert.Equal(20, vibration.Duration_s, 1e-12);
        Assert.Equal(1.0364 / Math.Sqrt(2), vibration.Rms_m_per_s2, 0.002); // Wk at 8 Hz: 1.036 published
    }

    [Fact] // twice the motion, twice the values
    public void Of_TwiceTheMotion_Doubles() => _motions.Sample(motion =>
    {
        var (once, twice) = (Weighted(motion, 500), Weighted([.. motion.Select(x => 2 * x)], 500));
        Assert.Equal(2 * once.Rms_m_per_s2, twice.Rms_m_per_s2, 1e-10);
        Assert.Equal(2 * once.Dose_m_per_s175, twice.Dose_m_per_s175, 1e-10);
        Assert.Equal(2 * once.MaximumTransient_m_per_s2!.Value, twice.MaximumTransient_m_per_s2!.Value, 1e-10);
        Assert.Equal(once.NeedsMoreThanRms, twice.NeedsMoreThanRms);
    });

    [Fact] // a one-second average is at least the whole one over whole seconds, and never above the peak
    public void Of_AnyMotion_OrdersItsValues() => Gen.Double[-3, 3].Array[2000].Sample(motion =>
    {
        var vibration = WeightedVibration.Of(motion, 500, []);
        Assert.InRange(vibration.MaximumTransient_m_per_s2!.Value, vibration.Rms_m_per_s2 - 1e-12, vibration.Peak_m_per_s2 + 1e-12);
        Assert.True(vibration.Dose_m_per_s175 >= vibration.Rms_m_per_s2 * Math.Pow(4, 0.25) - 1e-12);
    });

    [Fact] // one knock of 10 m/s² for 10 ms in ten still seconds: r.m.s. √(100·0.01/10), MTVV √(100·0.01/1), VDV (10⁴·0.01)^¼
    public void Of_AKnock_IsSeenByDoseAndTransient()
    {
        var motion = new double[10_000];
        motion.AsSpan(5000, 10).Fill(10);
        var vibration = WeightedVibration.Of(motion, 1000, []);

        Assert.Equal(0.316228, vibration.Rms_m_per_s2, 1e-6);
        Assert.Equal(1, vibration.MaximumTransient_m_per_s2!.Value, 1e-12);
        Assert.Equal(3.162278, vibration.Dose_m_per_s175, 1e-6);
        Assert.True(vibration.NeedsMoreThanRms);
    }

    [Fact]
    public void Of_NothingMoves_HasNoCrestFactor()
    {
        var vibration = WeightedVibration.Of(new double[100], 500, RideWeighting.Vertical(500));

        Assert.Null(vibration.CrestFactor);
        Assert.Null(vibration.MaximumTransient_m_per_s2); // 0.2 s
        Assert.False(vibration.NeedsMoreThanRms);
    }

    [Fact]
    public void Of_NothingLeft_Throws() =>
        Assert.Throws<ArgumentException>(() => WeightedVibration.Of(new double[100], 500, [], settle_s: 1));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void To_NoRms_Throws(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => ComfortReaction.To(value));

    private static WeightedVibration Weighted(double[] motion, double rate_Hz) => WeightedVibration.Of(motion, rate_Hz, RideWeighting.Vertical(rate_Hz));

    private static double Gain(Biquad[] sections, double cyclesPerSample) =>
        sections.Aggregate(1.0, (gain, section) => gain * section.At(cyclesPerSample).Magnitude);
}
