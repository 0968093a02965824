using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary>leak, pairs and serial as a program calls them.</summary>
public sealed class BenchCommandTests
{
    private const string Dampers = "examples/fenwright/measured/rear-dampers.csv", Log = "examples/fenwright/measured/leak-log.csv";

    private static readonly string[] _overnight =
        ["leak", "--volume", "1.25 L", "--start-gauge", "150 psi", "--end-gauge", "147.1 psi", "--time", "24 h"];

    private static readonly string[] _temperatures = ["--start-temperature", "21.5 degC", "--end-temperature", "17 degC"];

    // p1 = 164.695949 psi, p2 = 161.795949 psi absolute: p1 − p2·294.65/290.15 = 0.390672 psi; u from half of each last digit, rectangular
    [Fact]
    public async Task Leak_Overnight_IsTheHandComputedLoss()
    {
        (int code, JsonElement answer) = await JsonReading.Answered([.. _overnight, .. _temperatures, "--limit", "2 psi"]);

        Assert.Equal(0, code);
        Assert.Equal(2.69360, answer.GetProperty("correctedLoss_kPa").GetDouble(), 1e-4);
        Assert.Equal(3.87717e-5, answer.GetProperty("leakRate_Pa_m3_per_s").GetDouble(), 2e-9);
        Assert.Equal(3.309e-5, answer.GetProperty("uncertainty_Pa_m3_per_s").GetDouble(), 2e-8);
        Assert.Equal("conforms", answer.GetProperty("verdict").GetString());
        Assert.True(answer.GetProperty("conformanceProbability").GetDouble() > 0.999999);
        Assert.Contains("only if the spring's height was held", answer.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Leak_WithoutTemperatures_IsNotDecidableInACompleteAnswer()
    {
        (int code, JsonElement answer) = await JsonReading.Answered([.. _overnight, "--limit", "2 psi"]);

        Assert.Equal(0, code);
        Assert.Equal("not decidable", answer.GetProperty("verdict").GetString());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("correctedLoss_kPa").ValueKind);
        Assert.Equal(19.99480, answer.GetProperty("uncompensatedDrop_kPa").GetDouble(), 1e-4);
    }

    [Fact]
    public async Task Leak_WithoutALimit_AnswersWithoutAVerdict()
    {
        (int code, JsonElement answer) = await JsonReading.Answered([.. _overnight, .. _temperatures]);

        Assert.Equal(0, code);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("conformanceProbability").ValueKind);
        Assert.Contains("No limit", answer.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Theory] // the published example's readings and uncertainties, stated in other units
    [InlineData("60 Pa", "0.05 K")]
    [InlineData("0.06 kPa", "0.05 degC")]
    [InlineData("0.0006 bar", "0.09 degF")]
    public async Task Leak_WithStatedUncertainties_IsThePublishedBudget(string gauge, string temperature)
    {
        (_, JsonElement answer) = await JsonReading.Answered("leak", "--volume", "3.2 L", "--start-gauge", "899975 Pa", "--end-gauge", "897175 Pa",
            "--start-temperature", "294.15 K", "--end-temperature", "293.85 K", "--time", "600 s", "--volume-uncertainty", "20 mL",
            "--time-uncertainty", "0.5 s", "--pressure-uncertainty", gauge, "--temperature-uncertainty", temperature);

        Assert.Equal(0.00946426115, answer.GetProperty("leakRate_Pa_m3_per_s").GetDouble(), 1e-10);
        Assert.Equal(0.00135748082, answer.GetProperty("uncertainty_Pa_m3_per_s").GetDouble(), 1e-9);
    }

    [Fact]
    public async Task Leak_OfTheLog_FindsTheInventedLeak() // 0.2 kPa an hour of 801.3 kPa at 294.6 K, over 7.5 h
    {
        (int code, JsonElement answer) = await JsonReading.Answered("leak", Log, "--volume", "1.30 L", "--limit", "3 kPa", "--settle", "30 min", "--fixture", "a frame");

        Assert.Equal(0, code);
        Assert.InRange(answer.GetProperty("correctedLoss_kPa").GetDouble(), 1.44, 1.56);
        Assert.Equal("conforms", answer.GetProperty("verdict").GetString());
        Assert.False(answer.GetProperty("log").GetProperty("drifts").GetBoolean());
    }

    [Theory]
    [InlineData("leak", "--volume", "1 L")]
    [InlineData("leak", Log)]
    [InlineData("leak", Log, "--volume", "1 L", "--start-gauge", "2 bar")]
    [InlineData("leak", "--volume", "0 L", "--start-gauge", "2 bar", "--end-gauge", "2 bar", "--time", "1 h")]
    [InlineData("leak", "--volume", "1 L", "--start-gauge", "-2 bar", "--end-gauge", "2 bar", "--time", "1 h")]
    [InlineData("leak", "--volume", "1 L", "--start-gauge", "2 bar", "--end-gauge", "2 bar", "--time", "1 h", "--creep", "much")]
    [InlineData("serial", "new", "--date", "2027-13-01", "--number", "1")]
    [InlineData("serial", "new", "--date", "2027-01-01", "--number", "0")]
    [InlineData("serial", "new", "--date", "2027-01-01", "--number", "1", "--prefix", "a-b")]
    [InlineData("serial", "check")]
    [InlineData("pairs")]
    public async Task Command_WronglyUsed_ExitsOne(params string[] arguments) => Assert.Equal(1, (await Prompt.Run(arguments)).ExitCode);

    [Fact]
    public async Task Pairs_OfTheDampers_UsesEachOnce()
    {
        (int code, JsonElement answer) = await JsonReading.Answered("pairs", Dampers);

        Assert.Equal(0, code);
        JsonElement[] pairs = [.. answer.GetProperty("pairs").EnumerateArray()];
        Assert.Equal(24, pairs.SelectMany(p => new[] { p.GetProperty("a").GetString(), p.GetProperty("b").GetString() }).Distinct().Count());
        Assert.Equal(0.8, answer.GetProperty("worst").GetDouble(), 1e-12);
        Assert.Equal(pairs.Max(p => p.GetProperty("worst").GetDouble()), answer.GetProperty("worst").GetDouble());
        Assert.Equal(0, answer.GetProperty("spare").GetArrayLength());
    }

    [Fact]
    public async Task Serial_New_ChecksAndNamesItsWeek()
    {
        (int code, JsonElement answer) = await JsonReading.Answered("serial", "new", "--date", "2027-01-01", "--number", "42");

        Assert.Equal(0, code);
        Assert.Equal("26W5300042U", answer.GetProperty("serial").GetString());
        Assert.True(answer.GetProperty("valid").GetBoolean());
        Assert.Equal("U", answer.GetProperty("checkCharacter").GetString());
        Assert.Equal("2026-W53", answer.GetProperty("isoWeek").GetString());
    }

    [Fact]
    public async Task Serial_CheckOfASlip_IsAnAnswer()
    {
        (int code, JsonElement answer) = await JsonReading.Answered("serial", "check", "26w53-00024u");

        Assert.Equal(0, code);
        Assert.False(answer.GetProperty("valid").GetBoolean());
        Assert.Equal("26W5300042U", answer.GetProperty("likelySlips")[0].GetProperty("serial").GetString());
    }
}
