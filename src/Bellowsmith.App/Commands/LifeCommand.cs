using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.App.Commands;

internal static class LifeCommand
{
    public const string Example = PlanExample + "\n" + FitExample;

    public const string PlanExample =
        """
        bellowsmith life plan --reliability 0.9 --confidence 0.9 --life-ratio 2 --shape 2
        answers with the parts to run twice the wanted life to show that 90 % last the wanted one.
        """;

    public const string FitExample =
        """
        bellowsmith life fit examples/fenwright/measured/endurance.csv
        answers with the life by which a tenth has failed, its interval, and what these parts show of it.
        Exit code 3 where the lives cannot tell: fewer than 2 failures and no --shape.
        """;

    public static Command Create() => new("life", "How long does it last? Plan an endurance test, or read one: failures and survivors to a life with its interval.")
    {
        Plan(), Fit(),
    };

    private static Command Plan()
    {
        Command command = new("plan", "How many parts must run how long, with how many failures, to show a reliability?");
        Option<double?> reliability = NumberOption.Between("--reliability", "Share of parts that is to last the wanted life.", "share", 0, 1, 0.9);
        Option<double?> confidence = NumberOption.Between("--confidence", "Confidence it is shown with.", "share", 0, 1, 0.9);
        Option<double?> lifeRatio = NumberOption.Between("--life-ratio", "Test life over wanted life, with --shape.", "ratio", 0, 1000);
        Option<double?> shape = Shape("Weibull shape known from parts that failed the same way.");
        Option<int?> failures = NumberOption.Count("--failures", "Failures with which the test is still passed.", 0, 1000, 0);
        Option<int?> parts = NumberOption.Count("--parts", "Parts there are: says what they show.", 1, ReliabilityDemonstration.MostParts);
        command.Validators.Add(result =>
        {
            if (result.GetResult(lifeRatio) is null != result.GetResult(shape) is null)
                result.AddError("--life-ratio and --shape go together: longer life trades for parts only through the shape.");
        });
        Option<bool> json = Json();
        foreach (Option option in (Option[])[reliability, confidence, failures, parts, lifeRatio, shape, json]) command.Add(option);
        command.SetAction(parsed => Study.Run(parsed.GetValue(json), () =>
        {
            LifeTestPlan plan = LifeTestPlan.Of(
                parsed.GetValue(reliability)!.Value, parsed.GetValue(confidence)!.Value, parsed.GetValue(failures)!.Value,
                parsed.GetValue(lifeRatio) ?? 1, parsed.GetValue(shape), parsed.GetValue(parts));
            if (parsed.GetValue(json)) Console.WriteLine(AnswerJson.Write(LifePlanAnswer.Of(plan)));
            else LifeView.Show(Screen.Output(), plan);
            return plan.Parts is null ? Study.NoSolution : Study.Answered;
        }));
        return command;
    }

    private static Command Fit()
    {
        Command command = new("fit", "What do these lives show? Weibull shape and scale, the life by which a share has failed, and how sure that is.");
        Argument<string> file = DocumentArgument.Create("FILE.csv", "Lives: columns life, its unit in brackets, and outcome, failed or survived.");
        Option<double?> shape = Shape("Weibull shape known from parts that failed the same way, for few failures or none.");
        Option<double?> fraction = NumberOption.Between("--fraction", "Share that has failed by the life asked for; 0.1 asks for B10.", "share", 0, 1, 0.1);
        Option<double?> confidence = NumberOption.Between("--confidence", "Confidence of intervals and of the life that is shown.", "share", 0.5, 1, 0.95);
        Option<bool> json = Json();
        command.Add(file);
        foreach (Option option in (Option[])[shape, fraction, confidence, json]) command.Add(option);
        command.SetAction(parsed => Study.Run(parsed.GetValue(json), () =>
        {
            string path = parsed.GetRequiredValue(file);
            LifeTable table = LifeTable.Read(path);
            LifeAnalysis result = LifeAnalysis.Of(table.Lives, table.Failed, new(parsed.GetValue(fraction)!.Value, parsed.GetValue(shape), parsed.GetValue(confidence)!.Value));
            if (parsed.GetValue(json)) Console.WriteLine(AnswerJson.Write(LifeAnswer.Of(result, table.Unit)));
            else LifeView.Show(Screen.Output(), result, table.Unit, path);
            return result.Reason is null ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static Option<double?> Shape(string description) => NumberOption.Between("--shape", description, "shape", 0, 100);

    private static Option<bool> Json() => new("--json") { Description = "Print one JSON object and nothing else." };
}
