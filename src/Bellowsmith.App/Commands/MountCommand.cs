using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class MountCommand
{
    public const string Example =
        """
        bellowsmith mount examples/fenwright/kits/ostrane-street.json
        answers with how far the strut tilts and turns in its top mount, how long its bearings last at the usual steering, what pushes the rod
        aside, what that friction does to small bumps, and the spring line that takes it away. Exit code 3 where the linkage ends before the
        travel does.
        """;

    private const double MostSteer_rad = 45 * Math.PI / 180, MostPerKilometre = 10000, MostWorking_m = 0.2;

    public static Command Create()
    {
        Command command = new("mount", "Does the top mount last, and what does the side load do? Tilt and turn of the strut, lives of its bearings, and what bends its rod.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<Quantity?> steer = QuantityOption.Create(
            "--steer", "How far the strut usually turns either way; 5 deg where not given", "5 deg", Dimension.Angle, QuantityOption.Within(1e-3, MostSteer_rad, "between 0.06 and 45 deg"));
        Option<double?> perKilometre = NumberOption.Within("--per-km", "How often to and fro in a kilometre; 40 where not given.", 0.01, MostPerKilometre);
        Option<Quantity?> working = QuantityOption.Create(
            "--working", "How far the wheel usually travels either way; 30 mm where not given", "30 mm", Dimension.Length, QuantityOption.Within(1e-3, MostWorking_m, "between 1 and 200 mm"));
        Option<double?> strokes = NumberOption.Within("--strokes-per-km", "How often there and back in a kilometre; 20 where not given.", 0.01, MostPerKilometre);
        command.Add(kit);
        foreach (Option option in new Option[] { steer, perKilometre, working, strokes }) command.Add(option);
        StrutOption strut = new(command, "Whose mount");
        FigureChoice<MountCharts> figure = new(command, ("side", charts => charts.Side()), ("tilt", charts => charts.Tilt()));
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = strut.Only(parsed, KitReader.Read(parsed.GetRequiredValue(kit)));
            MountQuestion usual = new();
            MountResult result = MountStudy.Answer(MountCase.Of(read, options.Conditions(parsed)), new()
            {
                Steer_rad = parsed.GetValue(steer)?.Si ?? usual.Steer_rad,
                SteersPerKilometre = parsed.GetValue(perKilometre) ?? usual.SteersPerKilometre,
                Working_m = parsed.GetValue(working)?.Si ?? usual.Working_m,
                StrokesPerKilometre = parsed.GetValue(strokes) ?? usual.StrokesPerKilometre,
            });
            DisplayUnits units = options.Units(parsed, read.WrittenUnits);
            string? drawn = figure.Write(parsed, () => new(result, units));
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(MountAnswer.Of(result)));
            else
            {
                MountView.Show(Screen.Output(), read, result, units);
                if (drawn is not null) Screen.Output().Say(drawn);
            }

            return result.Solved ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
