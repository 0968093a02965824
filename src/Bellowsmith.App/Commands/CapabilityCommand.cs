using System.CommandLine;
using System.CommandLine.Parsing;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Capability;

namespace Bellowsmith.App.Commands;

internal static class CapabilityCommand
{
    public const string Example =
        """
        bellowsmith capability examples/fenwright/measured/crimp-diameter-batch.csv --lower 118.25 --upper "118.55 mm" --target 118.4
        answers with the index the parts look like, the one so many of them prove, and how many would prove the wanted one.
        Exit code 3 where no verdict is possible: fewer than 5 values, or all of them equal.
        """;

    private const string Column = "value";

    public static Command Create()
    {
        Command command = new("capability", "Do the parts stay within their limits? Capability indices with what so many parts prove of them, expected fallout, tolerance intervals, normality.");
        Argument<string> file = DocumentArgument.Create("FILE.csv", "Readings in the order they were made: a column value, its unit in brackets.");
        Option<WrittenValue?> lower = ValueOption.Create("--lower", "Lower limit", "118.25 mm"), upper = ValueOption.Create("--upper", "Upper limit", "118.55 mm");
        Option<WrittenValue?> target = ValueOption.Create("--target", "What is aimed at", "118.4 mm");
        Option<double?> wanted = NumberOption.Between("--wanted", "Cpk to be proved; 1.33 is common practice.", "index", 0, 10, 1.33);
        Option<double?> coverage = NumberOption.Between("--coverage", "Share of all parts a tolerance interval is to hold.", "share", 0, 1, 0.99);
        Option<bool> json = new("--json") { Description = "Print one JSON object and nothing else." };
        command.Add(file);
        foreach (Option option in (Option[])[lower, upper, target, wanted, coverage, json]) command.Add(option);
        command.Validators.Add(result => Check(result, lower, upper));
        command.SetAction(parsed => Study.Run(parsed.GetValue(json), () =>
        {
            Readings readings = Readings.Read(parsed.GetRequiredValue(file), ReadingColumn.Number(Column));
            string? unit = readings.Unit(Column);
            SpecificationLimits limits = Limits(readings, In(lower), In(upper), In(target));
            ProcessCapability result = ProcessCapability.Of(readings.Numbers(Column), new(limits, parsed.GetValue(wanted)!.Value, parsed.GetValue(coverage)!.Value));
            if (parsed.GetValue(json)) Console.WriteLine(AnswerJson.Write(CapabilityAnswer.Of(result, unit)));
            else CapabilityView.Show(Screen.Output(), result, unit, readings.File);
            return result.Reason is null ? Study.Answered : Study.NoSolution;

            double? In(Option<WrittenValue?> option) => parsed.GetValue(option)?.In(unit, readings.File, option.Name);
        }));
        return command;
    }

    private static void Check(CommandResult result, Option<WrittenValue?> lower, Option<WrittenValue?> upper)
    {
        if (result.GetResult(lower) is null && result.GetResult(upper) is null) result.AddError("Give --lower, --upper or both.");
        if (Read(lower) is { } low && Read(upper) is { } high && low.Unit == high.Unit && low.Number >= high.Number)
            result.AddError("--lower must lie below --upper.");

        // What cannot be read is reported by the option itself.
        WrittenValue? Read(Option option) => WrittenValue.Read(string.Join(' ', result.GetResult(option)?.Tokens.Select(token => token.Value) ?? []));
    }

    // Limits in two units show only in the file's which of them is the lower.
    private static SpecificationLimits Limits(Readings readings, double? lower, double? upper, double? target) => lower >= upper
        ? throw new FaultsException([new(readings.File, "--lower", $"{lower} {readings.Unit(Column)}", $"less than --upper, {upper} {readings.Unit(Column)}", "Check the units of the two limits.")])
        : new(lower, upper, target);
}
