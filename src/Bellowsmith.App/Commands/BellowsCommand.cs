using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.BellowsShape;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class BellowsCommand
{
    public const string Example =
        """
        bellowsmith bellows examples/fenwright/moulds/single-152.json --at "70 mm"
        answers with outer diameter, effective area and enclosed air of the bellows its mould and cords make.
        Exit code 3 where it cannot stand at that height: it says why and where it can.
        """;

    public static Command Create()
    {
        Command command = new("bellows", "What shape does this bellows take at one height? Outer diameter, effective area and volume from its mould and cords, without a load frame.");
        Argument<string> mould = DocumentArgument.Create("MOULD.json", "A mould document.");
        Option<Quantity?> at = QuantityOption.Create("--at", "Height, bead to bead", "70 mm", Dimension.Length);
        at.Required = true;
        Option<string?> spring = new("--spring") { Description = "An air-spring document of a spring made in this mould: calibrates the cords to its load-frame data.", HelpName = "SPRING.json" };
        command.Add(mould);
        command.Add(at);
        command.Add(spring);
        StudyOptions options = new(command, withLoadCase: false, withAmbient: false);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Quantity height = parsed.GetValue(at)!.Value;
            BellowsShapeResult result = BellowsShapeStudy.Answer(
                MouldReader.Read(parsed.GetRequiredValue(mould)), height.Si,
                parsed.GetValue(spring) is { } measured ? AirSpringReader.Read(measured).Fit() : null);
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(BellowsAnswer.Of(result)));
            else BellowsView.Show(Screen.Output(), result, options.Units(parsed, new Dictionary<Dimension, string> { [height.Dimension] = height.Unit.Name }));
            return result.Shape is null ? Study.NoSolution : Study.Answered;
        }));
        return command;
    }
}
