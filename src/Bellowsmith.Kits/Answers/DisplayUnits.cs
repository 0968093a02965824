using System.Globalization;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The units a person reads answers in. The stored documents keep what was written.</summary>
public sealed class DisplayUnits
{
    private static readonly Dictionary<string, int> _decimals = new()
    {
        ["mm"] = 1,
        ["cm"] = 2,
        ["m"] = 4,
        ["in"] = 3,
        ["ft"] = 4,
        ["mm2"] = 0,
        ["cm2"] = 1,
        ["m2"] = 5,
        ["in2"] = 2,
        ["cm3"] = 0,
        ["mL"] = 0,
        ["L"] = 3,
        ["m3"] = 6,
        ["in3"] = 1,
        ["N"] = 0,
        ["kN"] = 3,
        ["lbf"] = 0,
        ["kgf"] = 1,
        ["g"] = 0,
        ["kg"] = 1,
        ["lb"] = 1,
        ["Pa"] = 0,
        ["kPa"] = 0,
        ["MPa"] = 3,
        ["bar"] = 2,
        ["psi"] = 1,
        ["N/mm"] = 1,
        ["N/m"] = 0,
        ["lbf/in"] = 0,
        ["kgf/mm"] = 2,
        ["Hz"] = 2,
        ["cpm"] = 0,
        ["m/s"] = 2,
        ["mm/s"] = 0,
        ["in/s"] = 1,
        ["km/h"] = 1,
        ["mph"] = 1,
        ["N*s/m"] = 0,
        ["lbf*s/in"] = 2,
    };

    private readonly Dictionary<Dimension, Unit> _units;

    private DisplayUnits(params ReadOnlySpan<(Dimension Dimension, string Unit)> units)
    {
        _units = [];
        foreach ((Dimension dimension, string unit) in units) _units[dimension] = UnitTable.Find(dimension, unit)!;
    }

    /// <summary>mm, bar, N/mm, cm², cm³, N, kg, Hz, m/s, N·s/m.</summary>
    public static DisplayUnits Metric { get; } = new(
        (Dimension.Length, "mm"), (Dimension.Area, "cm2"), (Dimension.Volume, "cm3"), (Dimension.Force, "N"),
        (Dimension.Mass, "kg"), (Dimension.GaugePressure, "bar"), (Dimension.AbsolutePressure, "bar"), (Dimension.Stress, "MPa"),
        (Dimension.Rate, "N/mm"), (Dimension.Frequency, "Hz"), (Dimension.Speed, "m/s"), (Dimension.Damping, "N*s/m"));

    /// <summary>in, psi, lbf/in, in², in³, lbf, lb, Hz, in/s, lbf·s/in.</summary>
    public static DisplayUnits Imperial { get; } = new(
        (Dimension.Length, "in"), (Dimension.Area, "in2"), (Dimension.Volume, "in3"), (Dimension.Force, "lbf"),
        (Dimension.Mass, "lb"), (Dimension.GaugePressure, "psi"), (Dimension.AbsolutePressure, "psi"), (Dimension.Stress, "psi"),
        (Dimension.Rate, "lbf/in"), (Dimension.Frequency, "Hz"), (Dimension.Speed, "in/s"), (Dimension.Damping, "lbf*s/in"));

    /// <summary>Every dimension in the unit first written for it, else metric; areas follow the lengths.</summary>
    public static DisplayUnits Written(IReadOnlyDictionary<Dimension, string> written)
    {
        DisplayUnits units = new();
        foreach ((Dimension dimension, Unit metric) in Metric._units)
            units._units[dimension] = written.TryGetValue(dimension, out string? name) && UnitTable.Find(dimension, name) is { } unit
                ? unit : metric;
        units._units[Dimension.Area] = (units._units[Dimension.Length].Name is "in" or "ft" ? Imperial : Metric)._units[Dimension.Area];
        return units;
    }

    /// <summary><c>81.2 mm</c>; an em dash where there is no number.</summary>
    public string Text(Dimension dimension, double? si) =>
        IsNumber(si) ? $"{Number(dimension, si)} {Symbol(dimension)}" : "–";

    /// <summary>The unit shown.</summary>
    public Unit UnitOf(Dimension dimension) => _units[dimension];

    /// <summary>The number in the unit shown, unrounded.</summary>
    public double Value(Dimension dimension, double si) => _units[dimension].FromSi(si);

    /// <summary>The decimals a number in the unit shown deserves.</summary>
    public int Decimals(Dimension dimension) => dimension == Dimension.Stress ? 0 : _decimals.GetValueOrDefault(_units[dimension].Name, 2);

    /// <summary>The number alone, with the decimals its unit deserves.</summary>
    public string Number(Dimension dimension, double? si, int more = 0)
    {
        if (!IsNumber(si)) return "–";
        Unit unit = _units[dimension];
        string text = unit.FromSi(si!.Value).ToString("F" + (Decimals(dimension) + more), CultureInfo.InvariantCulture);
        return text.StartsWith('-') ? text.AsSpan(1).ContainsAnyInRange('1', '9') ? "−" + text[1..] : text[1..] : text;
    }

    /// <summary>With a sign always, for changes: <c>+1.2 mm</c>.</summary>
    public string Change(Dimension dimension, double? si, int more = 1)
    {
        string number = Number(dimension, si, more);
        return number is "–" ? number : $"{(number.StartsWith('−') ? "" : "+")}{number} {Symbol(dimension)}";
    }

    public string Symbol(Dimension dimension) => _units[dimension].Name
        .Replace("2", "²", StringComparison.Ordinal).Replace("3", "³", StringComparison.Ordinal).Replace("*", "·", StringComparison.Ordinal);

    private static bool IsNumber(double? si) => si is { } value && double.IsFinite(value);
}
