using Bellowsmith.App.Boards;

namespace Bellowsmith.App.Serving;

/// <summary>The folder the pages work on: its documents, what each is and what is wrong with it.</summary>
public sealed class Workshop : IDisposable
{
    private const int MostFiles = 2000;
    private const string DemoKit = "fenwright/kits/ostrane-street.json";
    private static readonly EnumerationOptions _everywhere = new() { RecurseSubdirectories = true, MaxRecursionDepth = 8, IgnoreInaccessible = true };

    private readonly List<string> _copies = [];
    private readonly Kept<(string Folder, string State), IReadOnlyList<Document>> _documents;

    private Workshop(string folder)
    {
        Folder = folder;
        _documents = new(key =>
        [
            .. Files(key.Folder).Where(file => file.Extension.Equals(".json", StringComparison.OrdinalIgnoreCase))
                .Select(file => Document.Of(Address(file.FullName), file.FullName)).OfType<Document>()
                .OrderBy(d => d.Kind).ThenBy(d => d.Address, StringComparer.Ordinal),
        ]);
    }

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

    /// <summary>Kits first, then springs, each with its faults; read again only when a file in the folder has changed.</summary>
    public IReadOnlyList<Document> Documents(string folder)
    {
        string state = string.Join('\n', Files(folder).Select(file => $"{file.FullName} {file.LastWriteTimeUtc.Ticks}"));
        lock (_documents) return _documents.Of((folder, state));
    }

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


    private static IEnumerable<FileInfo> Files(string folder) =>
        new DirectoryInfo(folder).EnumerateFiles("*", _everywhere).Where(file => !IsHidden(folder, file)).Take(MostFiles);

    private static bool IsHidden(string folder, FileInfo file) => Path.GetRelativePath(folder, file.FullName)
        .Split(Path.DirectorySeparatorChar).Any(part => part.StartsWith('.') || part is "node_modules" or "artifacts");

    // Dropped folders come first: their addresses begin with a name no folder has.
    private IEnumerable<(string Prefix, string Root)> Roots()
    {
        for (int number = 0; DropAt(number) is { } drop; number++) yield return ($"dropped:{number}/", drop);
        yield return ("", Folder);
    }
}
