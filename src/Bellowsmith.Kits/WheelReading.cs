using System.Globalization;
using System.Text.RegularExpressions;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>
/// A wheel's text taken apart from left to right: rim, offset or backspacing, tyre size, and what a maker adds to it. What fails is named
/// in <see cref="Fix"/>. Contour letters, humps, load index and speed symbol are understood and say nothing of where the wheel stands.
/// </summary>
internal sealed partial class WheelReading
{
    private const double Inch_m = 0.0254, LeastWidth_in = 2, MostWidth_in = 19, LeastDiameter_in = 8, MostDiameter_in = 31;
    private const double LeastTyre_mm = 100, MostTyre_mm = 450, LeastAspect = 15, MostAspect = 100;

    // The mounting face lies between the flanges, or hardly beyond.
    private const double Beyond_m = 0.005;

    private string _left;

    public WheelReading(string text)
    {
        _left = text.Replace('−', '-').Replace("½", ".5", StringComparison.Ordinal);
        if (Rim(Take(RimPattern())) is { } rim && Offset(rim, Take(OffsetPattern())) is { } offset && Tyre(rim, Take(TyrePattern())) is { } tyre && Ends())
            Wheel = new(rim with { Offset_m = offset }, tyre);
    }

    /// <summary>Null where the text is no wheel, or none that fits together.</summary>
    public RoadWheel? Wheel { get; }

    /// <summary>What is to be done about a text that is no wheel.</summary>
    public string Fix { get; private set; } = "";

    // "18x8.5" has its diameter first, "8.5Jx18" its width.
    private Rim? Rim(Match? found)
    {
        if (found is null) return Fails<Rim>(Form("rim, such as 18x8.5 or 8.5Jx18 in inches"));
        bool widthFirst = found.Groups["contour"].Success;
        double width_in = Number(found, widthFirst ? "first" : "second"), diameter_in = Number(found, widthFirst ? "second" : "first");
        return width_in is >= LeastWidth_in and <= MostWidth_in && diameter_in is >= LeastDiameter_in and <= MostDiameter_in && width_in <= diameter_in
            ? new(width_in * Inch_m, diameter_in * Inch_m, 0)
            : Fails<Rim>(Said($"Check the rim \"{found.Value.Trim()}\": it would be {width_in} in wide and {diameter_in} in across. Write diameter x width, or width J x diameter."));
    }

    private double? Offset(Rim rim, Match? found)
    {
        if (found is null) return FailsNumber(Form("offset, such as ET35 in mm, or backspacing, such as BS 6.5 in"));
        string written = found.Value.Trim(), unit = found.Groups["unit"].Value;
        bool inches = unit.Length > 0 && !Is(unit, "mm"), backspacing = Is(found.Groups["kind"].Value, "BS");
        if (backspacing && unit.Length == 0) return FailsNumber($"Give the backspacing its unit, such as \"BS 6.5 in\" or \"BS 165 mm\", not \"{written}\".");
        if (!backspacing && inches) return FailsNumber($"Give the offset \"{written}\" in mm, such as ET35.");
        double at = Number(found, "at"), at_m = inches ? at * Inch_m : at / 1000, most_m = rim.Width_m / 2 + Beyond_m;
        double offset_m = backspacing ? Physics.Rim.OfBackspacing(rim.Width_m, rim.Diameter_m, at_m).Offset_m : at_m;
        return Math.Abs(offset_m) <= most_m
            ? offset_m
            : FailsNumber(Said($"Check the offset: \"{written}\" is ET{offset_m * 1e3:0.#}, and a rim {rim.Width_m / Inch_m:0.##} in wide has ET{-most_m * 1e3:0} to ET{most_m * 1e3:0}."));
    }

    private Tyre? Tyre(Rim rim, Match? found)
    {
        if (found is null) return Fails<Tyre>(Form("tyre size, such as 225/40R18"));
        double section_mm = Number(found, "section"), aspect = Number(found, "aspect"), bead_m = Number(found, "bead") * Inch_m;
        if (section_mm is < LeastTyre_mm or > MostTyre_mm || aspect is < LeastAspect or > MostAspect)
            return Fails<Tyre>($"Check the tyre size \"{found.Value.Trim()}\": {LeastTyre_mm} to {MostTyre_mm} mm wide, aspect {LeastAspect} to {MostAspect}.");
        return bead_m == rim.Diameter_m
            ? new(section_mm / 1000, aspect / 100, bead_m)
            : Fails<Tyre>(Said($"The tyre is for a {found.Groups["bead"].Value} in rim, the rim measures {rim.Diameter_m / Inch_m:0.##} in."));
    }

    private bool Ends()
    {
        Take(ServicePattern());
        if (_left.Length > 0) Fix = Form("load index and speed symbol, such as 92Y, nor XL");
        return _left.Length == 0;
    }

    private Match? Take(Regex part)
    {
        if (part.Match(_left) is not { Success: true } found) return null;
        _left = _left[found.Length..].Trim();
        return found;
    }

    private string Form(string part) =>
        $"Write it as \"{WheelText.WheelExample}\": {(_left.Trim() is { Length: > 0 } left ? $"\"{left}\"" : "the end")} is no {part}.";

    private T? Fails<T>(string fix)
        where T : class
    {
        Fix = fix;
        return null;
    }

    private double? FailsNumber(string fix)
    {
        Fix = fix;
        return null;
    }

    private static bool Is(string found, string word) => found.Equals(word, StringComparison.OrdinalIgnoreCase);

    private static string Said(FormattableString text) => FormattableString.Invariant(text);

    private static double Number(Match found, string name) => double.Parse(found.Groups[name].Value.Replace(',', '.'), CultureInfo.InvariantCulture);

    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    [GeneratedRegex(@"^\s*(?<first>[0-9]{1,2}([.,][0-9]{1,2})?)\s*(?<contour>JJ?|JK)?\s*[x×]\s*(?<second>[0-9]{1,2}([.,][0-9]{1,2})?)\s*(JJ?|JK)?\s*((EH2\+?|CH|FH|H2?)(?=\s|$))?", Options)]
    private static partial Regex RimPattern();

    [GeneratedRegex(@"^\s*(?<kind>ET|BS)\s*(?<at>[+-]?[0-9]{1,3}([.,][0-9]{1,2})?)\s*(?<unit>mm|in|inch|""|″)?(?=\s|$)", Options)]
    private static partial Regex OffsetPattern();

    // P and LT say how the tyre's load is rated, not how wide it is.
    [GeneratedRegex(@"^\s*(P|LT)?\s*(?<section>[0-9]{3})\s*/\s*(?<aspect>[0-9]{2,3})\s*Z?R?F?\s*(?<bead>[0-9]{2}([.,][0-9])?)C?(?=\s|$)", Options)]
    private static partial Regex TyrePattern();

    [GeneratedRegex(@"^((\(?[0-9]{2,3}(/[0-9]{2,3})?\s?[A-Z]\)?|XL|EL|RF|RFT|M\+S)(\s+|$))*", Options)]
    private static partial Regex ServicePattern();
}
