namespace Bellowsmith.Physics.Numerics;

/// <summary>A function of one variable, as a struct so that solving allocates nothing.</summary>
internal interface IFunction
{
    double At(double x);
}

/// <summary>Where a search starts, and how steep the function is there; a default starts in the middle.</summary>
internal record struct Guess(double Place, double Slope);

/// <summary>Roots of rising functions: the secant's step where it stays inside the bracket, halving where it does not.</summary>
internal static class Root
{
    private const int MostSteps = 200, Patience = 12;

    /// <summary>
    /// The root between two places, below zero at <paramref name="low"/> and above at <paramref name="high"/>; infinite and
    /// NaN values count as above. <paramref name="guess"/> starts the search and is left where it ended, for a neighbouring problem.
    /// NaN where the values never come within <paramref name="loosest"/> of zero.
    /// </summary>
    public static double Find<T>(
        ref T function, double low, double high, ref Guess guess, double tolerance, double loosest)
        where T : struct, IFunction
    {
        double x = guess.Place > low && guess.Place < high ? guess.Place : (low + high) / 2, slope = guess.Slope;
        double before = double.NaN, valueBefore = double.NaN, value = double.NaN;
        for (int step = 0; step < MostSteps; step++)
        {
            value = function.At(x);
            if (Math.Abs(value) <= tolerance) break;
            if (value < 0) low = x;
            else high = x;
            double secant = (value - valueBefore) / (x - before);
            if (secant > 0 && double.IsFinite(secant)) slope = secant;
            (before, valueBefore) = (x, value);
            x -= value / slope;
            if (!(x > low && x < high) || (step > Patience && step % 2 == 0)) x = (low + high) / 2;
            if (x == low || x == high) break;
        }

        guess = new(x, slope);
        return Math.Abs(value) <= loosest ? x : double.NaN;
    }
}
