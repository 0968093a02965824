using System.Globalization;
using System.Text.RegularExpressions;
using Bellowsmith.Quality.Pairs;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A batch to be paired: columns unit, hand? (left | right), characteristic, value, tolerance?, a row for each unit and
/// characteristic. Units stand in the order of their names, so that the order of the rows changes no pair.
/// </summary>
public sealed partial record PairTable(
    string File, IReadOnlyList<string> Units, IReadOnlyList<string> Characteristics, double[,] Values,
    IReadOnlyList<double> Tolerances, IReadOnlyList<bool> ToleranceIsGiven, IReadOnlyList<Hand>? Hands)
{
    /// <summary>The pairing's matrices take 30 MB here.</summary>
    public const int MostUnits = 1000;

    private const string Unit = "unit", HandName = "hand", Characteristic = "characteristic", Value = "value", Tolerance = "tolerance";

    /// <exception cref="FaultsException">Every fault of the file.</exception>
    public static PairTable Read(string path)
    {
        Readings readings = Readings.Read(path,
            ReadingColumn.Label(Unit), ReadingColumn.Label(HandName, optional: true), ReadingColumn.Label(Characteristic),
            ReadingColumn.Number(Value), ReadingColumn.Number(Tolerance, 0, optional: true));
        CappedFaults faults = new(readings.File);
        if (readings.Has(Tolerance) && readings.Unit(Tolerance) is { } unit && unit != readings.Unit(Value))
            faults.Add(new(readings.File, "header, column tolerance", unit, $"the values' unit, {readings.Unit(Value) ?? "none"}", "Write value and tolerance in one unit."));
        (LabelColumn units, LabelColumn characteristics) = (readings.Labels(Unit), readings.Labels(Characteristic));
        if (units.Names.Count > MostUnits)
            throw new FaultsException([new(readings.File, "column unit", $"{units.Names.Count} units", $"up to {MostUnits}", "Pair in batches.")]);
        int[] place = Places(units.Names);
        double[,] values = ValuesOf(readings, units, characteristics, place, faults);
        double[] tolerances = TolerancesOf(readings, characteristics, faults);
        Hand[]? hands = HandsOf(readings, units, place, faults);
        faults.ThrowIfAny();
        return new(
            readings.File, InOrder(units.Names),
            characteristics.Names, values, [.. tolerances.Select(t => double.IsNaN(t) ? 1 : t)], [.. tolerances.Select(t => !double.IsNaN(t))], hands);
    }

    // Unit 9 stands before unit 10.
    private static string[] InOrder(IEnumerable<string> names) => [.. names
        .OrderBy(name => Digits().Replace(name, digits => digits.Value.PadLeft(20, '0')), StringComparer.Ordinal)
        .ThenBy(name => name, StringComparer.Ordinal)];

    // Where each unit of the file stands in the order of the names.
    private static int[] Places(IReadOnlyList<string> names)
    {
        string[] ordered = InOrder(names);
        Dictionary<string, int> place = new(ordered.Select((name, i) => KeyValuePair.Create(name, i)), StringComparer.Ordinal);
        return [.. names.Select(name => place[name])];
    }

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();

    private static double[,] ValuesOf(Readings readings, LabelColumn units, LabelColumn characteristics, int[] place, CappedFaults faults)
    {
        double[,] values = new double[units.Names.Count, characteristics.Names.Count];
        bool[,] seen = new bool[units.Names.Count, characteristics.Names.Count];
        double[] numbers = readings.Numbers(Value);
        for (int row = 0; row < readings.Count; row++)
        {
            (int unit, int characteristic) = (place[units.Codes[row]], characteristics.Codes[row]);
            if (seen[unit, characteristic])
                faults.Add(readings.Fault(row, Unit, $"{units.Names[units.Codes[row]]} with a second {characteristics.Names[characteristic]}", "one value of each characteristic", "Keep one of the two, or their mean."));
            (seen[unit, characteristic], values[unit, characteristic]) = (true, numbers[row]);
        }

        for (int code = 0; code < units.Names.Count; code++)
            for (int c = 0; c < characteristics.Names.Count; c++)
                if (!seen[place[code], c])
                    faults.Add(new(readings.File, $"unit {units.Names[code]}", $"no {characteristics.Names[c]}", "every characteristic of every unit", "Add the row, or take the unit out."));
        return values;
    }

    // NaN where none is written; it may stand in one row of the characteristic or in all.
    private static double[] TolerancesOf(Readings readings, LabelColumn characteristics, CappedFaults faults)
    {
        double[] tolerances = new double[characteristics.Names.Count];
        Array.Fill(tolerances, double.NaN);
        if (!readings.Has(Tolerance)) return tolerances;
        double[] numbers = readings.Numbers(Tolerance);
        for (int row = 0; row < readings.Count; row++)
        {
            int c = characteristics.Codes[row];
            if (double.IsNaN(numbers[row])) continue;
            string found = numbers[row].ToString(CultureInfo.InvariantCulture);
            if (numbers[row] == 0) faults.Add(readings.Fault(row, Tolerance, found, "more than 0", "Write how far two units of a pair may differ."));
            else if (!double.IsNaN(tolerances[c]) && tolerances[c] != numbers[row])
                faults.Add(readings.Fault(row, Tolerance, found, $"one tolerance for {characteristics.Names[c]}", "Write the same tolerance in all its rows."));
            tolerances[c] = numbers[row];
        }

        return tolerances;
    }

    private static Hand[]? HandsOf(Readings readings, LabelColumn units, int[] place, CappedFaults faults)
    {
        if (!readings.Has(HandName)) return null;
        LabelColumn words = readings.Labels(HandName);
        if (words.Names.Count == 0) return null;
        Hand?[] hands = new Hand?[units.Names.Count];
        for (int row = 0; row < readings.Count; row++)
        {
            string word = words.Codes[row] < 0 ? "" : words.Names[words.Codes[row]];
            Hand? hand = word.ToUpperInvariant() switch { "LEFT" => Hand.Left, "RIGHT" => Hand.Right, _ => null };
            int unit = place[units.Codes[row]];
            if (hand is null) faults.Add(readings.Fault(row, HandName, word.Length == 0 ? "nothing" : word, "left | right", "Give every unit its hand, or take the column out."));
            else if (hands[unit] is { } known && known != hand)
                faults.Add(readings.Fault(row, HandName, word, $"one hand for {units.Names[units.Codes[row]]}", "Write the same hand in all its rows."));
            hands[unit] ??= hand;
        }

        return [.. hands.Select(h => h ?? Hand.Left)];
    }
}
