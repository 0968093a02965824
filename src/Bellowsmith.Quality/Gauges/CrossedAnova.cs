namespace Bellowsmith.Quality.Gauges;

/// <summary>
/// A crossed gauge trial by analysis of variance with random parts and appraisers [Montgomery Runger 1993]. The interaction
/// is pooled with repeatability where its p is above <see cref="PoolingP"/>; otherwise it stays inside reproducibility. A
/// variance estimate below zero is set to zero and said.
/// </summary>
/// <param name="Trial">The readings.</param>
/// <param name="Part">Tested against the interaction, or against repeatability where that is pooled.</param>
/// <param name="Appraiser">Tested likewise; null with one appraiser.</param>
/// <param name="Interaction">Part by appraiser, before pooling; null with one appraiser.</param>
/// <param name="Repeatability">Within the cells, after pooling.</param>
/// <param name="InteractionPooled">Whether the interaction was pooled.</param>
/// <param name="Components">Standard deviations.</param>
/// <param name="SetToZero">Which variance estimates were below zero.</param>
public sealed record CrossedAnova(
    CrossedTrial Trial, AnovaRow Part, AnovaRow? Appraiser, AnovaRow? Interaction, AnovaRow Repeatability, bool InteractionPooled,
    GaugeComponents Components, NegativeEstimates SetToZero)
{
    /// <summary>Above this p an interaction is taken for repeatability: the gauge trials' common practice.</summary>
    public const double PoolingP = 0.25;

    public static CrossedAnova Of(CrossedTrial trial)
    {
        (AnovaRow part, AnovaRow appraiser, AnovaRow interaction, AnovaRow within) = Squares(trial);
        if (trial.Appraisers == 1) return OneAppraiser(trial, part, within);
        interaction = interaction.Against(within);
        bool pooled = interaction.P > PoolingP;
        AnovaRow repeatability = pooled ? within.Pooled(interaction) : within, error = pooled ? repeatability : interaction;
        NegativeEstimates negative = NegativeEstimates.None;
        double betweenAppraisers = Difference(appraiser, error, trial.Parts * trial.Trials, NegativeEstimates.Appraiser);
        double byPart = pooled ? 0 : Difference(interaction, within, trial.Trials, NegativeEstimates.Interaction);
        double betweenParts = Difference(part, error, trial.Appraisers * trial.Trials, NegativeEstimates.Part);
        GaugeComponents components = new(
            Math.Sqrt(repeatability.MeanSquare), Math.Sqrt(betweenAppraisers + byPart), Math.Sqrt(betweenParts));
        return new(trial, part.Against(error), appraiser.Against(error), interaction, repeatability, pooled, components, negative);

        double Difference(AnovaRow above, AnovaRow below, int readings, NegativeEstimates which)
        {
            double variance = (above.MeanSquare - below.MeanSquare) / readings;
            if (variance < 0) negative |= which;
            return Math.Max(0, variance);
        }
    }

    /// <summary>95 % intervals of the standard deviations; null where repeats never differed.</summary>
    public GaugeIntervals? Intervals() => Repeatability.SumOfSquares > 0 ? GaugeIntervals.Of(this) : null;

    private static CrossedAnova OneAppraiser(CrossedTrial trial, AnovaRow part, AnovaRow within)
    {
        double betweenParts = (part.MeanSquare - within.MeanSquare) / trial.Trials;
        return new(trial, part.Against(within), null, null, within, false,
            new(Math.Sqrt(within.MeanSquare), 0, Math.Sqrt(Math.Max(0, betweenParts))),
            betweenParts < 0 ? NegativeEstimates.Part : NegativeEstimates.None);
    }

    // Sums of squares about means, not differences of raw sums, which lose every digit of readings large beside their spread.
    private static (AnovaRow Part, AnovaRow Appraiser, AnovaRow Interaction, AnovaRow Within) Squares(CrossedTrial trial)
    {
        (int p, int a, int r) = (trial.Parts, trial.Appraisers, trial.Trials);
        double[] appraiserMeans = [.. Enumerable.Range(0, a).Select(trial.AppraiserMean)];
        double grand = Means.Of(appraiserMeans), parts = 0, interaction = 0, within = 0;
        for (int i = 0; i < p; i++)
        {
            double partMean = trial.PartMean(i);
            parts += Square(partMean - grand);
            for (int j = 0; j < a; j++)
            {
                interaction += Square(trial.CellMean(i, j) - partMean - appraiserMeans[j] + grand);
                within += Means.SquaresAbout(trial.Cell(i, j), trial.CellMean(i, j));
            }
        }

        double nothing = Means.RoundingSquares(trial.Values);
        return (
            Row(a * r * parts, p - 1),
            Row(p * r * Means.SquaresAbout(appraiserMeans, grand), a - 1),
            Row(r * interaction, (p - 1) * (a - 1)),
            Row(within, p * a * (r - 1)));

        AnovaRow Row(double squares, int degrees) => new(squares <= nothing ? 0 : squares, degrees);
    }

    private static double Square(double x) => x * x;
}
