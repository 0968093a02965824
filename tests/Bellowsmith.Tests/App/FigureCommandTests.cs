using System.Xml.Linq;

namespace Bellowsmith.Tests.App;

/// <summary><c>-o FILE.svg</c> of <c>damper</c>, <c>damping</c> and <c>ride</c>: which figure, of which strut, and what is refused.</summary>
public sealed class FigureCommandTests : IDisposable
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json", Damper = "examples/fenwright/dampers/front-street.json";

    private readonly string _folder = Directory.CreateTempSubdirectory("figure").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("Front street: force over velocity", "damper", Damper, "--click", "6")]
    [InlineData("Front street: force at the published speeds over click", "damper", Damper, "--figure", "forces")]
    [InlineData("Damping ratio over click, front strut", "damping", Street, "--ratio", "0.5")]
    [InlineData("Damping ratio over velocity amplitude, rear strut", "damping", Street, "--ratio", "0.5", "--figure", "amplitude", "--strut", "rear")]
    [InlineData("Click that keeps the ratio over gauge pressure, front strut", "damping", Street, "--ratio", "0.5", "--figure", "air")]
    [InlineData("Damper force over velocity, front strut", "damping", Street, "--ratio", "0.5", "--figure", "overlay")]
    [InlineData("Damper speeds, front strut", "ride", Street, "--road", "B", "--speed", "90 km/h", "--seconds", "8")]
    [InlineData("Body acceleration over frequency, rear strut", "ride", Street, "--road", "B", "--speed", "90 km/h", "--seconds", "8", "--figure", "spectrum", "--strut", "rear")]
    [InlineData("Wheel travel, front strut", "ride", Street, "--road", "B", "--speed", "90 km/h", "--seconds", "8", "--figure", "travel")]
    [InlineData("This setting and a step aside, front strut", "ride", Street, "--road", "B", "--speed", "90 km/h", "--seconds", "8", "--figure", "neighbours")]
    public async Task Output_Figure_IsWrittenUnderItsTitle(string title, params string[] arguments)
    {
        string file = Path.Combine(_folder, "figure.svg");

        (int code, string output, string error) = await Prompt.Draw([.. arguments, "-o", file]);

        Assert.True(code == 0, error + output);
        Assert.Contains("Figure: ", output, StringComparison.Ordinal);
        XElement svg = XDocument.Load(file).Root!;
        Assert.Equal(title, svg.Elements().First(e => e.Name.LocalName == "title").Value);
        Assert.DoesNotContain("NaN", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Output_InImperialUnits_IsInThem()
    {
        string file = Path.Combine(_folder, "figure.svg");

        await Prompt.Draw("damper", Damper, "--units", "imperial", "-o", file);

        Assert.Contains("damper force, rebound +, lbf", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Output_WithNothingToDraw_SaysSoAndWritesNothing()
    {
        (int code, string output, _) = await Prompt.Run("damper", Damper, "--figure", "loops", "-o", Path.Combine(_folder, "figure.svg"));

        Assert.Equal(0, code);
        Assert.Contains("No figure \"loops\"", output, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public async Task Strut_TheKitLacks_IsAFault()
    {
        string kit = Path.Combine(_folder, "kit.json");
        await File.WriteAllTextAsync(kit, """
            {
              "bellowsmith": "kit/1", "name": "Linear",
              "car": { "bellowsmith": "car/1", "name": "Bench", "loads": { "one": { "leftFront": "276 kg", "rightFront": "276 kg", "leftRear": "276 kg", "rightRear": "276 kg" } },
                       "axles": { "front": { "unsprungMass": "36 kg", "motionRatio": 1 } } },
              "struts": { "front": { "spring": { "rate": "16 N/mm" }, "damper": { "coefficient": "980 N*s/m" } } }
            }
            """, TestContext.Current.CancellationToken);

        (int code, _, string error) = await Prompt.Run("damping", kit, "--ratio", "0.3", "--figure", "amplitude", "--strut", "rear", "-o", Path.Combine(_folder, "figure.svg"));

        Assert.Equal(2, code);
        Assert.Contains("struts.rear", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("damper", Damper, "--figure", "forces")]
    [InlineData("damper", Damper, "--figure", "pie", "-o", "figure.svg")]
    [InlineData("damping", Street, "--ratio", "0.5", "--strut", "middle", "-o", "figure.svg")]
    [InlineData("ride", Street, "--road", "B", "--speed", "90 km/h", "-o", "figure.png")]
    [InlineData("ride", Street, "--road", "B", "--speed", "90 km/h", "-o", "")]
    [InlineData("mount", Street, "-o", "")]
    [InlineData("sheet", Street, "-o", "")]
    public async Task Figure_WronglyAsked_IsUsage(params string[] arguments) => Assert.Equal(1, (await Prompt.Run(arguments)).ExitCode);
}
