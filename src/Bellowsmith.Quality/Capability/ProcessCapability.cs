namespace Bellowsmith.Quality.Capability;

/// <summary>Whose number to believe.</summary>
public enum CapabilityBasis
{
    /// <summary>The readings look normal: the usual indices.</summary>
    Normal,

    /// <summary>They do not, but a power of them does: the same indices on that scale, the limits bent with it.</summary>
    Transformed,

    /// <summary>Neither: only what was counted.</summary>
    Counted,
}

/// <summary>What is asked of readings beside their limits.</summary>
/// <param name="Limits">What a part may measure.</param>
/// <param name="Wanted">Cpk to be shown; 1.33 is common practice, no source.</param>
/// <param name="Coverage">Share of parts a tolerance interval is to hold.</param>
public sealed record CapabilityQuestion(SpecificationLimits Limits, double Wanted = 1.33, double Coverage = 0.99)
{
    /// <summary>Of the tolerance intervals and of what is shown.</summary>
    public const double Confidence = CapabilityIndices.Confidence;
}

/// <summary>Why readings give no capability.</summary>
public enum NoCapability { TooFew, AllEqual }

/// <summary>
/// Do readings in the order they were made show that parts stay within their limits? Indices, what they prove, expected fallout,
/// tolerance intervals; normality looked at and, where it fails, what stands in its place. No reading is left out.
/// </summary>
public sealed record ProcessCapability
{
    /// <summary>With fewer there is no verdict: four degrees of freedom put s anywhere from 0.6 to 2.9 times what was seen.</summary>
    public const int FewestReadings = 5;

    public required CapabilityQuestion Question { get; init; }

    public required int Count { get; init; }

    /// <summary>Null where there is an answer; then everything else that may be null is there.</summary>
    public NoCapability? Reason { get; private init; }

    /// <summary>Null of nothing.</summary>
    public double? Mean { get; private init; }

    /// <summary>n − 1; null of fewer than two.</summary>
    public double? StandardDeviation { get; private init; }

    /// <summary>As if the readings were normal.</summary>
    public CapabilityIndices? Indices { get; private init; }

    public Fallout? Fallout { get; private init; }

    public Normality? Normality { get; private init; }

    /// <summary>Sought only where normality is doubted; null where none does it.</summary>
    public PowerTransform? Transform { get; private init; }

    /// <summary>Of the bent readings against the bent limits; a lower limit at or below zero binds nothing that is positive.</summary>
    public CapabilityIndices? Transformed { get; private init; }

    public Fallout? TransformedFallout { get; private init; }

    /// <summary>Whether the bent readings still do not look normal.</summary>
    public Normality? TransformedNormality { get; private init; }

    public CountedCapability? Counted { get; private init; }

    public ToleranceInterval? Tolerance { get; private init; }

    public ToleranceInterval? CountedTolerance { get; private init; }

    /// <summary>Between one reading and the next; null where there is no answer.</summary>
    public double? Autocorrelation { get; private init; }

    /// <summary>2/√n: beyond it readings are not independent and every interval is too narrow.</summary>
    public double AutocorrelationLimit => 2 / Math.Sqrt(Count);

    public bool IsAutocorrelated => Math.Abs(Autocorrelation ?? 0) > AutocorrelationLimit;

    public CapabilityBasis Basis => Normality?.IsDoubted != true ? CapabilityBasis.Normal
        : Transformed is not null && TransformedNormality?.IsDoubted == false ? CapabilityBasis.Transformed : CapabilityBasis.Counted;

    /// <summary>The indices to believe; null where only counting is left.</summary>
    public CapabilityIndices? Believed => Basis switch
    {
        CapabilityBasis.Normal => Indices,
        CapabilityBasis.Transformed => Transformed,
        _ => null,
    };

    /// <summary>The index shown with 95 % confidence, of whichever is to be believed; null also where only counting is left and every part is beyond a limit.</summary>
    public double? CpkShown => Basis == CapabilityBasis.Counted ? Counted?.CpkShown : Believed?.CpkShown;

    /// <summary>Whether the wanted index is shown; null where there is no answer.</summary>
    public bool? IsShown => Reason is null ? CpkShown >= Question.Wanted : null;

    /// <summary>The Cpk these many readings would have had to give for the wanted one to be shown.</summary>
    public double? IndexNeeded { get; private init; }

    /// <summary>How many readings would show the wanted index if they gave the believed one again; null where none would.</summary>
    public int? PartsNeeded => Basis == CapabilityBasis.Counted ? CountedCapability.PartsNeeded(Question.Wanted)
        : Believed is { } b && NoncentralBound.PartsNeeded(b.Cpk.Value, Question.Wanted, CapabilityQuestion.Confidence) is { } parts
            ? Math.Max(parts, FewestReadings) : null;

    /// <summary>Of readings in the order they were made.</summary>
    public static ProcessCapability Of(ReadOnlySpan<double> values, CapabilityQuestion question)
    {
        double deviation = Sample.StandardDeviation(values);
        double[] sorted = values.ToArray();
        Array.Sort(sorted);
        ProcessCapability result = new()
        {
            Question = question,
            Count = values.Length,
            Mean = values.Length > 0 ? Sample.Mean(values) : null,
            StandardDeviation = values.Length > 1 ? deviation : null,
            Reason = values.Length < FewestReadings ? NoCapability.TooFew : sorted[0] == sorted[^1] ? NoCapability.AllEqual : null,
        };
        return result.Reason is null ? WithoutNormality(Judged(result, values, sorted), sorted) : result;
    }

    private static ProcessCapability Judged(ProcessCapability bare, ReadOnlySpan<double> values, double[] sorted)
    {
        CapabilityQuestion question = bare.Question;
        CapabilityIndices indices = CapabilityIndices.Of(bare.Count, bare.Mean!.Value, bare.StandardDeviation!.Value, question.Limits);
        return bare with
        {
            Indices = indices,
            Fallout = Fallout.Of(indices),
            Normality = Normality.Of(sorted),
            Counted = CountedCapability.Of(sorted, question.Limits),
            Tolerance = ToleranceInterval.Normal(indices, question.Limits, question.Coverage, CapabilityQuestion.Confidence),
            CountedTolerance = ToleranceInterval.Counted(sorted, question.Limits, question.Coverage, CapabilityQuestion.Confidence),
            Autocorrelation = Sample.LagOneAutocorrelation(values),
            IndexNeeded = NoncentralBound.IndexNeeded(question.Wanted, bare.Count, CapabilityQuestion.Confidence),
        };
    }

    // What stands beside the normal indices where the readings are not normal.
    private static ProcessCapability WithoutNormality(ProcessCapability judged, double[] sorted)
    {
        if (!judged.Normality!.IsDoubted || PowerTransform.Of(sorted) is not { } transform) return judged;
        SpecificationLimits limits = judged.Question.Limits;
        double? lower = limits.Lower > 0 ? transform.Apply(limits.Lower.Value) : null;
        double? upper = limits.Upper > 0 ? transform.Apply(limits.Upper.Value) : null;
        if (lower is null && upper is null) return judged with { Transform = transform };
        double[] bent = Array.ConvertAll(sorted, transform.Apply);
        CapabilityIndices indices = CapabilityIndices.Of(bent.Length, Sample.Mean(bent), Sample.StandardDeviation(bent), new(lower, upper));
        return judged with
        {
            Transform = transform,
            Transformed = indices,
            TransformedFallout = Fallout.Of(indices),
            TransformedNormality = Normality.Of(bent),
        };
    }
}
