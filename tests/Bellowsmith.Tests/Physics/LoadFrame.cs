using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

/// <summary>
/// Load-frame rows of a known spring as a shop would get them: three gauge pressures, each twice, both ways, 25 heights.
/// Every sweep has its own error of gauge pressure (0.2 %), height (0.05 mm), force (offset 8 N, tilt 6 N, bow 4 N) and
/// volume (3 cm³); readings follow one another along a sweep (4 N, correlation 0.7) over white noise (3 N, 2 cm³).
/// </summary>
internal static class LoadFrame
{
    private const int Heights = 25, Repeats = 2;

    private static readonly double[] _levels_Pa = [2e5, 3.5e5, 5e5];

    public static List<SpringRow> Rows(KnownSpring known, int seed, bool named)
    {
        Random random = new(seed);
        List<SpringRow> rows = [];
        foreach (var pg in _levels_Pa)
            for (var repeat = 0; repeat < Repeats; repeat++)
                foreach (var direction in new[] { SweepDirection.Compressing, SweepDirection.Extending })
                    Sweep(known, pg, direction, named ? $"{pg} {repeat}" : null, random, rows);
        return rows;
    }

    private static void Sweep(KnownSpring known, double pg, SweepDirection direction, string? name, Random random, List<SpringRow> rows)
    {
        double ofPressure = 0.002 * pg * Normal(), ofHeight = 0.05e-3 * Normal(), ofVolume = 3e-6 * Normal();
        double offset = 8 * Normal(), tilt = 6 * Normal(), bow = 4 * Normal(), following = Normal();
        var friction = (12 + 4 * pg / 1e5) * (direction == SweepDirection.Compressing ? 1 : -1);
        for (var k = 0; k < Heights; k++)
        {
            var share = (double)k / (Heights - 1);
            double h = known.At(direction == SweepDirection.Compressing ? 1 - share : share), place = 2 * (h - known.Least_m) / (known.Greatest_m - known.Least_m) - 1;
            following = 0.7 * following + Math.Sqrt(1 - 0.49) * Normal();
            double trueHeight = h + ofHeight, truePressure = pg + ofPressure;
            rows.Add(new SpringRow(
                Math.Round(h, 6), Math.Round(pg + 200 * Normal()),
                known.Force_N(trueHeight, truePressure) + friction + offset + tilt * place + bow * (place * place - 1.0 / 3) + 4 * following + 3 * Normal(),
                known.Volume_m3(trueHeight, truePressure) + ofVolume + 2e-6 * Normal(),
                Direction: direction, Sweep: name, Line: rows.Count + 2));
        }

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }
}
