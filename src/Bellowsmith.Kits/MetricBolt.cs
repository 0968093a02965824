using System.Globalization;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>A bolt by size and strength class: "M12", coarse thread, or "M12x1.25"; 8.8 or 10.9.</summary>
/// <param name="Size">As written.</param>
/// <param name="StrengthClass">As written.</param>
/// <param name="Diameter_m">d.</param>
/// <param name="Pitch_m">P.</param>
public sealed record MetricBolt(string Size, string StrengthClass, double Diameter_m, double Pitch_m)
{
    public const string Example = "M12";

    /// <summary>Strength classes and fub (ISO 898-1, from memory).</summary>
    public static IReadOnlyDictionary<string, double> Strengths_Pa { get; } = new Dictionary<string, double> { ["8.8"] = 800e6, ["10.9"] = 1000e6 };

    // Coarse pitches, mm by mm of diameter (ISO 261, from memory).
    private static readonly Dictionary<double, double> _coarse = new() { [6] = 1, [8] = 1.25, [10] = 1.5, [12] = 1.75, [14] = 2, [16] = 2, [18] = 2.5, [20] = 2.5, [22] = 2.5, [24] = 3 };

    public double TensileStrength_Pa => Strengths_Pa[StrengthClass];

    /// <summary>As.</summary>
    public double StressArea_m2 => ThreadEngagement.TensileStressArea_m2(Diameter_m, Pitch_m);

    /// <summary>Plates held by friction under it.</summary>
    public ClampedJoint Holding(double friction, int planes, double holeFactor = 1) => new(TensileStrength_Pa, StressArea_m2, friction, planes, holeFactor);

    /// <summary>0.7·fub·As, tightened under control [EN 1993-1-8 2005, 3.9].</summary>
    public double Preload_N => Holding(1, 1).Preload_N;

    /// <summary>Null where it is not a size or a class.</summary>
    public static MetricBolt? Read(string size, string strengthClass)
    {
        string[] parts = size.Trim().Split('x', '×');
        if (parts.Length > 2 || !parts[0].StartsWith('M') || !Strengths_Pa.ContainsKey(strengthClass)) return null;
        if (Number(parts[0][1..]) is not { } diameter || !_coarse.TryGetValue(diameter, out double coarse)) return null;
        double? pitch = parts.Length == 1 ? coarse : Number(parts[1]);
        return pitch > 0 && pitch <= coarse ? new(size, strengthClass, diameter * 1e-3, pitch.Value * 1e-3) : null;
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : null;
}
