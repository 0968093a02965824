namespace Bellowsmith.Kits.Tables;

/// <summary>Lives as a table gives them: columns <c>life</c>, in any one unit, and <c>outcome</c>, failed or survived.</summary>
public sealed record LifeTable(double[] Lives, bool[] Failed, string? Unit)
{
    private const string Life = "life", Outcome = "outcome", FailedWord = "failed", SurvivedWord = "survived";
    private const double Shortest = 1e-6, Longest = 1e12;

    /// <exception cref="FaultsException">Every fault of the file.</exception>
    public static LifeTable Read(string path)
    {
        Readings readings = Readings.Read(path, ReadingColumn.Number(Life, Shortest, Longest), ReadingColumn.Label(Outcome));
        LabelColumn outcomes = readings.Labels(Outcome);
        CappedFaults faults = new(readings.File);
        for (int row = 0; row < readings.Count; row++)
            if (outcomes.Names[outcomes.Codes[row]] is var word && !Is(word, FailedWord) && !Is(word, SurvivedWord))
                faults.Add(readings.Fault(row, Outcome, word, $"{FailedWord} or {SurvivedWord}", "A part taken off the test while it still worked has survived."));
        faults.ThrowIfAny();
        return new(readings.Numbers(Life), Array.ConvertAll(outcomes.Codes, code => Is(outcomes.Names[code], FailedWord)), readings.Unit(Life));
    }

    private static bool Is(string written, string word) => written.Equals(word, StringComparison.OrdinalIgnoreCase);
}
