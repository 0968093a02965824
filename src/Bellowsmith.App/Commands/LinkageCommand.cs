using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class LinkageCommand
{
    public const string Example =
        """
        bellowsmith linkage examples/fenwright/cars/ostrane-front.suspension.json --travel "-60 mm..60 mm" --step "20 mm" --rack "0 mm"
        answers with camber, toe, caster, track, roll centre, strut length and motion ratio at each travel; --tape "2 mm" says what a
        tape's error makes of them. Exit code 3 where a travel cannot be reached: it says how far it goes and which link holds it.
        """;

    private const double Most_m = 1, LeastStep_m = 1e-4, Usual_m = 0.010;

    public static Command Create()
    {
        Command command = new("linkage", "How does the wheel move? Camber, toe, steering axis, track, roll centre and motion ratio over travel and rack, from the suspension's points.");
        Argument<string> suspension = DocumentArgument.Create("SUSPENSION.json", "A suspension document.");
        Option<(Quantity From, Quantity To)?> travel = RangeOption.Create("--travel", "Wheel travel from drive height, bump +", "-80 mm..80 mm", Dimension.Length, Most_m);
        Option<Quantity?> step = Apart("--step", "Travel from row to row");
        Option<(Quantity From, Quantity To)?> rack = RangeOption.Create("--rack", "Rack travel, to the left +; 0 where not given", "-40 mm..40 mm", Dimension.Length, Most_m);
        Option<Quantity?> rackStep = Apart("--rack-step", "Rack travel from row to row");
        Option<Quantity?> tape = QuantityOption.Create("--tape", "Also says what so much error in every coordinate makes of it", "2 mm", Dimension.Length, QuantityOption.Within(1e-5, 0.02, "between 0.01 and 20 mm"));
        travel.Required = true;
        command.Add(suspension);
        foreach (Option option in new Option[] { travel, step, rack, rackStep, tape }) command.Add(option);
        StudyOptions options = new(command, withLoadCase: false, withAmbient: false);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            SuspensionPart part = SuspensionReader.Read(parsed.GetRequiredValue(suspension));
            LinkageResult result = LinkageStudy.Answer(part, new LinkageQuestion(
                Values(parsed.GetValue(travel), parsed.GetValue(step)), Values(parsed.GetValue(rack), parsed.GetValue(rackStep)), parsed.GetValue(tape)?.Si));
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(LinkageAnswer.Of(result)));
            else LinkageView.Show(Screen.Output(), result, options.Units(parsed, part.WrittenUnits));
            return result.Reached ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static Option<Quantity?> Apart(string name, string words) => QuantityOption.Create(
        name, $"{words}; 10 mm where not given", "10 mm", Dimension.Length, QuantityOption.Within(LeastStep_m, Most_m, "between 0.1 mm and 1 m"));

    private static IReadOnlyList<double> Values((Quantity From, Quantity To)? range, Quantity? step) =>
        range is { } ends ? LinkageQuestion.Range(ends.From.Si, ends.To.Si, step?.Si ?? Usual_m) : [0];
}
