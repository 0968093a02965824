namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads the air springs and dampers that lie in folders. What is faulty is left out by name; documents of other kinds are not looked at.</summary>
public static class ShelfReader
{
    /// <summary>The folders in which a kit's own spring and damper documents lie; none where all stand inside the kit.</summary>
    public static IReadOnlyList<string> FoldersOf(Kit kit) =>
        [.. kit.Inputs.Where(input => IsJson(input.File) && IsPart(Header(input.Bytes.ToArray(), input.File, [])))
            .Select(input => Path.GetDirectoryName(Path.GetFullPath(input.File))!).Distinct()];

    /// <summary>The parts of folders, by file name within each.</summary>
    /// <exception cref="FaultsException">A folder that does not exist.</exception>
    public static Shelf Read(IReadOnlyList<string> folders)
    {
        Fault[] missing = [.. folders.Where(folder => !Directory.Exists(folder))
            .Select(folder => new Fault(folder, "folder", "a path that does not exist", "a folder of spring and damper documents", "Check the path."))];
        if (missing.Length > 0) throw new FaultsException(missing);
        List<AirSpringPart> springs = [];
        List<TelescopicDamperPart> dampers = [];
        List<UnusedDocument> leftOut = [];
        foreach (string file in folders.Select(Path.GetFullPath).Distinct().SelectMany(Documents))
        {
            try
            {
                Add(file, springs, dampers);
            }
            catch (FaultsException faulty)
            {
                leftOut.Add(new(InputFile.Readable(file), faulty.Faults));
            }
        }

        return new Shelf(springs, dampers, leftOut);
    }

    private static void Add(string file, List<AirSpringPart> springs, List<TelescopicDamperPart> dampers)
    {
        List<Fault> faults = [];
        byte[]? bytes = InputFile.Read(file, out string trouble);
        if (bytes is null) faults.Add(new(InputFile.Readable(file), "file", $"a path that {trouble}", "a document", "Check the file."));
        string? header = bytes is null ? null : Header(bytes, file, faults);
        if (header == AirSpringFields.Kind.Header && !IsBare(bytes!, file, "rate")) springs.Add(Spring(file, faults));
        else if (header == DamperFields.Kind.Header && !IsBare(bytes!, file, "coefficient") && Damper(file, faults) is { } damper) dampers.Add(damper);
        if (faults.Count > 0) throw new FaultsException(faults);
    }

    private static AirSpringPart Spring(string file, List<Fault> faults)
    {
        AirSpringPart spring = AirSpringReader.Read(file);
        if (spring.Lack() is { } lack) faults.Add(lack);
        return faults.Count == 0 ? spring : throw new FaultsException(faults);
    }

    private static TelescopicDamperPart? Damper(string file, List<Fault> faults)
    {
        if (DamperReader.Read(file) is not TelescopicDamperPart damper) return null;
        if (damper.DynoFile is null) faults.Add(new(InputFile.Readable(file), "dyno", "nothing", "a dyno file", "Measure it and name the file."));
        else damper.Fit(faults);
        return faults.Count == 0 ? damper : null;
    }

    private static IEnumerable<string> Documents(string folder) => Directory.EnumerateFiles(folder).Where(IsJson).Order(StringComparer.Ordinal);

    private static bool IsJson(string file) => Path.GetExtension(file).Equals(".json", StringComparison.OrdinalIgnoreCase);

    private static bool IsPart(string? header) => header == AirSpringFields.Kind.Header || header == DamperFields.Kind.Header;

    // Null for a document without a header and, with a fault, for what is no JSON.
    private static string? Header(byte[] bytes, string file, List<Fault> faults) =>
        JsonSource.Parse(bytes, Path.GetFullPath(file), faults)?.Root.Members.FirstOrDefault(m => m.Name == "bellowsmith").Value?.Text;

    private static bool IsBare(byte[] bytes, string file, string key) => JsonSource.Parse(bytes, file, [])!.Has(key);
}
