using System.Text.Json;
using static Bellowsmith.Tests.App.JsonReading;

namespace Bellowsmith.Tests.App;

public sealed class BracketCommandTests : IDisposable
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json";

    private readonly string _folder = Directory.CreateTempSubdirectory("bracket").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Bracket_WithJson_HasFitForcesAndFindings()
    {
        JsonElement front = (await Answer(0, "bracket", Street)).GetProperty("struts").GetProperty("front");

        Assert.Equal(0.3, Number(front, "margin_mm"), 0.001); // (14.5 + 14.3)/2 − 14, and half of 0.2006 mm off at either
        Assert.Equal(-0.1, Number(front, "sureMargin_mm"), 0.001); // 0.3 and 0.1 mm of tolerance
        Assert.Equal(14.7, Number(front, "holeForSure_mm"), 0.002);
        Assert.Equal(2, front.GetProperty("holes").GetArrayLength());
        Assert.Equal(Number(front, "axialForce_N") * 0.005, Number(front, "twist_Nm"), 1e-9);
        JsonElement[] findings = [.. front.GetProperty("findings").EnumerateArray()];
        Assert.Equal([true, false, true, true, true, true], findings.Select(f => f.GetProperty("holds").GetBoolean()));
        Assert.Equal([true, true, true, true, true, false], findings.Select(f => f.GetProperty("canBeWaived").GetBoolean()));
        Assert.Equal(240, Number(findings[4], "allowedStress_MPa"), 1e-9);
        Assert.Equal(JsonValueKind.Null, front.GetProperty("reason").ValueKind);
        Assert.Equal(JsonValueKind.Null, front.GetProperty("drawing").ValueKind);
    }

    [Theory]
    [InlineData("bracket.pdf", "%PDF")]
    [InlineData("bracket.svg", "<?xml")]
    [InlineData("bracket.DXF", "999")]
    public async Task Output_OfAnEnding_IsWrittenAndSaid(string name, string begins)
    {
        string file = Path.Combine(_folder, name);

        (int code, string output, string error) = await Prompt.Draw("bracket", Street, "-o", file);

        Assert.True(code == 0, error);
        Assert.Contains("Drawing: ", output, StringComparison.Ordinal);
        Assert.StartsWith(begins, (await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken)).TrimStart('\uFEFF'), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-o", "bracket.dwg")]
    [InlineData("-o", ".pdf")]
    [InlineData("-o", "")]
    [InlineData("--strut", "left")]
    public async Task Bracket_WronglyAsked_IsUsage(params string[] arguments) =>
        Assert.Equal(1, (await Prompt.Run(["bracket", Street, .. arguments])).ExitCode);

    [Fact]
    public async Task Bracket_OfAStrutWithoutOne_NamesWhatToAdd()
    {
        Assert.Equal(["struts.rear.lowerMount"], await FaultPlaces("bracket", Street, "--strut", "rear"));
    }
}
