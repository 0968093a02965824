using System.Text.Json;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.App;

/// <summary>What stands on the terminal, to the letter; snapshots are rewritten with BELLOWSMITH_WRITE_SNAPSHOTS=1.</summary>
public sealed class TerminalTests
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json";
    private const string TooStiff = "examples/fenwright/kits/ostrane-too-stiff.json";
    private const string Single = "examples/fenwright/springs/single-152.json";

    private const string FrontDamper = "examples/fenwright/dampers/front-street.json";
    private const string RearDamper = "examples/fenwright/dampers/rear-street.json";

    private static readonly string _snapshots = Path.Combine(ExampleFolder.Repository, "tests", "Bellowsmith.Tests", "App", "Snapshots");

    [Theory]
    [InlineData("height-street", 0, "height", Street)]
    [InlineData("height-street-imperial", 0, "height", Street, "--units", "imperial")]
    [InlineData("height-too-stiff", 3, "height", TooStiff)]
    [InlineData("travel-street", 0, "travel", Street)]
    [InlineData("spring-single", 0, "spring", Single, "--at", "70 mm", "--load", "3300 N")]
    [InlineData("spring-outside", 3, "spring", Single, "--at", "140 mm", "--load", "3300 N")]
    [InlineData("chart-crimps", 0, "chart", "examples/fenwright/measured/crimp-diameter.csv", "--kind", "individuals", "--base", "60", "--rule", "one point beyond 3 sigma", "--rule", "eight in a row on one side")]
    [InlineData("linkage-front", 0, "linkage", "examples/fenwright/cars/ostrane-front.suspension.json", "--travel", "-60 mm..60 mm", "--step", "20 mm", "--tape", "2 mm")]
    [InlineData("linkage-too-far", 3, "linkage", "examples/fenwright/cars/ostrane-front.suspension.json", "--travel", "-600 mm..0 mm", "--step", "200 mm")]
    [InlineData("geometry-street", 0, "geometry", Street)]
    [InlineData("geometry-too-low", 3, "geometry", Street, "--lowered", "120 mm")]
    [InlineData("alignment-street", 0, "alignment", Street, "--camber", "-1.5 deg", "--toe", "0.05 deg")]
    [InlineData("alignment-too-far", 3, "alignment", Street, "--camber", "-2.5 deg", "--units", "imperial")]
    [InlineData("wheel-with-camber", 0, "wheel", Street, "--new", "18x9 ET36 235/40R18")]
    [InlineData("wheel-does-not-fit", 0, "wheel", Street, "--new", "18x9 ET38 235/40R18", "--new-section", "243 mm on 8.5 in")]
    [InlineData("wheel-imperial", 0, "wheel", Street, "--new", "18x8.5 ET40 225/40R18", "--units", "imperial")]
    [InlineData("wheel-without-points", 0, "wheel", Street, "--strut", "rear", "--new", "18x9 ET38 235/40R18", "--camber", "-1.5 deg")]
    [InlineData("clearance-street", 0, "clearance", Street)]
    [InlineData("clearance-wide", 0, "clearance", Street, "--wheel", "18x9 ET36 235/40R18")]
    [InlineData("clearance-imperial", 0, "clearance", Street, "--camber", "-0.7 deg", "--units", "imperial")]
    [InlineData("mount-street", 0, "mount", Street)]
    [InlineData("mount-imperial", 0, "mount", Street, "--units", "imperial", "--steer", "20 deg", "--load", "four up, luggage")]
    [InlineData("bracket-street", 0, "bracket", Street)]
    [InlineData("bracket-imperial", 0, "bracket", Street, "--units", "imperial")]
    [InlineData("damping-street", 0, "damping", Street, "--ratio", "0.5")]
    [InlineData("damping-street-imperial", 0, "damping", Street, "--ratio", "0.5", "--units", "imperial")]
    [InlineData("damping-too-hard", 3, "damping", Street, "--ratio", "0.95")]
    [InlineData("damper-front", 0, "damper", FrontDamper)]
    [InlineData("damper-compare", 0, "damper", FrontDamper, "--click", "6", "--compare", RearDamper)]
    [InlineData("damper-warm", 0, "damper", "examples/fenwright/measured/rear-street-warm.json", "--click", "8")]
    [InlineData("damper-outside", 3, "damper", FrontDamper, "--click", "22")]
    [InlineData("help", 0, "--help")]
    [InlineData("help-geometry", 0, "geometry", "--help")]
    [InlineData("help-alignment", 0, "alignment", "--help")]
    [InlineData("help-height", 0, "height", "--help")]
    [InlineData("help-damping", 0, "damping", "--help")]
    [InlineData("help-damper", 0, "damper", "--help")]
    [InlineData("help-search", 0, "search", "--help")]
    [InlineData("help-clearance", 0, "clearance", "--help")]
    [InlineData("help-wheel", 0, "wheel", "--help")]
    [InlineData("help-mount", 0, "mount", "--help")]
    [InlineData("help-bracket", 0, "bracket", "--help")]
    public async Task Command_OfTheDemo_PrintsTheSnapshot(string snapshot, int exitCode, params string[] arguments)
    {
        (int code, string output, string error) = await Prompt.Run(arguments);

        Assert.Equal(exitCode, code);
        Assert.Empty(error);
        string path = Path.Combine(_snapshots, snapshot + ".txt");
        if (Environment.GetEnvironmentVariable("BELLOWSMITH_WRITE_SNAPSHOTS") == "1")
            await File.WriteAllTextAsync(path, output, TestContext.Current.CancellationToken);
        Assert.Equal((await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)).ReplaceLineEndings("\n"), output);
    }

    [Fact]
    public async Task Height_PrintsWhatReadmeShows()
    {
        string readme = await File.ReadAllTextAsync(Path.Combine(ExampleFolder.Repository, "README.md"), TestContext.Current.CancellationToken);
        string shown = readme.ReplaceLineEndings("\n").Split("```text\n")[1].Split("```")[0];

        (_, string output, _) = await Prompt.Run("height", Street);

        Assert.StartsWith(shown.TrimEnd(), output.TrimStart('\n'), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("height")]
    [InlineData("travel")]
    [InlineData("damper")]
    public async Task Study_OfAMissingFile_WritesFaultsAsAnArrayAndNothingElse(string command)
    {
        JsonElement fault = Assert.Single(await JsonReading.Faults(command, "nowhere.json"));

        Assert.Equal(["file", "where", "found", "allowed", "fix"], fault.EnumerateObject().Select(p => p.Name));
        Assert.Equal("nowhere.json", fault.GetProperty("file").GetString());
    }

    [Theory]
    [InlineData("height")]
    [InlineData("height", Street, "--nonsense")]
    [InlineData("height", "--nonsense")]
    [InlineData("height", Street, "--altitude", "12 bananas")]
    [InlineData("height", Street, "--altitude", "90 m", "--ambient", "100 kPa")]
    [InlineData("height", Street, "--units", "cubits")]
    [InlineData("spring", Single, "--at", "70 mm")]
    [InlineData("spring", Single, "--at", "70", "--load", "3300 N")]
    [InlineData("spring", Single, "--at", "70 mm", "--load", "3300 mm")]
    [InlineData("spring", Single, "--at", "70 mm", "--load", "-3 N")]
    [InlineData("damping", Street)]
    [InlineData("damping", Street, "--ratio", "half")]
    [InlineData("damping", Street, "--ratio", "60")]
    [InlineData("damper", FrontDamper, "--click", "-1")]
    [InlineData("nonsense")]
    public async Task Command_WronglyUsed_ExitsOne(params string[] arguments)
    {
        (int code, _, string error) = await Prompt.Run(arguments);

        Assert.Equal(1, code);
        Assert.NotEmpty(error);
    }

    [Fact]
    public async Task Height_WithJson_IsOneObjectWithTheContractsFields()
    {
        JsonElement front = (await JsonReading.Answer(0, "height", Street)).GetProperty("struts").GetProperty("front");

        foreach (string field in (string[])["load", "springForce_N", "gasForce_N", "motionRatio", "exponent", "exponentSource",
            "targetSpringRate_N_per_mm", "solutions", "minimumRate", "maximumRate", "reason"])
            Assert.True(front.TryGetProperty(field, out _), field);
        foreach (string field in (string[])["height_mm", "gaugePressure_kPa", "springRate_N_per_mm", "springRateLow_N_per_mm",
            "springRateHigh_N_per_mm", "wheelRate_N_per_mm", "rideFrequency_Hz", "effectiveArea_cm2", "volume_cm3",
            "withinPressureLimit", "recommended"])
            Assert.True(front.GetProperty("solutions")[0].TryGetProperty(field, out _), field);
        foreach (string field in (string[])["height_mm", "springRate_N_per_mm", "rideFrequency_Hz"])
            Assert.True(front.GetProperty("minimumRate").TryGetProperty(field, out _), field);
    }

    [Fact]
    public async Task Damping_WithJson_IsOneObjectWithTheContractsFields()
    {
        JsonElement front = (await JsonReading.Answer(0, "damping", Street, "--ratio", "0.5")).GetProperty("struts").GetProperty("front");

        foreach (string field in (string[])["click", "ratio", "bodyModeRatio", "wheelModeRatio", "clickBelow", "clickAbove", "distinguishable"])
            Assert.NotEqual(JsonValueKind.Null, front.GetProperty(field).ValueKind);
    }

    [Fact]
    public async Task Damping_WithoutAClick_StaysCompleteJson()
    {
        JsonElement front = (await JsonReading.Answer(3, "damping", Street, "--ratio", "0.95")).GetProperty("struts").GetProperty("front");

        Assert.Equal(JsonValueKind.Null, front.GetProperty("click").ValueKind);
        Assert.Equal(0, front.GetProperty("nearest").GetProperty("click").GetDouble());
        Assert.Contains("every one damps less", front.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Damper_WithJson_IsOneObject()
    {
        JsonElement answer = await JsonReading.Answer(0, "damper", FrontDamper, "--compare", RearDamper);

        Assert.Equal(16, answer.GetProperty("clicks").GetArrayLength());
        Assert.Equal(160, answer.GetProperty("differences").GetArrayLength());
    }

    [Fact]
    public async Task Height_WithoutSolution_StaysCompleteJson()
    {
        JsonElement struts = (await JsonReading.Answer(3, "height", TooStiff)).GetProperty("struts");

        Assert.Equal(0, struts.GetProperty("front").GetProperty("solutions").GetArrayLength());
        Assert.Contains("stiffer than this spring can be", struts.GetProperty("front").GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.NotEqual(JsonValueKind.Null, struts.GetProperty("front").GetProperty("nearest").ValueKind);
        Assert.Single(struts.GetProperty("rear").GetProperty("solutions").EnumerateArray());
    }

    [Fact]
    public async Task Travel_WithJson_IsOneObjectWithTheContractsFields()
    {
        JsonElement front = (await JsonReading.Answer(0, "travel", Street)).GetProperty("struts").GetProperty("front");

        foreach (string state in (string[])["drive", "fullBump", "fullDroop", "airedOut", "lifted"])
            foreach (string field in (string[])["springHeight_mm", "damperLength_mm", "stopGap_mm", "wheelTravel_mm", "gaugePressure_kPa", "stoppedBy"])
                Assert.True(front.GetProperty(state).TryGetProperty(field, out _), state + "." + field);
        foreach (string field in (string[])["rule", "source", "value_mm", "limit_mm", "holds", "mend"])
            Assert.True(front.GetProperty("findings")[0].TryGetProperty(field, out _), field);
    }

    [Fact]
    public async Task Height_AtAltitude_TakesLessOfTheGasTerm()
    {
        string[] spring = ["spring", Single, "--at", "70 mm", "--load", "3300 N"];
        JsonElement low = await JsonReading.Answer(0, spring), high = await JsonReading.Answer(0, [.. spring, "--altitude", "2000 m"]);

        Assert.True(JsonReading.Number(high, "springRate_N_per_mm") < JsonReading.Number(low, "springRate_N_per_mm") - 1);
    }

    [Theory]
    [InlineData("bash", "complete -o filenames")]
    [InlineData("zsh", "compdef")]
    [InlineData("fish", "complete -c bellowsmith")]
    public async Task Completion_OfAShell_PrintsItsScript(string shell, string contains)
    {
        (int code, string output, _) = await Prompt.Run("completion", shell);

        Assert.Equal(0, code);
        Assert.Contains(contains, output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Completion_OfAnUnfinishedCommand_SuggestsIt() =>
        Assert.Contains("travel\n", (await Prompt.Run("[suggest:14]", "bellowsmith tr")).Output, StringComparison.Ordinal);
}
