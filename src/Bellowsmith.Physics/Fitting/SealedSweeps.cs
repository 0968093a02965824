using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Fitting;

/// <summary>What sweeps with the valve shut tell: pabs·Vⁿ = const along each of them.</summary>
internal static class SealedSweeps
{
    private const int LeastRows = 4;

    /// <summary>
    /// The exponent of each fast sweep: minus the slope of ln pabs over ln V. Their mean, longer sweeps
    /// counting for more, with a 95 % interval from sweep to sweep (Student's t; from the scatter about the line where there is
    /// only one).
    /// </summary>
    public static ExponentFit? Exponent(
        IReadOnlyList<SpringRow> rows, AirSpring spring, double ambient_Pa, double leastTested_Pa, double greatestTested_Pa)
    {
        // Where the area hangs on gauge pressure, volumes are known only as far as that was tested.
        SpringRow[] known = !spring.DependsOnGaugePressure ? [.. rows]
            : [.. rows.Where(r => r.GaugePressure_Pa >= leastTested_Pa && r.GaugePressure_Pa <= greatestTested_Pa)];
        FittedLine[] sweeps = [.. Group(known, spring.Covers, AirMode.SealedFast).Select(sweep => Line(
            sweep.Select(r => Math.Log(spring.At(r.Height_m, r.GaugePressure_Pa).Volume_m3)).ToArray(),
            sweep.Select(r => Math.Log(r.GaugePressure_Pa + ambient_Pa)).ToArray()))];
        if (sweeps.Length == 0) return null;
        (double slope, double half) = Mean(sweeps, line => line.Slope, line => line.SlopeError);
        return new ExponentFit(-slope, -slope - half, -slope + half, sweeps.Length);
    }

    /// <summary>
    /// The bare volume at the least height where none was measured: with W(h, pg) the volume gained from there,
    /// W = c·pabs^(−1/n) − V₀ along a sweep, a straight line whose intercept is −V₀. Slow sweeps are taken at n = 1. Beside it
    /// half its 95 % interval.
    /// </summary>
    public static (double Value, double Half) VolumeAtLeastHeight_m3(
        IReadOnlyList<SpringRow> rows, AirSpring identity, double exponent, double ambient_Pa)
    {
        FittedLine[] found = Lines(AirMode.SealedSlow, 1);
        if (found.Length == 0) found = Lines(AirMode.SealedFast, exponent);
        (double intercept, double half) = Mean(found, line => line.Intercept, line => line.InterceptError);
        return (-intercept, half);

        FittedLine[] Lines(AirMode mode, double n) => [.. Group(rows, identity.Covers, mode).Select(sweep => Line(
            sweep.Select(r => Math.Pow(r.GaugePressure_Pa + ambient_Pa, -1 / n)).ToArray(),
            sweep.Select(r => identity.At(r.Height_m, r.GaugePressure_Pa).Volume_m3).ToArray()))];
    }

    /// <summary>How far the sealed readings' forces lie from pg·Ae of the regulated curve.</summary>
    public static SealedCheck? Check(IEnumerable<SpringRow> rows, AirSpring spring)
    {
        double sum = 0, worst = 0;
        int count = 0;
        foreach (SpringRow row in rows.Where(r => r.Mode != AirMode.Regulated && r.Amplitude_m is null && spring.Covers(r.Height_m)))
        {
            double miss = row.Force_N - row.GaugePressure_Pa * spring.At(row.Height_m, row.GaugePressure_Pa).EffectiveArea_m2;
            sum += miss * miss;
            if (Math.Abs(miss) > Math.Abs(worst)) worst = miss;
            count++;
        }

        return count == 0 ? null : new SealedCheck(count, Math.Sqrt(sum / count), worst);
    }

    /// <summary>True where some sealed sweep is long enough to tell a volume or an exponent.</summary>
    public static bool Any(IReadOnlyList<SpringRow> rows, AirMode mode, double least_m, double greatest_m) =>
        Group(rows, h => h >= least_m && h <= greatest_m, mode).Any();

    private static IEnumerable<SpringRow[]> Group(IEnumerable<SpringRow> rows, Func<double, bool> covers, AirMode mode)
    {
        SpringRow[] kept = rows.Where(r => r.Mode == mode && r.Amplitude_m is null && covers(r.Height_m)).ToArray();
        (int[] of, int count) = Sweeps.Sealed(kept);
        return Enumerable.Range(0, count)
            .Select(s => kept.Where((_, i) => of[i] == s).ToArray())
            .Where(sweep => sweep.Length >= LeastRows);
    }

    // Weighted by each sweep's spread of x, so that a short sweep, which knows its line poorly, says little.
    private static (double Mean, double Half) Mean(
        FittedLine[] lines, Func<FittedLine, double> value, Func<FittedLine, double> error)
    {
        if (lines.Length == 1) return (value(lines[0]), Student.TwoSided95(lines[0].Rows - 2) * error(lines[0]));
        double weights = lines.Sum(l => l.Spread), mean = lines.Sum(l => l.Spread * value(l)) / weights;
        double scatter = lines.Sum(l => Math.Pow(l.Spread * (value(l) - mean), 2)) * lines.Length / (lines.Length - 1);
        return (mean, Student.TwoSided95(lines.Length - 1) * Math.Sqrt(scatter) / weights);
    }

    /// <summary>The least-squares line of y over x.</summary>
    public static FittedLine Line(double[] x, double[] y)
    {
        double meanX = x.Average(), meanY = y.Average(), xx = 0, xy = 0, left = 0;
        for (int i = 0; i < x.Length; i++)
        {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }

        double slope = xy / xx;
        for (int i = 0; i < x.Length; i++) left += Math.Pow(y[i] - meanY - slope * (x[i] - meanX), 2);
        double variance = left / Math.Max(x.Length - 2, 1);
        return new FittedLine(
            slope, meanY - slope * meanX, Math.Sqrt(variance / xx), Math.Sqrt(variance * (1.0 / x.Length + meanX * meanX / xx)), xx, x.Length);
    }
}

/// <summary>A least-squares line with its standard errors; Spread is Σ(x − mean)².</summary>
internal readonly record struct FittedLine(
    double Slope, double Intercept, double SlopeError, double InterceptError, double Spread, int Rows);
