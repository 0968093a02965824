namespace Bellowsmith.Quality.LifeTests;

/// <summary>What so many parts show when no more than the allowed number of them fail.</summary>
/// <param name="Parts">Tested.</param>
/// <param name="Reliability">At the wanted life; 0 where all of them may fail.</param>
/// <param name="LifeRatio">Test life over wanted life with which they show the wanted reliability; null without a shape or where all may fail.</param>
public sealed record LifeTestShown(int Parts, double Reliability, double? LifeRatio)
{
    internal static LifeTestShown Of(int parts, double reliability, double confidence, int allowedFailures, double lifeRatio, double? shape)
    {
        if (parts <= allowedFailures) return new(parts, 0, null);
        double overTest = ReliabilityDemonstration.Shown(parts, allowedFailures, confidence);
        return shape is { } known
            ? new(parts, ReliabilityDemonstration.OverLife(overTest, 1 / lifeRatio, known), ReliabilityDemonstration.LifeRatioNeeded(reliability, confidence, parts, allowedFailures, known))
            : new(parts, overTest, null);
    }
}
