namespace Bellowsmith.Quality.Gauges;

/// <summary>
/// A balanced crossed gauge trial: every appraiser reads every part equally often, in any unit. What follows from it is in
/// that unit.
/// </summary>
public sealed class CrossedTrial
{
    /// <summary>Fewer parts or trials leave a component without an estimate; one appraiser alone has no reproducibility.</summary>
    public const int FewestParts = 2, FewestTrials = 2;

    private readonly double[] _values;
    private readonly double[] _cellMeans;

    /// <param name="parts">At least <see cref="FewestParts"/>.</param>
    /// <param name="appraisers">At least one.</param>
    /// <param name="trials">How often each appraiser read each part, at least <see cref="FewestTrials"/>.</param>
    /// <param name="values">Finite readings by part, within it by appraiser, within that by trial.</param>
    /// <exception cref="ArgumentException">Too few parts, appraisers or trials, or another number of values than their product.</exception>
    public CrossedTrial(int parts, int appraisers, int trials, double[] values)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(parts, FewestParts);
        ArgumentOutOfRangeException.ThrowIfLessThan(appraisers, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, FewestTrials);
        if (values.Length != parts * appraisers * trials) throw new ArgumentException("Not every cell has every trial.", nameof(values));
        (Parts, Appraisers, Trials, _values) = (parts, appraisers, trials, values);
        _cellMeans = [.. Enumerable.Range(0, parts * appraisers).Select(cell => Means.Of(Cell(cell)))];
    }

    public int Parts { get; }
    public int Appraisers { get; }
    public int Trials { get; }

    /// <summary>All readings by part, within it by appraiser, within that by trial.</summary>
    public ReadOnlySpan<double> Values => _values;

    /// <summary>What one appraiser read on one part.</summary>
    public ReadOnlySpan<double> Cell(int part, int appraiser) => Cell(part * Appraisers + appraiser);

    /// <summary>The mean of what one appraiser read on one part.</summary>
    public double CellMean(int part, int appraiser) => _cellMeans[part * Appraisers + appraiser];

    /// <summary>The mean of a part over all appraisers.</summary>
    public double PartMean(int part) => Means.Of(_cellMeans.AsSpan(part * Appraisers, Appraisers));

    /// <summary>The mean of an appraiser over all parts.</summary>
    public double AppraiserMean(int appraiser)
    {
        Span<double> means = Parts <= 64 ? stackalloc double[Parts] : new double[Parts];
        for (int part = 0; part < Parts; part++) means[part] = CellMean(part, appraiser);
        return Means.Of(means);
    }

    private ReadOnlySpan<double> Cell(int cell) => _values.AsSpan(cell * Trials, Trials);
}
