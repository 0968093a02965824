using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>The travel answer as a ladder of states and as ride height against gauge pressure.</summary>
public sealed class TravelFigures(TravelResult result, DisplayUnits units)
{
    private readonly TravelWords _words = new(result, units);

    /// <summary>
    /// How far the car stands over drive height (the other way of wheel travel) on how much air. Dashed where the bump stop carries a
    /// share; nothing where the rest would lie outside the spring's data.
    /// </summary>
    public Chart RideHeight()
    {
        double[] gauge = Shown(Dimension.GaugePressure, r => r.GaugePressure_Pa);
        double[] rise = Shown(Dimension.Length, r => -r.WheelTravel_m ?? double.NaN);
        bool[] onAir = [.. result.RideHeights.Select(r => r.StopForce_N <= 0)];
        ChartCurve curve = Axes.Curve("", gauge, rise, onAir);
        return new Chart
        {
            Id = "rideHeight",
            Title = "Ride height against gauge pressure",
            Summary = $"At {Text(Dimension.GaugePressure, result.Drive.GaugePressure_Pa)} gauge the car stands at drive height. {_words.Answer()}",
            X = Axes.Around("gauge pressure", Dimension.GaugePressure, units, [.. result.RideHeights.Select(r => r.GaugePressure_Pa)]),
            Y = Axes.Around("ride height from drive", Dimension.Length, units, [.. result.RideHeights.Select(r => -r.WheelTravel_m ?? double.NaN), 0]),
            Curves = [curve],
            Marks = [.. Stop(), new ChartMark(MarkKind.Setting, units.Value(Dimension.GaugePressure, result.Drive.GaugePressure_Pa ?? double.NaN), 0,
                $"this setting · {Text(Dimension.GaugePressure, result.Drive.GaugePressure_Pa)} gauge")],
        };
    }

    /// <summary>Drive, both ends, aired out, lifted and stop contact on one scale, with what the rules ask.</summary>
    public TravelLadder Ladder()
    {
        LadderRung[] rungs =
        [
            Rung("fullBump", "full bump", result.FullBump), Rung("airedOut", "aired out", result.AiredOut),
            Contact(), Rung("drive", "drive", result.Drive), Rung("lifted", "lifted", result.Lifted),
            Rung("fullDroop", "full droop", result.FullDroop),
        ];
        LadderLimit[] limits = [.. Limit(TravelRule.DroopAtWheel, -1, "droop asked"), .. Limit(TravelRule.StopContactAtWheel, +1, "clear of the stop asked")];
        double?[] travels = [result.FullBump.WheelTravel_m, result.FullDroop.WheelTravel_m, result.AiredOut.WheelTravel_m, result.Lifted.WheelTravel_m];
        return new TravelLadder
        {
            Travel = Axes.Around("wheel travel, bump +", Dimension.Length, units,
                [.. travels.OfType<double>(), .. result.Findings.Where(f => IsTravel(f.Rule)).Select(f => (f.Limit_m ?? 0) * Direction(f.Rule))]),
            Rungs = [.. rungs.Where(r => double.IsFinite(r.Travel)).OrderByDescending(r => r.Travel)],
            Limits = limits,
            Stop = result.Drive.StopGap_m is null || result.FullBump.WheelTravel_m is not { } end ? null
                : (units.Value(Dimension.Length, result.StopContact_m), units.Value(Dimension.Length, end)),
            Summary = _words.Answer(),
        };
    }

    private IEnumerable<ChartMark> Stop()
    {
        // The last gauge pressure on which the stop still carries something.
        RideHeight? last = result.RideHeights.LastOrDefault(r => r.StopForce_N > 0);
        if (last?.WheelTravel_m is { } travel)
            yield return new ChartMark(MarkKind.State, units.Value(Dimension.GaugePressure, last.GaugePressure_Pa), units.Value(Dimension.Length, -travel), "on the bump stop below");
    }

    private LadderRung Rung(string id, string name, TravelState state)
    {
        string height = $"spring {Text(Dimension.Length, state.SpringHeight_m)}";
        string gauge = state.GaugePressure_Pa is { } pg ? $", {Text(Dimension.GaugePressure, pg)} gauge" : "";
        string end = state.End is null or TravelEnd.LoadBalance ? "" : $": {TravelWords.End(state.End)}";
        return new LadderRung(id, name, state.WheelTravel_m is { } z ? units.Value(Dimension.Length, z) : double.NaN, height + gauge + end);
    }

    private LadderRung Contact() => new(
        "stopContact", "stop touched", result.Drive.StopGap_m is null ? double.NaN : units.Value(Dimension.Length, result.StopContact_m), "");

    private IEnumerable<LadderLimit> Limit(TravelRule rule, int sign, string label) => result.Findings
        .Where(f => f.Rule == rule && f.Limit_m is not null)
        .Select(f => new LadderLimit($"{Text(Dimension.Length, f.Limit_m)} {label}", units.Value(Dimension.Length, sign * f.Limit_m!.Value), f.Holds, TravelWords.Source(rule)));

    private static bool IsTravel(TravelRule rule) => Direction(rule) != 0;

    private static int Direction(TravelRule rule) => rule switch { TravelRule.DroopAtWheel => -1, TravelRule.StopContactAtWheel => +1, _ => 0 };

    private double[] Shown(Dimension dimension, Func<RideHeight, double> of) => [.. result.RideHeights.Select(r => units.Value(dimension, of(r)))];

    private string Text(Dimension dimension, double? si) => units.Text(dimension, si);
}
