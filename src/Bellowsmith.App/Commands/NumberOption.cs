using System.CommandLine;
using System.Globalization;

namespace Bellowsmith.App.Commands;

/// <summary>An option whose value is a bare number within a range, <c>--ratio 0.6</c>, with either decimal mark.</summary>
internal static class NumberOption
{
    public static Option<double?> Create(string name, string description, double least, double greatest)
    {
        Option<double?> option = new(name) { Description = description, HelpName = "number" };
        option.CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            if (double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
                && number >= least && number <= greatest) return number;
            result.AddError(string.Create(CultureInfo.InvariantCulture, $"{name} \"{text}\" is not a number from {least} to {greatest}."));
            return null;
        };
        return option;
    }
}
