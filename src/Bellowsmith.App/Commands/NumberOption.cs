using System.CommandLine;
using System.Globalization;
using System.Numerics;

namespace Bellowsmith.App.Commands;

/// <summary>An option whose value is a bare number within a range; anything else is wrong usage.</summary>
internal static class NumberOption
{
    /// <summary>Between two numbers, both excluded.</summary>
    public static Option<double?> Between(string name, string description, string helpName, double above, double below, double? usual = null) =>
        Create<double>(name, description, helpName, usual, value => value > above && value < below, $"a number between {above} and {below}");

    /// <summary>From a least to a greatest number, both included.</summary>
    public static Option<double?> Within(string name, string description, double least, double greatest) =>
        Create<double>(name, description, "number", null, value => value >= least && value <= greatest, FormattableString.Invariant($"a number from {least} to {greatest}"));

    /// <summary>A count from a least to a greatest one.</summary>
    public static Option<int?> Count(string name, string description, int least, int greatest, int? usual = null) =>
        Create<int>(name, description, "count", usual, value => value >= least && value <= greatest, $"a whole number from {least} to {greatest}");

    private static Option<T?> Create<T>(string name, string description, string helpName, T? usual, Func<T, bool> allows, string allowed)
        where T : struct, INumber<T>
    {
        Option<T?> option = new(name) { Description = description, HelpName = helpName };
        if (usual is not null) option.DefaultValueFactory = _ => usual;
        option.CustomParser = result =>
        {
            string text = string.Join(' ', result.Tokens.Select(t => t.Value));
            if (T.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out T value) && allows(value)) return value;
            result.AddError($"{name} \"{text}\" must be {allowed}.");
            return null;
        };
        return option;
    }
}
