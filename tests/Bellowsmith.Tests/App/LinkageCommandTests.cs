using System.Text.Json;
using static Bellowsmith.Tests.App.JsonReading;

namespace Bellowsmith.Tests.App;

public sealed class LinkageCommandTests
{
    private const string Front = "examples/fenwright/cars/ostrane-front.suspension.json";

    [Fact]
    public async Task Linkage_OverTravelAndRack_HasBothEndsOfEach()
    {
        JsonElement[] rows = await Rows(0, "--travel", "-25 mm..20 mm", "--step", "10 mm", "--rack", "-10 mm..10 mm", "--rack-step", "10 mm");

        Assert.Equal([-25, -15, -5, 5, 15, 20], rows[..6].Select(row => Math.Round(Number(row, "travel_mm"), 9)));
        Assert.Equal([-10, 0, 10], rows.Select(row => Number(row, "rack_mm")).Distinct());
        Assert.Equal(18, rows.Length);
        foreach (string field in (string[])["camber_deg", "toe_deg", "caster_deg", "kingpinInclination_deg", "trackChange_mm", "strutLength_mm", "motionRatio",
            "topMountTilt_deg", "topMountTurn_deg", "rollCentreHeight_mm", "scrubRadius_mm", "halfshaftPlunge_mm"])
            Assert.All(rows, row => Assert.Equal(JsonValueKind.Number, row.GetProperty(field).ValueKind));
    }

    [Fact] // as set on the car
    public async Task Linkage_AtDriveHeight_HasTheStaticAngles()
    {
        JsonElement row = Assert.Single(await Rows(0, "--travel", "0 mm"));

        Assert.Equal(-0.8, Number(row, "camber_deg"), 1e-9);
        Assert.Equal(0.05, Number(row, "toe_deg"), 1e-9);
        Assert.Equal(0, Number(row, "trackChange_mm"), 1e-9);
        // Kingpin from the points: atan((714 − 529)/(842 − 198)), atan((8 + 26)/644).
        Assert.Equal(Math.Atan2(185, 644) * 180 / Math.PI, Number(row, "kingpinInclination_deg"), 1e-9);
        Assert.Equal(Math.Atan2(34, 644) * 180 / Math.PI, Number(row, "caster_deg"), 1e-9);
    }

    [Fact] // dial gauge, examples/fenwright/cars/front-ratio.csv; the tape is good to 2 mm
    public async Task Linkage_OfTheExample_IsNearItsDialGauge()
    {
        JsonElement[] rows = await Rows(0, "--travel", "-60 mm..60 mm", "--step", "60 mm");
        double rest = Number(rows[1], "strutLength_mm");

        Assert.Equal(-55.1, rest - Number(rows[0], "strutLength_mm"), 0.6);
        Assert.Equal(56.5 + 1.4, rest - Number(rows[2], "strutLength_mm"), 0.6); // deep in bump the two part: bushes, or the tape
    }

    [Fact]
    public async Task Linkage_TooFar_IsNullWithTheReason()
    {
        JsonElement[] rows = await Rows(3, "--travel", "-600 mm..0 mm", "--step", "300 mm");

        Assert.Equal(JsonValueKind.Null, rows[0].GetProperty("camber_deg").ValueKind);
        Assert.Contains("the lower arm holds it", rows[0].GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Number, rows[2].GetProperty("camber_deg").ValueKind);
        Assert.Equal(JsonValueKind.Null, rows[2].GetProperty("reason").ValueKind);
    }

    [Fact]
    public async Task Linkage_WithATape_SaysWhatItLeavesOpen()
    {
        JsonElement[] rows = await Rows(0, "--travel", "-60 mm..60 mm", "--step", "60 mm", "--tape", "2 mm");

        Assert.Equal(0, Number(rows[1].GetProperty("tape"), "camber_deg"), 1e-9); // set on the car
        Assert.InRange(Number(rows[2].GetProperty("tape"), "camber_deg"), 0.01, 0.5);
        Assert.InRange(Number(rows[1].GetProperty("tape"), "rollCentre_mm"), 1, 50);
        Assert.NotEmpty(rows[2].GetProperty("tape").GetProperty("worstForToe").GetString()!);
    }

    [Theory]
    [InlineData("--travel", "-80..80 mm")]
    [InlineData("--travel", "-80 mm..70 mm..80 mm")]
    [InlineData("--travel", "-80 mm...80 mm")]
    [InlineData("--travel", "-8 m..8 m")]
    [InlineData("--travel", "-80 mm..80 mm", "--step", "0 mm")]
    [InlineData("--rack", "0 mm")]
    public async Task Linkage_WronglyAsked_IsUsage(params string[] arguments) =>
        Assert.Equal(1, (await Prompt.Run(["linkage", Front, .. arguments])).ExitCode);

    [Fact] // the document counts 62 mm to either lock
    public async Task Linkage_RackPastItsLock_IsNoted()
    {
        string[] past = ["linkage", Front, "--travel", "-60 mm..60 mm", "--step", "60 mm", "--rack", "-100 mm..100 mm", "--rack-step", "100 mm"];

        (int code, string output, _) = await Prompt.Run(past);

        Assert.Equal(0, code);
        Assert.Contains("The rack goes 62.0 mm to either lock", output, StringComparison.Ordinal);
        Assert.DoesNotContain(output.Split('\n'), line => line.Trim() == "°"); // −48.36° in one piece
        Assert.Contains("up to 100.0 mm", (await Answer(0, past)).GetProperty("rack").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, (await Answer(0, "linkage", Front, "--travel", "0 mm", "--rack", "62 mm")).GetProperty("rack").ValueKind);
    }

    private static async Task<JsonElement[]> Rows(int expected, params string[] arguments) =>
        [.. (await Answer(expected, ["linkage", Front, .. arguments])).GetProperty("rows").EnumerateArray()];
}
