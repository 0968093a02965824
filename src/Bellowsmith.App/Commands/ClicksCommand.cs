using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.DamperClicks;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class ClicksCommand
{
    public const string Example =
        """
        bellowsmith clicks examples/fenwright/measured/front-street-clicks.csv
        says of every step from click to click whether it is a real change, the range worth publishing, and how many runs would
        settle what is open. Exit code 3 where the readings can show nothing.
        """;

    public static Command Create()
    {
        Command command = new("clicks", "Is each click of this damper a real change? Steps between neighbouring clicks from repeated runs, each run a block, with exact simultaneous intervals.");
        Argument<string> file = DocumentArgument.Create("FILE", "A table with columns click, run and value, or velocity and force; or a damper document that names one.");
        Option<Quantity?> velocity = QuantityOption.Create("--velocity", "Where forces are read off sweeps, + in rebound", "0.13 m/s", Dimension.Speed);
        Option<WrittenValue?> wanted = ValueOption.Create("--wanted", "The least step worth having", "10 N");
        Option<bool> unblocked = new("--unblocked") { Description = "Also say what ignoring the runs would have concluded." };
        Option<bool> json = new("--json") { Description = "Print one JSON object and nothing else." };
        command.Add(file);
        foreach (Option option in (Option[])[velocity, wanted, unblocked, json]) command.Add(option);
        FigureOutput output = new(command);
        command.SetAction(parsed => Study.Run(parsed.GetValue(json), () =>
        {
            DamperClicksResult result = DamperClicksStudy.Answer(
                parsed.GetRequiredValue(file), parsed.GetValue(velocity)?.Si ?? DamperClicksStudy.UsualVelocity_m_per_s, parsed.GetValue(wanted));
            string? drawn = output.Write(parsed, () => ClicksFigures.Steps(result));
            if (parsed.GetValue(json)) Console.WriteLine(AnswerJson.Write(ClicksAnswer.Of(result)));
            else
            {
                ClicksView.Show(Screen.Output(), result, parsed.GetValue(unblocked));
                if (drawn is not null) Screen.Output().Say($"Figure: {drawn}");
            }

            return result.Judged.Lack is null ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
