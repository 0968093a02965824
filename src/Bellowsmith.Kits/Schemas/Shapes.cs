using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The words the field lists are written in.</summary>
internal static class Shapes
{
    public static readonly Shape Text = new TextShape();

    public static Field Need(string name, Shape shape, string meaning = "") => new(name, true, shape, meaning);

    public static Field May(string name, Shape shape, string meaning = "") => new(name, false, shape, meaning);

    public static ObjectShape Fields(params Field[] fields) => new(fields);

    public static QuantityShape Length(string least, string greatest, string example) => new(Dimension.Length, least, greatest, example);

    public static QuantityShape Area(string least, string greatest, string example) => new(Dimension.Area, least, greatest, example);

    public static QuantityShape Volume(string least, string greatest, string example) => new(Dimension.Volume, least, greatest, example);

    public static QuantityShape Mass(string least, string greatest, string example) => new(Dimension.Mass, least, greatest, example);

    public static QuantityShape Rate(string least, string greatest, string example) => new(Dimension.Rate, least, greatest, example);

    public static QuantityShape Gauge(string least, string greatest, string example) => new(Dimension.GaugePressure, least, greatest, example);

    /// <summary>Ambient absolute pressure, from a high pass to a deep mine.</summary>
    public static readonly QuantityShape Ambient = new(Dimension.AbsolutePressure, "50 kPa", "115 kPa", "101.325 kPa");
}
