using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Ride;

namespace Bellowsmith.App.Commands;

internal static class RideCommand
{
    public const string Example =
        """
        bellowsmith ride examples/fenwright/kits/ostrane-street.json --road B --speed "90 km/h"
        answers for each strut: weighted acceleration and what people call it, travel, tyre load, stop contacts, and the same one
        click, 2 psi and one load aside.
        """;

    public static Command Create()
    {
        Command command = new("ride", "How does it ride, and does it bottom? One corner, nonlinear, driven over a road of a class, a bump or a measured profile.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        command.Add(kit);
        RoadOptions road = new(command);
        SettingOptions setting = new(command);
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            RoadQuestion question = road.Question(parsed);
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            RideResult[] results = [.. RideStudy.Answers(read, options.Conditions(parsed), question, setting.Setting(parsed))];
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(RideAnswer.Of(results)));
            else RideView.Show(Screen.Output(), read, results, options.Units(parsed, read.WrittenUnits));
            return results.All(r => r.Figures is not null) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
