using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Fitting;

/// <summary>
/// The regression behind Ae(h, pg). A regulated reading is F = pg·[A₀(h) + q·A₁(h) + q²·A₂(h)] ± friction(h, pg) + its
/// sweep's own offset, tilt and bow + noise. A₁ stands where two levels of gauge pressure were tested, A₂ (a straight line,
/// shrunk towards none) where four were; friction where a level was taken in both directions, its growth with gauge
/// pressure where two were.
/// </summary>
internal sealed class AreaModel
{
    // Inside, areas are cm² and gauge pressures multiples of the mean, so that every weight starts near its end.
    private const double Unit_m2 = 1e-4;
    private const int OwnEffects = 3;

    private readonly CubicBasis _area, _byPressure;
    private readonly double _centre, _scale;
    private readonly int _pressureStart, _squareStart, _frictionStart, _columns;

    // A level of gauge pressure tells the curve's shape, and a direction its friction, over so many heights.
    private const int HeightsForShape = 3;

    public AreaModel(IReadOnlyList<SpringRow> rows, int[] sweepOf, int sweeps, bool ownEffects)
    {
        double least = rows.Min(r => r.Height_m), greatest = rows.Max(r => r.Height_m);
        int distinct = rows.Select(r => Math.Round(r.Height_m, 5)).Distinct().Count();
        int[] levelOf = Sweeps.Levels(rows);
        int levels = Reaching(Enumerable.Range(0, rows.Count).GroupBy(i => levelOf[i])).Count();
        int bothWays = Reaching(Enumerable.Range(0, rows.Count).Where(i => rows[i].Direction is not null)
            .GroupBy(i => (levelOf[i], rows[i].Direction))).GroupBy(key => key.Item1).Count(ways => ways.Count() == 2);
        _centre = rows.Average(r => r.GaugePressure_Pa);
        _scale = levels > 1 ? rows.Max(r => r.GaugePressure_Pa) - rows.Min(r => r.GaugePressure_Pa) : _centre;
        _area = new CubicBasis(least, greatest, Math.Clamp(distinct - 3, 1, 16));
        _byPressure = new CubicBasis(least, greatest, Math.Clamp(distinct - 3, 1, 6));
        _pressureStart = _area.Count;
        _squareStart = _pressureStart + (levels > 1 ? _byPressure.Count : 0);
        _frictionStart = _squareStart + (levels > 3 ? 2 : 0);
        _columns = _frictionStart + bothWays switch { 0 => 0, 1 => 2, _ => 3 };

        Regression = new SweepRegression(_columns, ownEffects ? OwnEffects : 0, sweeps);
        Regression.Penalise(0, _area.Count, order: 3);
        if (levels > 1) Regression.Penalise(_pressureStart, _byPressure.Count, order: 2);
        if (levels > 3) Regression.Penalise(_squareStart, 2, order: 0);
        Span<double> x = stackalloc double[_columns], z = stackalloc double[OwnEffects];
        for (int i = 0; i < rows.Count; i++)
        {
            Fill(rows[i], x, z);
            Regression.Add(sweepOf[i], x, z[..(ownEffects ? OwnEffects : 0)], rows[i].Force_N / (_centre * Unit_m2));
        }

        // Anything less would leave a term to chance: it could not be told from another.
        IEnumerable<TKey> Reaching<TKey>(IEnumerable<IGrouping<TKey, int>> groups) => groups
            .Where(g => g.Select(i => Math.Round(rows[i].Height_m, 5)).Distinct().Count() >= HeightsForShape)
            .Select(g => g.Key);
    }

    public SweepRegression Regression { get; }

    public int Columns => _columns;

    public CubicBasis Basis => _area;

    public bool DependsOnGaugePressure => _squareStart > _pressureStart;

    public double Centre_Pa => _centre;

    public double Scale_Pa => _scale;

    /// <summary>Force that the model gives a reading, its sweep's own departure included, N.</summary>
    public double Predict_N(in SpringRow row, int sweep)
    {
        Span<double> x = stackalloc double[_columns], z = stackalloc double[OwnEffects];
        Fill(row, x, z);
        return (Cholesky.Dot(x, Regression.Coefficients) + Regression.Departure(sweep, z)) * _centre * Unit_m2;
    }

    /// <summary>Standard deviation of one reading about its own sweep, N.</summary>
    public double ReadingDeviation_N => Math.Sqrt(Regression.Variance) * _centre * Unit_m2;

    /// <summary>Half the difference between compressing and extending, N; null where only one direction was taken.</summary>
    public double? Friction_N(double height_m, double gaugePressure_Pa)
    {
        if (_columns == _frictionStart) return null;
        ReadOnlySpan<double> c = Regression.Coefficients.AsSpan(_frictionStart);
        double byPressure = c.Length > 2 ? c[2] * (gaugePressure_Pa / _centre - 1) : 0;
        return (c[0] + c[1] * Place(height_m) + byPressure) * _centre * Unit_m2;
    }

    /// <summary>The three area curves, m², from a set of coefficients.</summary>
    public (SmoothCurve Area, SmoothCurve? ByPressure, SmoothCurve? BySquare) Curves(ReadOnlySpan<double> coefficients)
    {
        double[] scaled = new double[_columns];
        for (int i = 0; i < _columns; i++) scaled[i] = coefficients[i] * Unit_m2;
        SmoothCurve area = _area.Curve(scaled.AsSpan(0, _area.Count));
        if (!DependsOnGaugePressure) return (area, null, null);
        SmoothCurve byPressure = _byPressure.Curve(scaled.AsSpan(_pressureStart, _byPressure.Count));
        if (_frictionStart == _squareStart) return (area, byPressure, null);
        double c0 = scaled[_squareStart] - scaled[_squareStart + 1], c1 = scaled[_squareStart] + scaled[_squareStart + 1];
        return (area, byPressure, SmoothCurve.Through([_area.Start, _area.End], [c0, c1]));
    }

    private void Fill(in SpringRow row, Span<double> x, Span<double> z)
    {
        x.Clear();
        double w = row.GaugePressure_Pa / _centre, q = (row.GaugePressure_Pa - _centre) / _scale, place = Place(row.Height_m);
        _area.Scatter(row.Height_m, w, x);
        if (DependsOnGaugePressure) _byPressure.Scatter(row.Height_m, w * q, x[_pressureStart..]);
        if (_frictionStart > _squareStart) (x[_squareStart], x[_squareStart + 1]) = (w * q * q, w * q * q * place);
        if (_columns > _frictionStart)
        {
            double sign = row.Direction switch { SweepDirection.Compressing => 1, SweepDirection.Extending => -1, _ => 0 };
            (x[_frictionStart], x[_frictionStart + 1]) = (sign, sign * place);
            if (_columns > _frictionStart + 2) x[_frictionStart + 2] = sign * (w - 1);
        }

        (z[0], z[1], z[2]) = (1, place, place * place - 1.0 / 3);
    }

    private double Place(double height_m) => 2 * (height_m - _area.Start) / (_area.End - _area.Start) - 1;
}
