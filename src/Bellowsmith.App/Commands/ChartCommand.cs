using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Charting;
using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.App.Commands;

/// <summary>Is the process steady? A control chart of a file of readings.</summary>
internal sealed class ChartCommand
{
    public const string Example =
        """
        bellowsmith chart examples/fenwright/measured/crimp-diameter.csv --kind individuals --base 60 --rule "one point beyond 3 sigma" --rule "eight in a row on one side"
        finds that a crimp die wears, 27 crimps before the first lies beyond its limits, and says how often these two rules cry wolf.
        """;

    private const double GreatestWidth = 10, GreatestAllowance = 5, GreatestDecision = 100;

    private static readonly Dictionary<string, ChartKind> _kinds = Enum.GetValues<ChartKind>().ToDictionary(k => k.ToString().ToLowerInvariant());

    private readonly Argument<string> _file = DocumentArgument.Create(
        "FILE.csv", "Readings in the order they were made: value (and subgroup for averages), or count and size; phase and note beside them.");

    private readonly Option<string> _kind = new("--kind")
    {
        Description = "What to chart: individuals (with moving ranges), averages (of subgroups), ewma, cusum, counts, shares.",
        HelpName = "kind",
        Required = true,
    };

    private readonly Option<string> _spread = new("--spread") { Description = "How averages see the spread: ranges (default) or deviations.", HelpName = "measure" };
    private readonly Option<double?> _base = Number("--base", "Estimate the limits from the first so many points of each phase and hold them; default all points.",
        v => v >= ChartBasis.LeastPoints && v % 1 == 0 && v <= int.MaxValue, $"a whole number, at least {ChartBasis.LeastPoints}: fewer points give no limits");

    private readonly Option<WrittenValue?> _centre = ValueOption.Create("--centre", "Centre line or target given instead of estimated", "24.05 mm");
    private readonly Option<WrittenValue?> _sd = ValueOption.Create("--sd", "Standard deviation of a single value given instead of estimated", "0.02 mm");
    private readonly Option<string[]> _rule = new("--rule")
    {
        Description = $"What to watch for, a sentence; may be repeated. Default \"{RuleSentence.Examples[0]}\". Others: {string.Join(", ", RuleSentence.Examples.Skip(1).Select(s => $"\"{s}\""))}; any numbers.",
        HelpName = "sentence",
    };

    private readonly Option<double?> _weight = Number("--weight", $"ewma: weight of the newest value, above 0 and up to 1; default {ChartQuestion.UsualWeight}.", v => v is > 0 and <= 1, "above 0 and up to 1");
    private readonly Option<double?> _width = Number("--width", $"ewma: limits in standard deviations of the average; default {ChartQuestion.UsualWidth}.",
        v => v is > 0 and <= GreatestWidth, $"above 0 and up to {GreatestWidth}");


    private readonly Option<bool> _start = new("--start") { Description = "ewma: narrower limits at the start, as the average's own deviation is; default steady limits." };
    private readonly Option<double?> _allowance = Number("--allowance", $"cusum: what each step forgives, in standard deviations; default {ChartQuestion.UsualAllowance_sd}.",
        v => v is >= 0 and <= GreatestAllowance, $"0 to {GreatestAllowance}");


    private readonly Option<double?> _decision = Number("--decision", $"cusum: sum that signals, in standard deviations; default {ChartQuestion.UsualDecision_sd}.",
        v => v is > 0 and <= GreatestDecision, $"above 0 and up to {GreatestDecision}");


    private readonly Option<int> _seed = new("--seed") { Description = "Seed of the simulation that prices order rules used with others.", HelpName = "number", DefaultValueFactory = _ => 1 };
    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON object and nothing else." };

    private ChartCommand()
    {
        _kind.AcceptOnlyFromAmong([.. _kinds.Keys]);
        _spread.AcceptOnlyFromAmong("ranges", "deviations");
        _centre.Aliases.Add("--target");
    }

    public static Command Create() => new ChartCommand().Build();

    private Command Build()
    {
        Command command = new("chart", "Is the process steady? A control chart of a file of readings: limits, signals, and how often its rules cry wolf.");
        command.Add(_file);
        foreach (Option option in (Option[])[_kind, _centre, _sd, _base, _rule, _spread, _weight, _width, _start, _allowance, _decision, _seed, _json]) command.Add(option);
        FigureOutput output = new(command);
        command.Validators.Add(Check);
        command.SetAction(parsed => Study.Run(parsed.GetValue(_json), () =>
        {
            ChartResult result = ChartStudy.Answer(parsed.GetRequiredValue(_file), Question(parsed));
            string? figure = output.Write(parsed, () => result.Chart.Judged ? ControlFigures.Of(result)[0] : null);
            if (parsed.GetValue(_json)) Write(result);
            else ChartView.Show(Screen.Output(), result, figure);
            return result.Chart.Judged ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private ChartQuestion Question(ParseResult parsed)
    {
        ChartQuestion question = new() { Kind = _kinds[parsed.GetRequiredValue(_kind)] };
        return question with
        {
            Measure = parsed.GetValue(_spread) == "deviations" ? SpreadMeasure.StandardDeviations : SpreadMeasure.Ranges,
            Base = (int?)parsed.GetValue(_base),
            Centre = parsed.GetValue(_centre),
            Sd = parsed.GetValue(_sd),
            Rules = parsed.GetValue(_rule) is { Length: > 0 } sentences ? Rules(sentences) : question.Rules,
            Weight = parsed.GetValue(_weight) ?? question.Weight,
            Width = parsed.GetValue(_width) ?? question.Width,
            FromStart = parsed.GetValue(_start),
            Allowance_sd = parsed.GetValue(_allowance) ?? question.Allowance_sd,
            Decision_sd = parsed.GetValue(_decision) ?? question.Decision_sd,
            Seed = parsed.GetValue(_seed),
        };
    }

    private static RunRule[] Rules(string[] sentences)
    {
        List<Fault> faults = [];
        List<RunRule> rules = [];
        foreach (string sentence in sentences)
        {
            if (RuleSentence.Read(sentence, out string nearest) is { } rule) rules.Add(rule);
            else faults.Add(new("command line", "--rule", sentence, "a rule such as " + string.Join(", ", RuleSentence.Examples.Select(s => $"\"{s}\"")), $"Did you mean \"{nearest}\"?"));
        }

        return faults.Count == 0 ? [.. rules.Distinct()] : throw new FaultsException(faults);
    }

    private static void Write(ChartResult result)
    {
        using Stream output = Console.OpenStandardOutput();
        ChartAnswer.Write(output, result);
        output.WriteByte((byte)'\n');
    }

    // An option that does not go with the kind would be silently ignored, which nobody wants.
    private void Check(CommandResult result)
    {
        if (result.GetResult(_kind)?.Errors.Any() != false || result.GetValue(_kind) is not { } name || !_kinds.TryGetValue(name, out ChartKind kind)) return;
        ChartQuestion asked = new() { Kind = kind };
        Refuse(result, kind != ChartKind.Ewma, "goes with --kind ewma", _weight, _width, _start);
        Refuse(result, kind != ChartKind.Cusum, "goes with --kind cusum", _allowance, _decision);
        Refuse(result, kind != ChartKind.Averages, "goes with --kind averages", _spread);
        Refuse(result, asked.CarriesPast, $"does not go with --kind {name}: its points carry their past along and are judged by their limits alone", _rule);
        Refuse(result, asked.IsOfCounts, $"does not go with --kind {name}: the spread follows from the centre", _sd);
        if (Given(result, _sd) is <= 0) result.AddError($"{_sd.Name} must be more than 0.");
        if (kind == ChartKind.Counts && Given(result, _centre) is < 0) result.AddError($"{_centre.Name} must be 0 or more: it is a count.");
        if (kind == ChartKind.Shares && Given(result, _centre) is < 0 or > 1) result.AddError($"{_centre.Name} must be 0 to 1: it is a share.");
    }

    private static double? Given(CommandResult result, Option<WrittenValue?> option) =>
        result.GetResult(option) is { Tokens: var tokens } ? WrittenValue.Read(string.Join(' ', tokens.Select(t => t.Value)))?.Number : null;

    private static void Refuse(CommandResult result, bool refused, string why, params ReadOnlySpan<Option> options)
    {
        foreach (Option option in options)
            if (refused && result.GetResult(option) is { Implicit: false }) result.AddError($"{option.Name} {why}.");
    }

    private static Option<double?> Number(string name, string description, Func<double, bool> allowed, string range) => new(name)
    {
        Description = description,
        HelpName = "number",
        CustomParser = result =>
        {
            string text = result.Tokens[0].Value;
            if (double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && allowed(value)) return value;
            result.AddError($"{name} \"{text}\" must be {range}.");
            return null;
        },
    };
}
