using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// The rate over spring height and load. <see cref="Rate"/> runs along heights first: the cell of column c and row r is
/// <c>Rate[r * Heights.Length + c]</c>; NaN where the load takes more than the spring's greatest gauge pressure or cannot be
/// carried. Numbers are in the units shown.
/// </summary>
public sealed record RateMap
{
    public required ChartAxis X { get; init; }
    public required ChartAxis Y { get; init; }
    public required string RateUnit { get; init; }
    public required int RateDecimals { get; init; }
    public required float[] Heights { get; init; }
    public required float[] Loads { get; init; }
    public required float[] Rate { get; init; }

    /// <summary>Least and greatest rate on the map; NaN where nothing can be carried.</summary>
    public required (double Low, double High) Range { get; init; }

    /// <summary>Round rates for contour lines.</summary>
    public required IReadOnlyList<double> Levels { get; init; }

    /// <summary>The wanted rate, a contour of its own; null without a target.</summary>
    public required double? Wanted { get; init; }

    /// <summary>The load the strut carries at drive, drawn as a line across.</summary>
    public required double DriveLoad { get; init; }

    public required double Height { get; init; }
    public required string Summary { get; init; }

    private const double LeastShare = 0.6, GreatestShare = 1.5;

    /// <summary>Over the heights spring and data share and 0.6 to 1.5 times the sprung mass of the load case.</summary>
    public static RateMap Of(StrutCase strut, double height_m, DisplayUnits units, int columns = 64, int rows = 48)
    {
        double[] heights = Spread(strut.LeastHeight_m, strut.GreatestHeight_m, columns);
        double[] masses = Spread(LeastShare * strut.SprungMass_kg, GreatestShare * strut.SprungMass_kg, rows);
        float[] rate = new float[columns * rows];
        for (int r = 0; r < rows; r++)
            for (int c = 0; c < columns; c++)
                rate[r * columns + c] = (float)units.Value(Dimension.Rate, Rate_N_per_m(strut, heights[c], masses[r]));
        float[] known = [.. rate.Where(float.IsFinite)];
        (double Low, double High) range = known.Length == 0 ? (double.NaN, double.NaN) : (known.Min(), known.Max());
        string unit = units.Symbol(Dimension.Rate);
        return new RateMap
        {
            X = new ChartAxis("spring height", units.Symbol(Dimension.Length), Length(heights[0]), Length(heights[^1]), units.Decimals(Dimension.Length)),
            Y = new ChartAxis("sprung mass at the corner", units.Symbol(Dimension.Mass), Mass(masses[0]), Mass(masses[^1]), units.Decimals(Dimension.Mass)),
            RateUnit = unit,
            RateDecimals = units.Decimals(Dimension.Rate),
            Heights = [.. heights.Select(h => (float)Length(h))],
            Loads = [.. masses.Select(m => (float)Mass(m))],
            Rate = rate,
            Range = range,
            Levels = new ChartAxis("rate", unit, range.Low, range.High, 0).Ticks(12),
            Wanted = strut.Design.Target is null ? null : units.Value(Dimension.Rate, strut.TargetSpringRate_N_per_m(height_m)),
            DriveLoad = Mass(strut.SprungMass_kg),
            Height = Length(height_m),
            Summary = $"{units.Text(Dimension.Rate, Rate_N_per_m(strut, height_m, strut.SprungMass_kg))} at {units.Text(Dimension.Length, height_m)} "
                + $"with {units.Text(Dimension.Mass, strut.SprungMass_kg)} on the corner; {Shown(range.Low)} to {Shown(range.High)} {unit} over the map.",
        };

        double Length(double si) => units.Value(Dimension.Length, si);
        double Mass(double si) => units.Value(Dimension.Mass, si);
        string Shown(double value) => value.ToString("F" + units.Decimals(Dimension.Rate), CultureInfo.InvariantCulture);
    }

    private static double Rate_N_per_m(StrutCase strut, double height_m, double sprung_kg)
    {
        if (!strut.Fit.Spring.Covers(height_m)) return double.NaN;
        StrutSpring spring = strut.Spring();
        double gauge = spring.GaugePressureFor_Pa(strut.SpringForce_N(height_m, sprung_kg * StandardGravity.Value_m_per_s2), height_m);
        return gauge > 0 && gauge <= strut.Part.MaxGaugePressure_Pa ? spring.SealedRate_N_per_m(height_m, gauge, strut.Exponent) : double.NaN;
    }

    private static double[] Spread(double low, double high, int count) =>
        [.. Enumerable.Range(0, count).Select(k => low + (high - low) * k / (count - 1))];
}
