using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class DamperFitTests
{
    private static readonly double[] _speeds = [0.05, 0.13, 0.26, 0.52, 1.04];

    /// <summary>Law of the invented damper: click k softens by 8 %, rebound bends digressively.</summary>
    private static double Law(double click, double v) =>
        Math.Pow(0.92, click) * (v > 0 ? 900 * Math.Tanh(v / 0.2) + 700 * v : 350 * Math.Tanh(v / 0.15) + 500 * v);

    [Fact]
    public void Of_CleanRows_MeetsThemAndReportsNoRepeatability()
    {
        var fit = DamperFit.Of(new DynoPoints(Rows([0, 4, 8]), GasIn: false));

        Assert.Equal([0, 4, 8], fit.Damper!.Clicks);
        Assert.Equal(Law(4, -0.26), fit.Damper.Force_N(4, -0.26), 1e-9);
        Assert.Equal((1.04, 1.04), (fit.Damper.GreatestRebound_m_per_s, fit.Damper.GreatestCompression_m_per_s));
        Assert.Null(fit.Repeatability_N);
        Assert.Null(fit.GasForce_N);
        Assert.Empty(fit.LeftOut);
        Assert.Equal([1, 2, 3, 5, 6, 7], fit.MissingClicks);
    }

    /// <summary>Two runs 10 N apart at each of ten speeds: deviation 10/√2 of ten degrees.</summary>
    [Fact]
    public void Of_TwoRuns_PoolsTheirDeviation()
    {
        var rows = Rows([3], "a").Select(p => p with { Force_N = p.Force_N - 5 })
            .Concat(Rows([3], "b").Select(p => p with { Force_N = p.Force_N + 5, Velocity_m_per_s = p.Velocity_m_per_s * 1.002 }));
        var fit = DamperFit.Of(new DynoPoints([.. rows], GasIn: false));

        Assert.Equal(7.0711, fit.Repeatability_N!.Value, 1e-4);
        Assert.Equal(10, fit.RepeatabilityDegrees);
        Assert.Equal(Law(3, 0.26), fit.Damper!.Force_N(3, 0.26 * 1.001), 1e-9);
        Assert.Equal(["a", "b"], fit.Runs(0.1).Select(run => run.Run));
    }

    [Fact]
    public void Of_ShuffledRows_IsTheSameDamper() => Gen.Shuffle(Rows([0, 1], "a").Concat(Rows([0, 1], "b")).ToArray()).Sample(rows =>
        Assert.Equal(Law(1, 0.13), DamperFit.Of(new DynoPoints(rows, GasIn: false)).Damper!.Force_N(1, 0.13), 1e-9));

    /// <summary>Readings with gas lie lower by it; strokes alike at the slowest speed give it exactly.</summary>
    [Fact]
    public void Of_RowsWithGas_TakesItOut()
    {
        var rows = _speeds.SelectMany(v => new[] { new DynoPoint(0, v, 2000 * v - 340), new DynoPoint(0, -v, -2000 * v - 340) });
        var fit = DamperFit.Of(new DynoPoints([.. rows], GasIn: true));

        Assert.Equal(340, fit.GasForce_N!.Value, 1e-9);
        Assert.Equal(1040, fit.Damper!.Force_N(0, 0.52), 1e-9);
    }

    [Fact]
    public void Of_CrossedSign_LeavesThatRowOutByItsLine()
    {
        var fit = DamperFit.Of(new DynoPoints([.. Rows([0]).Select(p => p.Line == 4 ? p with { Force_N = -p.Force_N } : p)], GasIn: false));

        var left = Assert.Single(fit.LeftOut);
        Assert.Equal((DynoTrouble.CrossedSigns, 0), (left.Trouble, left.Click));
        Assert.Equal([4], left.Lines);
    }

    [Fact]
    public void Of_CellAtItsEnd_LeavesTheEqualExtremesOut()
    {
        var fit = DamperFit.Of(new DynoPoints([.. Rows([0, 1, 2]).Select(p => p with { Force_N = Math.Min(p.Force_N, 1300) })], GasIn: false));

        Assert.All(fit.LeftOut, left => Assert.Equal(DynoTrouble.SaturatedCell, left.Trouble));
        Assert.Equal([0, 1, 2], fit.LeftOut.Select(left => left.Click).Order());
        Assert.Equal(0.52, fit.Damper!.GreatestRebound_m_per_s);
        Assert.Equal(1.04, fit.Damper.GreatestCompression_m_per_s);
    }

    [Fact]
    public void Of_OneSpeedOfAStroke_LeavesTheClickOut()
    {
        var fit = DamperFit.Of(new DynoPoints([.. Rows([0, 1]).Where(p => p.Click == 0 || p.Velocity_m_per_s is > -0.1)], GasIn: false));

        Assert.Equal([0], fit.Damper!.Clicks);
        Assert.Equal(DynoTrouble.TooFewSpeeds, Assert.Single(fit.LeftOut).Trouble);
    }

    [Fact]
    public void Of_ForceThatFallsBeyondRepeatability_LeavesTheClickOut()
    {
        var rows = Rows([0, 1], "a").Concat(Rows([0, 1], "b").Select(p => p with { Force_N = p.Force_N + 4 }))
            .Select(p => p is { Click: 1, Velocity_m_per_s: 0.26 } ? p with { Force_N = p.Force_N - 400 } : p);
        var fit = DamperFit.Of(new DynoPoints([.. rows], GasIn: false));

        Assert.Equal([0], fit.Damper!.Clicks);
        Assert.Equal((DynoTrouble.FallingForce, 1), (fit.LeftOut[0].Trouble, fit.LeftOut[0].Click));
    }

    [Fact]
    public void Of_ForceThatFallsWithinRepeatability_IsMadeLevel()
    {
        DynoPoint[] rows =
        [
            .. new[] { "a", "b" }.SelectMany(run => new[]
            {
                new DynoPoint(0, -0.2, -200, run), new DynoPoint(0, -0.1, -100, run), new DynoPoint(0, 0.1, run == "a" ? 100 : 110, run),
                new DynoPoint(0, 0.2, run == "a" ? 208 : 196, run), new DynoPoint(0, 0.3, run == "a" ? 195 : 201, run),
            }),
        ];
        var fit = DamperFit.Of(new DynoPoints(rows, GasIn: false));

        Assert.Empty(fit.LeftOut);
        Assert.Equal(200, fit.Damper!.Force_N(0, 0.25), 1e-9);
    }

    [Fact]
    public void Of_NothingSound_HasNoDamper() => Assert.Null(DamperFit.Of(new DynoPoints([new(0, 0.1, 100)], GasIn: false)).Damper);

    /// <summary>Friction of 40 N and gas of 310 N on a raw linear damper with a noisy cell, from two frequencies.</summary>
    [Fact]
    public void Of_RawSweeps_FindsDampingGasAndFriction()
    {
        var fit = DamperFit.Of(new DynoSweeps([Sweep(0.4), Sweep(0.8), Sweep(1.6)], GasIn: true));

        Assert.Equal(310, fit.GasForce_N!.Value, 3.0);
        Assert.Equal(1500 * 0.12566 + 40, fit.Damper!.Force_N(7, 0.12566), 3.0);
        Assert.Equal(40, fit.Friction!.Value.Force_N, 3.0);
        Assert.Equal(3, fit.Loops.Count);
    }

    /// <summary>One frequency alone: the curve of the whole cycle.</summary>
    [Fact]
    public void Of_OneRawSweep_UsesTheWholeCycle() =>
        Assert.Equal(1500 * 0.2 + 40, DamperFit.Of(new DynoSweeps([Sweep(1.6)], GasIn: true)).Damper!.Force_N(7, 0.2), 6.0);

    [Fact]
    public void Of_SweepThatIsNoSine_IsLeftOut()
    {
        var stairs = Sweep(0.8) with { Samples = [.. Sweep(0.8).Samples.Select(s => s with { Position_m = Math.Sign(s.Position_m - 0.3) * 0.05 })] };

        Assert.Equal(DynoTrouble.NoSine, Assert.Single(DamperFit.Of(new DynoSweeps([stairs], GasIn: true)).LeftOut).Trouble);
    }

    /// <summary>A cell that ends at −500 N: the two faster sweeps are cut, the slow one is left alone and used whole.</summary>
    [Fact]
    public void Of_RawCellAtItsEnd_LeavesTheSweepsOut()
    {
        DynoSweep Cut(double frequency) => Sweep(frequency) with { Samples = [.. Sweep(frequency).Samples.Select(s => s with { Force_N = Math.Max(s.Force_N, -500) })] };
        var fit = DamperFit.Of(new DynoSweeps([Cut(0.4), Cut(1.6), Cut(2.4)], GasIn: true));

        Assert.All(fit.LeftOut, left => Assert.Equal((DynoTrouble.SaturatedCell, true), (left.Trouble, left.IsRange)));
        Assert.Equal(2, fit.LeftOut.Count);
        Assert.Equal(0.0628, fit.Damper!.GreatestRebound_m_per_s, 1e-4);
    }

    /// <summary>Two sweeps at one speed without a run are two runs of it.</summary>
    [Fact]
    public void Of_RawSweepsRepeated_CountAsRuns()
    {
        var fit = DamperFit.Of(new DynoSweeps([Sweep(0.4), Sweep(1.6), Sweep(0.4), Sweep(1.6)], GasIn: true));

        Assert.Equal(4, fit.RepeatabilityDegrees);
        Assert.Equal(["1", "2"], fit.Runs(0.1).Select(run => run.Run));
    }

    private static DynoPoint[] Rows(double[] clicks, string? run = null)
    {
        var line = 1;
        return [.. clicks.SelectMany(click => _speeds.Concat(_speeds.Select(v => -v)).Select(v => new DynoPoint(click, v, Law(click, v), run, null, ++line)))];
    }

    private static DynoSweep Sweep(double frequency_Hz)
    {
        var random = new Random(7);
        return new(7, null, [.. Enumerable.Range(0, 900).Select(i =>
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * frequency_Hz * i / 250.0 + 1);
            var v = 2 * Math.PI * frequency_Hz * 0.025 * cosine;
            return new DynoSample(i / 250.0, 0.3 + 0.025 * sine, 1500 * v + 40 * Math.Sign(v) - 310 + 3 * (random.NextDouble() - 0.5), i + 2);
        })]);
    }
}
