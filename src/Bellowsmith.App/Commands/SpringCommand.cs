using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.SpringPoint;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

internal static class SpringCommand
{
    public const string Example =
        """
        bellowsmith spring examples/fenwright/springs/single-152.json --at "70 mm" --load "3300 N"
        answers with the gauge pressure that carries the load there and the rate with the valve shut.
        """;

    public static Command Create()
    {
        Command command = new("spring", "What does this spring do at one height under one load? Gauge pressure, effective area, volume, rates and natural frequency of the bare spring.");
        Argument<string> spring = DocumentArgument.Create("SPRING.json", "An air-spring document.");
        Option<Quantity?> at = QuantityOption.Create("--at", "Spring height", "70 mm", Dimension.Length);
        Option<Quantity?> load = QuantityOption.Create("--load", "Force the spring carries", "3300 N", Dimension.Force,
            force_N => force_N <= 0 ? "must be more than nothing." : null);
        (at.Required, load.Required) = (true, true);
        command.Add(spring);
        command.Add(at);
        command.Add(load);
        StudyOptions options = new(command, withLoadCase: false);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            AirSpringPart part = AirSpringReader.Read(parsed.GetRequiredValue(spring));
            (Quantity height, Quantity force) = (parsed.GetValue(at)!.Value, parsed.GetValue(load)!.Value);
            SpringPointResult result = SpringPointStudy.Answer(
                part, part.Fit(), height.Si, force.Si, options.Ambient_Pa(parsed) ?? StandardAtmosphere.SeaLevel_Pa);
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(SpringAnswer.Of(result)));
            else SpringView.Show(Screen.Output(), result, options.Units(parsed, Written(height, force)));
            return result.State is null ? Study.NoSolution : Study.Answered;
        }));
        return command;
    }

    // The units typed are the units to answer in.
    private static Dictionary<Dimension, string> Written(params ReadOnlySpan<Quantity> typed)
    {
        Dictionary<Dimension, string> written = [];
        foreach (Quantity quantity in typed) written[quantity.Dimension] = quantity.Unit.Name;
        return written;
    }
}
