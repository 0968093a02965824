using Bellowsmith.Physics;

namespace Bellowsmith.Benchmarks;

/// <summary>
/// A load frame with an invented spring of two convolutions: twelve sweeps of 25 heights at three gauge pressures, both
/// directions, each twice. Every sweep has small errors of its own and every reading its noise; all runs get the same rows.
/// </summary>
internal static class LoadFrame
{
    private const int Seed = 1000, Repeats = 2, Heights = 25;
    private const double Least_m = 0.062, Greatest_m = 0.112;

    // The wall gives way: V grows by (constant + slope·h)·pg, and by virtual work F by half the slope times pg².
    private const double StretchConstant_m3_per_Pa = 1.25e-11, StretchSlope_m2_per_Pa = 1.5e-10;

    private static readonly double[] _gaugePressures_Pa = [2e5, 3.5e5, 5e5];
    private static readonly ToroidalBellows _bellows = new(ringRadius_m: 0.058, arcLength_m: 0.075, convolutions: 2);

    public static IReadOnlyList<SpringRow> Rows()
    {
        Noise noise = new(Seed);
        List<SpringRow> rows = [];
        foreach (double gaugePressure in _gaugePressures_Pa)
            for (int repeat = 0; repeat < Repeats; repeat++)
                foreach (SweepDirection direction in Enum.GetValues<SweepDirection>())
                    rows.AddRange(Sweep(noise, gaugePressure, direction, $"s{rows.Count / Heights + 1}"));
        return rows;
    }

    private static IEnumerable<SpringRow> Sweep(Noise noise, double gaugePressure_Pa, SweepDirection direction, string name)
    {
        int sign = direction == SweepDirection.Compressing ? 1 : -1;
        double gaugeError = noise.Of(0.002 * gaugePressure_Pa), heightError = noise.Of(5e-5);
        double offset = noise.Of(8), tilt = noise.Of(6), bow = noise.Of(4), volumeError = noise.Of(3e-6), wander = 0;
        for (int i = 0; i < Heights; i++)
        {
            double place = sign * (1 - 2.0 * i / (Heights - 1));
            double height = (Least_m + Greatest_m + place * (Greatest_m - Least_m)) / 2;
            (double force, double volume) = True(height + heightError, gaugePressure_Pa + gaugeError);
            wander = 0.7 * wander + noise.Of(0.71);
            force += sign * (12 + 4e-5 * gaugePressure_Pa) + offset + tilt * place + bow * (place * place - 1.0 / 3);
            yield return new SpringRow(
                Math.Round(height, 6), Math.Round(gaugePressure_Pa + noise.Of(200)), force + 4 * wander + noise.Of(3),
                volume + volumeError + noise.Of(2e-6), Direction: direction, Sweep: name);
        }
    }

    private static (double Force_N, double Volume_m3) True(double height_m, double gaugePressure_Pa)
    {
        ToroidalShape shape = _bellows.At(height_m)!;
        double area = shape.EffectiveArea_m2 + StretchSlope_m2_per_Pa * gaugePressure_Pa / 2;
        double stretch = (StretchConstant_m3_per_Pa + StretchSlope_m2_per_Pa * height_m) * gaugePressure_Pa;
        return (gaugePressure_Pa * area, shape.Volume_m3 + stretch);
    }

    // Normal deviates out of uniform ones: a seed gives the same rows everywhere.
    private sealed class Noise(int seed)
    {
        private readonly Random _random = new(seed);

        public double Of(double deviation) =>
            deviation * Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
    }
}
