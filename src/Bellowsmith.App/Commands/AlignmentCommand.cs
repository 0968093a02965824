using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

internal static class AlignmentCommand
{
    public const string Example =
        """
        bellowsmith alignment examples/fenwright/kits/ostrane-street.json --camber "-1.5 deg" --toe "0.05 deg"
        answers with where the top mount and the tie rod are to stand, what is left of each either way, and what that changes besides:
        kingpin, caster, scrub radius, track, motion ratio, and the turns of thread that hold the car's height. Exit code 3 where an
        adjuster ends before: it says the nearest.
        """;

    private const double Most_rad = 10 * Math.PI / 180;

    public static Command Create()
    {
        Command command = new("alignment", "How is it aligned? Where the kit's adjusters are to stand for the camber and toe wanted, through the suspension's points, and what they change besides.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<Quantity?> camber = Angle("--camber", "Camber wanted of each wheel at drive height, top out +; its adjuster is left alone where not given", "-1.5 deg");
        Option<Quantity?> toe = Angle("--toe", "Toe wanted of each wheel, in +; put back to what it is where not given", "0.05 deg");
        command.Add(kit);
        command.Add(camber);
        command.Add(toe);
        StrutOption strut = new(command, "Whose axle");
        StudyOptions options = new(command, withLoadCase: false, withAmbient: false);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            AlignmentQuestion question = new(parsed.GetValue(camber)?.Si, parsed.GetValue(toe)?.Si);
            AlignmentResult result = AlignmentStudy.Answer(AlignmentCase.Of(read, strut.End(parsed, read), question), question);
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(AlignmentAnswer.Of(result)));
            else AlignmentView.Show(Screen.Output(), read, result, options.Units(parsed, read.WrittenUnits));
            return result.Solved ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static Option<Quantity?> Angle(string name, string words, string example) =>
        QuantityOption.Create(name, words, example, Dimension.Angle, QuantityOption.Within(-Most_rad, Most_rad, "within 10 deg either way"));
}
