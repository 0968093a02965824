namespace Bellowsmith.Physics.Bolts;

/// <summary>Value, first and second derivatives of the smoothed worst bolt by shift and turn.</summary>
internal struct Slopes
{
    private double _xx, _xy, _yy, _xt, _yt, _tt;

    public double Value { get; private set; }

    public double X { get; private set; }

    public double Y { get; private set; }

    /// <summary>By the arc at the mean arm.</summary>
    public double Turn { get; private set; }

    /// <summary>ε·ln Σ exp(g/ε), g = |offset| − room rounded off where the offset vanishes, as the greatest g and the sum over it.</summary>
    public static (double Greatest, double Sum) Parts(ReadOnlySpan<BoltPair> pairs, in Placement at, double soft)
    {
        (double greatest, double sum) = (double.NegativeInfinity, 0);
        foreach (BoltPair pair in pairs) greatest = Math.Max(greatest, Length(at.Of(pair), soft) - pair.Room_m);
        foreach (BoltPair pair in pairs) sum += Math.Exp((Length(at.Of(pair), soft) - pair.Room_m - greatest) / soft);
        return (greatest, sum);
    }

    public static Slopes Of(ReadOnlySpan<BoltPair> pairs, in Placement at, double arm, double soft)
    {
        Slopes all = default;
        (double sin, double cos) = Math.SinCos(at.Turn_rad);
        (double greatest, double sum) = Parts(pairs, at, soft);
        foreach (BoltPair pair in pairs)
        {
            HoleFit hole = at.Of(pair);
            (double armX, double armY) = at.Arm(pair, sin, cos);
            double length = Length(hole, soft), weight = Math.Exp((length - pair.Room_m - greatest) / soft) / sum;
            all.Add(hole, length, armX / arm, armY / arm, arm, weight, soft);
        }

        // What the weights' own change takes away again.
        all.Square(-1 / soft, all.X, all.Y, all.Turn);
        all.Value = greatest + soft * Math.Log(sum);
        return all;
    }

    /// <summary>Where the parabola through it has its lowest place.</summary>
    public readonly (double X, double Y, double Turn) Newton(double damping)
    {
        double xx = _xx + damping, yy = _yy + damping, tt = _tt + damping;
        double a = yy * tt - _yt * _yt, b = _xt * _yt - _xy * tt, c = _xy * _yt - _xt * yy, determinant = xx * a + _xy * b + _xt * c;
        double d = xx * tt - _xt * _xt, e = _xy * _xt - xx * _yt, f = xx * yy - _xy * _xy;
        return (-(a * X + b * Y + c * Turn) / determinant, -(b * X + d * Y + e * Turn) / determinant, -(c * X + e * Y + f * Turn) / determinant);
    }

    private static double Length(HoleFit hole, double soft) =>
        Math.Sqrt(hole.OffX_m * hole.OffX_m + hole.OffY_m * hole.OffY_m + soft * soft);

    // Offset o = c − t − R·b: a shift moves it back by as much, a turn by the arm turned a quarter.
    private void Add(HoleFit hole, double length, double armX, double armY, double arm, double weight, double soft)
    {
        (double x, double y) = (-hole.OffX_m / length, -hole.OffY_m / length);
        double turn = -x * armY + y * armX;
        (X, Y, Turn) = (X + weight * x, Y + weight * y, Turn + weight * turn);
        Square(weight / soft - weight / length, x, y, turn);
        double bend = weight / length;
        (_xx, _yy, _xt, _yt) = (_xx + bend, _yy + bend, _xt - bend * armY, _yt + bend * armX);
        _tt += bend * (armX * armX + armY * armY) - weight * (x * armX + y * armY) / arm;
    }

    private void Square(double factor, double x, double y, double turn)
    {
        (_xx, _xy, _yy) = (_xx + factor * x * x, _xy + factor * x * y, _yy + factor * y * y);
        (_xt, _yt, _tt) = (_xt + factor * x * turn, _yt + factor * y * turn, _tt + factor * turn * turn);
    }
}
