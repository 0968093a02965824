using System.Globalization;
using System.Text.RegularExpressions;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>Wheels and tyre sections as a workshop writes them: "18x8.5 ET35 225/40R18", "230 mm on 8 in".</summary>
public static partial class WheelText
{
    public const string WheelExample = "18x8.5 ET35 225/40R18", SectionExample = "230 mm on 8 in";

    internal const string WheelMeaning =
        "Rim diameter x width in inches, offset ET in mm (or backspacing BS in mm from the rim's inner edge), tyre size; such as \"" + WheelExample + "\".";

    private const double Inch_m = 0.0254, LeastWidth_m = 0.05, MostWidth_m = 0.5, MostOffset_m = 0.2, LeastTyre_m = 0.1, MostTyre_m = 0.45;

    /// <summary>Null where the text is no wheel, or none that fits together.</summary>
    public static RoadWheel? Wheel(string text)
    {
        if (WheelPattern().Match(text) is not { Success: true } found) return null;
        double diameter = Number(found, "diameter") * Inch_m, width = Number(found, "width") * Inch_m, at = Number(found, "at") / 1000;
        Rim rim = found.Groups["kind"].Value.Equals("ET", StringComparison.OrdinalIgnoreCase) ? new(width, diameter, at) : Rim.OfBackspacing(width, diameter, at);
        Tyre tyre = new(Number(found, "section") / 1000, Number(found, "aspect") / 100, Number(found, "bead") * Inch_m);
        bool usual = width is >= LeastWidth_m and <= MostWidth_m && Math.Abs(rim.Offset_m) <= MostOffset_m && diameter is >= 0.2 and <= 0.8
            && tyre.NominalSection_m is >= LeastTyre_m and <= MostTyre_m && tyre.Aspect is >= 0.15 and <= 1;
        return usual && rim.Diameter_m == tyre.RimDiameter_m ? new(rim, tyre) : null;
    }

    /// <summary>Section and the rim width it was measured on; null where the text is none.</summary>
    public static (double Section_m, double RimWidth_m)? Section(string text)
    {
        string[] parts = text.Split(" on ", StringSplitOptions.TrimEntries);
        return parts.Length == 2
            && Quantity.Read(parts[0], Dimension.Length, out _) is { Si: >= LeastTyre_m and <= MostTyre_m } section
            && Quantity.Read(parts[1], Dimension.Length, out _) is { Si: >= LeastWidth_m and <= MostWidth_m } rim
            ? (section.Si, rim.Si) : null;
    }

    /// <summary>What is to be done about a text that is no wheel.</summary>
    public static string WheelFix(string text) => WheelPattern().Match(text) is { Success: true } found
        ? Number(found, "diameter") != Number(found, "bead")
            ? $"The tyre is for a {found.Groups["bead"].Value} in rim, the rim measures {found.Groups["diameter"].Value} in."
            : "Check width, offset and tyre size."
        : $"Write it as \"{WheelExample}\": rim diameter x width in inches, ET in mm (or BS, the backspacing, in mm), tyre size.";

    /// <summary>"18x8.5 ET35 225/40R18".</summary>
    public static string Of(RoadWheel wheel)
    {
        (Rim rim, Tyre tyre) = (wheel.Rim, wheel.Tyre);
        return string.Create(CultureInfo.InvariantCulture,
            $"{rim.Diameter_m / Inch_m:0.##}x{rim.Width_m / Inch_m:0.##} ET{rim.Offset_m * 1000:0.#} {tyre.NominalSection_m * 1000:0.#}/{tyre.Aspect * 100:0.#}R{tyre.RimDiameter_m / Inch_m:0.##}");
    }

    private static double Number(Match found, string name) => double.Parse(found.Groups[name].Value.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^\s*(?<diameter>\d{2}([.,]\d)?)\s*[xX×]\s*(?<width>\d{1,2}([.,]\d{1,2})?)\s*J?J?\s+(?<kind>ET|BS)\s*(?<at>-?\d{1,3}([.,]\d)?)\s*(mm)?\s+(?<section>\d{3})\s*/\s*(?<aspect>\d{2,3})\s*Z?R?\s*(?<bead>\d{2}([.,]\d)?)\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex WheelPattern();
}
