using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

public sealed class StrutSpringTests
{
    // A seal of 15 cm² (an inverted damper), 100 cm³ taken up at drive and 40 cm³ of line.
    private const double Seal_m2 = 15e-4, Displaced_m3 = 100e-6, Line_m3 = 40e-6;

    private static readonly double[] _levels = [2e5, 3.5e5, 5e5];

    public static TheoryData<string, double, double, double> Loops
    {
        get
        {
            TheoryData<string, double, double, double> loops = [];
            foreach (var name in Springs.Keys)
                foreach (var (height, low, high) in new[] { (0.25, 2.2e5, 2.6e5), (0.5, 3e5, 4e5), (0.7, 4.2e5, 4.8e5) })
                    loops.Add(name, height, low, high);
            return loops;
        }
    }

    private static readonly Dictionary<string, (AirSpring Spring, double Tolerance)> Springs = new()
    {
        ["parabolic characteristic"] = (Parabolic(), 1e-9),
        ["fitted single"] = (AirSpringFit.Of(new MeasuredSpring(KnownSpring.Single.Rows(_levels, 25))).Spring, 2e-4),
        ["fitted elastic"] = (AirSpringFit.Of(new MeasuredSpring(KnownSpring.Elastic.Rows(_levels, 25))).Spring, 2e-4),
        ["fitted elastic, one volume"] = (AirSpringFit.Of(new MeasuredSpring(
            [.. KnownSpring.Elastic.Rows(_levels, 25, volume: false),
             new SpringRow(0.055, 2e5, 0, KnownSpring.Elastic.Volume_m3(0.055, 2e5), Mode: AirMode.SealedSlow)])).Spring, 1e-9),
        ["fitted elastic, four levels"] = (AirSpringFit.Of(new MeasuredSpring(
            [.. KnownSpring.Elastic.Rows([1.5e5, 2.75e5, 4e5, 5.5e5], 25, volume: false),
             new SpringRow(0.055, 2e5, 0, KnownSpring.Elastic.Volume_m3(0.055, 2e5), Mode: AirMode.SealedSlow)])).Spring, 1e-9),
        ["fitted, area curved in gauge pressure"] = (AirSpringFit.Of(new MeasuredSpring(
            [.. KnownSpring.Elastic.Rows([1.5e5, 2.75e5, 4e5, 5.5e5], 25, volume: false)
                .Select(r => r with { Force_N = r.Force_N + 4e-16 * r.GaugePressure_Pa * r.GaugePressure_Pa * r.GaugePressure_Pa }),
             new SpringRow(0.055, 2e5, 0, 1e-3, Mode: AirMode.SealedSlow)])).Spring, 1e-9),
    };

    [Fact] // the term above: ∂Ae/∂pg = 2·4e-16·pg more
    public void At_AreaCurvedInGaugePressure_IsCurved()
    {
        var (straight, curved) = (Springs["fitted elastic, four levels"].Spring, Springs["fitted, area curved in gauge pressure"].Spring);

        foreach (var pg in new[] { 2e5, 5e5 })
            Assert.Equal(8e-16 * pg, curved.At(0.055, pg).AreaByGaugePressure_m2_per_Pa - straight.At(0.055, pg).AreaByGaugePressure_m2_per_Pa, 4e-12);
    }

    [Theory]
    [MemberData(nameof(Loops))]
    public void ForceAndVolume_AroundALoop_DoNoWork(string name, double share, double low_Pa, double high_Pa)
    {
        var (spring, tolerance) = Springs[name];
        var height = spring.LeastHeight_m + share * (spring.GreatestHeight_m - spring.LeastHeight_m);
        var strut = new StrutSpring(spring, Seal_m2, Displaced_m3, Line_m3, DriveHeight_m: height - 0.002);
        double from = height - 0.003, to = height + 0.003;

        // ∮(pg dV − F dh); at constant height ∫pg dV = [pg·V] − ∫V dpg.
        var bottom = low_Pa * (Volume(to, low_Pa) - Volume(from, low_Pa)) - Work(from, to, low_Pa);
        var right = high_Pa * Volume(to, high_Pa) - low_Pa * Volume(to, low_Pa) - Simpson(p => Volume(to, p), low_Pa, high_Pa);
        var top = high_Pa * (Volume(from, high_Pa) - Volume(to, high_Pa)) + Work(from, to, high_Pa);
        var left = low_Pa * Volume(from, low_Pa) - high_Pa * Volume(from, high_Pa) + Simpson(p => Volume(from, p), low_Pa, high_Pa);

        Assert.Equal(0, bottom + right + top + left, tolerance * (Work(from, to, high_Pa) - Work(from, to, low_Pa)));

        double Volume(double h, double p) => strut.Volume_m3(h, p);
        double Work(double a, double b, double p) => Simpson(h => strut.Force_N(h, p), a, b);
    }

    [Theory]
    [MemberData(nameof(Loops))]
    public void SealedRate_AlongTheSealedForce_IsItsSlope(string name, double share, double low_Pa, double high_Pa)
    {
        const double step_m = 2e-5;
        var spring = Springs[name].Spring;
        double height = spring.LeastHeight_m + share * (spring.GreatestHeight_m - spring.LeastHeight_m), pg = (low_Pa + high_Pa) / 2;
        var strut = new StrutSpring(spring, Seal_m2, Displaced_m3, Line_m3, DriveHeight_m: height);

        var differenced = (Force(height - step_m) - Force(height + step_m)) / (2 * step_m);

        Assert.Equal(differenced, strut.SealedRate_N_per_m(height, pg, 1.3), 1e-5 * Math.Abs(differenced));

        double Force(double h) => strut.Force_N(h, strut.SealedGaugePressure_Pa(h, height, pg, 1.3));
    }

    [Fact]
    public void SealedGaugePressure_BackToItsHeight_IsTheStart()
    {
        var strut = new StrutSpring(Springs["fitted elastic"].Spring, Seal_m2, Displaced_m3, Line_m3, DriveHeight_m: 0.06);

        var there = strut.SealedGaugePressure_Pa(0.052, 0.06, 3e5, 1.38);

        Assert.True(there > 3e5);
        Assert.Equal(3e5, strut.SealedGaugePressure_Pa(0.06, 0.052, there, 1.38), 1e-4);
    }

    [Fact]
    public void ForceAndVolume_WithRodInside_LoseTheSameArea()
    {
        var spring = Parabolic();
        StrutSpring bare = new(spring), strut = new(spring, Seal_m2, Displaced_m3, Line_m3, DriveHeight_m: 0.06);

        Assert.Equal(3e5 * 15e-4, bare.Force_N(0.055, 3e5) - strut.Force_N(0.055, 3e5), 1e-9); // pg·As = 450 N
        Assert.Equal(60e-6, bare.Volume_m3(0.06, 3e5) - strut.Volume_m3(0.06, 3e5), 1e-12); // 100 − 40 cm³ at drive
        Assert.Equal(75e-6, bare.Volume_m3(0.07, 3e5) - strut.Volume_m3(0.07, 3e5), 1e-12); // 10 mm up: 15 cm³ more rod inside
    }

    [Theory]
    [InlineData(80e-6)]
    [InlineData(120e-6)]
    public void SealedRate_WithBodiesInside_IsEightToFourteenPercentStiffer(double displaced_m3)
    {
        // A spring whose gas term is nearly all of its rate: 105 cm² constant, 960 cm³.
        CharacteristicRow[] rows = [.. Enumerable.Range(0, 5).Select(k => new CharacteristicRow(0.06 + 0.01 * k, 0.0105, 0.00096 + 0.0105 * 0.01 * (k - 2)))];
        var spring = AirSpring.FromCharacteristic(rows);

        var share = new StrutSpring(spring, 0, displaced_m3).SealedRate_N_per_m(0.08, 3e5, 1.38)
            / new StrutSpring(spring).SealedRate_N_per_m(0.08, 3e5, 1.38);

        Assert.Equal(960e-6 / (960e-6 - displaced_m3), share, 1e-9); // +9.1 % and +14.3 %
        Assert.InRange(share, 1.08, 1.145);
    }

    [Theory]
    [InlineData(500)]
    [InlineData(3300)]
    [InlineData(7000)]
    public void GaugePressureFor_AForce_CarriesIt(double force_N)
    {
        var strut = new StrutSpring(Springs["fitted elastic"].Spring, Seal_m2);

        Assert.Equal(force_N, strut.Force_N(0.06, strut.GaugePressureFor_Pa(force_N, 0.06)), 1e-6);
    }

    [Fact]
    public void GaugePressureFor_SealAsLargeAsTheSpring_IsNotANumber() =>
        Assert.Equal(double.NaN, new StrutSpring(Parabolic(), 0.02).GaugePressureFor_Pa(3000, 0.06));

    [Fact]
    public void SealedGaugePressure_NoVolumeLeft_IsNotANumber() =>
        Assert.Equal(double.NaN, new StrutSpring(Parabolic(), 0, 0.00085).SealedGaugePressure_Pa(0.046, 0.07, 3e5, 1.38));

    // Ae = 120 cm² − 1.0 cm²/mm, V its integral exactly: not-a-knot splines reproduce both.
    private static AirSpring Parabolic() => AirSpring.FromCharacteristic([.. Enumerable.Range(0, 8).Select(k =>
    {
        double h = 0.045 + 0.005 * k, x = h - 0.06;
        return new CharacteristicRow(h, 0.012 - 0.1 * x - 0.8 * x * x, 0.0009 + 0.012 * x - 0.05 * x * x - 0.8 / 3 * x * x * x);
    })]);

    private static double Simpson(Func<double, double> f, double a, double b)
    {
        const int pieces = 200;
        var sum = f(a) + f(b);
        for (var k = 1; k < pieces; k++) sum += (k % 2 == 0 ? 2 : 4) * f(a + (b - a) * k / pieces);
        return sum * (b - a) / pieces / 3;
    }
}
