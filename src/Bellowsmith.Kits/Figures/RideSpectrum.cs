using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// Density of body acceleration on logarithmic axes, each point the mean over a twelfth of an octave: plain, and times |Wk|² as a seated
/// person feels it [ISO 2631-1 1997].
/// </summary>
internal static class RideSpectrum
{
    private const int Longest = 8192, Shortest = 1024, PerOctave = 12;
    private const double Least_Hz = 0.3, Greatest_Hz = 50, Span = 1e5;

    /// <summary>Null where the run is too short.</summary>
    public static Chart? Of(RideDetail detail, string title, string said)
    {
        ReadOnlySpan<double> readings = detail.Trace.Acceleration_m_per_s2.AsSpan(detail.Trace.Settled);
        int segment = Longest;
        while (segment > readings.Length / 2 && segment > Shortest) segment /= 2;
        if (readings.Length < segment) return null;
        (double Hz, double Density)[] plain = Smoothed(Spectrum.Density(readings, detail.Trace.Step_s, segment), 1 / (segment * detail.Trace.Step_s));
        double[] x = [.. plain.Select(p => Math.Log(p.Hz))], y = [.. plain.Select(p => Log(p.Density))];
        double[] felt = [.. plain.Select(p => Log(p.Density * Math.Pow(RideWeighting.VerticalAt(p.Hz).Magnitude, 2)))];
        double top = y.Concat(felt).Where(double.IsFinite).DefaultIfEmpty(0).Max();
        return new Chart
        {
            Id = "rideSpectrum",
            Title = title,
            Summary = FormattableString.Invariant($"{said} Between 0.5 and 5 Hz, the body's own motion, the plain acceleration is {detail.PrimaryRms_m_per_s2:F2} m/s² r.m.s., between 5 and 25 Hz {detail.SecondaryRms_m_per_s2:F2}."),
            X = Axes.Logarithms("frequency", "Hz", [x[0], Math.Log(Greatest_Hz)]),
            Y = Axes.Logarithms("density of body acceleration", "(m/s²)²/Hz", [.. y.Concat(felt).Where(v => v > top - Math.Log(Span))]),
            Uprights = [.. ((double[])[0.5, 5, 25]).Select(hz => new ChartUpright(UprightKind.Phase, Math.Log(hz), $"{PlainNumbers.Chosen(hz)} Hz"))],
            Curves = [ChartCurve.Solid("plain", x, y) with { Kind = CurveKind.Beside }, ChartCurve.Solid("as felt, weighted by Wk", x, felt)],
        };
    }

    private static (double, double)[] Smoothed(double[] density, double spacing_Hz) =>
    [
        .. Enumerable.Range(2, density.Length - 2).Select(k => (Hz: k * spacing_Hz, Density: density[k]))
            .Where(p => p.Hz is >= Least_Hz and <= Greatest_Hz)
            .GroupBy(p => Math.Floor(PerOctave * Math.Log2(p.Hz)))
            .Select(band => (band.Average(p => p.Hz), band.Average(p => p.Density))),
    ];

    private static double Log(double density) => density > 0 ? Math.Log(density) : double.NaN;
}
