using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary><c>life plan</c> and <c>life fit</c> at the prompt.</summary>
public sealed class LifeCommandTests : IDisposable
{
    private const string Endurance = "examples/fenwright/measured/endurance.csv";

    private readonly string _folder = Directory.CreateTempSubdirectory("life").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(22)]
    [InlineData(38, "--failures", "1")]
    [InlineData(6, "--life-ratio", "2", "--shape", "2")]
    public async Task Plan_OfNinetyNinety_AsksForThePublishedParts(int parts, params string[] arguments)
    {
        JsonElement plan = await JsonReading.Answer(0, ["life", "plan", "--reliability", "0.9", "--confidence", "0.9", .. arguments]);

        Assert.Equal(parts, plan.GetProperty("parts").GetInt32());
    }

    [Fact]
    public async Task Plan_ForPerson_DefersToLicensedPractice()
    {
        (_, string output, _) = await Prompt.Run("life", "plan");

        Assert.Contains("Run 22 parts for the wanted life with no failure", output, StringComparison.Ordinal);
        Assert.Contains("fill with water, not air", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fit_OfTheBench_SaysB10()
    {
        (int code, string output, _) = await Prompt.Run("life", "fit", Endurance);

        Assert.Equal(0, code);
        Assert.Contains("10 % have failed by 512000 cycles: these parts show B10 of 321000 cycles with 95 % confidence.", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fit_OfSurvivors_ExitsThreeWithoutAShapeAndAnswersWithOne()
    {
        string file = Written("life [h],outcome\n100,survived\n100,Survived\n");

        JsonElement without = await JsonReading.Answer(3, "life", "fit", file), withShape = await JsonReading.Answer(0, "life", "fit", file, "--shape", "2");

        Assert.Contains("--shape", without.GetProperty("reason").GetString(), StringComparison.Ordinal);
        // η² = 2·100²/(−ln 0.05), B10 = η·√(−ln 0.9)
        Assert.Equal(26.5218, withShape.GetProperty("lifeShown").GetDouble(), 1e-4);
    }

    [Fact]
    public async Task Fit_OfAnUnknownOutcomeAndALifeOfNothing_AreFaults()
    {
        JsonElement fault = Assert.Single(await JsonReading.Faults("life", "fit", Written("life [h],outcome\n100,broken\n200,failed\n")));
        JsonElement[] nothing = await JsonReading.Faults("life", "fit", Written("life [h],outcome\n0,failed\n200,failed\n"));

        Assert.Equal("row 2, column outcome", fault.GetProperty("where").GetString());
        Assert.Equal("failed or survived", fault.GetProperty("allowed").GetString());
        Assert.NotEmpty(nothing);
    }

    [Theory]
    [InlineData("plan", "--reliability", "1")]
    [InlineData("plan", "--life-ratio", "2")]
    [InlineData("plan", "--failures", "-1")]
    [InlineData("plan", "--failures", "1.5")]
    [InlineData("plan", "--parts", "0")]
    [InlineData("plan", "--shape", "2")]
    [InlineData("fit", Endurance, "--shape", "0")]
    [InlineData("fit", Endurance, "--fraction", "1.5")]
    [InlineData("fit")]
    public async Task Life_WronglyUsed_ExitsOne(params string[] arguments) => Assert.Equal(1, (await Prompt.Run(["life", .. arguments])).ExitCode);

    private string Written(string csv)
    {
        string path = Path.Combine(_folder, "lives.csv");
        File.WriteAllText(path, csv);
        return path;
    }
}
