using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// Values of a weighted acceleration [ISO 2631-1 1997, eqs 1 to 5 and 10] on a sine, whose integrals are exact: a/√2, a·(3T/8)^¼, √2. READ
/// with the same definitions in an open vibration library. Comfort reactions (annex C) MEMORY, 0.315 and 0.63 also READ.
/// </summary>
public sealed class VibrationValues
{
    // 2 m/s² at 5 Hz for 10 s, 1 kHz: whole cycles in every second.
    private static readonly WeightedVibration Sine = WeightedVibration.Of(
        [.. Enumerable.Range(0, 10_000).Select(i => 2 * Math.Sin(2 * Math.PI * 5 * i / 1000))], 1000, []);

    [Fact]
    public void Dose_OfASine_IsTheClosedForm() => Assert.Equal(2.7832, Sine.Dose_m_per_s175, 5e-5);

    [Fact]
    public void CrestFactor_OfASine_IsRootTwo() => Assert.Equal(1.414214, Sine.CrestFactor!.Value, 1e-6);

    [Fact]
    public void MaximumTransient_OfASteadySine_IsItsRms()
    {
        Assert.Equal(1.414214, Sine.Rms_m_per_s2, 1e-6);
        Assert.Equal(1.414214, Sine.MaximumTransient_m_per_s2!.Value, 1e-6);
    }

    [Theory] // k = 1 for comfort, 1.4, 1.4 and 1 for health
    [InlineData(1, 1, 1.224745)]
    [InlineData(1.4, 1.4, 1.407125)]
    public void Total_OfThreeDirections_IsTheRootOfTheWeightedSquares(double kx, double ky, double expected) =>
        Assert.Equal(expected, WeightedVibration.Total_m_per_s2(0.5, 0.5, 1, kx, ky), 1e-6);

    [Theory]
    [InlineData(0.2, "not uncomfortable")]
    [InlineData(0.4, "a little uncomfortable")]
    [InlineData(0.55, "a little uncomfortable", "fairly uncomfortable")]
    [InlineData(0.7, "fairly uncomfortable")]
    [InlineData(0.9, "fairly uncomfortable", "uncomfortable")]
    [InlineData(1.1, "uncomfortable")]
    [InlineData(1.4, "uncomfortable", "very uncomfortable")]
    [InlineData(1.8, "very uncomfortable")]
    [InlineData(2.2, "very uncomfortable", "extremely uncomfortable")]
    [InlineData(3, "extremely uncomfortable")]
    public void To_AWeightedRms_GivesEveryReactionThatFits(double rms, params string[] words) =>
        Assert.Equal(words, ComfortReaction.To(rms).Select(reaction => reaction.Words));
}
