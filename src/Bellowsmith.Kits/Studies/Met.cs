namespace Bellowsmith.Kits.Studies;

/// <summary>
/// Whether a limit is kept, in SI: one met to the last digit written is, though a sum of decimal fractions may lie a rounding beside it. A
/// value that is not a number keeps none.
/// </summary>
internal static class Met
{
    private const double Rounding = 1e-9;

    public static bool AtLeast(double value, double limit) => value >= limit - Rounding;

    public static bool AtMost(double value, double limit) => value <= limit + Rounding;
}
