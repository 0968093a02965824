namespace Bellowsmith.Physics.Fitting;

/// <summary>What sweeps with the valve shut tell: pabs·Vⁿ = const along each of them.</summary>
internal static class SealedSweeps
{
    private const int LeastRows = 4;

    // Student's t, two-sided 95 %, for 1, 2, ... degrees of freedom; beyond them the normal 1.96 + 2.4/n (within 0.01).
    private static readonly double[] _student = [12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228];

    /// <summary>
    /// The exponent of each fast sweep: minus the slope of ln pabs over ln V. Their mean, with a 95 % interval from sweep to
    /// sweep (Student's t; from the scatter about the one line where there is only one sweep).
    /// </summary>
    public static ExponentFit? Exponent(IEnumerable<SpringRow> rows, AirSpring spring, double ambient_Pa)
    {
        List<(double Value, double Error)> sweeps = [];
        int rowsOfLast = 0;
        foreach (SpringRow[] sweep in Group(rows, spring.Covers, AirMode.SealedFast))
        {
            (double slope, _, double error) = Line(
                sweep.Select(r => Math.Log(spring.At(r.Height_m, r.GaugePressure_Pa).Volume_m3)).ToArray(),
                sweep.Select(r => Math.Log(r.GaugePressure_Pa + ambient_Pa)).ToArray());
            sweeps.Add((-slope, error));
            rowsOfLast = sweep.Length;
        }

        if (sweeps.Count == 0) return null;
        double mean = sweeps.Average(s => s.Value);
        double spread = sweeps.Count == 1
            ? sweeps[0].Error
            : Math.Sqrt(sweeps.Sum(s => (s.Value - mean) * (s.Value - mean)) / (sweeps.Count - 1) / sweeps.Count);
        double half = Student(sweeps.Count == 1 ? rowsOfLast - 2 : sweeps.Count - 1) * spread;
        return new ExponentFit(mean, mean - half, mean + half, sweeps.Count);
    }

    /// <summary>
    /// The bare volume at the least height where none was measured: with W(h, pg) the volume gained from there,
    /// W = c·pabs^(−1/n) − V₀ along a sweep, a straight line whose intercept is −V₀. Slow sweeps are taken at n = 1.
    /// </summary>
    public static double? VolumeAtLeastHeight_m3(
        IReadOnlyList<SpringRow> rows, AirSpring identity, double exponent, double ambient_Pa)
    {
        List<double> found = Intercepts(AirMode.SealedSlow, 1);
        if (found.Count == 0) found = Intercepts(AirMode.SealedFast, exponent);
        return found.Count == 0 ? null : -found.Average();

        List<double> Intercepts(AirMode mode, double n) => Group(rows, identity.Covers, mode).Select(sweep => Line(
            sweep.Select(r => Math.Pow(r.GaugePressure_Pa + ambient_Pa, -1 / n)).ToArray(),
            sweep.Select(r => identity.At(r.Height_m, r.GaugePressure_Pa).Volume_m3).ToArray()).Intercept).ToList();
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

    private static double Student(int freedom) => freedom <= _student.Length ? _student[freedom - 1] : 1.96 + 2.4 / freedom;

    internal static (double Slope, double Intercept, double SlopeError) Line(double[] x, double[] y)
    {
        double meanX = x.Average(), meanY = y.Average(), xx = 0, xy = 0, left = 0;
        for (int i = 0; i < x.Length; i++)
        {
            xx += (x[i] - meanX) * (x[i] - meanX);
            xy += (x[i] - meanX) * (y[i] - meanY);
        }

        double slope = xy / xx;
        for (int i = 0; i < x.Length; i++) left += Math.Pow(y[i] - meanY - slope * (x[i] - meanX), 2);
        return (slope, meanY - slope * meanX, Math.Sqrt(left / Math.Max(x.Length - 2, 1) / xx));
    }
}
