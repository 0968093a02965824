using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class DamperCommand
{
    public const string Example =
        """
        bellowsmith damper examples/fenwright/dampers/front-street.json --click 6
        prints what the dyno says: forces at the published speeds, repeatability, gas force, friction, rows left out.
        """;

    private const double MostClicks = 200;

    public static Command Create()
    {
        Command command = new("damper", "What does the dyno say of this damper? Force at the published speeds click by click, gas force, friction, hysteresis, asymmetry, what was left out, and how another unit differs.");
        Argument<string> damper = DocumentArgument.Create("DAMPER.json", "A damper document.");
        Option<double?> click = NumberOption.Within("--click", "One click, counted from fully closed; all where not given.", 0, MostClicks);
        Option<string?> compare = new("--compare") { Description = "Another damper document, compared at each published speed.", HelpName = "OTHER.json" };
        command.Add(damper);
        command.Add(click);
        command.Add(compare);
        FigureChoice<(DamperFigures Of, double? Click)> figure = new(
            command, ("overlay", f => f.Of.Overlay(f.Click)), ("loops", f => f.Of.Loops(f.Click)), ("forces", f => f.Of.Forces()));
        StudyOptions options = new(command, withLoadCase: false, withAmbient: false);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            DynoUnit unit = Read(parsed.GetRequiredValue(damper));
            DynoResult result = DynoStudy.Answer(unit, parsed.GetValue(click), parsed.GetValue(compare) is { } other ? Read(other) : null);
            DisplayUnits units = options.Units(parsed, new Dictionary<Dimension, string>());
            string? drawn = figure.Write(parsed, () => (new DamperFigures(result, units), parsed.GetValue(click)));
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(DynoAnswer.Of(result)));
            else
            {
                DynoView.Show(Screen.Output(), result, units);
                if (drawn is not null) Screen.Output().Say(drawn);
            }

            return result.Clicks.Count > 0 ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static DynoUnit Read(string path)
    {
        if (DamperReader.Read(path) is not TelescopicDamperPart { DynoFile: not null } part)
            throw new FaultsException([new Fault(path, "dyno", "nothing", "the relative path of the damper's dyno file", "Name the dyno file: \"dyno\": \"file.csv\".")]);
        List<Fault> faults = [];
        return part.ReadDyno(faults) is { } data ? new(part, data) : throw new FaultsException(faults);
    }
}
