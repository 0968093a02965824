using System.Text.Json;
using Bellowsmith.Tests.Kits.Schemas;
using static Bellowsmith.Tests.App.JsonReading;

namespace Bellowsmith.Tests.App;

public sealed class ClearanceCommandTests
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json", Wide = "18x9 ET36 235/40R18";

    [Fact]
    public async Task Clearance_OfTheDemo_AnswersTheContract()
    {
        JsonElement answer = await Json();
        JsonElement worst = answer.GetProperty("pairs")[0];

        Assert.Equal(["between", "gap_mm", "margin_mm", "holds", "wheelTravel_mm", "rack_mm", "source"], worst.EnumerateObject().Take(7).Select(field => field.Name));
        Assert.Equal(("rim to lower arm", "front", true), (worst.GetProperty("between").GetString(), worst.GetProperty("strut").GetString(), worst.GetProperty("holds").GetBoolean()));
        Assert.Equal("[Wheel Clearance Guide 2026]", worst.GetProperty("source").GetString());
        Assert.Equal(4, Number(worst, "margin_mm"), 1e-12);
        Assert.Equal(Number(worst, "gap_mm"), Distance(worst.GetProperty("on_mm"), worst.GetProperty("other_mm")), 1e-6);
        JsonElement strut = Assert.Single(answer.GetProperty("struts").EnumerateArray());
        Assert.Equal(strut.GetProperty("map").GetProperty("rack_mm").GetArrayLength(), strut.GetProperty("map").GetProperty("room_mm")[0].GetArrayLength());
        Assert.Equal(2, strut.GetProperty("loads").GetArrayLength());
    }

    [Fact] // it touches: an answer like any other
    public async Task Clearance_OfAWheelThatTouches_IsAnswered()
    {
        JsonElement answer = await Json("--wheel", Wide);

        Assert.True(Number(answer.GetProperty("pairs")[0], "gap_mm") < 0);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("struts")[0].GetProperty("camberToClear").GetProperty("camber_deg").ValueKind);
    }

    [Fact]
    public async Task Clearance_WithMarginsOfItsOwn_SaysSo()
    {
        JsonElement pair = (await Json("--margin", "tyreToArch 4 mm", "--margin", "bellowsToTower 0.5 in")).GetProperty("pairs")[0];

        Assert.Equal(("bellows to tower", 12.7, "asked for in the kit or at the prompt"), (pair.GetProperty("between").GetString(), Math.Round(Number(pair, "margin_mm"), 9), pair.GetProperty("source").GetString()));
    }

    [Fact] // no height gives the rate: the height's reason, and all that rests on the points alone
    public async Task Clearance_OfAStrutThatStandsNowhere_IsNoSolution()
    {
        var (exitCode, output, error) = await Prompt.Run("clearance", "examples/fenwright/kits/ostrane-too-stiff.json", "--json");
        JsonElement strut = JsonDocument.Parse(output).RootElement.GetProperty("struts")[0];

        Assert.Equal((3, ""), (exitCode, error));
        Assert.StartsWith("No installed height", strut.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("No installed height", strut.GetProperty("sentence").GetString(), StringComparison.Ordinal);
        Assert.NotEmpty(JsonDocument.Parse(output).RootElement.GetProperty("pairs").EnumerateArray());
    }

    [Fact]
    public async Task Clearance_AxleWithoutPoints_IsAFault()
    {
        Assert.Equal(["car.axles.rear.suspension"], await FaultPlaces("clearance", Street, "--strut", "rear"));
    }

    [Fact]
    public async Task Clearance_KitWithoutAnyPoints_NamesBoth()
    {
        using SampleFolder sample = new();

        Assert.Equal(["car.axles.front.suspension", "car.axles.rear.suspension"], await FaultPlaces("clearance", sample.PathOf("kit.json")));
    }

    [Theory]
    [InlineData("names no margin", "--margin", "tyreToSky 4 mm")]
    [InlineData("is not a length between 0 and 100 mm", "--margin", "tyreToArch")]
    [InlineData("is not a length between 0 and 100 mm", "--margin", "tyreToArch -4 mm")]
    [InlineData("is not a wheel", "--wheel", "18x9")]
    [InlineData("must lie between 0 and 100 mm", "--spacer", "-5 mm")]
    [InlineData("must lie between -15 and 15 deg", "--camber", "20 deg")]
    public async Task Clearance_WronglyAsked_IsUsage(string says, params string[] arguments)
    {
        (int code, _, string error) = await Prompt.Run(["clearance", Street, .. arguments]);

        Assert.Equal(1, code);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Clearance_RulesOfAnotherFile_TakeTheirPlace()
    {
        string file = Path.GetTempFileName();
        await File.WriteAllTextAsync(file, "market,rule,clearance [mm],state,source,read\nHere,town code,70,aired out,town hall,2026\n", TestContext.Current.CancellationToken);

        JsonElement rule = Assert.Single((await Json("--rules", file)).GetProperty("struts")[0].GetProperty("ground").GetProperty("rules").EnumerateArray());
        File.Delete(file);

        Assert.Equal(("Here", "aired out", false), (rule.GetProperty("market").GetString(), rule.GetProperty("state").GetString(), rule.GetProperty("holds").GetBoolean()));
    }

    private static double Distance(JsonElement a, JsonElement b) => Math.Sqrt(Enumerable.Range(0, 3).Sum(k => Math.Pow(a[k].GetDouble() - b[k].GetDouble(), 2)));

    private static Task<JsonElement> Json(params string[] arguments) => Answer(0, ["clearance", Street, .. arguments]);
}
