namespace Bellowsmith.Tests.Examples;

/// <summary>The invented workshop in the working tree these tests were built from.</summary>
internal static class ExampleFolder
{
    /// <summary>The root of the working tree.</summary>
    public static string Repository { get; } = FindRoot(new DirectoryInfo(AppContext.BaseDirectory));

    public static string Root { get; } = Path.Combine(Repository, "examples", "fenwright");

    public static string PathOf(string name) => Path.Combine(Root, name);

    private static string FindRoot(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Bellowsmith.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("Bellowsmith.slnx stands in no folder above the tests.");
    }
}
