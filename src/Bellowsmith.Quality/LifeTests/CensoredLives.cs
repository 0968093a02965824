namespace Bellowsmith.Quality.LifeTests;

/// <summary>
/// Lives as logarithms below the longest, which keeps every power t^β within [0, 1]: parts that failed, and parts that had not
/// when they were taken off (right censoring, the survivor's life is longer than its number).
/// </summary>
internal sealed class CensoredLives
{
    private readonly double[] _logs;

    public CensoredLives(ReadOnlySpan<double> lives, ReadOnlySpan<bool> failed)
    {
        if (lives.Length != failed.Length) throw new ArgumentException("Every life has an outcome.", nameof(failed));
        double longest = 0;
        foreach (double life in lives)
        {
            if (!(life > 0) || double.IsInfinity(life)) throw new ArgumentOutOfRangeException(nameof(lives), life, "A life is longer than nothing.");
            longest = Math.Max(longest, life);
        }

        (Longest, _logs) = (longest, new double[lives.Length]);
        for (int i = 0; i < lives.Length; i++)
        {
            _logs[i] = Math.Log(lives[i] / longest);
            if (!failed[i]) continue;
            Failures++;
            SumOfFailures += _logs[i];
        }
    }

    public int Count => _logs.Length;

    public int Failures { get; }

    public double Longest { get; }

    /// <summary>Σ ln(t/longest) over the failures.</summary>
    public double SumOfFailures { get; }

    /// <summary>Whether a likelihood has its greatest value at a finite shape: not where every failure came at the longest life.</summary>
    public bool HaveShape => Failures >= 2 && SumOfFailures < 0;

    /// <summary>Σ (t/longest)^β over all, and the same weighted by ln(t/longest), each with a shift of the logarithm.</summary>
    public (double Sum, double Weighted) Powers(double shape, double shift = 0)
    {
        double sum = 0, weighted = 0;
        foreach (double log in _logs)
        {
            double difference = log - shift, power = Math.Exp(shape * difference);
            sum += power;
            weighted += difference == 0 ? 0 : difference * power;
        }

        return (sum, weighted);
    }
}
