using System.Text.Json;

namespace Bellowsmith.Tests.App;

public sealed class ChartCommandTests
{
    private const string Crimps = "examples/fenwright/measured/crimp-diameter.csv";

    private static readonly string _flow = "value\n" + string.Join('\n', 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);

    [Fact]
    public async Task Chart_WithJson_IsOneObjectWithTheContractsFields()
    {
        (int code, JsonElement answer) = await Json(_flow, "--kind", "individuals");

        Assert.Equal(0, code);
        Assert.Equal(50.81, answer.GetProperty("centre").GetDouble(), 1e-12);
        Assert.Equal(55.802412, answer.GetProperty("upper").GetDouble(), 1e-6);
        Assert.Equal(45.817588, answer.GetProperty("lower").GetDouble(), 1e-6);
        Assert.Equal(10, answer.GetProperty("points").GetArrayLength());
        Assert.Equal(10, answer.GetProperty("points")[9].GetProperty("point").GetInt32());
        Assert.Equal(52.1, answer.GetProperty("points")[9].GetProperty("statistic").GetDouble());
        Assert.Empty(answer.GetProperty("signals").EnumerateArray());
        Assert.Equal(6.133821, answer.GetProperty("spread").GetProperty("upper").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("spread").GetProperty("points")[0].GetProperty("statistic").ValueKind);
    }

    [Fact]
    public async Task Chart_OfTheCrimps_NamesPointAndSentence()
    {
        (int code, JsonElement answer) = await JsonReading.Answered("chart", Crimps, "--kind", "averages", "--rule", "2 of 3 past 2 sigma", "--rule", "Eight in a row, on one side");

        Assert.Equal(0, code);
        Assert.Equal(["two of three beyond 2 sigma on one side", "eight in a row on one side"], answer.GetProperty("rules").EnumerateArray().Select(r => r.GetProperty("rule").GetString()));
        JsonElement signal = answer.GetProperty("signals")[0];
        Assert.Contains(signal.GetProperty("rule").GetString(), answer.GetProperty("rules").EnumerateArray().Select(r => r.GetProperty("rule").GetString()));
        Assert.Equal("2027-02-01", answer.GetProperty("points")[0].GetProperty("subgroup").GetString());
    }

    [Fact] // limits 52.5884 and 47.4116
    public async Task Ewma_WithTargetSdWeightAndWidth_HasSteadyLimits()
    {
        (_, JsonElement answer) = await Json(_flow, "--kind", "ewma", "--target", "50", "--sd", "2.0539", "--weight", "0.3", "--width", "3");

        Assert.Equal(52.58843, answer.GetProperty("upper").GetDouble(), 1e-5);
        Assert.Equal(47.41157, answer.GetProperty("lower").GetDouble(), 1e-5);
        Assert.Equal(465.553, answer.GetProperty("runLength").GetProperty("unchanged").GetDouble(), 1e-3);
    }

    [Fact]
    public async Task Ewma_FromTheStart_HasLimitsAtEachPoint()
    {
        (_, JsonElement answer) = await Json(_flow, "--kind", "ewma", "--target", "50", "--sd", "2", "--start");

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("upper").ValueKind);
        Assert.Equal(51.2, answer.GetProperty("points")[0].GetProperty("upper").GetDouble(), 1e-9); // 50 + 3·2·0.2
    }

    [Fact]
    public async Task Cusum_OfAFile_CarriesBothSums()
    {
        (_, JsonElement answer) = await Json("value\n10\n12\n7", "--kind", "cusum", "--target", "10", "--sd", "1", "--decision", "1.25");

        JsonElement last = answer.GetProperty("points")[2];
        Assert.Equal((0, 2.5, -2.5), (last.GetProperty("high").GetDouble(), last.GetProperty("low").GetDouble(), last.GetProperty("statistic").GetDouble()));
        Assert.Equal((-1.25, 1.25), (answer.GetProperty("lower").GetDouble(), answer.GetProperty("upper").GetDouble()));
        Assert.Equal([2, 3], answer.GetProperty("signals").EnumerateArray().Select(s => s.GetProperty("point").GetInt32()));
    }

    [Fact]
    public async Task Shares_OfTwoSizes_HaveLimitsAtEachPoint()
    {
        (_, JsonElement answer) = await Json("count,size\n10,100\n10,100\n10,100\n10,100\n10,100\n10,100\n10,100\n3,25\n2,25\n", "--kind", "shares");

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("centre").ValueKind);
        Assert.Equal(0.19, answer.GetProperty("points")[0].GetProperty("upper").GetDouble(), 1e-9);
        Assert.Equal(0.28, answer.GetProperty("points")[8].GetProperty("upper").GetDouble(), 1e-9);
    }

    [Theory]
    [InlineData("value\n1\n2\n3", "at least 8 are needed")]
    [InlineData("value\n1\n1\n1\n1\n1\n1\n1\n1\n1", "do not differ")]
    public async Task Chart_WithoutAVerdict_IsACompleteAnswerThatSaysWhy(string csv, string why)
    {
        (int code, JsonElement answer) = await Json(csv, "--kind", "individuals");

        Assert.Equal(3, code);
        Assert.Contains(why, answer.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("centre").ValueKind);
        Assert.Empty(answer.GetProperty("signals").EnumerateArray());
    }

    [Fact] // 16 + 3·4 = 28
    public async Task Chart_OfCounts_SaysWhichPointLiesWhere()
    {
        string csv = "count [holes]\n" + string.Join('\n', 16, 14, 28, 16, 12, 20, 10, 12, 10, 17, 19, 17, 14, 16, 15, 13, 14, 16, 11, 20, 11, 19, 16, 31, 13);

        (_, JsonElement answer) = await Json(csv, "--kind", "counts");

        Assert.StartsWith("Point 24 (31 holes) lies above the upper limit 28. It is the only signal in 25 points; this rule cries wolf once in 438 points on average.",
            answer.GetProperty("answer").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Chart_WithAPhaseTooShort_JudgesTheOthersAndSaysSo()
    {
        string csv = "value,phase\n" + string.Join('\n', Enumerable.Range(0, 13).Select(i => $"{i % 3},{(i < 10 ? "long" : "short")}"));

        (int code, JsonElement answer) = await Json(csv, "--kind", "individuals");

        Assert.Equal(0, code);
        Assert.EndsWith("3 points could not be judged.", answer.GetProperty("answer").GetString(), StringComparison.Ordinal);
        Assert.Equal([false, true], answer.GetProperty("phases").EnumerateArray().Select(p => p.GetProperty("reason").ValueKind == JsonValueKind.String));
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("points")[12].GetProperty("upper").ValueKind);
    }

    [Fact]
    public async Task Chart_WithUnits_TakesThemInAnyUnit()
    {
        (int code, JsonElement answer) = await Json("value [mm]\n25\n26\n40", "--kind", "individuals", "--centre", "1 in", "--sd", "1 mm");

        Assert.Equal(0, code);
        Assert.Equal(25.4, answer.GetProperty("centre").GetDouble(), 1e-12);
        Assert.Equal(3, Assert.Single(answer.GetProperty("signals").EnumerateArray()).GetProperty("point").GetInt32());
    }

    [Fact]
    public async Task Chart_WithAnUnreadableRule_IsAFaultThatNamesTheNearest()
    {
        JsonElement fault = Assert.Single(await JsonReading.Faults("chart", Crimps, "--kind", "individuals", "--rule", "eigt in a row on one side"));

        Assert.Contains("eight in a row on one side", fault.GetProperty("fix").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("chart", Crimps)]
    [InlineData("chart", Crimps, "--kind", "pie")]
    [InlineData("chart", Crimps, "--kind", "individuals", "-o", "figure.png")]
    [InlineData("chart", Crimps, "--kind", "individuals", "--weight", "0.2")]
    [InlineData("chart", Crimps, "--kind", "ewma", "--rule", "one point beyond 3 sigma")]
    [InlineData("chart", Crimps, "--kind", "ewma", "--weight", "1.2")]
    [InlineData("chart", Crimps, "--kind", "ewma", "--weight", "heavy")]
    [InlineData("chart", Crimps, "--kind", "counts", "--sd", "1")]
    [InlineData("chart", Crimps, "--kind", "shares", "--centre", "1.5")]
    [InlineData("chart", Crimps, "--kind", "individuals", "--base", "5")]
    [InlineData("chart", Crimps, "--kind", "individuals", "--sd", "-1")]
    public async Task Chart_WronglyUsed_ExitsOne(params string[] arguments)
    {
        (int code, _, string error) = await Prompt.Run(arguments);

        Assert.Equal(1, code);
        Assert.NotEmpty(error);
    }

    private static async Task<(int Code, JsonElement Answer)> Json(string csv, params string[] options)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".csv");
        await File.WriteAllTextAsync(path, csv, TestContext.Current.CancellationToken);
        try
        {
            return await JsonReading.Answered(["chart", path, .. options]);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
