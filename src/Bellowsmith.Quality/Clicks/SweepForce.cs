namespace Bellowsmith.Quality.Clicks;

/// <summary>Force at one velocity of a damper's dyno sweep; velocity + in rebound, so its sign tells the stroke.</summary>
public static class SweepForce
{
    /// <summary>
    /// Linear between the points of the same stroke next to <paramref name="velocity"/>, points of equal velocity averaged first.
    /// NaN where the stroke was not measured on both sides of it: nothing is extrapolated.
    /// </summary>
    public static double At(ReadOnlySpan<double> velocities, ReadOnlySpan<double> forces, double velocity)
    {
        double below = double.NegativeInfinity, above = double.PositiveInfinity;
        foreach (double measured in velocities)
        {
            if (Math.Sign(measured) != Math.Sign(velocity)) continue;
            if (measured <= velocity) below = Math.Max(below, measured);
            if (measured >= velocity) above = Math.Min(above, measured);
        }

        if (!double.IsFinite(below) || !double.IsFinite(above)) return double.NaN;
        double low = Mean(velocities, forces, below), high = Mean(velocities, forces, above);
        return below == above ? low : low + (high - low) * (velocity - below) / (above - below);
    }

    private static double Mean(ReadOnlySpan<double> velocities, ReadOnlySpan<double> forces, double velocity)
    {
        (double sum, int count) = (0, 0);
        for (int i = 0; i < velocities.Length; i++)
            if (velocities[i] == velocity) (sum, count) = (sum + forces[i], count + 1);
        return sum / count;
    }
}
