using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A quarter car on white road velocity: 240 kg, 36 kg, 16 kN/m, 980 N·s/m, 160 kN/m at 20 m/s. DERIVED from the Lyapunov
/// equation, of the structure in [Turkay Akcay 2005] (MEMORY), and confirmed by quadrature; class A has
/// G = 4π²·n0²·Gd(n0)·v = 1.263309e-4 (m/s)²/Hz.
/// </summary>
public sealed class QuarterCarOnARandomRoad
{
    private const double ClassA = 1.263309e-4;
    private static readonly TwoMass Car = new(240, 36, 16_000, 980, 160_000);

    [Theory] // G as multiple of class A at 20 m/s; m/s², mm, N, each rounded in its last digit
    [InlineData(1, 0.354270, 2.982, 180.08)]
    [InlineData(16, 1.41708, 11.930, 720.33)] // class C: sixteen times the density, four times the r.m.s.
    public void OnWhiteVelocity_ClosedForms_AreTheTable(double multiple, double acceleration, double travel_mm, double force_N)
    {
        var variance = Car.OnWhiteVelocity(multiple * ClassA)!.Value;

        Assert.Equal(acceleration, variance.BodyAccelerationRms_m_per_s2, 1e-5);
        Assert.Equal(travel_mm, 1e3 * variance.TravelRms_m, 1e-3);
        Assert.Equal(force_N, variance.TyreForceRms_N, 1e-2);
    }

    [Theory] // 0.1 %, the tyre's share up to 5 kHz
    [InlineData(ClassA, 0.354270, 2.982, 180.08)]
    [InlineData(16 * ClassA, 1.41708, 11.930, 720.33)]
    public void InBand_OfNearlyEverything_IsTheTable(double density, double acceleration, double travel_mm, double force_N)
    {
        var variance = Car.InBand(_ => density, 0.001, 5000);

        Assert.Equal(acceleration, variance.BodyAccelerationRms_m_per_s2, 1e-3 * acceleration);
        Assert.Equal(travel_mm, 1e3 * variance.TravelRms_m, 1e-3 * travel_mm);
        Assert.Equal(force_N, variance.TyreForceRms_N, 1e-3 * force_N);
    }

    [Fact] // READ as 0.1 % of acceleration, 1.6 to 2 % of tyre force
    public void InBand_HalfToEightyHertz_LosesLittleOfTheBodyAndTwoPercentOfTheTyre()
    {
        var variance = Car.InBand(_ => ClassA, 0.5, 80);

        Assert.Equal(0.001, 1 - variance.BodyAccelerationRms_m_per_s2 / 0.354270, 5e-4);
        Assert.InRange(1 - variance.TyreForceRms_N / 180.08, 0.0155, 0.0205);
    }

    [Theory] // twice the speed is √2 the r.m.s., the next class twice
    [InlineData(2, 0.501013)]
    [InlineData(4, 0.708540)]
    public void OnWhiteVelocity_MoreDensity_GrowsWithItsRoot(double multiple, double acceleration) =>
        Assert.Equal(acceleration, Car.OnWhiteVelocity(multiple * ClassA)!.Value.BodyAccelerationRms_m_per_s2, 2e-6);

    [Fact]
    public void Modes_OfTheCar_AreDerived()
    {
        var (body, wheel) = Car.Modes;

        Assert.Equal([1.23824, 11.13519], [Rounded(Car.UndampedFrequencies_Hz.Body_Hz), Rounded(Car.UndampedFrequencies_Hz.Wheel_Hz)]);
        Assert.Equal([1.25065, 0.21782], [Rounded(body.NaturalFrequency_Hz), Rounded(body.DampingRatio)]);
        Assert.Equal([11.02469, 0.20126], [Rounded(wheel.NaturalFrequency_Hz), Rounded(wheel.DampingRatio)]);
    }

    [Theory] // ten minutes at 2 ms, the first 5 s left out; 5 % of each r.m.s.
    [InlineData(1)]
    [InlineData(2)]
    public void Advance_OverWhiteVelocity_ComesOutAtTheTable(ulong seed)
    {
        var road = new double[300_000];
        RoadProfile.FillWhiteVelocity(road, 0.002, ClassA, seed);

        AssertRms(road, 0.354270, 2.982, 180.08);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Advance_OverARoadOfClassC_ComesOutAtTheTable(ulong seed)
    {
        var road = new double[300_000];
        RoadProfile.Fill(road, 20 * 0.002, RoadClass.C, seed);

        AssertRms(road, 1.41708, 11.930, 720.33);
    }

    private static void AssertRms(double[] road_m, double acceleration, double travel_mm, double force_N)
    {
        const int settled = 2500;
        const double step_s = 0.002;
        double[] state = [road_m[0], 0, road_m[0], 0], sums = [0, 0, 0];
        var step = Car.Step(step_s);
        for (var i = 0; i + 1 < road_m.Length; i++)
        {
            var travel = state[2] - state[0];
            if (i >= settled)
            {
                var body = (16_000 * travel + 980 * (state[3] - state[1])) / 240;
                var force = 160_000 * (road_m[i] - state[2]);
                (sums[0], sums[1], sums[2]) = (sums[0] + body * body, sums[1] + travel * travel, sums[2] + force * force);
            }

            step.Advance(state, road_m[i], road_m[i + 1]);
        }

        double[] rms = [.. sums.Select(sum => Math.Sqrt(sum / (road_m.Length - 1 - settled)))];
        Assert.Equal(acceleration, rms[0], 0.05 * acceleration);
        Assert.Equal(travel_mm, 1e3 * rms[1], 0.05 * travel_mm);
        Assert.Equal(force_N, rms[2], 0.05 * force_N);
    }

    private static double Rounded(double value) => Math.Round(value, 5);
}
