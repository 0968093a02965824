using System.CommandLine;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

/// <summary>An option whose value is a quantity, <c>--at "80 mm"</c>; what cannot be read is wrong usage.</summary>
internal static class QuantityOption
{
    public static Option<Quantity?> Create(string name, string description, string example, params Dimension[] dimensions)
    {
        Option<Quantity?> option = new(name)
        {
            Description = $"{description}, for example \"{example}\".",
            HelpName = "quantity",
        };
        option.CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            if (Quantity.Read(text, dimensions, out _) is { } quantity) return quantity;
            string units = string.Join(", ", dimensions.SelectMany(UnitTable.Of).Select(u => u.Name).Distinct());
            result.AddError($"{name} \"{text}\" is not a quantity: write a number and one of {units}, for example \"{example}\".");
            return null;
        };
        return option;
    }
}
