using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

public sealed class AirSpringFitTests
{
    private const double Ambient_Pa = 101_325;

    private static readonly double[] _levels = [2e5, 3.5e5, 5e5];

    public static TheoryData<string> Names => [.. KnownSpring.All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Of_RowsWithoutScatter_ReproducesTheSpring(string name)
    {
        var known = KnownSpring.All.Single(s => s.Name == name);

        var fit = Fit(known.Rows(_levels, 25));

        foreach (var share in new[] { 0.1, 0.3, 0.5, 0.7, 0.9 })
        {
            double h = known.At(share), pg = known.GaugePressureFor_Pa(3300, h), area = known.Area_m2(h, pg), rate = known.Rate_N_per_m(h, pg, 1.38);
            Assert.Equal(area, fit.Spring.At(h, pg).EffectiveArea_m2, 1e-4 * area);
            Assert.Equal(rate, new StrutSpring(fit.Spring).SealedRate_N_per_m(h, pg, 1.38), 0.003 * rate);
            Assert.Equal(known.Volume_m3(h, pg), fit.Spring.At(h, pg).Volume_m3, 1e-4 * known.Volume_m3(h, pg));
        }

        Assert.False(fit.HasBand);
        Assert.Null(fit.Band(s => s.At(known.At(0.5), 3e5).EffectiveArea_m2));
        Assert.Empty(fit.SetAside);
        Assert.Equal(VolumeSource.Measured, fit.VolumeSource);
    }

    [Theory] // four levels and more, and an area that curves with gauge pressure: Ae + cube·pg²
    [InlineData(4, 0)]
    [InlineData(4, 1e-17)]
    [InlineData(4, 4e-16)]
    [InlineData(5, 4e-16)]
    public void Of_ManyLevelsWithoutScatter_ReproducesTheArea(int levels, double cube)
    {
        var known = KnownSpring.Elastic;
        var rows = known.Rows([.. Enumerable.Range(0, levels).Select(k => 1.5e5 + 4e5 * k / (levels - 1))], 25)
            .ConvertAll(r => r with { Force_N = r.Force_N + cube * Math.Pow(r.GaugePressure_Pa, 3) });

        var fit = Fit(rows);

        foreach (var (h, pg) in new[] { (0.045, 2e5), (0.055, 3e5), (0.07, 5e5) })
        {
            var area = known.Area_m2(h, pg) + cube * pg * pg;
            Assert.Equal(area, fit.Spring.At(h, pg).EffectiveArea_m2, 1e-4 * area);
        }
    }

    [Fact]
    public void Of_OneLevelTakenBothWays_GivesTheMeanCurveAndFriction()
    {
        var rows = BothWays(KnownSpring.Single, [3e5], friction_N: 12);

        var fit = Fit(rows);

        Assert.Equal(KnownSpring.Single.Area_m2(0.055, 3e5), fit.Spring.At(0.055, 3e5).EffectiveArea_m2, 1e-6);
        Assert.Equal(12, fit.Friction_N(0.055, 3e5)!.Value, 0.05);
        Assert.False(fit.Spring.DependsOnGaugePressure);
    }

    [Fact]
    public void Of_BothDirections_GivesTheMeanAndHalfTheDifference()
    {
        var fit = Fit(BothWays(KnownSpring.Elastic, _levels, friction_N: 20));

        Assert.Equal(KnownSpring.Elastic.Area_m2(0.055, 3.5e5), fit.Spring.At(0.055, 3.5e5).EffectiveArea_m2, 1e-6);
        Assert.Equal(20, fit.Friction_N(0.055, 3.5e5)!.Value, 0.1);
    }

    [Fact]
    public void Friction_OneDirection_IsUnknown() =>
        Assert.Null(Fit(KnownSpring.Single.Rows(_levels, 25, SweepDirection.Compressing)).Friction_N(0.055, 3e5));

    [Theory] // Terms the rows cannot tell apart must stay out: the curve is right where it was measured, whatever they lack.
    [InlineData(4e5, 1, 3)] // a second level at one height only
    [InlineData(4e5, 2, 3)]
    [InlineData(1e5, 1, 9)]
    public void Of_SecondLevelAtTooFewHeights_StaysNearTheMeasuredCurve(double second_Pa, int heights, int seed)
    {
        Random random = new(seed);
        var rows = KnownSpring.Single.Rows([3e5], 15);
        rows.AddRange(KnownSpring.Single.Rows([second_Pa], 15).Skip(7).Take(heights));
        for (var i = 0; i < rows.Count; i++) rows[i] = rows[i] with { Force_N = rows[i].Force_N + 3 * (2 * random.NextDouble() - 1) };

        var at = Fit(rows).Spring.At(0.055, 3e5);

        Assert.Equal(KnownSpring.Single.Area_m2(0.055, 3e5), at.EffectiveArea_m2, 0.1e-4);
        Assert.Equal(KnownSpring.Single.Volume_m3(0.055, 3e5), at.Volume_m3, 2e-6);
    }

    [Fact]
    public void Of_OneLevelTakenOneWayOnly_StaysNearTheTruth()
    {
        Random random = new(4);
        var rows = BothWays(KnownSpring.Single, [2e5], friction_N: 10);
        rows.AddRange(BothWays(KnownSpring.Single, [4e5], friction_N: 10).Where(r => r.Direction == SweepDirection.Compressing));
        for (var i = 0; i < rows.Count; i++) rows[i] = rows[i] with { Force_N = rows[i].Force_N + 3 * (2 * random.NextDouble() - 1) };

        var fit = Fit(rows);

        foreach (var pg in new[] { 2e5, 3e5, 4e5 })
            Assert.Equal(KnownSpring.Single.Area_m2(0.055, pg), fit.Spring.At(0.055, pg).EffectiveArea_m2, 0.5e-4);
        Assert.Equal(10, fit.Friction_N(0.055, 2e5)!.Value, 5.0);
    }

    [Fact]
    public void Of_RowsShuffled_GivesTheSameSpring()
    {
        var rows = Noisy(KnownSpring.Elastic, seed: 5);
        var shuffled = rows.ToArray();
        new Random(8).Shuffle(shuffled);

        AssertSame(Fit(rows), Fit([.. shuffled]), 1, 1, 1e-9);
    }

    [Theory] // Pressures (ambient with them), then areas, in another unit: the same spring.
    [InlineData(14.503773773020923, 1)]
    [InlineData(1, 1550.0031000062)]
    [InlineData(0.001, 10.7639104167097)]
    public void Of_OtherUnits_GivesTheSameSpring(double perPressure, double perArea)
    {
        var rows = Noisy(KnownSpring.Elastic, seed: 5);
        var other = rows.ConvertAll(r => r with
        {
            GaugePressure_Pa = r.GaugePressure_Pa * perPressure,
            Force_N = r.Force_N * perPressure * perArea,
            Volume_m3 = r.Volume_m3 * perArea,
        });

        AssertSame(Fit(rows), AirSpringFit.Of(new MeasuredSpring(other), Ambient_Pa * perPressure), perPressure, perArea, 1e-9);
    }

    [Fact]
    public void Of_OneWildReading_SetsItAside()
    {
        var rows = Noisy(KnownSpring.Single, seed: 11);
        var wild = 77;
        rows[wild] = rows[wild] with { Force_N = rows[wild].Force_N + 400, Line = 79 };

        var fit = Fit(rows);
        var clean = Fit([.. rows.Where((_, i) => i != wild)]);

        var aside = Assert.Single(fit.SetAside);
        Assert.Equal(79, aside.Line);
        Assert.InRange(aside.Miss_N, 300, 450);
        Assert.Equal(clean.Spring.At(0.055, 3e5).EffectiveArea_m2, fit.Spring.At(0.055, 3e5).EffectiveArea_m2, 1e-8);
    }

    [Fact]
    public void Of_SealedRowsBeside_NeverChangesTheAreaCurve()
    {
        var rows = Noisy(KnownSpring.Single, seed: 21);
        List<SpringRow> more = [.. rows, .. Sealed(KnownSpring.Single, AirMode.SealedFast, 1.3, 4e5).Select(r => r with { Force_N = r.Force_N * 1.2 })];

        var (without, with) = (Fit(rows), Fit(more));

        foreach (var h in new[] { 0.041, 0.05, 0.06, 0.074 })
            Assert.Equal(without.Spring.At(h, 3e5).EffectiveArea_m2, with.Spring.At(h, 3e5).EffectiveArea_m2);
        Assert.Null(without.Sealed);
        Assert.Equal(25, with.Sealed!.Value.Rows);
        Assert.InRange(with.Sealed.Value.RootMeanSquare_N, 300, 2000);
    }

    [Theory]
    [InlineData(1.30)]
    [InlineData(1.38)]
    public void Exponent_FastSweeps_IsRecoveredWithItsInterval(double exponent)
    {
        Random random = new(2);
        List<SpringRow> rows = [.. KnownSpring.Single.Rows(_levels, 25)];
        foreach (var (pg, name) in new[] { (2.5e5, "a"), (3.5e5, "b"), (4.5e5, "c") })
        {
            var own = exponent + 0.01 * (2 * random.NextDouble() - 1);
            rows.AddRange(Sealed(KnownSpring.Single, AirMode.SealedFast, own, pg).Select(r => r with { Sweep = name }));
        }

        var found = Fit(rows).Exponent!.Value;

        Assert.Equal(3, found.Sweeps);
        Assert.Equal(exponent, found.Value, 0.01);
        Assert.InRange(exponent, found.Low, found.High);
        Assert.InRange(found.High - found.Low, 1e-4, 0.08);
    }

    [Fact]
    public void Exponent_TwoSweeps_HasStudentsInterval() // mean 1.30, half difference 0.02: 1.30 ± 12.706·0.02
    {
        List<SpringRow> rows = [.. KnownSpring.Single.Rows(_levels, 25)];
        foreach (var (pg, n) in new[] { (3e5, 1.28), (3e5, 1.32) })
            rows.AddRange(Sealed(KnownSpring.Single, AirMode.SealedFast, n, pg).Select(r => r with { Sweep = $"{n}" }));

        var found = Fit(rows).Exponent!.Value;

        Assert.Equal(1.30, found.Value, 5e-4);
        Assert.Equal(0.2541, found.High - found.Value, 0.005);
    }

    [Fact]
    public void Exponent_VolumeRestsOnFastSweepsToo_IsUnknown()
    {
        List<SpringRow> rows = [.. KnownSpring.Single.Rows(_levels, 25, volume: false), .. Sealed(KnownSpring.Single, AirMode.SealedFast, 1.3, 3e5)];

        var fit = Fit(rows);

        Assert.Equal(VolumeSource.SealedSweeps, fit.VolumeSource);
        Assert.Null(fit.Exponent);
    }

    [Theory]
    [InlineData("single", 0.015)]
    [InlineData("double", 0.015)]
    [InlineData("elastic", 0.030)] // sealed sweeps do not tell how far the wall gives at one height; the least is taken
    public void Volume_FromSealedSlowSweeps_IsNearTheTruth(string name, double share)
    {
        var known = KnownSpring.All.Single(s => s.Name == name);
        List<SpringRow> rows = [.. known.Rows(_levels, 25, volume: false)];
        foreach (var (pg, sweep) in new[] { (2.5e5, "a"), (4e5, "b") })
            rows.AddRange(Sealed(known, AirMode.SealedSlow, 1, pg).Select(r => r with { Sweep = sweep }));

        var fit = Fit(rows);

        Assert.Equal(VolumeSource.SealedSweeps, fit.VolumeSource);
        foreach (var place in new[] { 0.1, 0.5, 0.9 })
        {
            var volume = known.Volume_m3(known.At(place), 3.5e5);
            Assert.Equal(volume, fit.Spring.At(known.At(place), 3.5e5).Volume_m3, share * volume);
        }
    }

    [Theory]
    [InlineData(2e5)]
    [InlineData(5e5)]
    public void Volume_MeasuredAtOneGaugePressure_HoldsAtThatOne(double measuredAt_Pa)
    {
        // A wall that gives more the higher it stands: ∂V/∂pg must be assumed, the reading must not move.
        KnownSpring soft = KnownSpring.Single with { C = h => 4e-10 * (0.08 - h) };
        List<SpringRow> rows = soft.Rows(_levels, 25, volume: false);
        rows.Add(new SpringRow(0.055, measuredAt_Pa, 0, soft.Volume_m3(0.055, measuredAt_Pa), Mode: AirMode.SealedSlow));

        var fit = Fit(rows);

        Assert.Equal(VolumeSource.MeasuredAnchor, fit.VolumeSource);
        Assert.False(fit.StretchMeasured);
        Assert.Equal(soft.Volume_m3(0.055, measuredAt_Pa), fit.Spring.At(0.055, measuredAt_Pa).Volume_m3, 1e-10);
        Assert.True(fit.Spring.At(0.075, 3.5e5).VolumeByGaugePressure_m3_per_Pa >= -1e-18);
    }

    [Theory]
    [InlineData(AirMode.Regulated, 1.25)]
    [InlineData(AirMode.SealedFast, 1.25)]
    [InlineData(AirMode.SealedSlow, 1.1)]
    public void SmallStrokes_StifferThanTheCurve_GiveTheRatio(AirMode mode, double ratio)
    {
        var known = KnownSpring.Single;
        double h = 0.057, pg = 3e5, rate = mode switch
        {
            AirMode.Regulated => -pg * known.AreaSlope_m(h, pg),
            AirMode.SealedSlow => known.Rate_N_per_m(h, pg, 1),
            _ => known.Rate_N_per_m(h, pg, 1.38),
        };
        List<SpringRow> rows = [.. known.Rows(_levels, 25), .. Enumerable.Range(-2, 5).Select(k => new SpringRow(
            h + 0.0005 * k, pg, known.Force_N(h, pg) - ratio * rate * 0.0005 * k, Mode: mode, Amplitude_m: 0.001, Sweep: "stroke"))];

        var stroke = Assert.Single(Fit(rows).SmallStrokes);

        Assert.Equal(ratio, stroke.Ratio, 0.01);
        Assert.Equal(0.001, stroke.Amplitude_m);
        Assert.Equal(mode, stroke.Mode);
    }

    [Fact]
    public void Lacks_SevenRegulatedRows_AsksForEight() => Assert.StartsWith(
        "at least 8 regulated rows", AirSpringFit.Lacks(new MeasuredSpring(KnownSpring.Single.Rows([3e5], 7))), StringComparison.Ordinal);

    [Fact]
    public void Lacks_ThreeHeights_AsksForFour() => Assert.StartsWith(
        "regulated rows at 4 heights", AirSpringFit.Lacks(new MeasuredSpring(KnownSpring.Single.Rows(_levels, 3))), StringComparison.Ordinal);

    [Fact]
    public void Lacks_NoVolumeAndNothingSealed_AsksForOne() => Assert.StartsWith(
        "a volume at one height", AirSpringFit.Lacks(new MeasuredSpring(KnownSpring.Single.Rows(_levels, 25, volume: false))), StringComparison.Ordinal);

    [Fact]
    public void Lacks_SealedSweepsOfTwoRows_AsksForLongerOnes()
    {
        var rows = KnownSpring.Single.Rows(_levels, 25, volume: false);
        foreach (var name in new[] { "a", "b" })
            rows.AddRange(Sealed(KnownSpring.Single, AirMode.SealedSlow, 1, 3e5).Take(2).Select(r => r with { Sweep = name }));

        Assert.StartsWith("a volume at one height", AirSpringFit.Lacks(new MeasuredSpring(rows)), StringComparison.Ordinal);
    }

    [Fact]
    public void Lacks_EnoughRows_IsNothing()
    {
        Assert.Null(AirSpringFit.Lacks(new MeasuredSpring(KnownSpring.Single.Rows([3e5], 8))));
        Assert.Null(AirSpringFit.Lacks(new CharacteristicSpring([new(0.05, 0.01, 0.001), new(0.06, 0.01, 0.0011)])));
    }

    [Fact]
    public void Of_TooFewRows_Throws() =>
        Assert.Throws<ArgumentException>(() => Fit(KnownSpring.Single.Rows([3e5], 7)));

    [Theory]
    [InlineData(0.0399, false)]
    [InlineData(0.040, true)]
    [InlineData(0.055, true)]
    [InlineData(0.075, true)]
    [InlineData(0.0751, false)]
    public void Covers_Height_IsTrueWithinTheData(double height_m, bool covered) =>
        Assert.Equal(covered, Fit(KnownSpring.Single.Rows(_levels, 25)).Spring.Covers(height_m));

    [Fact]
    public void Of_RowsWithScatter_HasABandAroundTheAnswer()
    {
        var fit = Fit(Noisy(KnownSpring.Single, seed: 3));

        var (low, high) = fit.Band(s => s.At(0.055, 3e5).EffectiveArea_m2)!.Value;

        Assert.InRange(fit.Spring.At(0.055, 3e5).EffectiveArea_m2, low, high);
        Assert.InRange((high - low) / low, 1e-4, 0.02);
        Assert.InRange(fit.ReadingDeviation_N, 2, 10);
    }

    [Fact]
    public void Of_TwoSweeps_SaysThatTheBandRestsOnBlocks()
    {
        Assert.True(Fit(BothWays(KnownSpring.Single, [3e5], 5)).BandFromBlocks);
        Assert.False(Fit(BothWays(KnownSpring.Single, _levels, 5)).BandFromBlocks);
    }

    private static AirSpringFit Fit(List<SpringRow> rows) => AirSpringFit.Of(new MeasuredSpring(rows), Ambient_Pa);

    private static List<SpringRow> Noisy(KnownSpring known, int seed) => LoadFrame.Rows(known, seed, named: true);

    private static List<SpringRow> BothWays(KnownSpring known, double[] levels, double friction_N) =>
    [
        .. known.Rows(levels, 25, SweepDirection.Compressing).Select(r => r with { Force_N = r.Force_N + friction_N }),
        .. known.Rows(levels, 25, SweepDirection.Extending).Select(r => r with { Force_N = r.Force_N - friction_N }),
    ];

    // Shut in at the greatest height with a gauge pressure, squeezed at constant pabs·Vⁿ.
    private static List<SpringRow> Sealed(KnownSpring known, AirMode mode, double n, double start_Pa)
    {
        var kept = (start_Pa + Ambient_Pa) * Math.Pow(known.Volume_m3(known.Greatest_m, start_Pa), n);
        return [.. Enumerable.Range(0, 25).Select(k =>
        {
            double h = known.Greatest_m - (known.Greatest_m - known.Least_m) * k / 24, pg = start_Pa;
            for (var step = 0; step < 40; step++) pg = kept / Math.Pow(known.Volume_m3(h, pg), n) - Ambient_Pa;
            return new SpringRow(h, pg, known.Force_N(h, pg), Mode: mode);
        })];
    }

    private static void AssertSame(AirSpringFit one, AirSpringFit other, double perPressure, double perArea, double relative)
    {
        foreach (var (h, pg) in new[] { (0.045, 2.5e5), (0.055, 3.3e5), (0.07, 4.8e5) })
        {
            var (a, b) = (one.Spring.At(h, pg), other.Spring.At(h, pg * perPressure));
            Near(a.EffectiveArea_m2 * perArea, b.EffectiveArea_m2);
            Near(a.Volume_m3 * perArea, b.Volume_m3);
            var bandOne = one.Band(s => s.At(h, pg).EffectiveArea_m2)!.Value;
            var bandOther = other.Band(s => s.At(h, pg * perPressure).EffectiveArea_m2)!.Value;
            Near(bandOne.Low * perArea, bandOther.Low);
            Near(bandOne.High * perArea, bandOther.High);
        }

        void Near(double expected, double found) => Assert.Equal(expected, found, relative * Math.Abs(expected));
    }
}
