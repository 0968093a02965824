using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.LeakTest;
using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.App.Terminal;

/// <summary>A leak test as a person reads it.</summary>
internal static class LeakView
{
    public static void Show(Screen screen, LeakTestResult result, DisplayUnits units)
    {
        LeakWords words = new(result, units);
        screen.Blank();
        screen.Title("Does it leak more than it may?");
        if (result.Judgement.Verdict == LeakVerdict.NotDecidable && result.Judgement.Reason != LeakReason.NoLimit) screen.Warn(words.Answer());
        else screen.Answer(words.Answer());
        screen.Say(words.Reason());
        if (words.Remedy() is { } remedy) screen.Say(remedy);
        if (result.Estimate is { } estimate)
        {
            screen.Table(
                ["from", "u of leak Pa·m³/s", $"u of loss {units.Symbol(Dimension.GaugePressure)}"],
                estimate.Contributions.Where(c => c.Rate_Pa_m3_per_s > 0).OrderByDescending(c => c.Rate_Pa_m3_per_s)
                    .Select(c => Row(LeakWords.Source(c.Source), c.Rate_Pa_m3_per_s, c.Loss_Pa, false))
                    .Append(Row("together", estimate.RateUncertainty_Pa_m3_per_s, estimate.LossUncertainty_Pa, true)));
            screen.Point("leak rate", LeakWords.InOtherUnits(estimate.Rate));
        }

        foreach (MethodFinding finding in result.Findings)
            screen.Point(finding.Holds switch { true => "holds", false => "missed", _ => "not checked" }, LeakWords.Rule(finding.Rule) + words.Found(finding) + " (ASTM E2930)");
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Point("stored energy", words.Energy());
        screen.Blank();
        screen.Quiet(Cautions.LeakTest);
        screen.Quiet(Cautions.Local);

        (IReadOnlyList<string> Cells, bool Marked) Row(string source, double rate, double loss, bool marked) => (
            [source, rate.ToString("0.00e+0", CultureInfo.InvariantCulture), units.UnitOf(Dimension.GaugePressure).FromSi(loss).ToString("G3", CultureInfo.InvariantCulture)], marked);
    }
}
