using Bellowsmith.Quality.Capability;

namespace Bellowsmith.References.Quality;

/// <summary>
/// How many readings let the smallest and largest of them (or one of them) bound a share of any population [Wilks 1941]; the counts are in every table,
/// from memory, and recomputed with SciPy 1.10.1.
/// </summary>
public sealed class OrderStatisticTolerance
{
    [Theory]
    [InlineData(0.90, 0.95, 29, 46)]
    [InlineData(0.95, 0.95, 59, 93)]
    [InlineData(0.99, 0.95, 299, 473)]
    [InlineData(0.99, 0.99, 459, 662)]
    public void PartsNeeded_ForAShare_AreTheTables(double coverage, double confidence, int oneSided, int twoSided)
    {
        double[] two = [1, 2];

        Assert.Equal(oneSided, ToleranceInterval.Counted(two, new(null, 3), coverage, confidence).PartsNeeded);
        Assert.Equal(twoSided, ToleranceInterval.Counted(two, new(0, 3), coverage, confidence).PartsNeeded);
    }

    [Fact] // of 100 readings five gaps may stay outside 90 % with 95 %: three below, two above
    public void Counted_OfAHundred_LeavesFiveGaps()
    {
        double[] hundred = [.. Enumerable.Range(1, 100).Select(i => (double)i)];

        ToleranceInterval interval = ToleranceInterval.Counted(hundred, new(0, 200), 0.90, 0.95);

        Assert.Equal(3, interval.Low);
        Assert.Equal(99, interval.High);
    }
}
