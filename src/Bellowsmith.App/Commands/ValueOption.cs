using System.CommandLine;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

/// <summary>An option whose value is a number in the file's unit, or a quantity: <c>--lower 12.4</c>, <c>--lower "12.4 mm"</c>.</summary>
internal static class ValueOption
{
    public static Option<WrittenValue?> Create(string name, string description, string example)
    {
        Option<WrittenValue?> option = new(name)
        {
            Description = $"{description}, in the file's unit or with its own, for example \"{example}\".",
            HelpName = "value",
        };
        option.CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            if (WrittenValue.Read(text) is { } value) return value;
            result.AddError($"{name} \"{text}\" is not a number: write one number, with its unit if you like, for example \"{example}\".");
            return null;
        };
        return option;
    }
}
