using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>Rate, gauge pressure, ride frequency and effective area against spring height, with one setting marked.</summary>
public sealed class HeightCharts
{
    private const double Alike_m = 1e-4;

    private readonly HeightSweep _sweep;
    private readonly IReadOnlyList<HeightSolution> _solutions;
    private readonly DisplayUnits _units;
    private readonly double[] _heights;
    private readonly ChartAxis _heightAxis;

    /// <param name="sweep">The strut at its load.</param>
    /// <param name="solutions">The heights that give the wanted rate; empty where the kit has no target.</param>
    /// <param name="units">Units to show.</param>
    public HeightCharts(HeightSweep sweep, IReadOnlyList<HeightSolution> solutions, DisplayUnits units)
    {
        (_sweep, _solutions, _units) = (sweep, solutions, units);
        _heights = Shown(Dimension.Length, sweep.Height_m);
        _heightAxis = Axes.Around("spring height", Dimension.Length, units, [sweep.Height_m[0], sweep.Height_m[^1]]);
    }

    private StrutCase Case => _sweep.Case;

    /// <summary>All four at a setting.</summary>
    public IReadOnlyList<Chart> At(double height_m) => [Rate(height_m), GaugePressure(height_m), RideFrequency(height_m), EffectiveArea(height_m)];

    /// <summary>Rate with the valve shut against height, the load held; the wanted rate and every height that gives it.</summary>
    public Chart Rate(double height_m)
    {
        double gauge = Gauge_Pa(height_m), rate = Rate_N_per_m(height_m, gauge);
        double[] wanted = _sweep.TargetSpringRate_N_per_m;
        return Drawn(
            "rate", "Spring rate against spring height", "spring rate", Dimension.Rate, _sweep.SpringRate_N_per_m,
            _sweep.SpringRateBand_N_per_m, (height_m, rate), s => s.SpringRate_N_per_m,
            double.IsNaN(wanted[0]) ? null : ($"wanted {Text(Dimension.Rate, Target(height_m))}", wanted),
            $"At {Text(Dimension.Length, height_m)} and {Text(Dimension.GaugePressure, gauge)} gauge the spring gives {Text(Dimension.Rate, rate)}.");
    }

    /// <summary>Gauge pressure that carries the load against height, with the spring's greatest.</summary>
    public Chart GaugePressure(double height_m)
    {
        double gauge = Gauge_Pa(height_m), most = Case.Part.MaxGaugePressure_Pa;
        return Drawn(
            "gaugePressure", "Gauge pressure against spring height", "gauge pressure", Dimension.GaugePressure, _sweep.GaugePressure_Pa,
            _sweep.GaugePressureBand_Pa, (height_m, gauge), s => s.GaugePressure_Pa,
            ($"greatest {Text(Dimension.GaugePressure, most)}", [.. _heights.Select(_ => most)]),
            $"At {Text(Dimension.Length, height_m)} the load takes {Text(Dimension.GaugePressure, gauge)} gauge; the spring may have {Text(Dimension.GaugePressure, most)}.");
    }

    /// <summary>Ride frequency at the wheel, tyre rigid, against height.</summary>
    public Chart RideFrequency(double height_m)
    {
        double frequency = Frequency_Hz(Rate_N_per_m(height_m, Gauge_Pa(height_m)), height_m);
        (double, double)[] band = [.. _sweep.SpringRateBand_N_per_m.Select(
            (b, k) => (Frequency_Hz(b.Low, _sweep.Height_m[k]), Frequency_Hz(b.High, _sweep.Height_m[k])))];
        double[] wanted = [.. _sweep.TargetSpringRate_N_per_m.Select((r, k) => Frequency_Hz(r, _sweep.Height_m[k]))];
        return Drawn(
            "rideFrequency", "Ride frequency against spring height", "ride frequency", Dimension.Frequency, _sweep.RideFrequency_Hz,
            band, (height_m, frequency), s => s.RideFrequency_Hz,
            double.IsNaN(wanted[0]) ? null : ($"wanted {Text(Dimension.Frequency, Frequency_Hz(Target(height_m), height_m))}", wanted),
            $"At {Text(Dimension.Length, height_m)} the car rides at {Text(Dimension.Frequency, frequency)}, tyre rigid.");
    }

    /// <summary>Effective area at the gauge pressure that carries the load, with every regulated row as F/pg.</summary>
    public Chart EffectiveArea(double height_m)
    {
        double gauge = Gauge_Pa(height_m);
        double area = double.IsNaN(gauge) ? double.NaN : Case.Fit.Spring.At(height_m, gauge).EffectiveArea_m2;
        Chart chart = Drawn(
            "effectiveArea", "Effective area against spring height", "effective area", Dimension.Area, _sweep.EffectiveArea_m2,
            [], (height_m, area), s => s.EffectiveArea_m2, null,
            $"At {Text(Dimension.Length, height_m)} the effective area is {Text(Dimension.Area, area)}.");
        if (Case.Part.Data is not MeasuredSpring measured) return chart;
        SpringRow[] rows = [.. measured.Rows.Where(r => r.Mode == AirMode.Regulated && r.Amplitude_m is null && r.GaugePressure_Pa > 0)];
        double[] areas = [.. rows.Select(r => r.Force_N / r.GaugePressure_Pa)];
        return chart with
        {
            X = Axes.Around("spring height", Dimension.Length, _units, [.. rows.Select(r => r.Height_m), .. _sweep.Height_m]),
            Y = Axes.Around("effective area", Dimension.Area, _units, [.. areas, .. _sweep.EffectiveArea_m2]),
            Measured = [new ChartPoints("measured, F/pg", Shown(Dimension.Length, [.. rows.Select(r => r.Height_m)]), Shown(Dimension.Area, areas))],
        };
    }

    private Chart Drawn(
        string id, string title, string axis, Dimension dimension, double[] values, (double Low, double High)[] band,
        (double Height, double Value) setting, Func<HeightSolution, double> of, (string Label, double[] Values)? limit, string summary)
    {
        double[] y = Shown(dimension, values);
        double[] lows = Shown(dimension, [.. band.Select(b => b.Low)]), highs = Shown(dimension, [.. band.Select(b => b.High)]);
        double[] across = limit is { } l ? l.Values : [];
        return new Chart
        {
            Id = id,
            Title = title,
            Summary = summary,
            X = _heightAxis,
            Y = Axes.Focused(axis, dimension, _units, values, [.. across, setting.Value]),
            Curves = [Axes.Curve("", _heights, y, _sweep.Tested)],
            Bands = band.Length == 0 ? [] : [new ChartBand(_heights, lows, highs)],
            Limits = limit is null ? [] : [new ChartCurve(limit.Value.Label, _heights, Shown(dimension, across), Axes.Nothing(_heights.Length), _heights.Length - 1)],
            Marks = [.. _solutions.Select(s => Mark(s, dimension, of(s), setting.Height)), Setting(dimension, setting)],
        };
    }

    // Where the setting stands on a solution its own label says enough.
    private ChartMark Mark(HeightSolution s, Dimension dimension, double value, double setting_m) => new(
        s.Recommended ? MarkKind.Recommended : s.WithinPressureLimit ? MarkKind.Solution : MarkKind.OverLimit,
        _units.Value(Dimension.Length, s.Height_m), _units.Value(dimension, value),
        Math.Abs(s.Height_m - setting_m) < Alike_m ? "" : $"{(s.Recommended ? "recommended " : s.WithinPressureLimit ? "" : "over limit ")}{Text(Dimension.Length, s.Height_m)}");

    private ChartMark Setting(Dimension dimension, (double Height, double Value) at) => new(
        MarkKind.Setting, _units.Value(Dimension.Length, at.Height), _units.Value(dimension, at.Value),
        $"this setting · {Text(Dimension.Length, at.Height)} · {Text(dimension, at.Value)}{(dimension == Dimension.GaugePressure ? " gauge" : "")}");

    private double Gauge_Pa(double height_m)
    {
        double gauge = Case.GaugePressure_Pa(height_m);
        return gauge > 0 ? gauge : double.NaN;
    }

    private double Rate_N_per_m(double height_m, double gauge_Pa) =>
        double.IsNaN(gauge_Pa) ? double.NaN : Case.Spring().SealedRate_N_per_m(height_m, gauge_Pa, Case.Exponent);

    private double Frequency_Hz(double rate_N_per_m, double height_m) =>
        Case.RideFrequency_Hz(Case.WheelRate_N_per_m(rate_N_per_m, height_m));

    private double Target(double height_m) => Case.TargetSpringRate_N_per_m(height_m);

    private string Text(Dimension dimension, double si) => _units.Text(dimension, si);

    private double[] Shown(Dimension dimension, double[] si) => Axes.Shown(dimension, _units, si);
}
