using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Repeats, days and runs of probe 2362 on wafer 140, file MPC441.DAT [NIST Handbook 2012, 2.4.4]: six days of
/// six repeats in each of two runs. NIST prints 0.027280, 0.027560 and 0.0289; recomputed from the averages as printed they
/// are 0.027279345, 0.027563067 and 0.028849957, so the handbook is held to its last digit but one. Its table of squares for
/// level 1 (0.10290, 300 degrees) belongs to no probe of the public file and is only arithmetic; its 0.0710 for this probe is
/// not what its raw readings give (0.0729).
/// </summary>
public sealed class NestedGaugeTrials
{
    private static readonly double[][] _averages =
    [
        [96.0771, 95.9976, 96.0148, 96.0397, 96.0407, 96.0445],
        [96.0793, 96.1115, 96.0803, 96.0411, 96.0988, 96.0482],
    ];

    private static readonly double[][] _deviations =
    [
        [0.1024, 0.0943, 0.0622, 0.0702, 0.0627, 0.0622],
        [0.0996, 0.0533, 0.0364, 0.0768, 0.1042, 0.0868],
    ];

    [Fact]
    public void Nested_OfProbe2362_IsThePublished()
    {
        NestedTrial trial = NestedTrial.Of([.. Run(0), .. Run(1)])!;

        Assert.Equal(0.078714352, trial.Repeats.StandardDeviation, 5e-10);
        Assert.Equal(60, trial.Repeats.Degrees);
        Assert.Equal(0.02742, trial.Days!.StandardDeviation, 5e-6);
        Assert.Equal(10, trial.Days.Degrees);
        Assert.Equal(0.028849957, trial.Runs!.StandardDeviation, 5e-10);
        Assert.Equal(0.0289, trial.Runs.StandardDeviation, 1e-4);
        Assert.Equal(1, trial.Runs.Degrees);
    }

    [Theory]
    [InlineData(0, 0.027279345, 0.027280)]
    [InlineData(1, 0.027563067, 0.027560)]
    public void Nested_OneRun_HasTheLevelTwoOfTheHandbook(int run, double recomputed, double printed)
    {
        PooledDeviation days = NestedTrial.Of([.. Run(run)])!.Days!;

        Assert.Equal(recomputed, days.StandardDeviation, 5e-10);
        Assert.Equal(printed, days.StandardDeviation, 1e-5);
        Assert.Equal(5, days.Degrees);
    }

    // Five level-1 sums of squares of 60 degrees each, as arithmetic.
    [Fact]
    public void Nested_SquaresOfFiveProbes_PoolToThePrinted()
    {
        double[] squares = [0.48115, 0.69209, 0.48483, 1.21752, 0.30076];

        NestedTrial trial = NestedTrial.Of([.. squares.Select((s, i) => new NestedDay(i, 0, 0, Math.Sqrt(s / 60), 61))])!;

        Assert.Equal(0.10290, trial.Repeats.StandardDeviation, 5e-6);
        Assert.Equal(300, trial.Repeats.Degrees);
    }

    private static IEnumerable<NestedDay> Run(int run) =>
        _averages[run].Select((average, day) => new NestedDay(0, run, average, _deviations[run][day], 6));
}
