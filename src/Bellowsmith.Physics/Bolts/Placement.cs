namespace Bellowsmith.Physics.Bolts;

/// <summary>How a part lies on the car: turned about the middle of its holes, which then stands at a place of the car.</summary>
internal readonly record struct Placement(double MiddleX, double MiddleY, double X, double Y, double Turn_rad)
{
    /// <summary>The sum of squares of the offsets is least.</summary>
    public static Placement LeastSquares(ReadOnlySpan<BoltPair> pairs)
    {
        (double mx, double my, double x, double y, double share) = (0, 0, 0, 0, 1.0 / pairs.Length);
        foreach (BoltPair pair in pairs)
            (mx, my, x, y) = (mx + share * pair.Part.X_m, my + share * pair.Part.Y_m, x + share * pair.Car.X_m, y + share * pair.Car.Y_m);
        (double along, double across) = (0, 0);
        foreach (BoltPair pair in pairs)
        {
            (double px, double py, double cx, double cy) = (pair.Part.X_m - mx, pair.Part.Y_m - my, pair.Car.X_m - x, pair.Car.Y_m - y);
            (along, across) = (along + px * cx + py * cy, across + px * cy - py * cx);
        }

        return new(mx, my, x, y, Math.Atan2(across, along));
    }

    public HoleFit Of(BoltPair pair)
    {
        (double sin, double cos) = Math.SinCos(Turn_rad);
        (double x, double y) = Arm(pair, sin, cos);
        (double offX, double offY) = (pair.Car.X_m - X - x, pair.Car.Y_m - Y - y);
        return new(offX, offY, pair.Room_m - Math.Sqrt(offX * offX + offY * offY));
    }

    /// <summary>From the middle to the part's hole, turned.</summary>
    public (double X, double Y) Arm(in BoltPair pair, double sin, double cos)
    {
        (double x, double y) = (pair.Part.X_m - MiddleX, pair.Part.Y_m - MiddleY);
        return (cos * x - sin * y, sin * x + cos * y);
    }
}
