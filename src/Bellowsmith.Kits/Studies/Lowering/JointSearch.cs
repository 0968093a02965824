using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

/// <summary>
/// The height nearest to where a joint is at which something of the linkage at drive height becomes zero: steps outward both ways until
/// the sign turns, then halves. Where it does not turn, the height that comes nearest.
/// </summary>
internal static class JointSearch
{
    public const double Most_m = 0.040;

    private const double Every_m = 0.001;
    private const int Halvings = 60;

    public static (double Up_m, bool Holds) Find(SuspensionPart part, string point, Func<Linkage, double> value)
    {
        double start = At(0), up = 0, down = 0, atUp = start, atDown = start;
        (double Place, double Value) nearest = (0, start);
        if (start == 0) return (0, true);
        for (int step = 1; step * Every_m <= Most_m + Every_m / 2; step++)
        {
            (double nextUp, double nextDown) = (step * Every_m, -step * Every_m);
            (double valueUp, double valueDown) = (At(nextUp), At(nextDown));
            if (atUp * valueUp <= 0) return (Between(up, atUp, nextUp), true);
            if (atDown * valueDown <= 0) return (Between(down, atDown, nextDown), true);
            if (Math.Abs(valueUp) < Math.Abs(nearest.Value)) nearest = (nextUp, valueUp);
            if (Math.Abs(valueDown) < Math.Abs(nearest.Value)) nearest = (nextDown, valueDown);
            (up, atUp, down, atDown) = (nextUp, valueUp, nextDown, valueDown);
        }

        return (nearest.Place, false);

        double Between(double from, double atFrom, double to)
        {
            for (int k = 0; k < Halvings; k++)
            {
                double middle = (from + to) / 2;
                if (atFrom * At(middle) > 0) from = middle;
                else to = middle;
            }

            return (from + to) / 2;
        }

        double At(double up_m) => part.Moved(point, up_m * Point.Up).LinkageIfAny() is { } linkage ? value(linkage) : double.NaN;
    }
}
