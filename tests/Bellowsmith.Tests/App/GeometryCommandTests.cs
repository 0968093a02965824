using System.Text.Json;
using static Bellowsmith.Tests.App.JsonReading;

namespace Bellowsmith.Tests.App;

public sealed class GeometryCommandTests
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json";

    [Fact]
    public async Task Geometry_WithJson_HasBothHeightsMendsAndRatio()
    {
        JsonElement front = await Strut("front", 0, "geometry", Street);

        Assert.Equal(45, Number(front, "lowered_mm"), 1e-9);
        Assert.Equal(-0.8, Number(front.GetProperty("now"), "camber_deg"), 1e-9); // on the aligner
        Assert.Equal(-45, Number(front.GetProperty("old"), "travel_mm"), 1e-9);
        JsonElement fall = front.GetProperty("rollCentre");
        Assert.Equal(Number(fall, "fell_mm") - Number(fall, "bodyFell_mm"), Number(fall, "armGrew_mm"), 1e-9);
        Assert.Equal(["tieRodOuter", "tieRodInner", "lowerBallJoint", "both"], front.GetProperty("mends").EnumerateArray().Select(mend => mend.GetProperty("name").GetString()));
        Assert.Equal(1.3, Number(front.GetProperty("ratio"), "parting_mm"), 0.1); // dial gauge 56.5 mm, points 57.8 mm
        Assert.False(front.GetProperty("ratio").GetProperty("explained").GetBoolean());
        Assert.Equal(JsonValueKind.Null, front.GetProperty("reason").ValueKind);
    }

    [Fact]
    public async Task Geometry_LoweredTooFar_StaysCompleteJsonWithTheReason()
    {
        JsonElement front = await Strut("front", 3, "geometry", Street, "--lowered", "120 mm");

        Assert.Contains("No height within", front.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Object, front.GetProperty("now").ValueKind);
    }

    [Fact]
    public async Task Geometry_LoweredByNothing_SaysSo()
    {
        (int code, string output, _) = await Prompt.Run("geometry", Street, "--lowered", "0 mm");

        Assert.Equal(0, code);
        Assert.Contains("Nothing was lowered. The wheel toes out 0.15° over the next 30 mm of bump: an outer tie-rod joint 3.7 mm lower", output, StringComparison.Ordinal);
        foreach (string none in (string[])["as it was", "ball joint", "has fallen", "came down"]) Assert.DoesNotContain(none, output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Geometry_OtherWorkingTravel_IsTaken()
    {
        JsonElement front = await Strut("front", 0, "geometry", Street, "--working", "15 mm", "--travel", "-50 mm..40 mm");

        Assert.Equal(15, Number(front.GetProperty("workingToe"), "to_mm"), 1e-9);
        Assert.Equal((-50, 40), (Math.Round(Number(front.GetProperty("wholeToe"), "from_mm"), 9), Math.Round(Number(front.GetProperty("wholeToe"), "to_mm"), 9)));
    }

    [Theory]
    [InlineData("geometry", "car.axles.rear.suspension")]
    [InlineData("alignment", "struts.rear.adjusters")]
    public async Task Command_OfAnAxleWithoutPoints_NamesWhatToAdd(string command, string where)
    {
        Assert.Contains(where, await FaultPlaces(command, Street, "--strut", "rear"));
    }

    [Theory]
    [InlineData("geometry", "--lowered", "45")]
    [InlineData("geometry", "--lowered", "-45 mm")]
    [InlineData("geometry", "--working", "0 mm")]
    [InlineData("geometry", "--travel", "-80 mm...60 mm")]
    [InlineData("alignment", "--camber", "-90 deg")]
    [InlineData("alignment", "--toe", "3 mm")]
    public async Task Command_WronglyAsked_IsUsage(string command, params string[] arguments) =>
        Assert.Equal(1, (await Prompt.Run([command, Street, .. arguments])).ExitCode);

    [Fact]
    public async Task Alignment_WithJson_HasSettingsAndWhatIsLeft()
    {
        JsonElement front = await Strut("front", 0, "alignment", Street, "--camber", "-1.5 deg", "--toe", "0.1 deg");

        Assert.Equal(-1.5, Number(front, "camber_deg"), 1e-9);
        Assert.Equal(0.1, Number(front, "toe_deg"), 1e-9);
        Assert.Equal(0.2, Number(front, "totalToe_deg"), 1e-9);
        Assert.Equal(6, Number(front, "toe_min"), 1e-7);
        Assert.Equal(0.797964, Number(front, "toeAtRim_mm"), 1e-5); // 457.2 mm·sin 0.1°
        JsonElement slide = front.GetProperty("adjusters")[0];
        Assert.Equal("camberSlide", slide.GetProperty("name").GetString());
        Assert.Equal(14 + Number(slide, "setting_mm"), Number(slide, "leastLeft_mm"), 1e-9); // the kit's range is −14 to 6 mm
        Assert.Equal(6 - Number(slide, "setting_mm"), Number(slide, "greatestLeft_mm"), 1e-9);
        Assert.Equal(JsonValueKind.Null, slide.GetProperty("setting_deg").ValueKind);
        Assert.Equal(Number(front, "strutLonger_mm") / 1.5, Number(front, "threadTurns"), 1e-9);
    }

    [Fact]
    public async Task Alignment_PastTheSlide_IsTheNearestWithTheReason()
    {
        JsonElement front = await Strut("front", 3, "alignment", Street, "--camber", "-3 deg");

        Assert.Equal(-14, Number(front.GetProperty("adjusters")[0], "setting_mm"), 1e-9);
        Assert.InRange(Number(front, "camber_deg"), -2.5, -1.5);
        Assert.Contains("ends 14.0 mm inward", front.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    private static async Task<JsonElement> Strut(string strut, int expected, params string[] arguments) =>
        (await Answer(expected, arguments)).GetProperty("struts").GetProperty(strut);
}
