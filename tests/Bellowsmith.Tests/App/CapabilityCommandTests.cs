using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary><c>capability</c> at the prompt: the contract's fields, the exit codes and what a person reads.</summary>
public sealed class CapabilityCommandTests : IDisposable
{
    private const string Batch = "examples/fenwright/measured/crimp-diameter-batch.csv";

    private readonly string _folder = Directory.CreateTempSubdirectory("capability").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Capability_OfTheBatch_SaysWhatItProves()
    {
        (int code, string output, _) = await Prompt.Run("capability", Batch, "--lower", "118.25", "--upper", "118.55 mm", "--target", "118.4");

        Assert.Equal(0, code);
        Assert.Contains("40 parts at Cpk 1.46 prove only 1.17 with 95 % confidence: the wanted 1.33 is not proved.", output, StringComparison.Ordinal);
        Assert.Contains("It takes 205 parts that give 1.46 again, or 40 parts that give 1.65.", output, StringComparison.Ordinal);
        Assert.Contains("`chart`", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Capability_WithJson_IsOneObjectWithTheContractsFields()
    {
        JsonElement answer = await Json(0, Batch, "--lower", "118.25", "--upper", "118.55");

        foreach (string field in (string[])["cp", "cpk", "cpkLow", "cpkHigh", "mean", "sd", "cpkExactLow", "cpkShown"])
            Assert.Equal(JsonValueKind.Number, answer.GetProperty(field).ValueKind);
        Assert.Equal("mm", answer.GetProperty("unit").GetString());
        Assert.Equal("normal", answer.GetProperty("basis").GetString());
        Assert.False(answer.GetProperty("shown").GetBoolean());
    }

    [Fact]
    public async Task Capability_InAnotherUnit_IsTheSame()
    {
        JsonElement one = await Json(0, Batch, "--upper", "118.55"), other = await Json(0, Batch, "--upper", "11.855 cm");

        Assert.Equal(one.GetProperty("cpk").GetDouble(), other.GetProperty("cpk").GetDouble(), 1e-9);
        Assert.Equal(JsonValueKind.Null, other.GetProperty("cp").ValueKind);
    }

    [Theory]
    [InlineData("value [mm]\n1\n2\n3\n", "at least 5 are needed")]
    [InlineData("value [mm]\n2\n2\n2\n2\n2\n", "without a spread there is no index")]
    public async Task Capability_WithoutAVerdict_StaysCompleteJson(string csv, string reason)
    {
        JsonElement answer = await Json(3, Written(csv), "--lower", "0");

        Assert.Contains(reason, answer.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("cpk").ValueKind);
        Assert.Equal(JsonValueKind.Number, answer.GetProperty("mean").ValueKind);
    }

    [Theory]
    [InlineData]
    [InlineData("--lower", "2", "--upper", "1")]
    [InlineData("--lower", "two")]
    [InlineData("--lower", "1", "--wanted", "20")]
    [InlineData("--lower", "1", "--coverage", "1")]
    [InlineData("--lower", "1", "--wanted", "much")]
    public async Task Capability_WronglyUsed_ExitsOne(params string[] arguments) =>
        Assert.Equal(1, (await Prompt.Run(["capability", Batch, .. arguments])).ExitCode);

    [Theory]
    [InlineData("--upper", "118 N")]
    [InlineData("--lower", "118.5 mm", "--upper", "11.8 cm")]
    public async Task Capability_LimitsThatDoNotFitTheFile_AreFaults(params string[] arguments) =>
        Assert.StartsWith("--", (await JsonReading.FaultPlaces(["capability", Batch, .. arguments]))[0], StringComparison.Ordinal);

    private static Task<JsonElement> Json(int exitCode, string file, params string[] arguments) => JsonReading.Answer(exitCode, ["capability", file, .. arguments]);

    private string Written(string csv)
    {
        string path = Path.Combine(_folder, "readings.csv");
        File.WriteAllText(path, csv);
        return path;
    }
}
