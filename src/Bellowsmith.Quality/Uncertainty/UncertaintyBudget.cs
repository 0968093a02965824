using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Uncertainty;

/// <summary>One input's share of a budget.</summary>
/// <param name="Input">The input.</param>
/// <param name="Sensitivity">∂result/∂input at the estimates; null where the input has no uncertainty.</param>
/// <param name="SensitivityError">Estimated bound of the sensitivity's numerical error.</param>
/// <param name="Size">|sensitivity| times standard uncertainty, in the result's unit.</param>
/// <param name="SecondOrderOnly">Whether first order sees nothing of it although the result depends on it.</param>
public sealed record Contribution(UncertainInput Input, double? Sensitivity, double SensitivityError, double Size, bool SecondOrderOnly);

/// <summary>
/// The uncertainty of a result by the law of propagation, first order [JCGM 100 2008, eqs 10 and 13], its second-order terms
/// beside it [JCGM 100 2008, 5.1.2 note], degrees of freedom by Welch and Satterthwaite [JCGM 100 2008, eq. G.2b] and the
/// coverage factor of Student's t at those, rounded down.
/// </summary>
/// <param name="Value">The result at the estimates.</param>
/// <param name="StandardUncertainty">First order.</param>
/// <param name="WithSecondOrder">With the second-order terms.</param>
/// <param name="EffectiveDegrees">Unrounded; infinite where all are; null with correlated inputs, for which the formula does not hold.</param>
/// <param name="CoverageFactor">Of a two-sided interval at <paramref name="Confidence"/>.</param>
/// <param name="Confidence">Of the expanded uncertainty.</param>
/// <param name="Contributions">In the order of the inputs.</param>
public sealed record UncertaintyBudget(
    double Value, double StandardUncertainty, double WithSecondOrder, double? EffectiveDegrees, double CoverageFactor,
    double Confidence, IReadOnlyList<Contribution> Contributions)
{
    /// <summary>More than this share of second order and first order is not to be trusted; common practice.</summary>
    public const double SecondOrderShare = 0.05;

    public double ExpandedUncertainty => CoverageFactor * StandardUncertainty;

    /// <summary>Whether second-order terms stay below <see cref="SecondOrderShare"/>; else simulate.</summary>
    public bool FirstOrderSuffices => WithSecondOrder <= StandardUncertainty * (1 + SecondOrderShare);

    /// <param name="law">The result from the inputs; finite within one standard uncertainty about the estimates and twice that for each alone.</param>
    /// <param name="inputs">At least one.</param>
    /// <param name="correlations">Correlation of each pair, symmetric, ones on the diagonal; null where all are independent.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    public static UncertaintyBudget Of(
        MeasurementLaw law, IReadOnlyList<UncertainInput> inputs, double[,]? correlations = null, double confidence = 0.95)
    {
        Differences differences = new(law, inputs);
        double[] size = [.. inputs.Select((_, i) => differences.First(i).Change)];
        double variance = 0, second = 0, perDegrees = 0;
        for (int i = 0; i < inputs.Count; i++)
        {
            perDegrees += Math.Pow(size[i], 4) / inputs[i].Degrees;
            for (int j = 0; j < inputs.Count; j++)
            {
                variance += size[i] * size[j] * (correlations?[i, j] ?? (i == j ? 1 : 0));
                if (inputs[i].StandardUncertainty > 0 && inputs[j].StandardUncertainty > 0) second += differences.Second(i, j);
            }
        }

        variance = Math.Max(0, variance);
        double? degrees = correlations is not null ? null : perDegrees > 0 ? variance * variance / perDegrees : double.PositiveInfinity;
        return new(differences.Value, Math.Sqrt(variance), Math.Sqrt(Math.Max(0, variance + second)), degrees,
            Factor(degrees, confidence), confidence, [.. inputs.Select((input, i) => differences.Contribution(i))]);
    }

    // The factor at whole degrees, rounded down, so that it is never too small [JCGM 100 2008, G.4.1].
    private static double Factor(double? degrees, double confidence) =>
        Quantiles.StudentT((1 + confidence) / 2, Math.Max(1, Math.Floor(degrees ?? double.PositiveInfinity)));
}
