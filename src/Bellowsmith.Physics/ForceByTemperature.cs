using Bellowsmith.Physics.Dyno;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// How a damper's force changes as it warms: <c>F(T) = F(T0)·exp(b·(T − T0))</c> with one b for every click, speed and stroke, by
/// least squares on ln|F| with those as blocks. A reading weighs with the square of its force, because a cell errs by newtons.
/// One slope for all is an assumption that holds for a few tens of kelvins (common practice, no source).
/// </summary>
public sealed record ForceByTemperature
{
    /// <summary>What the readings of one click, speed and stroke must span for b to be known. Common practice, no source.</summary>
    public const double LeastSpan_K = 10;

    /// <summary>b, 1/K; below 0 where the damper fades.</summary>
    public required double Slope_per_K { get; init; }

    /// <summary>One standard deviation of b.</summary>
    public required double StandardError_per_K { get; init; }

    /// <summary>Readings beyond one a block and the slope.</summary>
    public required int Degrees { get; init; }

    /// <summary>The temperatures b was measured over, K.</summary>
    public required double Least_K { get; init; }
    public required double Greatest_K { get; init; }

    /// <summary>Mean of all readings: what the curves as measured hold for.</summary>
    public required double Reference_K { get; init; }

    /// <summary>Whether temperature only rose, or only fell, from run to run: then what else drifted with the runs stands in b.</summary>
    public required bool MixedWithRuns { get; init; }

    /// <summary>Half of the two-sided 95 % interval of b, Student's t.</summary>
    public double HalfInterval_per_K => StandardError_per_K * Student.TwoSided95(Degrees);

    public bool Covers(double temperature_K) => temperature_K >= Least_K && temperature_K <= Greatest_K;

    /// <summary>F(to)/F(from).</summary>
    public double Ratio(double from_K, double to_K) => Math.Exp(Slope_per_K * (to_K - from_K));

    /// <summary>Null where no click, speed and stroke was measured over <see cref="LeastSpan_K"/>, or too few readings were taken.</summary>
    internal static ForceByTemperature? Of(IEnumerable<SpeedLevel> levels)
    {
        DynoPoint[][] blocks = [.. levels.Select(level => level.Points.Where(p => p.Temperature_K is not null && p.Force_N != 0).ToArray()).Where(block => block.Length > 1)];
        DynoPoint[][] wide = [.. blocks.Where(block => Span_K(block) >= LeastSpan_K)];
        int degrees = blocks.Sum(block => block.Length - 1) - 1;
        if (wide.Length == 0 || degrees < 1) return null;
        (double squares, double products, double rest) = (0, 0, 0);
        foreach ((double warm, double log, double weight) in blocks.SelectMany(Centred))
            (squares, products, rest) = (squares + weight * warm * warm, products + weight * warm * log, rest + weight * log * log);
        double slope = products / squares;
        return new ForceByTemperature
        {
            Slope_per_K = slope,
            StandardError_per_K = Math.Sqrt(Math.Max(0, rest - slope * products) / degrees / squares),
            Degrees = degrees,
            Least_K = wide.SelectMany(Kelvins).Min(),
            Greatest_K = wide.SelectMany(Kelvins).Max(),
            Reference_K = levels.SelectMany(level => level.Points).Select(p => p.Temperature_K).OfType<double>().Average(),
            MixedWithRuns = wide.All(block => Drifts([.. Kelvins([.. block.OrderBy(p => p.Line)])])),
        };
    }

    private static IEnumerable<(double Warm_K, double Log, double Weight)> Centred(DynoPoint[] block)
    {
        double force = block.Average(p => Math.Abs(p.Force_N)), warm = Kelvins(block).Average(), log = block.Average(p => Math.Log(Math.Abs(p.Force_N)));
        return block.Select(p => (p.Temperature_K!.Value - warm, Math.Log(Math.Abs(p.Force_N)) - log, force * force));
    }

    private static bool Drifts(double[] kelvins) =>
        kelvins.Zip(kelvins.Skip(1)).All(pair => pair.Second >= pair.First) || kelvins.Zip(kelvins.Skip(1)).All(pair => pair.Second <= pair.First);

    private static IEnumerable<double> Kelvins(DynoPoint[] block) => block.Select(p => p.Temperature_K!.Value);

    private static double Span_K(DynoPoint[] block) => Kelvins(block).Max() - Kelvins(block).Min();
}
