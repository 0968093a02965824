using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Search;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

internal static class SearchCommand
{
    public const string Example =
        """
        bellowsmith search examples/fenwright/kits/ostrane-street.json --limit stopContactsPerKm=1
        drives every spring and damper on the shelf at every height and click and answers with the few settings of which none is
        better in all of comfort, tyre load and stop contacts. Exit code 3 where none keeps the limits: it says what comes nearest
        and what to order.
        """;

    private const int AtOnce = 256;

    private static readonly string _limitable = string.Join(", ", RideQuantity.All.Select(q => q.Name));

    public static Command Create(TimeProvider time)
    {
        Command command = new("search", "Which of our springs, at which height, with which click? Every part on the shelf at every setting, driven over one road.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<SearchLimit[]> limit = new("--limit")
        {
            Description = $"The most an answer of a ride may come to, in the unit its name ends with, for example stopContactsPerKm=1; may be repeated. Answers: {_limitable}.",
            HelpName = "answer=number",
            CustomParser = Limits,
        };
        Option<bool> robust = new("--robust") { Description = "Limits hold one click, 2 psi, 10 kg and 1 mm aside too, not only where all is set exactly." };
        Option<string[]> shelf = new("--shelf")
        {
            Description = "Folder of spring and damper documents; may be repeated. Where the kit's own documents lie if not given.",
            HelpName = "FOLDER",
        };
        foreach (Option repeated in new Option[] { limit, shelf }) repeated.Arity = ArgumentArity.OneOrMore;
        command.Add(kit);
        command.Add(limit);
        command.Add(robust);
        command.Add(shelf);
        RoadOptions road = new(command, usualSeconds: 30, usual: (RoadClass.C, 80 / 3.6));
        StrutOption strut = new(command, "Which strut is searched");
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            long start = time.GetTimestamp();
            RoadQuestion driven = road.Question(parsed);
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            Shelf at = ShelfReader.Read(parsed.GetValue(shelf) is { Length: > 0 } folders ? folders : ShelfReader.FoldersOf(read));
            SearchRun run = new(SearchQuestion.Of(strut.Only(parsed, read), at, options.Conditions(parsed), driven, parsed.GetValue(limit) ?? []) with { Robust = parsed.GetValue(robust) });
            Progress.Follow(() =>
            {
                run.Advance(AtOnce);
                return run.Share;
            });
            DisplayUnits units = options.Units(parsed, read.WrittenUnits);
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(SearchAnswer.Of(run.Result!, units, time.GetElapsedTime(start).TotalSeconds)));
            else SearchView.Show(Screen.Output(), read, run.Result!, units);
            return run.Result!.Front.Count > 0 ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static SearchLimit[] Limits(ArgumentResult result) => [.. result.Tokens.Select(token => Limit(token.Value, result)).OfType<SearchLimit>()];

    private static SearchLimit? Limit(string text, ArgumentResult result)
    {
        string[] parts = text.Split('=', StringSplitOptions.TrimEntries);
        RideQuantity? quantity = RideQuantity.Find(parts[0]);
        if (quantity is not null && parts.Length == 2 && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= 0 && double.IsFinite(value))
            return new SearchLimit(quantity, value / quantity.Scale);
        result.AddError(quantity is null ? $"--limit \"{text}\" is no answer of a ride: write one of {_limitable}, for example stopContactsPerKm=1."
            : $"--limit \"{text}\" must be {quantity.Name}=number, the number 0 or more.");
        return null;
    }
}
