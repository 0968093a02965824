using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Units;

/// <summary>
/// Every unit a document may use, by dimension. Factors are exact by definition: inch 25.4 mm, pound 0.45359237 kg
/// and g = 9.80665 m/s² [NIST SP 811, app. B.8]. An own table, because the spellings are fixed by the documents'
/// contract and a general library costs 340 ms at its first use.
/// </summary>
public static class UnitTable
{
    private const double PoundForce_N = 4.4482216152605;
    private const double Inch_m = 0.0254;

    private static readonly Unit[] _pressures =
    [
        new("Pa"), new("kPa", 1e3), new("MPa", 1e6), new("bar", 1e5), new("psi", PoundForce_N, Inch_m * Inch_m),
    ];

    private static readonly Dictionary<Dimension, Unit[]> _units = new()
    {
        [Dimension.Length] = [new("mm", 1, 1e3), new("cm", 1, 1e2), new("m"), new("in", 254, 1e4), new("ft", 3048, 1e4)],
        [Dimension.Area] = [new("mm2", 1, 1e6), new("cm2", 1, 1e4), new("m2"), new("in2", 64516, 1e8)],
        [Dimension.Volume] = [new("cm3", 1, 1e6), new("mL", 1, 1e6), new("L", 1, 1e3), new("m3"), new("in3", 16387064, 1e12)],
        [Dimension.Force] = [new("N"), new("kN", 1e3), new("lbf", PoundForce_N), new("kgf", StandardGravity.Value_m_per_s2)],
        [Dimension.Mass] = [new("g", 1, 1e3), new("kg"), new("lb", 45359237, 1e8)],
        [Dimension.GaugePressure] = _pressures,
        [Dimension.AbsolutePressure] = _pressures,
        [Dimension.Stress] = _pressures,
        [Dimension.Rate] = [new("N/mm", 1e3), new("N/m"), new("lbf/in", PoundForce_N, Inch_m), new("kgf/mm", 9806.65)],
        [Dimension.Damping] = [new("N*s/m"), new("lbf*s/in", PoundForce_N, Inch_m)],
        [Dimension.Frequency] = [new("Hz"), new("cpm", 1, 60)],
        [Dimension.Speed] = [new("m/s"), new("mm/s", 1, 1e3), new("in/s", 254, 1e4), new("km/h", 1e3, 3600), new("mph", 44704, 1e5)],
        [Dimension.Time] = [new("s"), new("min", 60), new("h", 3600)],
        [Dimension.Temperature] = [new("degC", 1, 1, 273.15), new("degF", 5, 9, 459.67 * 5 / 9), new("K")],
        [Dimension.Angle] = [new("deg", Math.PI, 180), new("rad")],
    };

    /// <summary>The units of a dimension, in the order the contract lists them.</summary>
    public static IReadOnlyList<Unit> Of(Dimension dimension) => _units[dimension];

    /// <summary>The unit of that dimension with this spelling or its usual symbol (mm², N·s/m, °C); null where none.</summary>
    public static Unit? Find(Dimension dimension, string spelling)
    {
        var plain = Plain(spelling);
        return Array.Find(_units[dimension], unit => unit.Name == plain);
    }

    /// <summary>Whether any dimension has a unit of this spelling.</summary>
    public static bool Knows(string spelling) => Enum.GetValues<Dimension>().Any(dimension => Find(dimension, spelling) is not null);

    /// <summary>A dimension in words, <c>gauge pressure</c>.</summary>
    public static string Words(this Dimension dimension) => dimension switch
    {
        Dimension.GaugePressure => "gauge pressure",
        Dimension.AbsolutePressure => "absolute pressure",
        Dimension.Damping => "damping coefficient",
        _ => dimension.ToString().ToLowerInvariant(),
    };

    private static string Plain(string spelling) => spelling
        .Replace("^", "", StringComparison.Ordinal)
        .Replace('²', '2').Replace('³', '3')
        .Replace('·', '*').Replace('⋅', '*')
        .Replace("°", "deg", StringComparison.Ordinal);
}
