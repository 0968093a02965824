using System.Globalization;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>Wheels and tyre sections as a workshop writes them: "18x8.5 ET35 225/40R18", "230 mm on 8 in".</summary>
public static class WheelText
{
    public const string WheelExample = "18x8.5 ET35 225/40R18", SectionExample = "230 mm on 8 in";

    internal const string WheelMeaning =
        "Rim diameter x width (or width J x diameter) in inches, offset ET in mm (or backspacing BS from the rim's inner edge, with its unit), tyre size; such as \"" + WheelExample + "\" or \"8.5Jx18 BS 6.5 in 225/40R18\".";

    private const double Inch_m = 0.0254, LeastWidth_m = 0.05, MostWidth_m = 0.5, LeastTyre_m = 0.1, MostTyre_m = 0.45;

    /// <summary>Null where the text is no wheel, or none that fits together.</summary>
    public static RoadWheel? Wheel(string text) => new WheelReading(text).Wheel;

    /// <summary>What is to be done about a text that is no wheel, and which part of it failed.</summary>
    public static string WheelFix(string text) => new WheelReading(text).Fix;

    /// <summary>Section and the rim width it was measured on; null where the text is none.</summary>
    public static (double Section_m, double RimWidth_m)? Section(string text)
    {
        string[] parts = text.Split(" on ", StringSplitOptions.TrimEntries);
        return parts.Length == 2
            && Quantity.Read(parts[0], Dimension.Length, out _) is { Si: >= LeastTyre_m and <= MostTyre_m } section
            && Quantity.Read(parts[1], Dimension.Length, out _) is { Si: >= LeastWidth_m and <= MostWidth_m } rim
            ? (section.Si, rim.Si) : null;
    }

    /// <summary>"18x8.5 ET35 225/40R18".</summary>
    public static string Of(RoadWheel wheel)
    {
        (Rim rim, Tyre tyre) = (wheel.Rim, wheel.Tyre);
        return string.Create(CultureInfo.InvariantCulture,
            $"{rim.Diameter_m / Inch_m:0.##}x{rim.Width_m / Inch_m:0.##} ET{rim.Offset_m * 1000:0.#} {tyre.NominalSection_m * 1000:0.#}/{tyre.Aspect * 100:0.#}R{tyre.RimDiameter_m / Inch_m:0.##}");
    }
}
