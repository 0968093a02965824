using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics.Clearances;

/// <summary>
/// The slow and simple way to a distance, written apart from the product: a net of places on one surface, and from each the nearest of
/// the lines of the other's section; the best place is then walked to where no neighbour is better.
/// </summary>
internal sealed class SampledBody(RevolvedBody body)
{
    private const int Around = 120, Along = 12, Halvings = 26;

    private readonly (double X1, double Y1, double X2, double Y2)[] _lines =
    [
        .. Enumerable.Range(0, body.Profile.Along_m.Length - 1)
            .Select(k => (body.Profile.Along_m[k], body.Profile.Radius_m[k], body.Profile.Along_m[k + 1], body.Profile.Radius_m[k + 1]))
            .Where(line => line.Item2 > 0 || line.Item4 > 0),
    ];

    /// <summary>Outside +, inside −, by the angle the outline turns about the place.</summary>
    public double Outside_m(Point place)
    {
        Point from = place - body.Origin;
        double x = from.Dot(body.Axis), y = (from - x * body.Axis).Length, nearest = _lines.Min(line => Distance(line, x, y)), turned = 0;
        // The section and its mirror image below the axis.
        foreach ((double x1, double y1, double x2, double y2) in _lines)
            turned += Turned(x1 - x, y1 - y, x2 - x, y2 - y) - Turned(x1 - x, -y1 - y, x2 - x, -y2 - y);
        return Math.Abs(turned) > Math.PI ? -nearest : nearest;
    }

    /// <summary>The least that <paramref name="other"/> is away from any place of this surface; negative where one lies in it.</summary>
    public double Least_m(Func<Point, double> other)
    {
        (double Value, int Line, double Share, double Angle) best = (double.PositiveInfinity, 0, 0, 0);
        for (int k = 0; k < _lines.Length; k++)
            for (int s = 0; s <= Along; s++)
                for (int a = 0; a < Around; a++) Try(k, s / (double)Along, 2 * Math.PI * a / Around);
        (double share, double angle) = (1.0 / Along, 2 * Math.PI / Around);
        for (int n = 0; n < Halvings; n++, share /= 2, angle /= 2)
            for (int moves = 0; moves < Around && Moved(); moves++) { }

        return best.Value;

        bool Moved()
        {
            (double before, int line, double atShare, double atAngle) = best;
            for (int i = -1; i <= 1; i++)
                for (int j = -1; j <= 1; j++) Try(line, Math.Clamp(atShare + i * share, 0, 1), atAngle + j * angle);
            return best.Value < before;
        }

        void Try(int line, double share, double angle)
        {
            double value = other(At(line, share, angle));
            if (value < best.Value) best = (value, line, share, angle);
        }
    }

    private Point At(int line, double share, double angle)
    {
        (double x1, double y1, double x2, double y2) = _lines[line];
        Point across = Math.Abs(body.Axis.Z) < 0.9 ? body.Axis.Cross(Point.Up).Unit() : body.Axis.Cross(Point.Left).Unit();
        Point radial = Math.Cos(angle) * across + Math.Sin(angle) * body.Axis.Cross(across);
        return body.Origin + (x1 + share * (x2 - x1)) * body.Axis + (y1 + share * (y2 - y1)) * radial;
    }

    private static double Distance((double X1, double Y1, double X2, double Y2) line, double x, double y)
    {
        double dx = line.X2 - line.X1, dy = line.Y2 - line.Y1, run = Math.Sqrt(dx * dx + dy * dy);
        if (run == 0) return Math.Sqrt((x - line.X1) * (x - line.X1) + (y - line.Y1) * (y - line.Y1));
        double along = ((x - line.X1) * dx + (y - line.Y1) * dy) / run, across = Math.Abs((x - line.X1) * dy - (y - line.Y1) * dx) / run;
        double beyond = Math.Max(Math.Max(-along, along - run), 0);
        return Math.Sqrt(beyond * beyond + across * across);
    }

    private static double Turned(double x1, double y1, double x2, double y2) => Math.Atan2(x1 * y2 - y1 * x2, x1 * x2 + y1 * y2);
}
