using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.LowerMounting;

namespace Bellowsmith.App.Commands;

internal static class BracketCommand
{
    public const string Example =
        """
        bellowsmith bracket examples/fenwright/kits/ostrane-street.json -o bracket.pdf
        says whether every bolt goes into the knuckle's holes as measured, for sure and for what share, what joint, clamp, hole walls and the
        body's thread are asked, and draws the plate with its dimensions. -o FILE.dxf writes it 1 : 1 in mm for the machine, -o FILE.svg for a page.
        Exit code 3 where the strut does not stand: the fit is still answered.
        """;

    public static Command Create()
    {
        Command command = new("bracket", "Does the lower mount fit the car, and does it hold? Bolts in the knuckle's holes, slip of joint and clamp, the body's thread; the plate drawn for who makes it.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document whose strut has a lowerMount.");
        command.Add(kit);
        StrutOption strut = new(command, "Whose lower mount");
        DrawingOutput output = new(command);
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit whole = KitReader.Read(parsed.GetRequiredValue(kit)), read = strut.Only(parsed, whole);
            StrutCase settled = StrutCases.Of(read, options.Conditions(parsed), LowerMountStudy.Needs)[0];
            LowerMountResult result = LowerMountStudy.Answer(new(settled, read.Car.At(settled.End)!.Suspension));
            DisplayUnits units = options.Units(parsed, read.WrittenUnits);
            string? drawn = output.Write(parsed, $"{read.Name}: lower mount, {Names.Of(settled.End)}", new BracketDrawing(read, settled.End, result.Mount, units).With);
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(LowerMountAnswer.Of(result, drawn)));
            else LowerMountView.Show(Screen.Output(), read, result, units, drawn);
            return result.Load is null ? Study.NoSolution : Study.Answered;
        }));
        return command;
    }
}
