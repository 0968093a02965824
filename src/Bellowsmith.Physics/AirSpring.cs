using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// A bare air spring as smooth functions of height h and gauge pressure pg.
/// <para>
/// Area: Ae(h, pg) = A₀(h) + q·A₁(h) + q²·A₂(h) with q = (pg − centre)/scale. Volume: V(h, pg) = V₀(h) + Γ(pg) plus what the
/// elastic wall adds. For a wall without loss the work W = pg·dV − F·dh is a state function, so
/// ∂V/∂h|pg = ∂F/∂pg|h = Ae + pg·∂Ae/∂pg: A₁ and A₂ carry over into V by their integrals.
/// </para>
/// Heights are asked for only within [<see cref="LeastHeight_m"/>, <see cref="GreatestHeight_m"/>]: nothing is extrapolated.
/// </summary>
public sealed class AirSpring
{
    private readonly SmoothCurve _area, _volume;
    private readonly SmoothCurve? _areaByPressure, _areaBySquare, _integralByPressure, _integralBySquare;
    private readonly double _centre, _perScale, _volumeBySquare;
    private double _volumeByPressure;

    private AirSpring(SmoothCurve area, SmoothCurve volume) =>
        (_area, _volume, _perScale) = (area, volume, 0);

    internal AirSpring(
        SmoothCurve area, SmoothCurve? byPressure, SmoothCurve? bySquare, SmoothCurve volume,
        double centre_Pa, double scale_Pa, double volumeByPressure, double volumeBySquare)
    {
        (_area, _areaByPressure, _areaBySquare, _volume) = (area, byPressure, bySquare, volume);
        (_integralByPressure, _integralBySquare) = (byPressure?.Integral(), bySquare?.Integral());
        (_centre, _perScale) = (centre_Pa, 1 / scale_Pa);
        (_volumeByPressure, _volumeBySquare) = (volumeByPressure, volumeBySquare);
    }

    /// <summary>The least height the data reach.</summary>
    public double LeastHeight_m => _area.Start;

    /// <summary>The greatest height the data reach.</summary>
    public double GreatestHeight_m => _area.End;

    /// <summary>True where a height lies within the data.</summary>
    public bool Covers(double height_m) => height_m >= LeastHeight_m - 1e-9 && height_m <= GreatestHeight_m + 1e-9;

    /// <summary>True where two levels of gauge pressure or more were tested, so that the area may depend on it.</summary>
    public bool DependsOnGaugePressure => _areaByPressure is not null;

    /// <summary>
    /// From a characteristic: a spline through every row, with not-a-knot ends. The area is taken as independent of gauge
    /// pressure and ∂V/∂h from the volume column, which need not equal Ae.
    /// </summary>
    public static AirSpring FromCharacteristic(IReadOnlyList<CharacteristicRow> rows)
    {
        double[] heights = rows.Select(r => r.Height_m).ToArray();
        return new AirSpring(
            SmoothCurve.Through(heights, rows.Select(r => r.EffectiveArea_m2).ToArray()),
            SmoothCurve.Through(heights, rows.Select(r => r.Volume_m3).ToArray()));
    }

    /// <summary>The spring at a height and gauge pressure. Heights outside the data are a caller's mistake.</summary>
    public AirSpringState At(double height_m, double gaugePressure_Pa)
    {
        (double area, double slope, _) = _area.At(height_m);
        (double volume, double volumeSlope, _) = _volume.At(height_m);
        if (_areaByPressure is null) return new(area, slope, 0, volume, volumeSlope, 0);

        double q = (gaugePressure_Pa - _centre) * _perScale, p = gaugePressure_Pa * _perScale;
        (double a1, double slope1, _) = _areaByPressure.At(height_m);
        double w1 = _integralByPressure!.At(height_m).Value;
        double byPressure = a1 * _perScale;
        double byPressureVolume = _volumeByPressure + 2 * _volumeBySquare * q + 2 * w1;
        area += q * a1;
        slope += q * slope1;
        volume += _volumeByPressure * q + _volumeBySquare * q * q + (q + p) * w1;
        volumeSlope += (q + p) * a1;
        if (_areaBySquare is not null)
        {
            (double a2, double slope2, _) = _areaBySquare.At(height_m);
            double w2 = _integralBySquare!.At(height_m).Value;
            area += q * q * a2;
            slope += q * q * slope2;
            byPressure += 2 * q * a2 * _perScale;
            volume += (q * q + 2 * q * p) * w2;
            volumeSlope += (q * q + 2 * q * p) * a2;
            byPressureVolume += (4 * q + 2 * p) * w2;
        }

        return new(area, slope, byPressure, volume, volumeSlope, byPressureVolume * _perScale);
    }

    /// <summary>Ae at one height as a₀ + a₁·pg + a₂·pg², SI.</summary>
    internal (double A0, double A1, double A2) AreaPowers(double height_m)
    {
        double a0 = _area.At(height_m).Value;
        if (_areaByPressure is null) return (a0, 0, 0);
        double a1 = _areaByPressure.At(height_m).Value * _perScale;
        double a2 = (_areaBySquare?.At(height_m).Value ?? 0) * _perScale * _perScale;
        return (a0 - _centre * (a1 - _centre * a2), a1 - 2 * _centre * a2, a2);
    }

    /// <summary>
    /// Where no volume was measured at more than one gauge pressure, its dependence at one height is unknown: take the least
    /// that leaves ∂V/∂pg ≥ 0 everywhere at the centre of the tests, as a wall that stretches under pressure must.
    /// </summary>
    internal void AssumeLeastStretch()
    {
        if (_areaByPressure is null) return;
        double least = 0;
        for (int i = 0; i <= 64; i++)
        {
            double h = LeastHeight_m + (GreatestHeight_m - LeastHeight_m) * i / 64;
            least = Math.Min(least, At(h, _centre).VolumeByGaugePressure_m3_per_Pa / _perScale - _volumeByPressure);
        }

        _volumeByPressure = -least;
    }
}
