using System.CommandLine;
using System.CommandLine.Parsing;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

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
        Command command = new("ride", "How does it ride, and does it bottom? One corner, nonlinear, driven over a road of a class for a minute.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<RoadClass?> road = new("--road") { Description = "ISO 8608 class, A (smooth) to H.", HelpName = "class" };
        Option<double?> density = NumberOption.Between("--velocity-psd", "Instead of a class: one-sided density of the road's vertical velocity in time, (m/s)²/Hz.", "number", 0, 1e3);
        Option<Quantity?> speed = QuantityOption.Create("--speed", "Driving speed", "80 km/h", Dimension.Speed, Within(0.5, 100, "between 0.5 and 100 m/s"));
        Option<double> seconds = new("--seconds") { Description = "Time driven; the first 5 s are not counted.", DefaultValueFactory = _ => 60, HelpName = "number" };
        Option<ulong> seed = new("--seed") { Description = "Which of the many roads of this class.", DefaultValueFactory = _ => 1, HelpName = "number" };
        Option<double?> click = new("--click") { Description = "Damper click, counted from fully closed.", HelpName = "number" };
        Option<Quantity?> height = QuantityOption.Create("--height", "Spring height at drive, set by the thread", "80 mm", Dimension.Length);
        Option<Quantity?> gauge = QuantityOption.Create("--gauge-pressure", "Gauge pressure at load, with the thread left alone", "60 psi", Dimension.GaugePressure);
        Option<Quantity?> stop = QuantityOption.Create("--stop", "Free length of the bump stop", "35 mm", Dimension.Length, Within(1e-3, 1, "between 1 and 1000 mm"));
        Option<Quantity?> response = QuantityOption.Create("--response", "Also driven over waves of this amplitude from 0.5 to 25 Hz, of half and of twice it", "5 mm", Dimension.Length, Within(1e-4, 0.2, "between 0.1 and 200 mm"));
        speed.Required = true;
        command.Add(kit);
        foreach (Option option in new Option[] { road, density, speed, seconds, seed, click, height, gauge, stop, response }) command.Add(option);
        StudyOptions options = new(command, withLoadCase: true);
        command.Validators.Add(result => Check(result, road, density, seconds));
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            RoadQuestion question = new(parsed.GetValue(road) is { } rough ? new RoadOfClass(rough) : new RoadOfVelocity(parsed.GetValue(density)!.Value), parsed.GetValue(speed)!.Value.Si, parsed.GetValue(seconds), parsed.GetValue(seed));
            RideSetting setting = new(parsed.GetValue(height)?.Si, parsed.GetValue(gauge)?.Si, parsed.GetValue(click), parsed.GetValue(stop)?.Si);
            RideResult[] results = [.. RideStudy.Answers(read, options.Conditions(parsed), question, setting)];
            if (parsed.GetValue(response) is { } amplitude)
                results = [.. results.Select(r => r with { Response = ResponseStudy.Answer(r.Strut, setting, amplitude.Si) })];
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(RideAnswer.Of(results)));
            else RideView.Show(Screen.Output(), read, results, options.Units(parsed, read.WrittenUnits));
            return results.All(r => r.Figures is not null) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static void Check(CommandResult result, Option<RoadClass?> road, Option<double?> density, Option<double> seconds)
    {
        bool hasRoad = result.GetResult(road) is not null, hasDensity = result.GetResult(density) is not null;
        if (hasRoad == hasDensity) result.AddError("Give --road or --velocity-psd, one of the two.");
        if (result.GetResult(seconds) is { Implicit: false } && !(result.GetValue(seconds) is > 6 and <= 3600)) result.AddError("--seconds must lie above 6 and be 3600 at most.");
    }

    private static Func<double, string?> Within(double least, double greatest, string words) =>
        value => value >= least && value <= greatest ? null : $"must lie {words}.";
}
