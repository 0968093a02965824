namespace Bellowsmith.Physics;

/// <summary>
/// Bolts that hold a stiff plate in its plane, each as stiff as the next. A force F at a place puts on bolt i
/// F/n + M·(z × ri)/Σr²: its share, and against the moment M about their middle a force across ri, its arm from there, in proportion to it
/// (equilibrium; linear distribution as [EN 1993-1-8 2005, 3.12] has it, from memory).
/// </summary>
/// <param name="Places_m">x and y of the bolts, at least two of them apart.</param>
public sealed record BoltGroup(IReadOnlyList<(double X, double Y)> Places_m)
{
    private (double X, double Y) Middle_m => (Places_m.Average(p => p.X), Places_m.Average(p => p.Y));

    /// <summary>Amount of the force on each bolt, N.</summary>
    public double[] Forces_N((double X, double Y) force_N, (double X, double Y) at_m)
    {
        (double X, double Y) middle = Middle_m;
        double moment_Nm = (at_m.X - middle.X) * force_N.Y - (at_m.Y - middle.Y) * force_N.X;
        double turning = moment_Nm / Places_m.Sum(p => Square(p.X - middle.X) + Square(p.Y - middle.Y));
        return [.. Places_m.Select(p => Math.Sqrt(
            Square(force_N.X / Places_m.Count - turning * (p.Y - middle.Y)) + Square(force_N.Y / Places_m.Count + turning * (p.X - middle.X))))];
    }

    private static double Square(double value) => value * value;
}
