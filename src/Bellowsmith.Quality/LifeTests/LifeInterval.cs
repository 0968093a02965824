namespace Bellowsmith.Quality.LifeTests;

/// <summary>A number with its two-sided interval; null where the data set no end to that side.</summary>
public sealed record LifeInterval(double? Value, double? Low, double? High);
