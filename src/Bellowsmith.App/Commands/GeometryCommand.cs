using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class GeometryCommand
{
    public const string Example =
        """
        bellowsmith geometry examples/fenwright/kits/ostrane-street.json --lowered "45 mm"
        answers with toe, camber, roll centre and motion ratio at the old drive height and now, how high the outer tie-rod joint and the lower
        ball joint would have to stand to mend them, and whether the measured motion ratio and the points agree. Exit code 3 where the old
        height is out of reach or no height of a joint does it: it says the nearest.
        """;

    private const double Most_m = 0.3;

    public static Command Create()
    {
        Command command = new("geometry", "What has lowering done to the geometry, and what mends it? Toe, camber and roll centre before and now, and the joints that put them back.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<Quantity?> lowered = QuantityOption.Create(
            "--lowered", "How much lower the car stands than it did; the suspension's loweredBy where not given", "45 mm", Dimension.Length,
            QuantityOption.Within(-Most_m, Most_m, "within 300 mm"));
        Option<Quantity?> working = QuantityOption.Create(
            "--working", "How far the wheel usually works either way; 30 mm where not given", "30 mm", Dimension.Length, QuantityOption.Within(1e-3, Most_m, "between 1 and 300 mm"));
        Option<(Quantity From, Quantity To)?> travel = RangeOption.Create(
            "--travel", "Wheel travel looked at, bump +; -80 mm..60 mm where not given", "-80 mm..60 mm", Dimension.Length, Most_m);
        command.Add(kit);
        foreach (Option option in new Option[] { lowered, working, travel }) command.Add(option);
        StrutOption strut = new(command, "Whose axle");
        StudyOptions options = new(command, withLoadCase: false, withAmbient: false);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            AxleEnd end = strut.End(parsed, read);
            var (part, question) = LoweringQuestion.Of(read, end, parsed.GetValue(lowered)?.Si);
            if (parsed.GetValue(working) is { } works) question = question with { Working_m = works.Si };
            if (parsed.GetValue(travel) is { } over)
                question = question with { From_m = Math.Min(over.From.Si, over.To.Si), To_m = Math.Max(over.From.Si, over.To.Si) };
            LoweringResult result = LoweringStudy.Answer(part, question);
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(LoweringAnswer.Of(end, result)));
            else LoweringView.Show(Screen.Output(), read, end, result, options.Units(parsed, read.WrittenUnits));
            return result.Solved ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }
}
