using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Damping;

namespace Bellowsmith.App.Commands;

internal static class DampingCommand
{
    public const string Example =
        """
        bellowsmith damping examples/fenwright/kits/ostrane-street.json --ratio 0.5
        answers for each strut with the click that comes nearest half of critical damping at drive height, what its
        neighbours give and whether the difference is real. Exit code 3 where no click reaches it: it says what can be had.
        """;

    private const double Least = 0.01, Greatest = 5;

    public static Command Create()
    {
        Command command = new("damping", "How hard should it be damped? The click that gives the wanted share of critical damping at drive height, from the damper's dyno data.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<double?> ratio = NumberOption.Within("--ratio", "Share of critical damping wanted, for example 0.5.", Least, Greatest);
        ratio.Required = true;
        command.Add(kit);
        command.Add(ratio);
        FigureChoice<DampingFigures> figure = new(
            command, ("ratio", f => f.Ratio()), ("amplitude", f => f.Amplitude()), ("air", f => f.GaugePressure()), ("overlay", f => f.Overlay()));
        StrutOption strut = new(command, "Whose figure --output writes");
        StudyOptions options = new(command, withLoadCase: true, withDamperTemperature: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            DampingResult[] results = [.. DampingCases.Of(read, options.Conditions(parsed))
                .Select(corner => DampingStudy.Answer(corner, parsed.GetValue(ratio)!.Value))];
            DisplayUnits units = options.Units(parsed, read.WrittenUnits);
            string? drawn = figure.Write(parsed, () => new DampingFigures(strut.Of(parsed, read, results, r => r.Case.End), units));
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(DampingAnswer.Of(results)));
            else
            {
                DampingView.Show(Screen.Output(), read, results, units);
                if (drawn is not null) Screen.Output().Say(drawn);
            }

            return results.All(r => r.Chosen is not null) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
