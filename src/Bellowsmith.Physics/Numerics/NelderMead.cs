namespace Bellowsmith.Physics.Numerics;

/// <summary>
/// The least of a function of two variables by a wandering triangle [Nelder Mead 1965]: no derivatives, so a function that is
/// infinite or jumps where it has no value does no harm.
/// </summary>
internal static class NelderMead
{
    private const int MostSteps = 400;

    public static (double X, double Y) Least(
        Func<double, double, double> value, (double X, double Y) start, (double X, double Y) size, double tolerance)
    {
        Corner At(double x, double y) => new(x, y, value(x, y));
        Corner best = At(start.X, start.Y), next = At(start.X + size.X, start.Y), worst = At(start.X, start.Y + size.Y);
        for (int step = 0; step < MostSteps; step++)
        {
            Sort(ref best, ref next, ref worst);
            if (Math.Abs(worst.X - best.X) <= tolerance * size.X && Math.Abs(next.X - best.X) <= tolerance * size.X
                && Math.Abs(worst.Y - best.Y) <= tolerance * size.Y && Math.Abs(next.Y - best.Y) <= tolerance * size.Y) break;
            double x = (best.X + next.X) / 2, y = (best.Y + next.Y) / 2;
            Corner Along(Corner from, double by) => At(x + by * (from.X - x), y + by * (from.Y - y));

            Corner mirrored = Along(worst, -1);
            if (mirrored.Value < best.Value)
            {
                Corner further = Along(worst, -2);
                worst = further.Value < mirrored.Value ? further : mirrored;
            }
            else if (mirrored.Value < next.Value) worst = mirrored;
            else if (Along(mirrored.Value < worst.Value ? mirrored : worst, 0.5) is var drawn && drawn.Value < Math.Min(mirrored.Value, worst.Value)) worst = drawn;
            else (next, worst) = (At((best.X + next.X) / 2, (best.Y + next.Y) / 2), At((best.X + worst.X) / 2, (best.Y + worst.Y) / 2));
        }

        Sort(ref best, ref next, ref worst);
        return (best.X, best.Y);
    }

    private static void Sort(ref Corner best, ref Corner next, ref Corner worst)
    {
        if (next.Value < best.Value) (best, next) = (next, best);
        if (worst.Value < next.Value) (next, worst) = (worst, next);
        if (next.Value < best.Value) (best, next) = (next, best);
    }

    private readonly record struct Corner(double X, double Y, double Value);
}
