using System.CommandLine;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

internal static class WheelCommand
{
    public const string Example =
        """
        bellowsmith wheel examples/fenwright/kits/ostrane-street.json --new "18x9 ET38 235/40R18"
        answers with how far rim and tyre move out and in, what is left at arch, strut and tower over the bump, and whether it
        fits, with how much camber, or at which offset it would.
        """;

    private const double MostSpacer_m = 0.1, MostMargin_m = 0.1, MostCamber_rad = 15 * Math.PI / 180;

    public static Command Create()
    {
        Command command = new("wheel", "Which wheel fits? How another wheel stands at arch, strut and tower, and what offset, spacer or camber it takes.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<RoadWheel?> old = WheelOption.Wheel("--old", "The wheel the car was measured with; the car document's where not given"), another = WheelOption.Wheel("--new", "The wheel to try");
        var (oldSection, newSection) = (WheelOption.Section("--old-section", "The old tyre's section and the rim it was measured on"), WheelOption.Section("--new-section", "The new tyre's"));
        Option<Quantity?> spacer = Length("--spacer", "Between the new wheel and the hub", "5 mm", MostSpacer_m, "between 0 and 100 mm");
        Option<Quantity?> camber = QuantityOption.Create("--camber", "Change of camber at the wheel, top out +, made at the kit's adjuster", "-2.5 deg", Dimension.Angle, QuantityOption.Within(-MostCamber_rad, MostCamber_rad, "between -15 and 15 deg"));
        Option<Quantity?> archMargin = Length("--arch-margin", "Room asked at the arch; 6 mm where not given", "8 mm", MostMargin_m, "between 0 and 100 mm"), strutMargin = Length("--strut-margin", "Room asked at the strut; 4 mm where not given", "6 mm", MostMargin_m, "between 0 and 100 mm");
        another.Required = true;
        command.Add(kit);
        foreach (Option option in new Option[] { old, another, oldSection, newSection, spacer, camber, archMargin, strutMargin }) command.Add(option);
        StrutOption strut = new(command, "Whose wheel is tried");
        FigureOutput figure = new(command);
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = strut.Only(parsed, KitReader.Read(parsed.GetRequiredValue(kit)));
            WheelCorner corner = WheelCorner.Of(read, options.Conditions(parsed));
            RoadWheel before = With(parsed.GetValue(old) is { } asked ? corner.Known(asked) : corner.MeasuredWheel, parsed.GetValue(oldSection));
            WheelFitQuestion question = new WheelFitQuestion(
                before, With(corner.Known(parsed.GetValue(another)!), parsed.GetValue(newSection)), parsed.GetValue(spacer)?.Si ?? 0, parsed.GetValue(camber)?.Si ?? 0).With(read.Margins);
            question = question with { ArchMargin_m = parsed.GetValue(archMargin)?.Si ?? question.ArchMargin_m, StrutMargin_m = parsed.GetValue(strutMargin)?.Si ?? question.StrutMargin_m };
            WheelFitResult result = WheelFitStudy.Answer(corner, question);
            DisplayUnits units = options.Units(parsed, read.WrittenUnits);
            string? drawn = figure.Write(parsed, () => new WheelCharts(result, units).Camber());
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(WheelAnswer.Of(result)));
            else
            {
                WheelView.Show(Screen.Output(), read, result, units);
                if (drawn is not null) Screen.Output().Say($"Figure: {drawn}");
            }

            return result.New is null ? Study.NoSolution : Study.Answered;
        }));
        return command;
    }

    private static Option<Quantity?> Length(string name, string description, string example, double most_m, string words) =>
        QuantityOption.Create(name, description, example, Dimension.Length, QuantityOption.Within(0, most_m, words));

    private static RoadWheel With(RoadWheel wheel, (double Section_m, double RimWidth_m)? section) =>
        section is null ? wheel : wheel with { Tyre = wheel.Tyre with { Catalogue = section } };
}
