using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Pairs;

namespace Bellowsmith.App.Commands;

internal static class PairsCommand
{
    public const string Example =
        """
        bellowsmith pairs examples/fenwright/measured/rear-dampers.csv
        answers with who goes with whom, so that the worst pair is as alike as the batch allows, and who is left over.
        Columns: unit, hand (left | right; optional), characteristic, value, tolerance (optional: 1).
        """;

    public static Command Create()
    {
        Command command = new("pairs", "Which units of a batch go together? The pairs whose worst difference, in tolerances, is the smallest possible.");
        Argument<string> file = DocumentArgument.Create("FILE.csv", "A batch: columns unit, hand?, characteristic, value, tolerance?.");
        Option<bool> json = new("--json") { Description = "Print one JSON object and nothing else." };
        command.Add(file);
        command.Add(json);
        command.SetAction(parsed => Study.Run(parsed.GetValue(json), () =>
        {
            PairTable table = PairTable.Read(parsed.GetRequiredValue(file));
            PairingResult result = Pairing.Of(table.Values, table.Tolerances, table.Hands);
            if (parsed.GetValue(json)) Console.WriteLine(AnswerJson.Write(PairAnswer.Of(table, result)));
            else PairsView.Show(Screen.Output(), table, result);
            return result.Lack is null ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
