using Bellowsmith.Quality.Capability;

namespace Bellowsmith.Kits.Answers;

/// <summary>
/// The machine answer of <c>capability</c>: unrounded; mean, sd, limits and tolerance intervals in <c>unit</c>, the file's. The
/// fields before <c>unit</c> are always those of normal parts; <c>basis</c> says which to believe.
/// </summary>
public sealed record CapabilityAnswer(
    double? Cp, double? Cpk, double? CpkLow, double? CpkHigh, double? Mean, double? Sd,
    string? Unit, int Count, double? Lower, double? Upper, double? Target,
    double? CpLow, double? CpHigh, double? Cpl, double? Cpu, double? Cpm, double? CpmLow, double? CpmHigh, double? CpkExactLow,
    double Wanted, string? Basis, double? CpkShown, bool? Shown, int? PartsNeeded, double? IndexNeeded,
    CapabilityAnswer.FalloutShare? Fallout, CapabilityAnswer.NormalityCheck? Normality, CapabilityAnswer.OnPowerScale? Transformed,
    CapabilityAnswer.CountedParts? Counted, CapabilityAnswer.ToleranceRange? Tolerance, CapabilityAnswer.ToleranceRange? CountedTolerance,
    double? Autocorrelation, double? AutocorrelationLimit, bool? Autocorrelated,
    string Answer, string? Reason, IReadOnlyList<Note> Notes)
{
    public sealed record FalloutShare(double? Below, double? Above, double Total, double Low, double High);

    public sealed record NormalityCheck(double AndersonDarling, double? Chance, bool Doubted, double Skewness, double Kurtosis, double Step);

    public sealed record OnPowerScale(
        double Power, double PowerLow, double PowerHigh, double? Cp, double? Cpk, double? CpkLow, double? CpkHigh, double? CpkExactLow, FalloutShare? Fallout, double? Chance);

    public sealed record CountedParts(int Outside, double Share, double ShareLow, double ShareHigh, double? CpkShown, double? QuantileIndex);

    public sealed record ToleranceRange(double? Low, double? High, double Coverage, double Confidence, double? Factor, int? PartsNeeded);

    public static CapabilityAnswer Of(ProcessCapability r, string? unit)
    {
        CapabilityWords words = new(r, unit);
        CapabilityIndices? i = r.Indices;
        SpecificationLimits limits = r.Question.Limits;
        bool answered = r.Reason is null;
        return new CapabilityAnswer(
            i?.Cp?.Value, i?.Cpk.Value, i?.Cpk.Low, i?.Cpk.High, r.Mean, r.StandardDeviation,
            unit, r.Count, limits.Lower, limits.Upper, limits.Target,
            i?.Cp?.Low, i?.Cp?.High, i?.Cpl?.Value, i?.Cpu?.Value, i?.Cpm?.Value, i?.Cpm?.Low, i?.Cpm?.High, i?.CpkShown,
            r.Question.Wanted, answered ? NameOf(r.Basis) : null, r.CpkShown, answered ? r.IsShown : null, answered ? r.PartsNeeded : null, r.IndexNeeded,
            Of(r.Fallout), r.Normality is { } n ? new(n.AndersonDarling, n.Chance, n.IsDoubted, n.Skewness, n.Kurtosis, n.Step) : null, Transform(r),
            r.Counted is { } c ? new(c.Outside, c.Share, c.ShareLow, c.ShareHigh, c.CpkShown, c.QuantileIndex) : null,
            Of(r.Tolerance), Of(r.CountedTolerance),
            r.Autocorrelation, answered ? r.AutocorrelationLimit : null, answered ? r.IsAutocorrelated : null,
            words.Answer(), answered ? null : words.Answer(), [.. words.Notes()]);
    }

    private static string NameOf(CapabilityBasis basis) => basis.ToString().ToLowerInvariant();

    private static FalloutShare? Of(Fallout? f) => f is null ? null : new(f.Below, f.Above, f.Total, f.Low, f.High);

    private static ToleranceRange? Of(ToleranceInterval? i) => i is null ? null : new(i.Low, i.High, i.Coverage, i.Confidence, i.Factor, i.PartsNeeded);

    private static OnPowerScale? Transform(ProcessCapability r) => r.Transform is not { } t ? null : new(
        t.Power, t.Low, t.High, r.Transformed?.Cp?.Value, r.Transformed?.Cpk.Value, r.Transformed?.Cpk.Low, r.Transformed?.Cpk.High,
        r.Transformed?.CpkShown, Of(r.TransformedFallout), r.TransformedNormality?.Chance);
}
