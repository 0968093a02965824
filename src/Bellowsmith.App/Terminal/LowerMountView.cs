using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.LowerMounting;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>A lower mount's answer as a person reads it.</summary>
internal static class LowerMountView
{
    public static void Show(Screen screen, Kit kit, LowerMountResult result, DisplayUnits units, string? drawing)
    {
        LowerMountWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Question.Strut.End)}: does the lower mount fit the car, and does it hold?");
        if (words.Reason() is { } reason) screen.Warn(reason);
        if (result.Findings.Any(f => f is { Holds: false, CanBeWaived: false })) screen.Warn(words.Answer());
        else screen.Answer(words.Answer());
        if (result.Findings.Any(f => f.Holds == false)) screen.Warn(words.Summary());
        else screen.Say(words.Summary());
        string force = units.Symbol(Dimension.Force);
        if (result.Bolts.Count > 0)
            screen.Table(["bolt", $"force {force}", $"friction holds {force}", "asked"], words.Bolts().Select(row => ((IReadOnlyList<string>)[row.Hole, row.Force, row.Holds, row.Asked], false)));
        foreach (LowerMountFinding finding in result.Findings)
        {
            string verdict = finding.Holds switch { true => "holds", false => "missed", _ => "not checked" }, numbers = words.Numbers(finding);
            screen.Point(verdict, $"{LowerMountWords.Rule(finding.Rule)}{(numbers.Length > 0 ? $": {numbers}" : "")} ({LowerMountWords.Source(finding.Rule)})");
            if (words.MendOf(finding) is { } mend) screen.Point("", mend);
        }

        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        if (drawing is not null) screen.Say($"Drawing: {drawing}");
        screen.Blank();
        screen.Quiet(Cautions.ChassisParts);
        screen.Quiet(Cautions.RaisedCar);
        screen.Quiet(Cautions.Local);
    }
}
