namespace Bellowsmith.Physics.Fitting;

/// <summary>Rows taken with a small stroke about one set point: the slope of force over height within each sweep.</summary>
internal static class SmallStrokes
{
    private const int LeastRows = 3;

    public static IEnumerable<SmallStroke> Of(
        IReadOnlyList<SpringRow> rows, AirSpring spring, double ambient_Pa, double exponent)
    {
        var sweeps = rows
            .Where(r => r.Amplitude_m is not null && spring.Covers(r.Height_m))
            .GroupBy(r => (r.Sweep, r.Mode, Amplitude: r.Amplitude_m!.Value));
        foreach (var sweep in sweeps)
        {
            SpringRow[] readings = [.. sweep];
            double height = readings.Average(r => r.Height_m), pg = readings.Average(r => r.GaugePressure_Pa);
            if (readings.Length < LeastRows || readings.Max(r => r.Height_m) - readings.Min(r => r.Height_m) < 1e-6) continue;
            double slope = SealedSweeps.Line(
                readings.Select(r => r.Height_m).ToArray(), readings.Select(r => r.Force_N).ToArray()).Slope;
            StrutSpring bare = new(spring, Ambient_Pa: ambient_Pa);
            double curve = sweep.Key.Mode switch
            {
                AirMode.Regulated => bare.RegulatedRate_N_per_m(height, pg),
                AirMode.SealedSlow => bare.SealedRate_N_per_m(height, pg, 1),
                _ => bare.SealedRate_N_per_m(height, pg, exponent),
            };
            yield return new SmallStroke(height, pg, sweep.Key.Amplitude, sweep.Key.Mode, -slope, curve);
        }
    }
}
