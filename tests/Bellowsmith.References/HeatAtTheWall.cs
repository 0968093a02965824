using System.Numerics;
using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// Between slow and fast air. Limits READ in [Pelz Buttenbender 2004]; the relaxation table is DERIVED, exact for a
/// linear wall, γ = 1.4.
/// </summary>
public sealed class HeatAtTheWall
{
    private static readonly WallRelaxation Wall = WallRelaxation.StrutEstimate;

    [Fact]
    public void ExponentAt_BodyFrequencyAgainstCreep_ApproachesTheRatioOfSpecificHeats() =>
        Assert.Equal(1.4, Wall.ExponentAt(1.0) / Wall.ExponentAt(0.0005), 0.02 * 1.4); // READ

    [Fact]
    public void HalfwayFrequency_OfTheStrutEstimate_LiesInTheReportedBand()
    {
        Assert.InRange(Wall.HalfwayFrequency_Hz, 0.001, 0.1); // READ
        Assert.Equal(1.2, Wall.ExponentAt(Wall.HalfwayFrequency_Hz), 1e-12);
    }

    [Theory] // ωτ, |n|, Re n, each rounded in its last digit
    [InlineData(0.1, 1.00474, 1.00396)]
    [InlineData(0.5, 1.09179, 1.08)]
    [InlineData(1, 1.21655, 1.2)]
    [InlineData(2, 1.32966, 1.32)]
    [InlineData(10, 1.39660, 1.39604)]
    public void DynamicExponentAt_TurnPerTimeConstant_IsTheTable(double turn, double magnitude, double real)
    {
        var exponent = Wall.DynamicExponentAt(turn / Wall.TimeConstant_s);

        Assert.Equal(magnitude, exponent.Magnitude, 1e-5);
        Assert.Equal(real, exponent.Real, 1e-5);
    }

    [Fact]
    public void LossTangentAt_ItsGreatest_IsTheClosedForm()
    {
        var peak = 0.845154 / Wall.TimeConstant_s;

        Assert.Equal(0.169031, Wall.LossTangentAt(peak), 1e-6);
        Assert.True(Wall.LossTangentAt(0.99 * peak) < Wall.LossTangentAt(peak));
        Assert.True(Wall.LossTangentAt(1.01 * peak) < Wall.LossTangentAt(peak));
    }

    [Theory] // The energy balance integrated in time knows nothing of the closed form. ωτ, |n|, phase in degrees; ±1 %
    [InlineData(0.1, 1.00474, 2.25902)]
    [InlineData(0.5, 1.09179, 8.42697)]
    [InlineData(1, 1.21655, 9.46232)]
    [InlineData(2, 1.32966, 6.91123)]
    [InlineData(10, 1.39660, 1.62498)]
    public void Simulation_SinusoidalVolume_GivesTheTable(double turn, double magnitude, double phase_deg)
    {
        var response = SimulatedResponse(turn / Wall.TimeConstant_s);

        Assert.Equal(magnitude, response.Magnitude, 0.01 * magnitude);
        Assert.Equal(phase_deg, response.Phase * 180 / Math.PI, 0.01 * phase_deg);
    }

    [Theory]
    [InlineData(0, 8, 0.05)]
    [InlineData(0.005, 0, 0.05)]
    [InlineData(0.005, 8, 0)]
    public void Of_NothingThere_Throws(double mass_kg, double film, double area_m2) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WallRelaxation.Of(mass_kg, film, area_m2));

    /// <summary>
    /// −(δp/p0)/(δV/V0) at the driving frequency: m·cv·dT/dt = −p·dV/dt − h·A·(T − T0) by the classical fourth-order
    /// rule, 0.8 L at 5 bar and 20 °C, 0.05 m² and 8 W/(m²·K) as <see cref="WallRelaxation.StrutEstimate"/> says.
    /// </summary>
    private static Complex SimulatedResponse(double omega)
    {
        const double volume = 0.8e-3, absolute = 5e5, wall = 293.15, conductance = 8 * 0.05, swing = 1e-3;
        const double gasConstant = 287.053, heat = 717.632; // J/(kg·K)
        const double mass = absolute * volume / (gasConstant * wall);
        const int stepsPerCycle = 400, settle = 20;
        var step = 2 * Math.PI / omega / stepsPerCycle;
        var temperature = wall;
        var sum = Complex.Zero;
        for (var i = 0; i < (settle + 1) * stepsPerCycle; i++)
        {
            var time = i * step;
            if (i >= settle * stepsPerCycle)
                sum += (PressureAt(time, temperature) / absolute - 1) * Complex.Exp(new Complex(0, -omega * time));
            temperature = Advance(time, temperature);
        }

        // Volume is 1 + swing·sin, whose own component is −j·swing/2.
        return -(sum / stepsPerCycle) / new Complex(0, -swing / 2);

        double VolumeAt(double time) => volume * (1 + swing * Math.Sin(omega * time));
        double PressureAt(double time, double kelvin) => mass * gasConstant * kelvin / VolumeAt(time);
        double Slope(double time, double kelvin) =>
            (-PressureAt(time, kelvin) * volume * swing * omega * Math.Cos(omega * time) - conductance * (kelvin - wall))
            / (mass * heat);
        double Advance(double time, double kelvin)
        {
            var first = Slope(time, kelvin);
            var second = Slope(time + step / 2, kelvin + step / 2 * first);
            var third = Slope(time + step / 2, kelvin + step / 2 * second);
            var fourth = Slope(time + step, kelvin + step * third);
            return kelvin + step / 6 * (first + 2 * second + 2 * third + fourth);
        }
    }
}
