namespace Bellowsmith.Physics.Ride;

/// <summary>One curve as the numbers of a <see cref="KnotSum{T}"/>: its lines in the order of their fields, and its knots outwards.</summary>
internal sealed record KnotNumbers(double[] Lines, (double X, double Square, double Cube)[] Up, (double X, double Square, double Cube)[] Down)
{
    public static KnotNumbers Of(MonotoneCurve curve)
    {
        int centre = 0, last = curve.X.Count - 1;
        for (int j = 1; j <= last; j++)
            if (Math.Abs(curve.Y[j]) < Math.Abs(curve.Y[centre])) centre = j;
        return new(
            [curve.X[centre], curve.Y[centre], curve.Slopes[centre], curve.X[0], curve.X[last], Below(curve), Above(curve), Math.Max(0, Math.Min(-curve.X[0], curve.X[last]))],
            Upwards(curve, centre), Downwards(curve, centre));
    }

    /// <summary>Stops that push nothing between them.</summary>
    /// <exception cref="ArgumentException">A bump stop that pushes at its first point or before, a top-out stop that pulls at its last or beyond.</exception>
    public static KnotNumbers OfStops(MonotoneCurve? bump, MonotoneCurve? topOut)
    {
        if (bump is not null && (bump.Y[0] != 0 || Below(bump) != 0)) throw new ArgumentException("A bump stop begins with nothing.", nameof(bump));
        if (topOut is not null && (topOut.Y[^1] != 0 || Above(topOut) != 0)) throw new ArgumentException("A top-out stop ends with nothing.", nameof(topOut));
        return new(
            [0, 0, 0, topOut?.X[0] ?? double.MinValue, bump?.X[^1] ?? double.MaxValue, topOut is null ? 0 : Below(topOut), bump is null ? 0 : Above(bump), 0],
            bump is null ? [] : Upwards(bump, 0), topOut is null ? [] : Downwards(topOut, topOut.X.Count - 1));
    }

    private static (double X, double Square, double Cube)[] Upwards(MonotoneCurve curve, int centre)
    {
        var knots = new (double X, double Square, double Cube)[curve.X.Count - 1 - centre];
        for (int k = 0; k < knots.Length; k++)
        {
            int j = centre + k;
            knots[k] = Change(curve.X[j], Start(curve, j), k == 0 ? default : End(curve, j - 1));
        }

        return knots;
    }

    private static (double X, double Square, double Cube)[] Downwards(MonotoneCurve curve, int centre)
    {
        var knots = new (double X, double Square, double Cube)[centre];
        for (int k = 0; k < knots.Length; k++)
        {
            int j = centre - k;
            knots[k] = Change(curve.X[j], End(curve, j - 1), k == 0 ? default : Start(curve, j));
        }

        return knots;
    }

    private static (double X, double Square, double Cube) Change(double x, (double Square, double Cube) beyond, (double Square, double Cube) before) =>
        (x, beyond.Square - before.Square, beyond.Cube - before.Cube);

    // A cell's cubic by powers of the way from its start, and from its end.
    private static (double Square, double Cube) Start(MonotoneCurve curve, int j)
    {
        double width = curve.X[j + 1] - curve.X[j], secant = (curve.Y[j + 1] - curve.Y[j]) / width;
        return ((3 * secant - 2 * curve.Slopes[j] - curve.Slopes[j + 1]) / width, (curve.Slopes[j] + curve.Slopes[j + 1] - 2 * secant) / (width * width));
    }

    private static (double Square, double Cube) End(MonotoneCurve curve, int j)
    {
        (double square, double cube) = Start(curve, j);
        return (square + 3 * cube * (curve.X[j + 1] - curve.X[j]), cube);
    }

    private static double Below(MonotoneCurve curve) => curve.At(curve.X[0] - 1).Slope;

    private static double Above(MonotoneCurve curve) => curve.At(curve.X[^1] + 1).Slope;
}
