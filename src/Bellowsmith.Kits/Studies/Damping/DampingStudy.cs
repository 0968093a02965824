using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Damping;

/// <summary>Which click damps this corner by the wanted ratio, and what that click does elsewhere.</summary>
public static class DampingStudy
{
    /// <summary>The damper velocity amplitude the ratio is defined at.</summary>
    public const double Amplitude_m_per_s = 0.1;

    private const double Reached = 1e-9;

    private static readonly double[] _amplitudes = [0.05, 0.1, 0.2, 0.3, 0.4, 0.5];

    public static DampingResult Answer(DampingCase corner, double wantedRatio)
    {
        bool measured = Known(corner.Damper, Amplitude_m_per_s);
        if (corner.Drive is not { } drive || !measured) return new DampingResult
        {
            Case = corner,
            WantedRatio = wantedRatio,
            Refusal = corner.Drive is null ? DampingRefusal.NoDriveHeight : DampingRefusal.SpeedNotMeasured,
            Clicks = [],
            Chosen = null,
            Amplitudes = [],
            Loads = [],
            Heights = [],
        };

        ClickDamping[] clicks = [.. WholeClicks(corner).Select(click => At(corner, drive, click))];
        ClickDamping nearest = clicks.MinBy(click => Math.Abs(click.Ratio - wantedRatio))!;
        DampingRefusal refusal = corner.Fit is null ? DampingRefusal.Nothing
            : clicks.Min(click => click.Ratio) > wantedRatio + Reached ? DampingRefusal.EveryClickHarder
            : clicks.Max(click => click.Ratio) < wantedRatio - Reached ? DampingRefusal.EveryClickSofter
            : DampingRefusal.Nothing;
        bool chosen = refusal == DampingRefusal.Nothing;
        int place = Array.IndexOf(clicks, nearest);
        ClickDamping? below = chosen ? clicks.ElementAtOrDefault(place - 1) : null, above = chosen ? clicks.ElementAtOrDefault(place + 1) : null;
        double setting = nearest.Click ?? 0;
        return new DampingResult
        {
            Case = corner,
            WantedRatio = wantedRatio,
            Refusal = refusal,
            Clicks = clicks,
            Chosen = chosen ? nearest : null,
            Nearest = chosen ? null : nearest,
            Below = below,
            Above = above,
            Steps = chosen && corner.Fit is { } fit ? ClickSteps.Of(fit, setting, below?.Click, above?.Click) : [],
            Amplitudes = [.. _amplitudes.Select(amplitude => Over(corner, drive, setting, amplitude))],
            Loads = [.. corner.Loads.Select(state => In(corner, state, clicks, setting, wantedRatio))],
            Heights = [.. corner.Heights.Select(state => In(corner, state, clicks, setting, wantedRatio))],
        };
    }

    private static IEnumerable<double> WholeClicks(DampingCase corner)
    {
        IReadOnlyList<double> measured = corner.Damper.Clicks;
        return Enumerable.Range((int)measured[0], (int)(measured[^1] - measured[0]) + 1).Select(click => (double)click);
    }

    private static bool Known(Damper damper, double amplitude) =>
        damper.GoesOn || (damper.Covers(amplitude) && damper.Covers(-amplitude));

    private static ClickDamping At(DampingCase corner, WheelState state, double click)
    {
        EquivalentDamping damping = corner.Damper.Equivalent(click, Amplitude_m_per_s);
        double square = corner.DamperRatio * corner.DamperRatio, critical = state.Critical_N_s_per_m;
        (double? body, double? wheel) = Modes(corner, state, damping.Both_N_s_per_m * square);
        return new(
            corner.Fit is null ? null : click, damping.Both_N_s_per_m * square, damping.Both_N_s_per_m * square / critical,
            damping.Rebound_N_s_per_m * square / critical, damping.Compression_N_s_per_m * square / critical,
            !corner.Damper.Clicks.Contains(click), body, wheel);
    }

    private static (double? Body, double? Wheel) Modes(DampingCase corner, WheelState state, double damping_N_s_per_m)
    {
        if (corner.TyreRate_N_per_m is not { } tyre) return (null, null);
        TwoMass masses = new(state.SprungMass_kg, corner.UnsprungMass_kg, state.WheelRate_N_per_m, damping_N_s_per_m, tyre);
        return (masses.Modes.Body.DampingRatio, masses.Modes.Wheel.DampingRatio);
    }

    private static AmplitudeDamping Over(DampingCase corner, WheelState state, double click, double amplitude)
    {
        if (!Known(corner.Damper, amplitude)) return new(amplitude, null, null, null);
        EquivalentDamping damping = corner.Damper.Equivalent(click, amplitude);
        double share = corner.DamperRatio * corner.DamperRatio / state.Critical_N_s_per_m;
        return new(amplitude, damping.Both_N_s_per_m * share, damping.Rebound_N_s_per_m * share, damping.Compression_N_s_per_m * share);
    }

    // Only the critical damping changes with the state, so ratios scale.
    private static StateDamping In(DampingCase corner, WheelState state, ClickDamping[] clicks, double setting, double wanted)
    {
        double critical = state.Critical_N_s_per_m, leftAlone = clicks.First(click => (click.Click ?? 0) == setting).Damping_N_s_per_m / critical;
        ClickDamping nearest = clicks.MinBy(click => Math.Abs(click.Damping_N_s_per_m / critical - wanted))!;
        bool reached = clicks.Min(click => click.Damping_N_s_per_m) / critical <= wanted + Reached
            && clicks.Max(click => click.Damping_N_s_per_m) / critical >= wanted - Reached;
        return corner.Fit is not null && reached
            ? new(state, leftAlone, nearest.Click, nearest.Damping_N_s_per_m / critical)
            : new(state, leftAlone, null, null);
    }
}
