namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// Analysis of variance of clicks in runs as blocks. Clicks are adjusted for runs and runs for clicks; where every click was
/// measured in every run, clicks, runs and residual add up to the total. Lines are untested where there is no residual to test by.
/// </summary>
public sealed record ClickAnova(AnovaRow Clicks, AnovaRow Runs, AnovaRow Residual, AnovaRow Total);
