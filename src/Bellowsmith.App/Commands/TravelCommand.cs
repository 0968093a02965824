using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Travel;

namespace Bellowsmith.App.Commands;

internal static class TravelCommand
{
    public const string Example =
        """
        bellowsmith travel examples/fenwright/kits/ostrane-street.json
        answers for each strut with heights, gaps and gauge pressures, then rule by rule.
        """;

    public static Command Create()
    {
        Command command = new("travel", "How far can it move, and what stops it first? Drive, full bump, full droop, aired out and lifted; the rules it keeps or misses, and the smallest change that mends each.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        command.Add(kit);
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            (StrutCase Case, TravelResult? Result)[] results = [.. StrutCases
                .Of(read, options.Conditions(parsed), TravelStudy.Needs).Select(c => (c, TravelStudy.Answer(c)))];
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(Answer(results)));
            else TravelView.Show(Screen.Output(), read, results, options.Units(parsed, read.WrittenUnits));
            return results.All(r => r.Result is not null) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static TravelAnswer Answer((StrutCase Case, TravelResult? Result)[] results) => new(results.ToDictionary(
        r => Names.Of(r.Case.End),
        r => r.Result is { } result ? TravelAnswer.Of(result) : TravelAnswer.Without(r.Case.Load, TravelWords.NoDrive(r.Case, DisplayUnits.Metric))));
}
