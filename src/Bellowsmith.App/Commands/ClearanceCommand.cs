using System.CommandLine;
using System.CommandLine.Parsing;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

internal static class ClearanceCommand
{
    public const string Example =
        """
        bellowsmith clearance examples/fenwright/kits/ostrane-street.json --wheel "18x9 ET36 235/40R18"
        answers with what touches what from full droop to full bump and from lock to lock, where, how much camber clears it, whether
        hoses stay slack, how the ground clearance lies to what markets ask, and where each load stands on the same air.
        """;

    private const double MostSpacer_m = 0.1, MostCamber_rad = 15 * Math.PI / 180, MostMargin_m = 0.1;

    private static readonly string[] _margins = [.. Enum.GetValues<MarginKind>().Select(ClearanceMargins.Name)];

    public static Command Create()
    {
        Command command = new("clearance", "Does anything touch? The least gap of every pair over the whole wheel travel and both locks, hoses and lines, and the ground.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<RoadWheel?> wheel = WheelOption.Wheel("--wheel", "A wheel in place of the car's");
        var section = WheelOption.Section("--section", "Its tyre's section and the rim it was measured on");
        Option<Quantity?> spacer = QuantityOption.Create("--spacer", "Between wheel and hub", "5 mm", Dimension.Length, QuantityOption.Within(0, MostSpacer_m, "between 0 and 100 mm"));
        Option<Quantity?> camber = QuantityOption.Create("--camber", "Change of camber at the wheel, top out +, made at the kit's adjuster", "-1 deg", Dimension.Angle, QuantityOption.Within(-MostCamber_rad, MostCamber_rad, "between -15 and 15 deg"));
        Option<(MarginKind Kind, double Margin_m)[]> margin = Margins();
        Option<string?> rules = new("--rules") { Description = "Ground clearance by market, a CSV file in place of the one that comes along.", HelpName = "FILE.csv" };
        command.Add(kit);
        foreach (Option option in new Option[] { wheel, section, spacer, camber, margin, rules }) command.Add(option);
        StrutOption strut = new(command, "Which corner is swept", "every one whose points were measured");
        StudyOptions options = new(command, withLoadCase: true);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            Kit read = strut.OnlyIfAsked(parsed, KitReader.Read(parsed.GetRequiredValue(kit)));
            IReadOnlyList<GroundRule> ground = parsed.GetValue(rules) is { } file ? GroundRuleTable.Read(file) : GroundRuleTable.Usual;
            ClearanceResult[] results = [.. ClearanceCase.Of(read, options.Conditions(parsed)).Select(corner => ClearanceStudy.Answer(corner, new()
            {
                Wheel = Wheel(corner, parsed.GetValue(wheel), parsed.GetValue(section)),
                Spacer_m = parsed.GetValue(spacer)?.Si ?? 0,
                Camber_rad = parsed.GetValue(camber)?.Si ?? 0,
                Margins = corner.Margins.With((parsed.GetValue(margin) ?? []).ToDictionary(own => own.Kind, own => own.Margin_m)),
                Rules = ground,
            }))];
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(ClearanceAnswer.Of(results)));
            else ClearanceView.Show(Screen.Output(), read, results, options.Units(parsed, read.WrittenUnits));
            return results.All(result => result.Solved) ? Study.Answered : Study.NoSolution;
        }));
        return command;
    }

    private static RoadWheel? Wheel(ClearanceCase corner, RoadWheel? wheel, (double Section_m, double RimWidth_m)? section)
    {
        RoadWheel? asked = wheel is null ? null : corner.Corner.Known(wheel);
        if (section is null) return asked;
        RoadWheel known = asked ?? corner.Corner.MeasuredWheel;
        return known with { Tyre = known.Tyre with { Catalogue = section } };
    }

    private static Option<(MarginKind Kind, double Margin_m)[]> Margins()
    {
        Option<(MarginKind Kind, double Margin_m)[]> option = new("--margin")
        {
            Description = $"Room asked between two, for example \"tyreToArch 8 mm\"; as often as needed. One of {string.Join(", ", _margins)}.",
            HelpName = "margin",
            AllowMultipleArgumentsPerToken = false,
        };
        option.CustomParser = result => [.. result.Tokens.Select(token => Margin(token.Value, result)).DistinctBy(known => known.Kind)];
        return option;
    }

    private static (MarginKind Kind, double Margin_m) Margin(string text, ArgumentResult result)
    {
        string[] parts = text.Trim().Split([' ', '='], 2);
        int kind = Array.IndexOf(_margins, parts[0]);
        double? length = parts.Length == 2 ? Quantity.Read(parts[1], Dimension.Length, out _)?.Si : null;
        if (kind < 0) result.AddError($"--margin \"{text}\" names no margin: write one of {string.Join(", ", _margins)}.");
        else if (length is not (>= 0 and <= MostMargin_m)) result.AddError($"--margin \"{text}\" is not a length between 0 and 100 mm: write it as \"{_margins[kind]} 8 mm\".");
        return ((MarginKind)Math.Max(kind, 0), length ?? 0);
    }
}
