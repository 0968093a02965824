using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class RideCommand
{
    public const string Example =
        """
        bellowsmith ride examples/fenwright/kits/ostrane-street.json --road B --speed "90 km/h"
        answers for each strut: weighted acceleration and what people call it, travel, tyre load, stop contacts, and the same one
        click, 2 psi and one load aside.
        """;

    public static Command Create()
    {
        Command command = new("ride", "How does it ride, and does it bottom? One corner, nonlinear, driven over a road of a class, a bump or a measured profile.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        command.Add(kit);
        RoadOptions road = new(command);
        SettingOptions setting = new(command);
        Option<Quantity?> response = QuantityOption.Create("--response", "Also driven over waves of this amplitude from 0.5 to 25 Hz, of half and of twice it", "5 mm", Dimension.Length, QuantityOption.Within(1e-4, 0.2, "between 0.1 and 200 mm"));
        command.Add(response);
        FigureChoice<RideCharts> figure = new(
            command, ("speeds", f => f.Speeds()), ("spectrum", f => f.Spectrum()), ("travel", f => f.Travel()), ("neighbours", f => f.Neighbours()), ("waves", f => f.Waves()));
        StrutOption strut = new(command, "Whose figure --output writes");
        StudyOptions options = new(command, withLoadCase: true, withDamperTemperature: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            RoadQuestion question = road.Question(parsed);
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            RideResult[] results = [.. RideStudy.Answers(read, options.Conditions(parsed), question, setting.Setting(parsed))];
            if (parsed.GetValue(response) is { } amplitude)
                results = [.. results.Select(r => r with { Response = ResponseStudy.Answer(r.Strut, setting.Setting(parsed), amplitude.Si) })];
            DisplayUnits units = options.Units(parsed, read.WrittenUnits);
            string? drawn = figure.Write(parsed, () => new RideCharts(strut.Of(parsed, read, results, r => r.Strut.End), units));
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(RideAnswer.Of(results)));
            else
            {
                RideView.Show(Screen.Output(), read, results, units);
                if (drawn is not null) Screen.Output().Say(drawn);
            }

            return results.All(r => r.Figures is not null) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
