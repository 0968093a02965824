using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.Kits.Studies.LeakTest;

/// <summary>A leak test judged, with what it was judged from.</summary>
public sealed record LeakTestResult
{
    public required LeakTestInput Input { get; init; }
    public required LeakJudgement Judgement { get; init; }

    /// <summary>Null where temperatures are missing, or the log is too short.</summary>
    public required LeakEstimate? Estimate { get; init; }

    /// <summary>The two readings, or a log's first and last; null where temperatures are missing.</summary>
    public required DecayTest? Test { get; init; }

    /// <summary>The line through a log.</summary>
    public LoggedDecay? Log { get; init; }

    public required double StartAbsolutePressure_Pa { get; init; }
    public required double EndAbsolutePressure_Pa { get; init; }
    public required double Time_s { get; init; }
    public required IReadOnlyList<MethodFinding> Findings { get; init; }
    public required StoredEnergy Energy { get; init; }

    /// <summary>The drop the gauge shows: of cooling as well as of a leak.</summary>
    public double UncompensatedDrop_Pa => StartAbsolutePressure_Pa - EndAbsolutePressure_Pa;

    public bool IsHeld => !string.IsNullOrWhiteSpace(Input.Fixture);

    /// <summary>The limit as a leak rate at the reference temperature; null without one, or without temperatures.</summary>
    public double? Limit_Pa_m3_per_s => Judgement.Limit_Pa is { } limit && Test is { } t
        ? t.Volume_m3.Value * t.ReferenceTemperature_K * limit / ((Log?.StartTemperature_K ?? t.StartTemperature_K.Value) * Time_s) : null;
}
