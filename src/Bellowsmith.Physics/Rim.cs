namespace Bellowsmith.Physics;

/// <summary>
/// A rim. Width is nominal, between the flanges where the beads sit; offset (ET) is from its middle to the mounting face, face outboard +.
/// </summary>
public sealed record Rim(double Width_m, double Diameter_m, double Offset_m)
{
    /// <summary>A flange's thickness; an inch on both sides together. Common practice: "an 8 in wheel is almost 9 in edge to edge".</summary>
    public const double Flange_m = 0.0127;

    /// <summary>A J flange over the bead seat; from memory, no source.</summary>
    public const double FlangeHeight_m = 0.0173;

    public double OverallWidth_m => Width_m + 2 * Flange_m;

    /// <summary>To the flanges' edge.</summary>
    public double EdgeRadius_m => Diameter_m / 2 + FlangeHeight_m;

    /// <summary>From the inner edge to the mounting face.</summary>
    public double Backspacing_m => OverallWidth_m / 2 + Offset_m;

    public static Rim OfBackspacing(double width_m, double diameter_m, double backspacing_m) =>
        new(width_m, diameter_m, backspacing_m - width_m / 2 - Flange_m);
}
