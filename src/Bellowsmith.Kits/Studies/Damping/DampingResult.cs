namespace Bellowsmith.Kits.Studies.Damping;

/// <summary>Why no click is chosen.</summary>
public enum DampingRefusal
{
    Nothing,

    /// <summary>The kit fixes no drive height and none is recommended.</summary>
    NoDriveHeight,

    /// <summary>The dyno did not reach the velocity the ratio is defined at.</summary>
    SpeedNotMeasured,

    /// <summary>Even the softest measured click damps more.</summary>
    EveryClickHarder,

    /// <summary>Even the hardest measured click damps less.</summary>
    EveryClickSofter,
}

/// <summary>
/// How hard one corner is damped at each click. Ratio is c/(2·√(kw·ms)), tyre rigid, c at the wheel by energy per cycle over
/// both strokes at 0.1 m/s damper velocity amplitude.
/// </summary>
public sealed record DampingResult
{
    public required DampingCase Case { get; init; }
    public required double WantedRatio { get; init; }
    public required DampingRefusal Refusal { get; init; }

    /// <summary>Every whole click within those measured, from closed; one without a click for a linear damper.</summary>
    public required IReadOnlyList<ClickDamping> Clicks { get; init; }

    /// <summary>The click whose ratio lies nearest the wanted; a linear damper's only setting; null where none reaches it.</summary>
    public required ClickDamping? Chosen { get; init; }

    /// <summary>Where none reaches it: the one that comes nearest.</summary>
    public ClickDamping? Nearest { get; init; }

    /// <summary>One click further closed and one further open than the chosen.</summary>
    public ClickDamping? Below { get; init; }

    public ClickDamping? Above { get; init; }

    /// <summary>The step between the chosen click and each neighbour, with its interval; null where runs were not repeated.</summary>
    public IReadOnlyList<ClickStep> Steps { get; init; } = [];

    /// <summary>Whether every neighbour's damping differs by more than runs do; null where nothing was run twice.</summary>
    public bool? Distinguishable => Steps.Count == 0 ? null : Steps.All(step => step.IsDistinct);

    /// <summary>Of the chosen or nearest click over velocity amplitude.</summary>
    public required IReadOnlyList<AmplitudeDamping> Amplitudes { get; init; }

    /// <summary>Each load case of the car: what the chosen click gives there, and which click keeps the ratio.</summary>
    public required IReadOnlyList<StateDamping> Loads { get; init; }

    /// <summary>Heights about drive on the gauge pressure that carries the load there.</summary>
    public required IReadOnlyList<StateDamping> Heights { get; init; }
}

/// <summary>One click at drive, everything at the wheel. Mode ratios are null where no tyre rate is known.</summary>
public sealed record ClickDamping(
    double? Click, double Damping_N_s_per_m, double Ratio, double ReboundRatio, double CompressionRatio, bool Interpolated,
    double? BodyModeRatio, double? WheelModeRatio);

/// <summary>The change of equivalent damping at the damper from one click to another, with simultaneous 95 % limits.</summary>
public readonly record struct ClickStep(double From, double To, double Step_N_s_per_m, double Low_N_s_per_m, double High_N_s_per_m)
{
    public bool IsDistinct => Low_N_s_per_m > 0 || High_N_s_per_m < 0;
}

/// <summary>Ratios at a damper velocity amplitude; null where the dyno did not reach it.</summary>
public sealed record AmplitudeDamping(double Amplitude_m_per_s, double? Ratio, double? ReboundRatio, double? CompressionRatio);

/// <summary>A state of the wheel: the ratio if the click is left alone, and the click that comes nearest the wanted ratio
/// (null where none reaches it) with what it gives.</summary>
public sealed record StateDamping(WheelState State, double RatioLeftAlone, double? Click, double? Ratio);
