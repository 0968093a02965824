using System.Globalization;

namespace Bellowsmith.References;

/// <summary>The working tree these tests were built from, and the tables kept verbatim in it.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot(new DirectoryInfo(AppContext.BaseDirectory));

    /// <summary>The rows of references/<paramref name="name"/>, without comments and header.</summary>
    public static double[][] Table(string name) =>
        [.. File.ReadLines(Path.Combine(Root, "references", name))
            .Where(line => !line.StartsWith('#'))
            .Skip(1)
            .Select(line => Array.ConvertAll(line.Split(','), cell => double.Parse(cell, CultureInfo.InvariantCulture)))];

    private static string FindRoot(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Bellowsmith.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("Bellowsmith.slnx stands in no folder above the tests.");
    }
}
