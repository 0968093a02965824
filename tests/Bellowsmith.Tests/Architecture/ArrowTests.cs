using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Bellowsmith.Kits;
using Bellowsmith.Papers;
using Bellowsmith.Physics;
using Bellowsmith.Quality;

namespace Bellowsmith.Tests.Architecture;

/// <summary>Physics, Quality ← Kits ← Papers ← App: each may use what stands to its left and nothing else of the house.</summary>
public sealed class ArrowTests
{
    private static readonly string _source = Path.Combine(Root(new DirectoryInfo(AppContext.BaseDirectory)), "src");

    public static TheoryData<string, string[]> Arrows => new()
    {
        { "Bellowsmith.Physics", [] },
        { "Bellowsmith.Quality", [] },
        { "Bellowsmith.Kits", ["Bellowsmith.Physics", "Bellowsmith.Quality"] },
        { "Bellowsmith.Papers", ["Bellowsmith.Physics", "Bellowsmith.Quality", "Bellowsmith.Kits"] },
        { "Bellowsmith.App", ["Bellowsmith.Physics", "Bellowsmith.Quality", "Bellowsmith.Kits", "Bellowsmith.Papers"] },
    };

    [Theory]
    [MemberData(nameof(Arrows))]
    public void Project_References_PointToTheLeft(string project, string[] allowed)
    {
        var references = Project(project).Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')));

        Assert.Empty(references.Except(allowed));
    }

    [Theory]
    [InlineData("Bellowsmith.Physics")]
    [InlineData("Bellowsmith.Kits")]
    public void Project_OfTheCore_TakesNoPackage(string project) =>
        Assert.DoesNotContain(Project(project).Descendants(), e => e.Name.LocalName is "PackageReference" or "FrameworkReference" or "Reference");

    [Fact]
    public void Project_EveryOne_HasItsArrowHere() => Assert.Equal(
        Directory.EnumerateDirectories(_source).Select(Path.GetFileName).Order(StringComparer.Ordinal),
        Arrows.Select(row => row.Data.Item1).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Assembly_References_AreTheFrameworkAndItsLeft(Assembly assembly, string[] allowed)
    {
        var foreign = assembly.GetReferencedAssemblies().Select(a => a.Name!)
            .Where(name => !name.StartsWith("System.", StringComparison.Ordinal) && name is not ("System" or "netstandard"))
            .Except(allowed);

        Assert.Empty(foreign);
    }

    public static TheoryData<Assembly, string[]> Assemblies => new()
    {
        { typeof(AirSpring).Assembly, [] },
        { typeof(Sample).Assembly, ["MathNet.Numerics"] },
        { typeof(Kit).Assembly, ["Bellowsmith.Physics", "Bellowsmith.Quality"] },
        { typeof(Sheet).Assembly, ["Bellowsmith.Physics", "Bellowsmith.Quality", "Bellowsmith.Kits", "SkiaSharp"] },
    };

    [Fact] // a law has no clock, no files, no console and no memory of its own
    public void Physics_Assembly_KnowsNoFilesClockOrNetwork()
    {
        string[] refused = ["System.Console", "System.IO.FileSystem", "System.Net", "System.Diagnostics.Process", "System.Text.Json", "System.Xml"];

        Assert.DoesNotContain(
            typeof(AirSpring).Assembly.GetReferencedAssemblies(),
            a => refused.Any(name => a.Name!.StartsWith(name, StringComparison.Ordinal)));
        Assert.Empty(
            from type in typeof(AirSpring).Assembly.GetTypes()
            where !type.IsDefined(typeof(CompilerGeneratedAttribute), false) && type.Namespace is not null && !type.Name.StartsWith('<')
            from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
            where !field.IsLiteral && !field.IsInitOnly && !field.Name.StartsWith('<')
            select $"{type.Name}.{field.Name}");
    }

    [Fact] // model in, bytes out: no files, and today's date comes with the model
    public void Papers_Source_NamesNoFileOrClock() => Assert.All(
        Directory.EnumerateFiles(Path.Combine(_source, "Bellowsmith.Papers"), "*.cs", SearchOption.AllDirectories),
        file => Assert.DoesNotMatch(@"\b(File|Directory|DateTime|TimeProvider|Environment)\.|DateTimeOffset\.(Utc)?Now", File.ReadAllText(file)));

    private static XDocument Project(string name) => XDocument.Load(Path.Combine(_source, name, $"{name}.csproj"));

    private static string Root(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Bellowsmith.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("Bellowsmith.slnx stands in no folder above the tests.");
    }
}
