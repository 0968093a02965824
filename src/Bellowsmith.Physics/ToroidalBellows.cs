namespace Bellowsmith.Physics;

/// <summary>
/// Volume and effective area from geometry alone: N equal convolutions between rings of one radius, each a circular
/// arc of constant length turned about the axis, the wall thin and inextensible, so A = dV/dH exactly. Such models need
/// ring radius, proportion and number of convolutions only [Quaglia Guala 2003]; the closed forms below are derived.
/// Against real springs take ±10 to 15 %: leaving out stretch and asymmetry has cost up to 10.96 % of rate
/// [Convoluted Springs 2021], and a measured spring's A and dV/dH alone differ by 6.5 % [EMDG198 1998, p. 22].
/// Height is between the ring planes, extension +; SI throughout.
/// </summary>
public sealed class ToroidalBellows
{
    private readonly double _ringRadius_m;
    private readonly double _arcLength_m;
    private readonly int _convolutions;

    /// <param name="ringRadius_m"></param>
    /// <param name="arcLength_m">Length of one convolution's meridian, ring to ring.</param>
    /// <param name="convolutions"></param>
    /// <exception cref="ArgumentOutOfRangeException">A length is zero or negative, or there is no convolution.</exception>
    public ToroidalBellows(double ringRadius_m, double arcLength_m, int convolutions)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ringRadius_m);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(arcLength_m);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(convolutions);
        (_ringRadius_m, _arcLength_m, _convolutions) = (ringRadius_m, arcLength_m, convolutions);
        GreatestHeight_m = HeightAt(HalfAngleAbove(angle => EffectiveArea_m2(angle) < 0));
    }

    /// <summary>The bellows whose arcs are semicircles at the given height.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A length is zero or negative, or there is no convolution.</exception>
    public static ToroidalBellows SemicircularAt(double height_m, double ringRadius_m, int convolutions) =>
        new(ringRadius_m, Math.PI / 2 * height_m / convolutions, convolutions);

    /// <summary>The height at which the effective area vanishes: the nearest there is to any height above it.</summary>
    public double GreatestHeight_m { get; }

    /// <summary>The shape at a height, or null where there is none; <see cref="LimitAt"/> says why.</summary>
    public ToroidalShape? At(double height_m) =>
        LimitAt(height_m) == ToroidalLimit.None ? ShapeAt(height_m, HalfAngleAt(height_m)) : null;

    public ToroidalLimit LimitAt(double height_m)
    {
        if (!(height_m > 0)) return ToroidalLimit.PlatesMeet;
        if (height_m >= _convolutions * _arcLength_m) return ToroidalLimit.WallTaut;
        return height_m >= GreatestHeight_m ? ToroidalLimit.AreaVanishes : ToroidalLimit.None;
    }

    private ToroidalShape ShapeAt(double height_m, double angle)
    {
        var radius = ArcRadius_m(angle);
        return new(
            height_m, angle, radius, _ringRadius_m + radius * (1 - Math.Cos(angle)), Volume_m3(angle),
            EffectiveArea_m2(angle), AreaSlope_m(angle), angle > Math.PI / 2 ? radius * (1 - Math.Sin(angle)) : 0);
    }

    /// <summary>sinφ/φ = H/(N·ℓ).</summary>
    private double HalfAngleAt(double height_m) => HalfAngleAbove(angle => HeightAt(angle) > height_m);

    private double HeightAt(double angle) => _convolutions * 2 * ArcRadius_m(angle) * Math.Sin(angle);

    private double ArcRadius_m(double angle) => _arcLength_m / (2 * angle);

    /// <summary>V = πN·r·[2R²s + 2Rr(φ − sc) + r²(2s − ⅔s³ − 2φc)], s = sinφ, c = cosφ; ∫πR²dz along the arc.</summary>
    private double Volume_m3(double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);
        var (ring, arc) = (_ringRadius_m, ArcRadius_m(angle));
        return Math.PI * _convolutions * arc * (2 * ring * ring * sine
            + 2 * ring * arc * (angle - sine * cosine)
            + arc * arc * (2 * sine - 2.0 / 3 * sine * sine * sine - 2 * angle * cosine));
    }

    /// <summary>A = dV/dH = π[R² − 2Rrc − r²B], B = s² − 3 + φ²s/(s − φc).</summary>
    private double EffectiveArea_m2(double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);
        var (ring, arc) = (_ringRadius_m, ArcRadius_m(angle));
        var bulge = sine * sine - 3 + angle * angle * sine / (sine - angle * cosine);
        return Math.PI * (ring * ring - 2 * ring * arc * cosine - arc * arc * bulge);
    }

    /// <summary>dA/dH = −πφ/(2N·D)·[2R(c/φ + s) + r(2B/φ − dB/dφ)], D = s − φc.</summary>
    private double AreaSlope_m(double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);
        var curl = sine - angle * cosine;
        var share = angle * angle * sine / curl;
        var bulge = sine * sine - 3 + share;
        var bulgeSlope = 2 * sine * cosine + (2 * angle * sine + angle * angle * cosine - share * angle * sine) / curl;
        return -Math.PI * angle / (2 * _convolutions * curl)
            * (2 * _ringRadius_m * (cosine / angle + sine) + ArcRadius_m(angle) * (2 * bulge / angle - bulgeSlope));
    }

    // Height and area each cross their value once between a straight wall (0) and a closed ring (π), so halving cannot
    // miss it; 60 halvings reach the last bit.
    private static double HalfAngleAbove(Func<double, bool> isTooStraight)
    {
        var (low, high) = (0.0, Math.PI);
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = isTooStraight(middle) ? (middle, high) : (low, middle);
        }

        return high;
    }
}
