using System.Numerics;
using Bellowsmith.Physics;
using Bellowsmith.Physics.Numerics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class TwoMassTests
{
    private static readonly TwoMass _car = new(240, 36, 16_000, 980, 160_000);

    private static readonly Gen<TwoMass> _cars = Gen.Select(
        Gen.Double[50, 1000], Gen.Double[5, 100], Gen.Double[2e3, 2e5], Gen.Double[1, 5e4], Gen.Double[2e4, 1e6],
        (body, wheel, rate, damping, tyre) => new TwoMass(body, wheel, rate, damping, tyre));

    /// <summary>(s+1)(s+2)(s+30)(s+40), (s+1)²(s+30)², (s²+2s+2)(s²+6s+25), (s²+4)(s²+9) and (s²+2s+5)(s+3)(s+4), multiplied out by hand.</summary>
    [Theory]
    [InlineData(73, 1412, 3740, 2400, 3, 2, 70, 1200)]
    [InlineData(62, 1021, 1860, 900, 2, 1, 60, 900)]
    [InlineData(8, 39, 62, 50, 2, 2, 6, 25)]
    [InlineData(0, 13, 0, 36, 0, 4, 0, 9)]
    [InlineData(9, 31, 59, 60, 2, 5, 7, 12)]
    public void Factor_OfAProduct_GivesItsTwoQuadratics(double a, double b, double c, double d, double slow1, double slow0, double fast1, double fast0)
    {
        var (slow, fast) = Quartic.Factor(a, b, c, d);

        Assert.Equal([slow1, slow0, fast1, fast0], [Near(slow.Linear), Near(slow.Constant), Near(fast.Linear), Near(fast.Constant)]);
    }

    [Fact] // exp of a turning matrix is the turn; of a nilpotent one, its short series
    public void Of_MatricesWithKnownExponentials_IsExact()
    {
        double[] turn = MatrixExponential.Of([0, -3, 3, 0], 2), shear = MatrixExponential.Of([0, 7, 0, 0], 2);

        Assert.Equal([-0.9899924966004454, -0.1411200080598672], [turn[0], turn[1]], (a, b) => Math.Abs(a - b) < 1e-14);
        Assert.Equal([1, 7, 0, 1], shear);
    }

    [Fact]
    public void Modes_AnyCar_SatisfyItsCharacteristicEquation() => _cars.Sample(car =>
    {
        var (body, wheel) = car.Modes;
        var roots = new[] { body.Eigenvalues.First, body.Eigenvalues.Second, wheel.Eigenvalues.First, wheel.Eigenvalues.Second };
        Assert.All(roots, s => Assert.True(Rest(car, s) < 1e-11, $"{s} of {car} leaves {Rest(car, s)}"));
        Assert.True(body.Product_rad2_per_s2 <= wheel.Product_rad2_per_s2 && roots.All(s => s.Real < 0));
        Assert.True(body.Rings || wheel.Rings || roots[1].Real >= roots[2].Real, "Of four real roots the slow two are the body's.");
    });

    [Fact] // all masses, rates and damping ten times: the same modes
    public void Modes_EverythingHeavierAndStiffer_Stay() => _cars.Sample(car =>
    {
        TwoMass tenfold = new(10 * car.SprungMass_kg, 10 * car.UnsprungMass_kg, 10 * car.WheelRate_N_per_m,
            10 * car.WheelDamping_N_s_per_m, 10 * car.TyreRate_N_per_m);
        Assert.Equal(car.Modes.Body.DampingRatio, tenfold.Modes.Body.DampingRatio, 1e-6 * car.Modes.Body.DampingRatio);
    });

    [Fact] // a tyre a thousand times as stiff as the spring leaves the body alone: √(k/ms)/2π and c/(2√(k·ms)) by hand
    public void Modes_OnAVeryStiffTyre_AreThoseOfOneMass()
    {
        var body = new TwoMass(250, 40, 10_000, 1000, 1e9).Modes.Body;

        Assert.Equal(1.006584, body.NaturalFrequency_Hz, 2e-5);
        Assert.Equal(0.316228, body.DampingRatio, 2e-5);
    }

    [Fact]
    public void Modes_WithoutDamper_DoNotDecay()
    {
        var (body, wheel) = new TwoMass(240, 36, 16_000, 0, 160_000).Modes;

        Assert.Equal([0, 0], [Near(body.DampingRatio), Near(wheel.DampingRatio)]);
    }

    [Fact]
    public void Modes_Overdamped_RatioFromProductAndSumAndNoFrequency()
    {
        TwoMassMode mode = new(Sum_rad_per_s: 5, Product_rad2_per_s2: 4); // roots −1 and −4

        Assert.False(mode.Rings);
        Assert.Null(mode.DampedFrequency_Hz);
        Assert.Equal(1.25, mode.DampingRatio);
        Assert.Equal((-1, -4), mode.Eigenvalues);
        Assert.Contains(true, new[] { 4000, 8000, 16_000 }.Select(c => _car with { }).Select(_ => Overdamped(8000)));
    }

    [Fact] // four times the damping of the car above; eigenvalues of its matrix by a public linear-algebra package
    public void Modes_OfAStronglyDampedCar_BodyCreepsAndWheelRings()
    {
        var (body, wheel) = new TwoMass(240, 36, 16_000, 4000, 160_000).Modes;

        Assert.Equal([-6.14552839, -73.07614467], [body.Eigenvalues.First.Real, body.Eigenvalues.Second.Real], (a, b) => Math.Abs(a - b) < 1e-8);
        Assert.Equal(-24.27805236, wheel.Eigenvalues.First.Real, 1e-8);
        Assert.Equal(8.38715414, wheel.Eigenvalues.First.Imaginary, 1e-8);
    }

    [Fact] // the same road in one step and in ten
    public void Advance_OneStepOrTen_IsTheSame()
    {
        double[] once = [0.01, -0.2, 0.02, 0.3], often = [.. once];
        _car.Step(0.02).Advance(once, 0.005, 0.025);
        var part = _car.Step(0.002);
        for (var i = 0; i < 10; i++) part.Advance(often, 0.005 + 0.002 * i, 0.007 + 0.002 * i);

        Assert.All(once.Zip(often), pair => Assert.Equal(pair.First, pair.Second, 1e-13));
    }

    [Fact] // on a level road 0.1 m up, both masses come to rest there
    public void Advance_OntoAStep_SettlesOnTop()
    {
        double[] state = [0, 0, 0, 0];
        var step = _car.Step(0.01);
        for (var i = 0; i < 3000; i++) step.Advance(state, 0.1, 0.1);

        Assert.All(state.Zip([0.1, 0, 0.1, 0]), pair => Assert.Equal(pair.Second, pair.First, 1e-9));
    }

    [Fact] // a sinusoidal road, stepped until steady, swings as the response says; chords of 1/2000 of a cycle cost 1e-6 of the road
    public void At_AFrequency_IsWhatSteppingSettlesTo()
    {
        const int cycle = 2000;
        const double frequency_Hz = 3, step_s = 1 / (cycle * frequency_Hz), turn = 2 * Math.PI / cycle;
        double[] state = [0, 0, 0, 0];
        var step = _car.Step(step_s);
        Complex travel = 0, force = 0;
        for (var i = 0; i < 30 * cycle; i++)
        {
            if (i >= 29 * cycle)
            {
                travel += (state[2] - state[0]) * Complex.Exp(new(0, -i * turn)) / cycle;
                force += 160_000 * (Math.Sin(i * turn) - state[2]) * Complex.Exp(new(0, -i * turn)) / cycle;
            }

            step.Advance(state, Math.Sin(i * turn), Math.Sin((i + 1) * turn));
        }

        // The road sin(ωt) has component 1/2j, its velocity ω/2.
        var (_, travelPerVelocity, forcePerVelocity) = _car.At(frequency_Hz);
        Assert.True((travel / (Math.PI * frequency_Hz) - travelPerVelocity).Magnitude < 1e-4 * travelPerVelocity.Magnitude);
        Assert.True((force / (Math.PI * frequency_Hz) - forcePerVelocity).Magnitude < 1e-4 * forcePerVelocity.Magnitude);
    }

    [Fact] // Newton's law for both masses together: the tyre's force accelerates them
    public void At_AnyFrequency_TyreForceCarriesBothMasses() => Gen.Select(_cars, Gen.Double[0.05, 200]).Sample((car, frequency_Hz) =>
    {
        var at = car.At(frequency_Hz);
        Complex s = new(0, 2 * Math.PI * frequency_Hz);
        var wheelAcceleration = at.BodyAcceleration_per_s + s * s * at.Travel_s;
        var inertia = car.SprungMass_kg * at.BodyAcceleration_per_s + car.UnsprungMass_kg * wheelAcceleration;
        Assert.True((inertia - at.TyreForce_N_s_per_m).Magnitude < 1e-9 * (car.SprungMass_kg + car.UnsprungMass_kg) * wheelAcceleration.Magnitude);
    });

    [Fact] // where both modes are damped by 0.01 or more, the quadrature over all of the band misses nothing but the tyre's tail
    public void InBand_AnyCar_IsTheClosedForm() => _cars.Where(car => Math.Min(car.Modes.Body.DampingRatio, car.Modes.Wheel.DampingRatio) > 0.01)
        .Sample(car =>
    {
        var (exact, found) = (car.OnWhiteVelocity(1e-4)!.Value, car.InBand(_ => 1e-4, 1e-4, 1e8));
        Assert.Equal(1, found.BodyAcceleration_m2_per_s4 / exact.BodyAcceleration_m2_per_s4, 1e-4);
        Assert.Equal(1, found.Travel_m2 / exact.Travel_m2, 1e-4);
        Assert.Equal(1, found.TyreForce_N2 / exact.TyreForce_N2, 1e-4);
    }, iter: 200);

    [Fact]
    public void OnWhiteVelocity_WithoutDamper_IsNull() => Assert.Null(new TwoMass(240, 36, 16_000, 0, 160_000).OnWhiteVelocity(1e-4));

    [Theory]
    [InlineData(0, 36, 16_000, 980, 160_000)]
    [InlineData(240, -36, 16_000, 980, 160_000)]
    [InlineData(240, 36, double.NaN, 980, 160_000)]
    [InlineData(240, 36, 16_000, -1, 160_000)]
    [InlineData(240, 36, 16_000, 980, double.PositiveInfinity)]
    public void New_ValueOutOfRange_Throws(double body, double wheel, double rate, double damping, double tyre) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new TwoMass(body, wheel, rate, damping, tyre));

    private static bool Overdamped(double damping) => !new TwoMass(240, 36, 16_000, damping, 160_000).Modes.Body.Rings;

    private static double Near(double value) => Math.Round(value, 9);

    /// <summary>The characteristic polynomial at s against the sum of its terms' sizes.</summary>
    private static double Rest(TwoMass car, Complex s)
    {
        double both = car.SprungMass_kg + car.UnsprungMass_kg;
        Complex[] terms =
        [
            car.SprungMass_kg * car.UnsprungMass_kg * s * s * s * s,
            car.WheelDamping_N_s_per_m * both * s * s * s,
            (car.WheelRate_N_per_m * both + car.TyreRate_N_per_m * car.SprungMass_kg) * s * s,
            car.WheelDamping_N_s_per_m * car.TyreRate_N_per_m * s,
            car.WheelRate_N_per_m * car.TyreRate_N_per_m,
        ];
        return terms.Aggregate((a, b) => a + b).Magnitude / terms.Sum(term => term.Magnitude);
    }
}
