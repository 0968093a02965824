using System.CommandLine;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

/// <summary>An option whose value is a quantity, <c>--at "80 mm"</c>; what cannot be read, or is refused, is wrong usage.</summary>
internal static class QuantityOption
{
    public static Option<Quantity?> Create(string name, string description, string example, Dimension dimension, Func<double, string?>? refuses = null)
    {
        Option<Quantity?> option = new(name)
        {
            Description = $"{description}, for example \"{example}\".",
            HelpName = "quantity",
        };
        option.CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            Quantity? read = Quantity.Read(text, dimension, out _);
            string? refused = read is { } quantity ? refuses?.Invoke(quantity.Si) : null;
            if (read is not null && refused is null) return read;
            string units = string.Join(", ", UnitTable.Of(dimension).Select(u => u.Name));
            result.AddError(refused is not null ? $"{name} {refused}" : $"{name} \"{text}\" is not a quantity: write a number and one of {units}, for example \"{example}\".");
            return null;
        };
        return option;
    }

    /// <summary>Refuses what lies outside a range, in words.</summary>
    public static Func<double, string?> Within(double least, double greatest, string words) =>
        value => value >= least && value <= greatest ? null : $"must lie {words}.";
}
