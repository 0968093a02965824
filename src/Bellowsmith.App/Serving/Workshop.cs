using Bellowsmith.App.Boards;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Serving;

/// <summary>The folder the pages work on: its documents, what each is and what is wrong with it.</summary>
public sealed class Workshop : IDisposable
{
    private const int MostDocuments = 500;
    private const string DemoKit = "fenwright/kits/ostrane-street.json";
    private static readonly EnumerationOptions _everywhere = new() { RecurseSubdirectories = true, MaxRecursionDepth = 8, IgnoreInaccessible = true };

    private readonly List<string> _copies = [];

    private Workshop(string folder) => Folder = folder;

    public string Folder { get; }

    /// <summary>The page to begin at.</summary>
    public string Entry { get; private init; } = "/";

    public static Workshop At(string folder) => new(Path.GetFullPath(folder));

    /// <summary>A copy of the example workshop that goes when the pages stop.</summary>
    public static Workshop Demo()
    {
        string copy = Directory.CreateTempSubdirectory("bellowsmith-demo-").FullName, examples = Path.Combine(AppContext.BaseDirectory, "examples");
        foreach (string file in Directory.EnumerateFiles(examples, "*", _everywhere))
        {
            string to = Path.Combine(copy, Path.GetRelativePath(examples, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }

        Workshop workshop = new(copy) { Entry = File.Exists(Path.Combine(copy, DemoKit)) ? $"/kit/{DemoKit}" : "/" };
        workshop._copies.Add(copy);
        return workshop;
    }

    /// <summary>Kits first, then springs, each with its faults.</summary>
    public IReadOnlyList<Document> Documents(string folder) =>
    [
        .. Directory.EnumerateFiles(folder, "*.json", _everywhere)
            .Where(file => !Path.GetRelativePath(folder, file).Split(Path.DirectorySeparatorChar).Any(part => part.StartsWith('.') || part == "node_modules"))
            .Take(MostDocuments)
            .Select(file => Document.Of(Address(file), file)).OfType<Document>()
            .OrderBy(d => d.Kind).ThenBy(d => d.Address, StringComparer.Ordinal),
    ];

    /// <summary>A folder of its own for what was dropped on a page; it goes when the pages stop.</summary>
    public string NewDrop()
    {
        string folder = Directory.CreateTempSubdirectory("bellowsmith-drop-").FullName;
        lock (_copies) _copies.Add(folder);
        return folder;
    }

    /// <summary>The file behind an address; null where there is none inside this workshop.</summary>
    public string? FileAt(string? address)
    {
        if (string.IsNullOrEmpty(address)) return null;
        foreach ((string prefix, string root) in Roots())
        {
            if (!address.StartsWith(prefix, StringComparison.Ordinal)) continue;
            string file = Path.GetFullPath(Path.Combine(root, address[prefix.Length..]));
            if (file.StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal) && File.Exists(file)) return file;
        }

        return null;
    }

    /// <summary>A file's address; its path where it lies outside this workshop.</summary>
    public string Address(string file)
    {
        string full = Path.GetFullPath(file);
        foreach ((string prefix, string root) in Roots())
            if (full.StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                return prefix + Path.GetRelativePath(root, full).Replace(Path.DirectorySeparatorChar, '/');
        return file;
    }

    /// <summary>The folder of a drop by its number from 0; null where there is none.</summary>
    public string? DropAt(int number)
    {
        lock (_copies) return _copies.Where(c => c != Folder).ElementAtOrDefault(number);
    }

    public int DropCount()
    {
        lock (_copies) return _copies.Count(c => c != Folder);
    }

    public void Dispose()
    {
        foreach (string copy in _copies) Directory.Delete(copy, recursive: true);
    }


    // Dropped folders come first: their addresses begin with a name no folder has.
    private IEnumerable<(string Prefix, string Root)> Roots()
    {
        for (int number = 0; DropAt(number) is { } drop; number++) yield return ($"dropped:{number}/", drop);
        yield return ("", Folder);
    }
}

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
