using Bellowsmith.Physics.Fitting;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// How the strut follows the wheel. Wheel travel zw is bump +, strut travel is compression +, both zero at drive height;
/// the motion ratio is i = d(strut travel)/d(wheel travel), so that kw = ks·i² + Fstrut·di/dzw
/// [Barton Fieldhouse 2018, eqs 3.29–3.33].
/// </summary>
public sealed class MotionRatio
{
    private const int LeastRows = 4, MostSegments = 12, LinkageSamples = 24;

    private readonly double _ratio;
    private readonly SmoothCurve? _travel;
    private readonly double _atZero;

    private MotionRatio(double ratio, SmoothCurve? travel)
    {
        (_ratio, _travel) = (ratio, travel);
        _atZero = travel?.At(0).Value ?? 0;
    }

    public static MotionRatio Constant(double strutPerWheel) => new(strutPerWheel, null);

    /// <summary>
    /// From a measured table of wheel travel and strut travel, m, any order, with wheel travel 0 inside. A cubic smoothing
    /// spline whose smoothness comes from the rows by restricted maximum likelihood; its slope is i, its curvature di/dzw.
    /// </summary>
    /// <exception cref="ArgumentException">Fewer than four different wheel travels, or 0 outside them.</exception>
    public static MotionRatio FromTable(ReadOnlySpan<double> wheelTravel_m, ReadOnlySpan<double> strutTravel_m)
    {
        if (wheelTravel_m.ToArray().Distinct().Count() < LeastRows || wheelTravel_m.Length != strutTravel_m.Length)
            throw new ArgumentException("A ratio table needs four different wheel travels or more.", nameof(wheelTravel_m));
        (double least, double greatest) = (double.MaxValue, double.MinValue);
        foreach (double z in wheelTravel_m) (least, greatest) = (Math.Min(least, z), Math.Max(greatest, z));
        if (!(least <= 0 && greatest >= 0)) throw new ArgumentException("Wheel travel 0 lies outside the table.", nameof(wheelTravel_m));

        CubicBasis basis = new(least, greatest, Math.Min(wheelTravel_m.Length - 1, MostSegments));
        SweepRegression regression = new(basis.Count, levels: 0, sweeps: 1);
        regression.Penalise(0, basis.Count, order: 3);
        Span<double> x = stackalloc double[basis.Count];
        for (int i = 0; i < wheelTravel_m.Length; i++)
        {
            x.Clear();
            basis.Scatter(wheelTravel_m[i], 1, x);
            regression.Add(0, x, [], strutTravel_m[i] * 1000);
        }

        regression.Solve();
        double[] coefficients = regression.Coefficients.Select(c => c / 1000).ToArray();
        SmoothCurve travel = basis.Curve(coefficients);
        return new MotionRatio(travel.At(0).Slope, travel);
    }

    /// <summary>As a linkage makes it, sampled so far to either side as asked, or as it goes.</summary>
    public static MotionRatio Of(Linkage linkage, double travel_m)
    {
        double[] travels = [.. Enumerable.Range(-LinkageSamples, 2 * LinkageSamples + 1).Select(k => travel_m * k / LinkageSamples)];
        LinkagePoint[] points = new LinkagePoint[travels.Length];
        linkage.Sweep(travels, 0, points);
        LinkagePoint[] reached = [.. points.Where(point => point.State is not null)];
        return FromTable([.. reached.Select(point => point.Travel_m)], [.. reached.Select(point => point.State!.Strut.Compression_m)]);
    }

    /// <summary>i at a wheel travel. Beyond a table's ends it stays what it is there; <see cref="Covers"/> tells.</summary>
    public double At(double wheelTravel_m) => _travel is null ? _ratio : _travel.At(Held(wheelTravel_m)).Slope;

    /// <summary>di/dzw, 1/m; zero for a constant ratio and beyond a table's ends.</summary>
    public double SlopeAt(double wheelTravel_m) =>
        _travel is null || !Covers(wheelTravel_m) ? 0 : _travel.At(wheelTravel_m).Curvature;

    /// <summary>Strut travel, m, compression +.</summary>
    public double StrutTravel_m(double wheelTravel_m)
    {
        if (_travel is null) return _ratio * wheelTravel_m;
        double held = Held(wheelTravel_m);
        (double travel, double slope, _) = _travel.At(held);
        return travel - _atZero + slope * (wheelTravel_m - held);
    }

    /// <summary>Wheel travel at which the strut has moved so far; NaN where no travel within ±1 m does it.</summary>
    public double WheelTravel_m(double strutTravel_m)
    {
        if (_travel is null) return strutTravel_m / _ratio;
        double low = -1, high = 1;
        if (StrutTravel_m(low) > strutTravel_m || StrutTravel_m(high) < strutTravel_m) return double.NaN;
        for (int step = 0; step < 60; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = StrutTravel_m(middle) < strutTravel_m ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Wheel travels from the first to the last of the table, m; null for a constant ratio.</summary>
    public (double Least_m, double Greatest_m)? Range => _travel is null ? null : (_travel.Start, _travel.End);

    /// <summary>True within the table, and everywhere for a constant ratio.</summary>
    public bool Covers(double wheelTravel_m) =>
        _travel is null || (wheelTravel_m >= _travel.Start - 1e-9 && wheelTravel_m <= _travel.End + 1e-9);

    private double Held(double wheelTravel_m) => Math.Clamp(wheelTravel_m, _travel!.Start, _travel.End);
}
