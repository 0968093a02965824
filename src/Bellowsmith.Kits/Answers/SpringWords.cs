using Bellowsmith.Kits.Studies.SpringPoint;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentence of a bare spring's answer.</summary>
public sealed class SpringWords(SpringPointResult result, DisplayUnits units)
{
    public string Answer()
    {
        string height = units.Text(Dimension.Length, result.Height_m), load = units.Text(Dimension.Force, result.Load_N);
        if (!result.Fit.Spring.Covers(result.Height_m))
            return $"The spring was measured from {units.Text(Dimension.Length, result.Fit.Spring.LeastHeight_m)} to "
                + $"{units.Text(Dimension.Length, result.Fit.Spring.GreatestHeight_m)}; nothing is known at {height}.";
        if (result.State is not { } s) return $"The spring cannot carry {load} at {height}: no effective area is left.";
        string band = s.RateBand_N_per_m is { } b
            ? $" ({units.Number(Dimension.Rate, b.Low)} to {units.Number(Dimension.Rate, b.High)})" : "";
        string limit = s.GaugePressure_Pa > result.Part.MaxGaugePressure_Pa
            ? $" That is over its greatest gauge pressure of {units.Text(Dimension.GaugePressure, result.Part.MaxGaugePressure_Pa)}." : "";
        return $"At {height} it carries {load} with {units.Text(Dimension.GaugePressure, s.GaugePressure_Pa)} gauge and gives "
            + $"{units.Text(Dimension.Rate, s.Rate_N_per_m)}{band}: {units.Text(Dimension.Frequency, s.NaturalFrequency_Hz)}.{limit}";
    }
}
