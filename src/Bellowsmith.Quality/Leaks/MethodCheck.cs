namespace Bellowsmith.Quality.Leaks;

/// <summary>What the method asks of a test.</summary>
public enum MethodRule { TotalChange, GaugeResolution, GaugeAccuracy, ThermometerResolution, ThermometerAccuracy, HeldHeight }

/// <summary>
/// One rule of the method: what the test has, and the most it may have; both Pa of loss but for the total change, a share of the
/// start. <paramref name="Holds"/> is null where it cannot be told.
/// </summary>
public sealed record MethodFinding(MethodRule Rule, double? Value, double? Limit, bool? Holds);

/// <summary>
/// The rules of the pressure decay method [ASTM E2930 2013]: the pressure changes by less than a tenth, resolution is ten times and
/// accuracy four times finer than the limit, and the part does not change its shape. A thermometer's figures count as the loss
/// they look like, p/T; accuracy is taken as two standard uncertainties (ours).
/// </summary>
public static class MethodCheck
{
    private const double GreatestChange = 0.1, ResolutionShare = 10, AccuracyShare = 4;

    /// <param name="test">The test.</param>
    /// <param name="limit_Pa">The limit; the rules that refer to it are left out where there is none.</param>
    /// <param name="gaugeResolution_Pa">The coarser of the two readings' last digits.</param>
    /// <param name="thermometerResolution_K">The same of the temperatures.</param>
    /// <param name="held">Whether something held the part's shape.</param>
    public static IEnumerable<MethodFinding> Of(DecayTest test, double? limit_Pa, double gaugeResolution_Pa, double thermometerResolution_K, bool held)
    {
        (double p1, double p2) = (test.StartAbsolutePressure_Pa.Value, test.EndAbsolutePressure_Pa.Value);
        yield return AtMost(MethodRule.TotalChange, Math.Abs(p1 - p2) / p1, GreatestChange);
        if (limit_Pa is { } limit)
        {
            double gauge = Math.Max(test.StartAbsolutePressure_Pa.StandardUncertainty, test.EndAbsolutePressure_Pa.StandardUncertainty);
            double thermometer = Math.Max(test.StartTemperature_K.StandardUncertainty, test.EndTemperature_K.StandardUncertainty);
            yield return AtMost(MethodRule.GaugeResolution, gaugeResolution_Pa, limit / ResolutionShare);
            yield return AtMost(MethodRule.GaugeAccuracy, 2 * gauge, limit / AccuracyShare);
            yield return AtMost(MethodRule.ThermometerResolution, thermometerResolution_K * test.PascalsPerKelvin, limit / ResolutionShare);
            yield return AtMost(MethodRule.ThermometerAccuracy, 2 * thermometer * test.PascalsPerKelvin, limit / AccuracyShare);
        }

        yield return new(MethodRule.HeldHeight, null, null, held ? true : null);
    }

    private static MethodFinding AtMost(MethodRule rule, double value, double limit) => new(rule, value, limit, value <= limit);
}
