using System.CommandLine;
using System.CommandLine.Parsing;
using Bellowsmith.Kits;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

/// <summary>Options whose value is a wheel, <c>--new "18x9 ET38 235/40R18"</c>, or a tyre's section; what cannot be read is wrong usage.</summary>
internal static class WheelOption
{
    public static Option<RoadWheel?> Wheel(string name, string description)
    {
        Option<RoadWheel?> option = new(name) { Description = $"{description}, for example \"{WheelText.WheelExample}\".", HelpName = "wheel" };
        option.CustomParser = result => Read(result, name, WheelText.Wheel, text => $"is not a wheel. {WheelText.WheelFix(text)}");
        return option;
    }

    public static Option<(double Section_m, double RimWidth_m)?> Section(string name, string description)
    {
        Option<(double Section_m, double RimWidth_m)?> option = new(name) { Description = $"{description}, for example \"{WheelText.SectionExample}\".", HelpName = "section" };
        option.CustomParser = result => Read(result, name, WheelText.Section, _ => $"is not a section: write it as \"{WheelText.SectionExample}\".");
        return option;
    }

    private static T Read<T>(ArgumentResult result, string name, Func<string, T> read, Func<string, string> fix)
    {
        string text = string.Join(' ', result.Tokens.Select(token => token.Value));
        T value = read(text);
        if (value is null) result.AddError($"{name} \"{text}\" {fix(text)}");
        return value;
    }
}
