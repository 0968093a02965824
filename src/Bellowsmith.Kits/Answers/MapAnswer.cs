using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>
/// The machine answer of <c>map</c>: rows of cells follow y, each in the unit the shown name ends with, null where infeasible;
/// the reason stands at the same place.
/// </summary>
public sealed record MapAnswer(
    string Strut, MapAnswer.Along X, MapAnswer.Along Y, string Show, IReadOnlyList<IReadOnlyList<double?>> Cells, IReadOnlyList<IReadOnlyList<string?>> Reasons, string Sentence)
{
    /// <summary>An axis: values are numbers in the unit, or the names of choices.</summary>
    public sealed record Along(string Name, string Unit, IReadOnlyList<JsonValue> Values, JsonValue? Here);

    public static MapAnswer Of(MapRun map, DisplayUnits units)
    {
        MapQuestion question = map.Question;
        int columns = question.X.Values.Count, rows = question.Y.Values.Count;
        return new(
            Names.Of(question.Strut.End), Axis(question, question.X), Axis(question, question.Y), question.Show.Name,
            [.. Enumerable.Range(0, rows).Select(row => (IReadOnlyList<double?>)[.. Enumerable.Range(0, columns).Select(column => Cell(map, column, row))])],
            [.. Enumerable.Range(0, rows).Select(row => (IReadOnlyList<string?>)[.. Enumerable.Range(0, columns).Select(column => map.Reason(column, row))])],
            new MapWords(map, units).Answer());
    }

    /// <summary>The same as a table: one row a cell, its header naming both axes and the value with their units.</summary>
    public static byte[] Csv(MapRun map)
    {
        MapQuestion question = map.Question;
        (Along x, Along y) = (Axis(question, question.X), Axis(question, question.Y));
        StringBuilder text = new();
        text.AppendLine(CultureInfo.InvariantCulture, $"{Header(x)},{Header(y)},{question.Show.Name},reason");
        for (int row = 0; row < y.Values.Count; row++)
            for (int column = 0; column < x.Values.Count; column++)
                text.AppendLine(CultureInfo.InvariantCulture, $"{Field(x.Values[column])},{Field(y.Values[row])},{Cell(map, column, row):R},{Field(map.Reason(column, row) ?? "")}");
        return Encoding.UTF8.GetBytes(text.ToString().Replace("\r\n", "\n", StringComparison.Ordinal));
    }

    private static double? Cell(MapRun map, int column, int row) => map.Value(column, row) is var value && double.IsNaN(value) ? null : value * map.Question.Show.Scale;

    private static Along Axis(MapQuestion question, MapAxis axis)
    {
        (string name, string unit) = axis.Variable switch
        {
            MapVariable.Click => ("click", ""),
            MapVariable.Height => ("height", "mm"),
            MapVariable.GaugePressure => ("gaugePressure", "kPa"),
            MapVariable.Stop => ("stop", "mm"),
            MapVariable.Speed => ("speed", "km/h"),
            MapVariable.Road => ("road", ""),
            _ => ("load", ""),
        };
        return new(name, unit, [.. axis.Values.Select(Value)], question.Here(axis.Variable) is { } here ? Value(here) : null);

        JsonValue Value(double value) => axis.Variable switch
        {
            MapVariable.Road => JsonValue.Create(((RoadClass)(int)value).ToString()),
            MapVariable.Load => JsonValue.Create(question.Loads[(int)value]?.Load ?? ""),
            MapVariable.Height or MapVariable.Stop => Shown(value * 1e3),
            MapVariable.GaugePressure => Shown(value * 1e-3),
            MapVariable.Speed => Shown(value * 3.6),
            _ => JsonValue.Create(value),
        };
    }

    // An axis stands on round numbers; their binary tails say nothing.
    private static JsonValue Shown(double value) => JsonValue.Create(Math.Round(value, 9));

    private static string Header(Along along) => along.Unit.Length > 0 ? $"{along.Name} [{along.Unit}]" : along.Name;

    private static string Field(JsonValue value) => value.TryGetValue(out double number) ? number.ToString("R", CultureInfo.InvariantCulture) : Field(value.GetValue<string>());

    private static string Field(string text) => text.AsSpan().ContainsAny(",\"\n") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
