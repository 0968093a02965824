namespace Bellowsmith.Quality.LifeTests;

/// <summary>
/// Whether failures follow their fitted Weibull law: Anderson–Darling's A² with both parameters estimated, stretched by
/// <c>1 + 0.2/√n</c> and held against its upper points [D'Agostino Stephens 1986, table 4.17], which simulated samples of 10 to 200 lives meet within 4 %. Complete tests only: with survivors
/// those points do not hold.
/// </summary>
/// <param name="AndersonDarling">A²(1 + 0.2/√n).</param>
/// <param name="Chance">The table's chance just above the one of so large an A² from a Weibull law: 0.01, 0.025, 0.05, 0.1 or 0.25; 1 above that.</param>
public sealed record WeibullGoodness(double AndersonDarling, double Chance)
{
    private static readonly (double Point, double Chance)[] _points =
        [(1.038, 0.01), (0.877, 0.025), (0.757, 0.05), (0.637, 0.10), (0.474, 0.25)];

    /// <summary>The law is doubted at the usual 5 %.</summary>
    public bool IsDoubted => Chance <= 0.05;

    /// <summary>Null where parts survived.</summary>
    public static WeibullGoodness? Of(WeibullFit fit, ReadOnlySpan<double> lives)
    {
        if (fit.Survivors > 0) return null;
        double[] shares = new double[lives.Length];
        for (int i = 0; i < shares.Length; i++) shares[i] = fit.FailedShare(lives[i]);
        Array.Sort(shares);
        double sum = 0;
        for (int i = 0; i < shares.Length; i++) sum += (2 * i + 1) * (Log(shares[i]) + Log(1 - shares[^(i + 1)]));
        double distance = (-shares.Length - sum / shares.Length) * (1 + 0.2 / Math.Sqrt(shares.Length));
        foreach ((double point, double chance) in _points)
            if (distance >= point) return new(distance, chance);
        return new(distance, 1);
    }

    private static double Log(double share) => Math.Log(Math.Max(share, double.Epsilon));
}
