using System.Text.Json;
using System.Xml.Linq;
using Bellowsmith.Tests.Kits.Schemas;
using static Bellowsmith.Tests.App.JsonReading;

namespace Bellowsmith.Tests.App;

public sealed class WheelCommandTests : IDisposable
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json", New = "18x9 ET38 235/40R18";

    private readonly string _folder = Directory.CreateTempSubdirectory("wheel").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact] // 8 in ET35 to 9 in ET30: 17.7 mm out, 7.7 mm in; on the same tyre the section grows by 10.16 mm
    public async Task Wheel_EightToNineInches_AnswersTheContract()
    {
        JsonElement answer = await Json("--old", "18x8 ET35 225/40R18", "--new", "18x9 ET30 225/40R18", "--old-section", "230 mm on 8 in", "--new-section", "230 mm on 8 in");

        Assert.Equal(["rimOutward_mm", "rimTowardStrut_mm", "tyreOutward_mm", "tyreTowardStrut_mm", "sectionOld_mm", "sectionNew_mm", "freeRadiusChange_mm"],
            answer.EnumerateObject().Take(7).Select(field => field.Name));
        Assert.Equal([17.7, 7.7, 10.08, 0.08, 230, 240.16, 0], answer.EnumerateObject().Take(7).Select(field => Math.Round(field.Value.GetDouble(), 9)));
        Assert.Equal(0, Number(answer, "sectionSpreadNew_mm"));
        Assert.True(answer.GetProperty("rimLeadsNew").GetBoolean()); // 254 mm of rim
        Assert.Equal((254 - 240.16) / 2, Number(answer, "rimLeadNew_mm"), 1e-9);
    }

    [Fact] // the car document's wheel is 18x8 ET45; 401 kg on the ground and 225 N/mm of tyre
    public async Task Wheel_WithoutOld_TakesTheCars()
    {
        JsonElement answer = await Json("--new", New);

        Assert.Equal(7 + 12.7, Number(answer, "rimOutward_mm"), 1e-9);
        Assert.Equal(318.6 - 401 * 9.80665 / 225, Number(answer, "loadedRadiusOld_mm"), 1e-9);
        Assert.Equal("top mount slide, through the linkage", answer.GetProperty("camberMadeAt").GetString());
        Assert.Equal(17, answer.GetProperty("tradeOff").GetArrayLength());
    }

    [Theory] // 230 mm on 8 in is the section the car gives its wheel
    [InlineData("18x8 ET45 225/40R18")]
    [InlineData("8Jx18H2 ET+45 225/40R18 92Y XL")]
    public async Task Wheel_OldThatIsTheCars_KeepsItsSection(string old)
    {
        JsonElement answer = await Json("--new", New, "--old", old);

        Assert.Equal(230, Number(answer, "sectionOld_mm"), 1e-9);
        Assert.Equal(0, Number(answer, "sectionSpreadOld_mm"));
    }

    [Fact] // what camber does stands in the first four, and without it beside them
    public async Task Wheel_Camber_IsInTheFourAtTheArch()
    {
        JsonElement answer = await Json("--new", New, "--camber", "-1 deg");

        Assert.Equal(19.7, Number(answer, "rimOutwardWithoutCamber_mm"), 1e-9);
        Assert.InRange(Number(answer, "rimOutward_mm"), 12, 15);
        Assert.Equal(Number(answer, "rimTowardStrutWithoutCamber_mm"), Number(answer, "rimTowardStrut_mm"));
        Assert.InRange(Number(answer.GetProperty("atCamber"), "setting_mm"), -13.5, -10.5);
    }

    [Fact] // no points, no adjuster: r·sin about the hub, at the flange 245.9 mm and the tread 322.6 mm over it
    public async Task Wheel_CamberOfAnAxleWithoutPoints_IsAboutTheHub()
    {
        JsonElement answer = await Json("--strut", "rear", "--new", New, "--camber", "-2 deg");

        Assert.Equal("about the hub", answer.GetProperty("camberMadeAt").GetString());
        Assert.Equal(19.7 - 245.9 * Math.Sin(2 * Math.PI / 180), Number(answer, "rimOutward_mm"), 1e-9);
        Assert.Equal(Number(answer, "tyreTowardStrutWithoutCamber_mm") + 322.6 * Math.Sin(2 * Math.PI / 180), Number(answer, "tyreTowardStrut_mm"), 1e-9);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("archGapNew_mm").ValueKind);
        Assert.Equal("not known", answer.GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Wheel_WithoutAnyOldWheel_IsAFault()
    {
        using SampleFolder sample = new();

        Assert.Equal(["car.axles.front.wheel"], await FaultPlaces("wheel", sample.PathOf("kit.json"), "--new", New));
    }

    [Theory]
    [InlineData("is not a wheel. Write it as", "--new", "18x9 38")]
    [InlineData("The tyre is for a 19 in rim", "--new", "18x9 ET38 235/40R19")]
    [InlineData("is not a wheel", "--new", New, "--old", "18x8")]
    [InlineData("write it as \"230 mm on 8 in\"", "--new", New, "--new-section", "230 mm")]
    [InlineData("must lie between 0 and 100 mm", "--new", New, "--spacer", "-5 mm")]
    [InlineData("must lie between -15 and 15 deg", "--new", New, "--camber", "-20 deg")]
    [InlineData("--new", "--camber", "-1 deg")]
    public async Task Wheel_WronglyAsked_IsUsage(string says, params string[] arguments)
    {
        (int code, _, string error) = await Prompt.Run(["wheel", Street, .. arguments]);

        Assert.Equal(1, code);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Theory] // stdout is one JSON object or nothing
    [InlineData("--new \"18x9 BS6.5 235/40R18\" is not a wheel. Give the backspacing its unit, such as \"BS 6.5 in\" or \"BS 165 mm\", not \"BS6.5\".\n", "wheel", Street, "--new", "18x9 BS6.5 235/40R18", "--json")]
    [InlineData("Option '--new' is required.\n", "wheel", Street, "--json")]
    [InlineData("--travel \"-80 mm...80 mm\" is not a range: write two quantities with two points between them, for example \"-80 mm..80 mm\".\n",
        "linkage", "examples/fenwright/cars/ostrane-front.suspension.json", "--travel", "-80 mm...80 mm", "--json")]
    public async Task Json_WronglyAsked_LeavesStandardOutputEmpty(string error, params string[] arguments) =>
        Assert.Equal((1, "", error), await Prompt.Run(arguments));

    [Fact]
    public async Task Output_TheTradeOff_IsDrawn()
    {
        string file = Path.Combine(_folder, "wheel.svg");

        (int code, string output, string error) = await Prompt.Draw("wheel", Street, "--new", New, "-o", file);

        Assert.True(code == 0, error + output);
        Assert.Equal("What camber buys and costs, front", XDocument.Load(file).Root!.Elements().First(e => e.Name.LocalName == "title").Value);
        Assert.DoesNotContain("NaN", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    private static Task<JsonElement> Json(params string[] arguments) => Answer(0, ["wheel", Street, .. arguments]);
}
