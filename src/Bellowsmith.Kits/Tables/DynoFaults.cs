using System.Globalization;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Tables;

/// <summary>Why dyno readings could not be used, in the words of a fault; where the rest stands alone they are a note.</summary>
public static class DynoFaults
{
    private const int MostRows = 12;

    public static Fault Of(string file, DynoLeftOut left)
    {
        string click = string.Create(CultureInfo.InvariantCulture, $"click {left.Click}");
        return left.Trouble switch
        {
            DynoTrouble.CrossedSigns => new(file, Rows(left), $"a force of {click} that drives the rod instead of resisting it",
                "forces with the sign of their velocity, both + in rebound",
                "Check dynoSign, the sign of these rows, and whether the gas force is in the forces (dynoGas)."),
            DynoTrouble.SaturatedCell => new(file, Rows(left), $"{click} at the very force that other clicks or speeds end at too",
                "forces within the load cell's range", "The load cell was at its end: measure these again with a larger one, or take them out."),
            DynoTrouble.TooFewSpeeds => new(file, Rows(left), $"{click} with fewer than two sound speeds of a stroke",
                "two speeds or more of each stroke", "Measure more speeds of this click."),
            DynoTrouble.FallingForce => new(file, Rows(left), $"a force of {click} that falls as the speed rises, by more than repeated runs differ",
                "forces that rise with speed", "Look for air in the oil, a slipped click or swapped rows, and measure this click again."),
            _ => new(file, Rows(left), $"a sweep of {click} that does not follow a sine for a whole cycle",
                "position [mm] and time [s] of whole cycles, extension +", "Check the columns' units and export whole cycles."),
        };
    }

    /// <summary>Why force cannot be brought to a temperature; null where it can.</summary>
    public static Fault? Of(string file, ForceByTemperature? law, double temperature_K)
    {
        string asked = string.Create(CultureInfo.InvariantCulture, $"{temperature_K - 273.15:0.#} degC asked for");
        if (law is null)
            return new(file, "column temperature", $"no click and speed run over {ForceByTemperature.LeastSpan_K:0} K or more; {asked}", $"one click and speed measured at temperatures {ForceByTemperature.LeastSpan_K:0} K apart or more",
                "Run one click cold, at least 10 K warmer and cold again, with a column \"temperature [degC]\"; or ask without a damper temperature.");
        return law.Covers(temperature_K) ? null : new(file, "column temperature", asked,
            string.Create(CultureInfo.InvariantCulture, $"{law.Least_K - 273.15:0.#} to {law.Greatest_K - 273.15:0.#} degC, where force was measured"), "Ask within that range, or run the damper at that temperature.");
    }

    private static string Rows(DynoLeftOut left)
    {
        string rows = string.Join(left.IsRange ? " to " : ", ", left.Lines.Take(MostRows).Select(line => line.ToString(CultureInfo.InvariantCulture)));
        return left.Lines.Count > MostRows ? $"rows {rows} and {left.Lines.Count - MostRows} more" : left.Lines.Count == 1 ? $"row {rows}" : $"rows {rows}";
    }
}
