using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>The travel answer as a person reads it.</summary>
internal static class TravelView
{
    private const int RideHeightLines = 9;

    public static void Show(Screen screen, Kit kit, IEnumerable<(StrutCase Case, TravelResult? Result)> results, DisplayUnits units)
    {
        foreach ((StrutCase strut, TravelResult? result) in results)
        {
            screen.Blank();
            screen.Title($"{kit.Name}, {Names.Of(strut.End)}: how far can it move?");
            if (result is null) screen.Warn(TravelWords.NoDrive(strut, units));
            else Show(screen, result, units);
        }

        screen.Blank();
        screen.Quiet(Cautions.RaisedCar);
        screen.Quiet(Cautions.AiredOut);
        screen.Quiet(Cautions.Local);
    }

    private static void Show(Screen screen, TravelResult result, DisplayUnits units)
    {
        TravelWords words = new(result, units);
        screen.Answer(words.Answer());
        bool missed = result.Findings.Any(f => f.Holds == false);
        if (missed) screen.Warn(words.Summary());
        else screen.Say(words.Summary());
        States(screen, result, units);
        RideHeights(screen, result, units);
        foreach (TravelFinding finding in result.Findings) Rule(screen, finding, words, units);
    }

    private static void States(Screen screen, TravelResult result, DisplayUnits units)
    {
        screen.Table(
            [
                "", $"wheel {units.Symbol(Dimension.Length)}", $"spring height {units.Symbol(Dimension.Length)}",
                $"damper {units.Symbol(Dimension.Length)}", $"stop gap {units.Symbol(Dimension.Length)}",
                $"gauge {units.Symbol(Dimension.GaugePressure)}", "stopped by",
            ],
            [
                Row("drive", result.Drive), Row("full bump", result.FullBump), Row("full droop", result.FullDroop),
                Row("aired out", result.AiredOut), Row("lifted", result.Lifted),
            ]);

        (IReadOnlyList<string> Cells, bool Marked) Row(string name, TravelState s) => (
        [
            name, units.Number(Dimension.Length, s.WheelTravel_m), units.Number(Dimension.Length, s.SpringHeight_m),
            units.Number(Dimension.Length, s.DamperLength_m), units.Number(Dimension.Length, s.StopGap_m),
            units.Number(Dimension.GaugePressure, s.GaugePressure_Pa), TravelWords.End(s.End),
        ], s == result.Drive);
    }

    // From no air to the first end of travel: beyond it more air changes nothing.
    private static void RideHeights(Screen screen, TravelResult result, DisplayUnits units)
    {
        int last = result.RideHeights.Select((r, i) => (r, i)).FirstOrDefault(p => p.i > 0 && IsEnd(p.r.End)).i;
        if (last == 0) last = result.RideHeights.Count - 1;
        IEnumerable<int> lines = Enumerable.Range(0, RideHeightLines).Select(k => k * last / (RideHeightLines - 1)).Distinct();
        screen.Table(
            [$"gauge {units.Symbol(Dimension.GaugePressure)}", $"car stands {units.Symbol(Dimension.Length)}", "resting on"],
            lines.Select(i => (Line(result.RideHeights[i], units), false)));
    }

    private static bool IsEnd(TravelEnd? end) => end is not (TravelEnd.LoadBalance or TravelEnd.OnBumpStop or TravelEnd.BumpStopSolid);

    private static IReadOnlyList<string> Line(RideHeight r, DisplayUnits units)
    {
        string stop = units.Text(Dimension.Force, r.StopForce_N) + " of stop";
        string on = r.End switch
        {
            TravelEnd.LoadBalance => "air",
            TravelEnd.OnBumpStop => r.GaugePressure_Pa > 0 ? "air and " + stop : stop,
            _ => TravelWords.End(r.End),
        };
        // The car's height over drive, so that more air is more: wheel travel the other way.
        return [units.Number(Dimension.GaugePressure, r.GaugePressure_Pa), units.Number(Dimension.Length, -r.WheelTravel_m), on];
    }

    private static void Rule(Screen screen, TravelFinding finding, TravelWords words, DisplayUnits units)
    {
        string verdict = finding.Holds switch { true => "holds", false => "missed", _ => "not checked" };
        string numbers = finding.Holds is null ? "" : $": {units.Text(Dimension.Length, finding.Value_m)}, asked {units.Text(Dimension.Length, finding.Limit_m)}";
        screen.Point(verdict, $"{TravelWords.Rule(finding.Rule)}{numbers} ({TravelWords.Source(finding.Rule)})");
        if (words.MendOf(finding) is { } mend) screen.Point("", mend);
    }
}
