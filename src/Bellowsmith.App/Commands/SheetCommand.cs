using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Reflection;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Papers;

namespace Bellowsmith.App.Commands;

/// <summary>Prints a kit as PDF. Only this command and <see cref="FigureOutput"/> touch Bellowsmith.Papers, so that nobody else waits for its libraries.</summary>
internal static class SheetCommand
{
    public const string Example =
        """
        bellowsmith sheet examples/fenwright/kits/ostrane-street.json -o ostrane.pdf
        writes one page for each strut: answers, section, figures, inputs with their SHA-256, findings and cautions; and one for the corner it stands
        in: where it has least room in three views, every pair's gap, what lowering did, and whether the mounts hold.
        """;

    private const string DateForm = "yyyy-MM-dd";

    public static Command Create()
    {
        Command command = new("sheet", "How do I take it to the bench? One printed page for each strut, with the section to scale and everything the answers rest on, and one for each corner whose points and wheel the car names.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<string> output = new("--output", "-o") { Description = "The PDF to write; a file there is replaced.", HelpName = "FILE.pdf", Required = true };
        output.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && string.IsNullOrWhiteSpace(result.Tokens[0].Value)) result.AddError("--output names no file: write a name, for example strut.pdf.");
        });
        Option<string> paper = new("--paper") { Description = "Paper: a4 or letter.", DefaultValueFactory = _ => "a4" };
        paper.AcceptOnlyFromAmong("a4", "letter");
        Option<DateTimeOffset?> date = new("--date") { Description = "Date to print, for example 2027-01-31; today where not given.", HelpName = "date", CustomParser = Date };
        command.Add(kit);
        command.Add(output);
        command.Add(paper);
        command.Add(date);
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            StrutAnswers[] struts = [.. StrutCases.Of(read, options.Conditions(parsed), _ => { }).Select(StrutAnswers.Of)];
            CornerAnswers[] corners = [.. struts.Select(strut => CornerAnswers.Of(read, strut, options.Conditions(parsed))).OfType<CornerAnswers>()];
            Sheet sheet = new(read, struts, corners, options.Units(parsed, read.WrittenUnits), parsed.GetValue(date) ?? TimeProvider.System.GetLocalNow(), Version);
            int pages = struts.Length + corners.Length;
            FileBytes written = new(parsed.GetRequiredValue(output), SheetPdf.Write(sheet, parsed.GetValue(paper) == "letter" ? Paper.Letter : Paper.A4));
            OutputFile.Write(written);
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(new SheetAnswer(written.File, pages, written.Sha256())));
            else Screen.Output().Say($"{written.File}: {pages} {(pages == 1 ? "page" : "pages")}.");
            return struts.All(s => s.Height is null or { Recommended: not null }) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static string Version =>
        typeof(SheetCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    private static DateTimeOffset? Date(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        if (DateTimeOffset.TryParseExact(text, DateForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset date)) return date;
        result.AddError($"--date \"{text}\" is not a date: write it as 2027-01-31.");
        return null;
    }
}
