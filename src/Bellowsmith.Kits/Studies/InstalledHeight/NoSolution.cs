using System.Globalization;

namespace Bellowsmith.Kits.Studies.InstalledHeight;

/// <summary>Why no installed height serves, in a sentence with the numbers.</summary>
internal static class NoSolution
{
    public static string Reason(
        StrutCase strut, IReadOnlyList<HeightSolution> solutions, RatePlace? minimum, RatePlace? maximum, double reference_m)
    {
        string range = Text($"between {strut.LeastHeight_m * 1000:0.#} and {strut.GreatestHeight_m * 1000:0.#} mm");
        double force = strut.SpringForce_N(reference_m), target = strut.TargetSpringRate_N_per_m(reference_m) / 1000;
        if (minimum is null || maximum is null) return Text($"The spring cannot carry {force:0} N at any height {range}.");
        if (solutions.Count > 0)
        {
            HeightSolution least = solutions.MinBy(s => s.GaugePressure_Pa)!;
            return Text($"Every height that gives the rate takes more than the spring's {strut.Part.MaxGaugePressure_Pa / 1e5:0.##} bar gauge; the least is {least.GaugePressure_Pa / 1e5:0.##} bar at {least.Height_m * 1000:0.0} mm.");
        }

        string reach = Text($"At {force:0} N it gives {minimum.SpringRate_N_per_m / 1000:0.0} to {maximum.SpringRate_N_per_m / 1000:0.0} N/mm {range}");
        return target < minimum.SpringRate_N_per_m / 1000
            ? Text($"{target:0.0} N/mm is softer than this spring can be. {reach}; softest at {minimum.Height_m * 1000:0.0} mm, {minimum.RideFrequency_Hz:0.00} Hz at the wheel.")
            : Text($"{target:0.0} N/mm is stiffer than this spring can be. {reach}; stiffest at {maximum.Height_m * 1000:0.0} mm, {maximum.RideFrequency_Hz:0.00} Hz at the wheel.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
