using System.CommandLine;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

/// <summary>An option whose value runs from one quantity to another, <c>"-80 mm..80 mm"</c>, or is a single one.</summary>
internal static class RangeOption
{
    public static Option<(Quantity From, Quantity To)?> Create(string name, string description, string example, Dimension dimension, double most)
    {
        Option<(Quantity From, Quantity To)?> option = new(name)
        {
            Description = $"{description}, for example \"{example}\", or one value.",
            HelpName = "range",
        };
        option.CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            // Of three points the third would be a decimal mark: 80 mm as 0.80 mm.
            string[] ends = text.Contains("...", StringComparison.Ordinal) ? [] : text.Split("..");
            if (ends.Length is 1 or 2 && Quantity.Read(ends[0], dimension, out _) is { } from && Quantity.Read(ends[^1], dimension, out _) is { } to)
            {
                if (Math.Abs(from.Si) <= most && Math.Abs(to.Si) <= most) return (from, to);
                result.AddError($"{name} \"{text}\" must lie within {UnitTable.Of(dimension)[0].Write(most)} either way.");
                return null;
            }

            result.AddError($"{name} \"{text}\" is not a range: write two quantities with two points between them, for example \"{example}\".");
            return null;
        };
        return option;
    }
}
