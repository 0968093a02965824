using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.GaugeTrials;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class GaugeCommand
{
    public const string Example =
        """
        bellowsmith gauge examples/fenwright/measured/gauge-trial.csv --method anova --tolerance "0.3 mm"
        answers with what repeats, appraisers and parts each spread, and whether the gauge is good enough for the tolerance.
        Exit code 3 where nothing varied, repeats never differ or nothing was repeated.
        """;

    public static Command Create()
    {
        Command command = new("gauge", "How much of what a gauge shows is the gauge? Every appraiser reads every part in every trial; or repeats within days within runs.");
        Argument<string> file = DocumentArgument.Create("FILE.csv", "Columns part, appraiser, trial and value; nested: run, day and value (or average, sd and repeats), standard beside them.");
        Option<string> method = new("--method") { Description = "anova (analysis of variance), range (by hand) or nested.", DefaultValueFactory = _ => "anova", HelpName = "method" };
        method.AcceptOnlyFromAmong("anova", "range", "nested");
        Option<WrittenValue?> tolerance = ValueOption.Create("--tolerance", "Upper less lower limit of what is measured", "0.3 mm");
        Option<bool> json = new("--json") { Description = "Print one JSON object and nothing else." };
        command.Add(file);
        foreach (Option option in (Option[])[method, tolerance, json]) command.Add(option);
        FigureOutput output = new(command);
        command.SetAction(parsed => Study.Run(parsed.GetValue(json), () =>
        {
            GaugeResult result = Answer(parsed.GetRequiredValue(file), parsed.GetValue(method)!, parsed.GetValue(tolerance));
            string? drawn = output.Write(parsed, () => GaugeFigures.Readings(result));
            if (parsed.GetValue(json)) Console.WriteLine(AnswerJson.Write(GaugeAnswer.Of(result)));
            else
            {
                GaugeView.Show(Screen.Output(), result);
                if (drawn is not null) Screen.Output().Say($"Figure: {drawn}");
            }

            return result.IsAnswered ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static GaugeResult Answer(string file, string method, WrittenValue? tolerance)
    {
        if (method == "nested")
        {
            NestedTable nested = NestedTable.Read(file);
            return GaugeStudy.Answer(nested, Width(tolerance, nested.Unit, nested.File));
        }

        GaugeTable crossed = GaugeTable.Read(file);
        return GaugeStudy.Answer(crossed, method == "range", Width(tolerance, crossed.Unit, crossed.File));
    }

    private static double? Width(WrittenValue? tolerance, string? unit, string file) => tolerance?.In(unit, file, "--tolerance") switch
    {
        <= 0 => throw new FaultsException([new(file, "--tolerance", tolerance.Value.Text, "more than nothing", "Give upper less lower limit.")]),
        var width => width,
    };
}
