using Bellowsmith.Physics.Fitting;

namespace Bellowsmith.Physics;

/// <summary>
/// An air spring fitted to load-frame rows, with what the rows say about themselves. Every answer computed from
/// <see cref="Spring"/> has a 95 % band, for which it is computed again from the spring that each sweep's absence
/// leaves (jackknife by sweep [Tukey 1958]) and from the departures that smoothing may hide [Nychka 1988].
/// Measured cover of the true rate: see docs/accuracy.md.
/// </summary>
public sealed class AirSpringFit
{
    // Two standard errors: the jackknife by sweep is itself a little wide for few sweeps, which stands in for Student's t.
    private const double StandardErrors = 2;
    private const int LeastSweeps = 4;
    private const double NoScatter = 2e-6;

    private readonly AreaModel? _area;
    private AirSpring[] _withoutOneSweep = [], _smoothing = [];

    private AirSpringFit(AirSpring spring, AreaModel? area) => (Spring, _area) = (spring, area);

    /// <summary>The mean curve of all sweeps, both directions.</summary>
    public AirSpring Spring { get; }

    public int RegulatedRows { get; private init; }

    public int SweepCount { get; private init; }

    public int PressureLevels { get; private init; }

    public double LeastGaugePressure_Pa { get; private init; }

    public double GreatestGaugePressure_Pa { get; private init; } = double.PositiveInfinity;

    /// <summary>Standard deviation of one force reading about its own sweep, N.</summary>
    public double ReadingDeviation_N => _area?.ReadingDeviation_N ?? 0;

    public VolumeSource VolumeSource { get; private init; } = VolumeSource.Characteristic;

    /// <summary>True where volumes at two gauge pressures show how far the wall stretches at constant height.</summary>
    public bool StretchMeasured { get; private init; }

    public IReadOnlyList<SetAsideRow> SetAside { get; private init; } = [];

    public ExponentFit? Exponent { get; private set; }

    public SealedCheck? Sealed { get; private init; }

    public IReadOnlyList<SmallStroke> SmallStrokes { get; private init; } = [];

    /// <summary>True where too few sweeps were taken to judge scatter between them: the band is then likely too narrow.</summary>
    public bool BandFromBlocks => SweepCount is > 0 and < LeastSweeps;

    /// <summary>False for a characteristic and for rows without scatter: then no band can be given.</summary>
    public bool HasBand => _withoutOneSweep.Length > 1;

    /// <summary>Half the force between compressing and extending, N; null where only one direction was taken.</summary>
    public double? Friction_N(double height_m, double gaugePressure_Pa) => _area?.Friction_N(height_m, gaugePressure_Pa);

    public static AirSpringFit Of(SpringData data, double ambient_Pa = StandardAtmosphere.SeaLevel_Pa, double? exponent = null) => data switch
    {
        CharacteristicSpring characteristic => new(AirSpring.FromCharacteristic(characteristic.Rows), null),
        MeasuredSpring measured => Of(measured, ambient_Pa, exponent),
        _ => throw new ArgumentOutOfRangeException(nameof(data)),
    };

    /// <summary>Why rows cannot carry a curve, in words a person can act on; null where they can.</summary>
    public static string? Lacks(SpringData data)
    {
        if (data is not MeasuredSpring { Rows: var rows }) return null;
        SpringRow[] regulated = rows.Where(InCurve).ToArray();
        if (regulated.Length < 8) return "at least 8 regulated rows (gauge pressure held while the height is swept)";
        if (regulated.Select(r => Math.Round(r.Height_m, 5)).Distinct().Count() < 4) return "regulated rows at 4 heights or more";
        double least = regulated.Min(r => r.Height_m), greatest = regulated.Max(r => r.Height_m);
        bool volume = rows.Any(r => r.Volume_m3 is not null && r.Height_m >= least && r.Height_m <= greatest);
        return volume || SealedSweeps.Any(rows, AirMode.SealedSlow, least, greatest)
            || SealedSweeps.Any(rows, AirMode.SealedFast, least, greatest)
            ? null
            : "a volume at one height at least, or a sealed slow sweep of four rows or more from which it follows";
    }

    private static AirSpringFit Of(MeasuredSpring data, double ambient_Pa, double? exponent)
    {
        if (Lacks(data) is { } lacking) throw new ArgumentException($"The data lack {lacking}.", nameof(data));
        SpringRow[] all = data.Rows.Where(InCurve).ToArray();
        (int[] of, int named) = Sweeps.Number(all);
        (bool enough, int sweeps) = (named >= LeastSweeps, named);
        if (!enough) (of, sweeps) = Sweeps.Blocks(of, named);
        (AreaModel area, Dictionary<int, SetAsideRow> wild) = WildReadings.FitWithout(all, of, sweeps, enough);
        (all, of) = (WildReadings.Kept(all, wild), WildReadings.Kept(of, wild));
        double n = exponent ?? SealedAir.InServiceExponent;
        (int[] sweepOf, int everySweep) = EverySweep(data.Rows, all, of, sweeps);
        VolumeModel volume = new(data.Rows, sweepOf, everySweep, area.Basis.Start, area.Basis.End,
            identity => SealedSweeps.VolumeAtLeastHeight_m3(data.Rows, identity, n, ambient_Pa));
        AirSpring spring = volume.Fit(area, area.Regression.Coefficients);
        bool scatter = area.ReadingDeviation_N > NoScatter * all.Average(r => Math.Abs(r.Force_N));
        AirSpringFit fit = new(spring, area)
        {
            RegulatedRows = all.Length,
            SweepCount = named,
            PressureLevels = Sweeps.Levels(all).Max() + 1,
            LeastGaugePressure_Pa = all.Min(r => r.GaugePressure_Pa),
            GreatestGaugePressure_Pa = all.Max(r => r.GaugePressure_Pa),
            VolumeSource = volume.ShowsShape ? VolumeSource.Measured
                : volume.HasRows ? VolumeSource.MeasuredAnchor : VolumeSource.SealedSweeps,
            StretchMeasured = volume.ShowsStretch,
            SetAside = [.. wild.Values],
            Sealed = SealedSweeps.Check(data.Rows, spring),
            SmallStrokes = [.. Fitting.SmallStrokes.Of(data.Rows, spring, ambient_Pa, n)],
            _withoutOneSweep = scatter ? WithoutEachSweep(area, volume) : [],
            _smoothing = scatter ? SmoothingDepartures(area, volume) : [],
        };
        // Without either, the volume rests on an assumed exponent, which the fast sweeps would only repeat.
        if (volume.HasRows || SealedSweeps.Any(data.Rows, AirMode.SealedSlow, spring.LeastHeight_m, spring.GreatestHeight_m))
            fit.Exponent = fit.FastExponent(data.Rows, ambient_Pa);
        return fit;
    }

    // Scatter from sweep to sweep, and how far the exponent hangs on the curve that turns heights into volumes.
    private ExponentFit? FastExponent(IReadOnlyList<SpringRow> rows, double ambient_Pa)
    {
        if (Of(Spring) is not { } found) return null;
        if (Band(s => Of(s)!.Value.Value) is not { } byCurve) return found;
        double half = double.Hypot(found.High - found.Value, byCurve.High - found.Value);
        return found with { Low = found.Value - half, High = found.Value + half };

        ExponentFit? Of(AirSpring s) => SealedSweeps.Exponent(rows, s, ambient_Pa, LeastGaugePressure_Pa, GreatestGaugePressure_Pa);
    }

    /// <summary>
    /// The band of an answer that also hangs on the exponent: where that was fitted, its own interval comes on top.
    /// </summary>
    public (double Low, double High)? Band(Func<AirSpring, double, double> answer, double exponent, bool fitted)
    {
        (double Low, double High)? curve = Band(s => answer(s, exponent));
        if (curve is not { } band || !fitted || Exponent is not { } n) return curve;
        double middle = answer(Spring, exponent), byExponent = (answer(Spring, n.High) - answer(Spring, n.Low)) / 2;
        double half = double.Hypot(band.High - middle, byExponent);
        return (middle - half, middle + half);
    }

    /// <summary>
    /// The 95 % band of an answer computed from a spring; null where there is none. An answer may be NaN for some of the
    /// springs (no such state): those are left out.
    /// </summary>
    public (double Low, double High)? Band(Func<AirSpring, double> answer)
    {
        if (!HasBand) return null;
        double middle = answer(Spring), sum = 0, square = 0, hidden = 0;
        int n = 0;
        foreach (AirSpring spring in _withoutOneSweep)
        {
            double departure = answer(spring) - middle;
            if (double.IsNaN(departure)) continue;
            (sum, square, n) = (sum + departure, square + departure * departure, n + 1);
        }

        foreach (AirSpring spring in _smoothing)
        {
            double departure = answer(spring) - middle;
            if (!double.IsNaN(departure)) hidden += departure * departure;
        }

        if (n < 2 || double.IsNaN(middle)) return null;
        double half = StandardErrors * Math.Sqrt((square - sum * sum / n) * (n - 1) / n + hidden);
        return (middle - half, middle + half);
    }

    private static bool InCurve(SpringRow row) =>
        row.Mode == AirMode.Regulated && row.Amplitude_m is null && row.GaugePressure_Pa > 0;

    private static AirSpring[] WithoutEachSweep(AreaModel area, VolumeModel volume)
    {
        double[] other = new double[area.Columns];
        List<AirSpring> springs = [];
        for (int s = 0; s < area.Regression.SweepCount; s++)
            if (area.Regression.Without(s, other)) springs.Add(volume.Fit(area, other, s));
        return [.. springs];
    }

    private static AirSpring[] SmoothingDepartures(AreaModel area, VolumeModel volume)
    {
        double[] other = new double[area.Columns];
        List<AirSpring> springs = [];
        foreach (double[] share in area.Regression.SmoothingShares())
        {
            for (int i = 0; i < other.Length; i++) other[i] = area.Regression.Coefficients[i] + share[i];
            springs.Add(volume.Fit(area, other));
        }

        if (volume.IsAnchored)
            springs.Add(volume.Fit(area, area.Regression.Coefficients, halvesHigher: 1 / StandardErrors));
        return [.. springs];
    }

    // Volumes may stand in rows outside the curve (sealed, at rest); those sweeps are numbered after the curve's own.
    private static (int[] Of, int Count) EverySweep(IReadOnlyList<SpringRow> rows, SpringRow[] inCurve, int[] of, int sweeps)
    {
        Dictionary<SpringRow, int> known = [];
        for (int i = 0; i < inCurve.Length; i++) known[inCurve[i]] = of[i];
        (int[] others, int count) = Sweeps.Sealed(rows);
        int[] all = rows.Select((r, i) => known.TryGetValue(r, out int s) ? s : sweeps + others[i]).ToArray();
        return (all, sweeps + count);
    }
}
