using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Fitting;

/// <summary>
/// V(h, pg) from measured volumes, each at the gauge pressure it was measured at. The elastic-wall identity
/// ∂V/∂h|pg = ∂F/∂pg|h gives its shape; a smooth departure from it is kept where the data show one. Below five heights the
/// identity carries the whole shape; with no volume at all, sealed sweeps give its constant.
/// </summary>
internal sealed class VolumeModel
{
    private const double Unit_m3 = 1e-6;
    private const int HeightsForDeparture = 5;

    private readonly SpringRow[] _rows;
    private readonly int[] _sweepOf;
    private readonly int _sweeps, _levels;
    private readonly Func<AirSpring, (double Value, double Half)>? _anchor;
    private SweepRegression? _fitted;

    public VolumeModel(IReadOnlyList<SpringRow> rows, int[] sweepOf, int sweeps, double least_m, double greatest_m,
        Func<AirSpring, (double Value, double Half)> volumeAtLeastHeight_m3)
    {
        int[] kept = Enumerable.Range(0, rows.Count)
            .Where(i => rows[i].Volume_m3 is not null && rows[i].Height_m >= least_m && rows[i].Height_m <= greatest_m)
            .ToArray();
        _rows = kept.Select(i => rows[i]).ToArray();
        _sweepOf = kept.Select(i => sweepOf[i]).ToArray();
        _sweeps = sweeps;
        if (kept.Length == 0) _anchor = volumeAtLeastHeight_m3;
        _levels = kept.Length == 0 ? 0 : Sweeps.Levels(_rows).Max() + 1;
        ShowsShape = _rows.Select(r => Math.Round(r.Height_m, 5)).Distinct().Count() >= HeightsForDeparture;
    }

    public bool HasRows => _rows.Length > 0;

    /// <summary>True where the measured volumes reach over enough heights to show a departure from the identity.</summary>
    public bool ShowsShape { get; }

    /// <summary>True where volumes at two levels of gauge pressure show how the wall stretches.</summary>
    public bool ShowsStretch => _levels > 1;

    /// <summary>True where sealed sweeps give the constant of the volume.</summary>
    public bool IsAnchored => _anchor is not null;

    /// <summary>
    /// The spring with these area curves and the volume that fits them. One sweep may be left out; a constant from sealed sweeps
    /// may be taken so many halves of its 95 % interval higher.
    /// </summary>
    public AirSpring Fit(AreaModel model, ReadOnlySpan<double> coefficients, int without = -1, double halvesHigher = 0)
    {
        (SmoothCurve area, SmoothCurve? byPressure, SmoothCurve? bySquare) = model.Curves(coefficients);
        AirSpring identity = new(area, byPressure, bySquare, area.Integral(), model.Centre_Pa, model.Scale_Pa, 0, 0);
        // Before the readings are compared: each holds at the gauge pressure it was measured at.
        bool stretchAssumed = model.DependsOnGaugePressure && _levels < 2;
        if (stretchAssumed) identity.AssumeLeastStretch();
        CubicBasis basis = model.Basis;
        int shape = ShowsShape ? basis.Count : 1;
        double[] departure = _anchor is null
            ? Departure(identity, model, shape, without)
            : [Anchor(identity, halvesHigher) / Unit_m3];
        for (int i = 0; i < departure.Length; i++) departure[i] *= Unit_m3;

        SmoothCurve volume = ShowsShape
            ? area.Integral().Plus(basis.Curve(departure.AsSpan(0, shape)))
            : area.Integral(departure[0]);
        bool elastic = model.DependsOnGaugePressure;
        AirSpring spring = new(
            area, byPressure, bySquare, volume, model.Centre_Pa, model.Scale_Pa,
            elastic && _levels > 1 ? departure[shape] : 0, elastic && _levels > 3 ? departure[shape + 1] : 0);
        if (stretchAssumed) spring.AssumeLeastStretch();
        return spring;
    }

    private double Anchor(AirSpring identity, double halvesHigher)
    {
        (double value, double half) = _anchor!(identity);
        return value + halvesHigher * half;
    }

    // What the readings leave over the identity, fitted to a smooth curve of height and a polynomial of gauge pressure.
    private double[] Departure(AirSpring identity, AreaModel model, int shape, int without)
    {
        int columns = shape + Math.Clamp(_levels - 1, 0, 1) + (_levels > 3 ? 1 : 0);
        // Every spring of the band has the same design and weights; only what is left over the identity differs.
        bool first = _fitted is null;
        SweepRegression regression = _fitted ??= Regression(columns, shape);
        regression.ForgetReadings();
        Span<double> x = stackalloc double[columns];
        ReadOnlySpan<double> z = _sweeps >= 4 ? [1] : [];
        for (int i = 0; i < _rows.Length; i++)
        {
            SpringRow row = _rows[i];
            x.Clear();
            if (ShowsShape) model.Basis.Scatter(row.Height_m, 1, x);
            else x[0] = 1;
            double q = (row.GaugePressure_Pa - model.Centre_Pa) / model.Scale_Pa;
            if (_levels > 1) x[shape] = q;
            if (_levels > 3) x[shape + 1] = q * q;
            double left = row.Volume_m3!.Value - identity.At(row.Height_m, row.GaugePressure_Pa).Volume_m3;
            if (first) regression.Add(_sweepOf[i], x, z, left / Unit_m3);
            else regression.AddReading(_sweepOf[i], x, z, left / Unit_m3);
        }

        if (first) regression.Solve();
        double[] coefficients = new double[columns];
        // A sweep that alone carries the volumes cannot be left out.
        if (!regression.Without(without, coefficients)) regression.Without(-1, coefficients);
        return coefficients;
    }

    private SweepRegression Regression(int columns, int shape)
    {
        SweepRegression regression = new(columns, levels: _sweeps >= 4 ? 1 : 0, _sweeps);
        if (ShowsShape) regression.Penalise(0, shape, order: 1);
        return regression;
    }
}
