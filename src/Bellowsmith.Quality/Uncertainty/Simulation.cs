using MathNet.Numerics.Random;

namespace Bellowsmith.Quality.Uncertainty;

/// <summary>
/// The distribution of a result by drawing its inputs, independent of one another, until the answer stands still
/// [JCGM 101 2008, 7.9]: batches of ten thousand are added until twice the standard error over the batches of mean, standard
/// uncertainty and both ends of the interval is below half a unit in the second digit of the standard uncertainty. The same
/// seed gives the same answer.
/// </summary>
/// <param name="Mean">Of the result.</param>
/// <param name="StandardUncertainty">Standard deviation of the result.</param>
/// <param name="Low">Lower end of the shortest interval with <paramref name="Confidence"/>.</param>
/// <param name="High">Upper end.</param>
/// <param name="Confidence">Of the interval.</param>
/// <param name="Trials">How many draws were made.</param>
/// <param name="Settled">Whether the answer stood still before <see cref="MostTrials"/>.</param>
/// <param name="Tolerance">What it had to stand still within, in the result's unit.</param>
public sealed record Simulation(
    double Mean, double StandardUncertainty, double Low, double High, double Confidence, int Trials, bool Settled, double Tolerance)
{
    public const int MostTrials = 4_000_000;

    private const int Batch = 10_000, FewestBatches = 10;

    /// <param name="law">The result from the inputs; null is returned where it is not finite for a draw.</param>
    /// <param name="inputs">Independent.</param>
    /// <param name="seed">Of the draws.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    public static Simulation? Of(MeasurementLaw law, IReadOnlyList<UncertainInput> inputs, int seed = 1, double confidence = 0.95)
    {
        Xoshiro256StarStar random = new(seed, threadSafe: false);
        List<double[]> batches = [];
        List<double[]> answers = [];
        double tolerance = 0;
        bool settled = false;
        while (!settled && batches.Count * Batch < MostTrials)
        {
            if (Draw(law, inputs, random) is not { } drawn) return null;
            batches.Add(drawn);
            answers.Add(Answer(drawn, confidence));
            if (batches.Count < FewestBatches) continue;
            tolerance = HalfSecondDigit(answers.Average(answer => answer[1]));
            settled = Enumerable.Range(0, 4).All(k => 2 * StandardError(answers, k) <= tolerance);
        }

        double[] all = [.. batches.SelectMany(batch => batch)];
        Array.Sort(all);
        double[] whole = Answer(all, confidence);
        return new(whole[0], whole[1], whole[2], whole[3], confidence, all.Length, settled, tolerance);
    }

    // Sorted.
    private static double[]? Draw(MeasurementLaw law, IReadOnlyList<UncertainInput> inputs, Random random)
    {
        double[] drawn = new double[Batch], values = new double[inputs.Count];
        for (int trial = 0; trial < Batch; trial++)
        {
            for (int i = 0; i < values.Length; i++) values[i] = Draws.Of(inputs[i], random);
            drawn[trial] = law(values);
            if (!double.IsFinite(drawn[trial])) return null;
        }

        Array.Sort(drawn);
        return drawn;
    }

    // Mean, standard deviation, low, high.
    private static double[] Answer(double[] sorted, double confidence)
    {
        (double low, double high) = Shortest(sorted, confidence);
        return [Sample.Mean(sorted), Sample.StandardDeviation(sorted), low, high];
    }

    private static (double Low, double High) Shortest(double[] sorted, double confidence)
    {
        int inside = (int)Math.Round(confidence * sorted.Length), best = 0;
        for (int first = 1; first + inside < sorted.Length; first++)
            if (sorted[first + inside] - sorted[first] < sorted[best + inside] - sorted[best]) best = first;
        return (sorted[best], sorted[Math.Min(best + inside, sorted.Length - 1)]);
    }

    private static double StandardError(List<double[]> answers, int k) =>
        Sample.StandardDeviation([.. answers.Select(answer => answer[k])]) / Math.Sqrt(answers.Count);

    // Half a unit in the second significant digit [JCGM 101 2008, 7.9.2].
    private static double HalfSecondDigit(double deviation) =>
        deviation > 0 ? 0.5 * Math.Pow(10, Math.Floor(Math.Log10(deviation)) - 1) : 0;
}
