using Bellowsmith.App.Boards;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Serving;

public enum DocumentOf { Kit, Spring }

/// <summary>One document of a folder as the index lists it.</summary>
public sealed record Document(DocumentOf Kind, string Address, string Name, IReadOnlyList<Fault> Faults)
{
    /// <summary>What the kit answers, strut by strut.</summary>
    public IReadOnlyList<string> Sentences { get; private init; } = [];

    /// <summary>Null where the file is neither a kit nor an air spring.</summary>
    public static Document? Of(string address, string file)
    {
        string name = Path.GetFileNameWithoutExtension(file);
        if (Heads(file, "kit/")) return Read(DocumentOf.Kit, address, name, () => Kit(KitReader.Read(file)));
        if (Heads(file, "air-spring/")) return Read(DocumentOf.Spring, address, name, () => Spring(AirSpringReader.Read(file)));
        return null;
    }

    private static (string, IReadOnlyList<string>) Kit(Kit kit) => (kit.Name,
    [
        .. StrutCases.Of(kit, new StudyConditions(), InstalledHeightStudy.Needs).Select(strut =>
            $"{BoardWords.Sentence(Names.Of(strut.End))}: {new HeightWords(InstalledHeightStudy.Answer(strut), DisplayUnits.Written(kit.WrittenUnits)).Answer()}"),
    ]);

    private static (string, IReadOnlyList<string>) Spring(AirSpringPart spring) => (spring.Name,
        [$"{BoardWords.Sentence(spring.Shape)}, {Metric(Dimension.Length, spring.LeastHeight_m)} to {Metric(Dimension.Length, spring.GreatestHeight_m)} high, up to {Metric(Dimension.GaugePressure, spring.MaxGaugePressure_Pa)} gauge."]);

    private static string Metric(Dimension dimension, double si) => DisplayUnits.Metric.Text(dimension, si);

    private static Document Read(DocumentOf kind, string address, string name, Func<(string Name, IReadOnlyList<string> Sentences)> read)
    {
        try
        {
            (string title, IReadOnlyList<string> sentences) = read();
            return new Document(kind, address, title, []) { Sentences = sentences };
        }
        catch (FaultsException faulty)
        {
            return new Document(kind, address, name, faulty.Faults);
        }
    }

    // The header is the document's first key, so its first lines tell; a broken document still says what it wants to be.
    private static bool Heads(string file, string kind)
    {
        try
        {
            using StreamReader reader = File.OpenText(file);
            Span<char> head = stackalloc char[2000];
            head = head[..reader.Read(head)];
            int at = head.IndexOf("\"bellowsmith\"", StringComparison.Ordinal);
            return at >= 0 && head[(at + "\"bellowsmith\"".Length)..].TrimStart(" :\"\t\r\n").StartsWith(kind, StringComparison.Ordinal);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
