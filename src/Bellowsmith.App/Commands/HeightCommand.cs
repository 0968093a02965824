using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;

namespace Bellowsmith.App.Commands;

internal static class HeightCommand
{
    public const string Example =
        """
        bellowsmith height examples/fenwright/kits/ostrane-street.json
        answers for each strut: spring height, gauge pressure, rate with its 95 % band, thread and turns.
        With --json the same, unrounded. Exit code 3 where no height gives the rate: it says why and what can be had.
        """;

    public static Command Create()
    {
        Command command = new("height", "How high does it sit, on how much air? Every installed spring height and gauge pressure that gives the wanted rate, the thread setting that puts it there, and what moves it.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        command.Add(kit);
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            InstalledHeightResult[] results = [.. StrutCases
                .Of(read, options.Conditions(parsed), InstalledHeightStudy.Needs).Select(InstalledHeightStudy.Answer)];
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(HeightAnswer.Of(results)));
            else HeightView.Show(Screen.Output(), read, results, options.Units(parsed, read.WrittenUnits));
            return results.All(r => r.Recommended is not null) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
