using System.Text.Json;
using System.Xml.Linq;
using Bellowsmith.Tests.Kits.Schemas;
using static Bellowsmith.Tests.App.JsonReading;

namespace Bellowsmith.Tests.App;

public sealed class MountCommandTests : IDisposable
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json";

    private readonly string _folder = Directory.CreateTempSubdirectory("mount").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact] // 401 kg on the ground and 38 kg unsprung; 28 balls
    public async Task Mount_OfTheDemo_AnswersInJson()
    {
        JsonElement front = await Json();
        JsonElement lives = front.GetProperty("lives"), side = front.GetProperty("sideLoad"), drive = side.GetProperty("drive");

        Assert.Equal("driver, half tank", front.GetProperty("load").GetString());
        Assert.Equal(9, Number(front, "tiltLimit_deg"), 1e-9);
        Assert.Equal(47, Number(front, "stackHeight_mm"), 1e-9);
        Assert.Equal(Number(front, "turn_deg"), Math.Max(Number(front, "turnLeft_deg"), Number(front, "turnRight_deg")));
        Assert.Equal(360.0 / 28, Number(lives, "turningLeastSwing_deg"), 1e-9);
        Assert.True(lives.GetProperty("turningDents").GetBoolean());
        Assert.Equal(JsonValueKind.Null, lives.GetProperty("steering").ValueKind);
        Assert.Equal(Number(drive, "side_N") * 0.112, Number(drive, "rodMoment_N_m"), 1e-9);
        Assert.Equal(0.1 * (Number(drive, "guide_N") + Number(drive, "piston_N")), Number(drive, "friction_N"), 1e-9);
        Assert.Equal([12.5, 14, 16], side.GetProperty("rods").EnumerateArray().Select(rod => Math.Round(Number(rod, "diameter_mm"), 9)));
        Assert.Equal(Number(side, "frictionAtWheel_N") / 363, Number(side, "breakaway_m_per_s2"), 1e-9);
        Assert.Equal(25, side.GetProperty("curve").GetArrayLength());
        Assert.Equal([false, true, true, true, true], front.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("canBeWaived").GetBoolean()));
        Assert.True(front.GetProperty("solved").GetBoolean());
    }

    [Fact] // half the swings last twice as far
    public async Task Mount_WithADutyOfOnesOwn_CountsThat()
    {
        JsonElement usual = (await Json()).GetProperty("lives"), own = (await Json("--per-km", "20", "--strokes-per-km", "40", "--steer", "13 deg")).GetProperty("lives");

        Assert.Equal(Number(usual, "turningLife_km") * 2 * 5 / 13, Number(own, "turningLife_km"), 1e-3);
        Assert.False(own.GetProperty("turningDents").GetBoolean());
        Assert.Equal(Number(usual, "sphericalLife_km") / 2, Number(own, "sphericalLife_km"), 1e-6);
    }

    [Fact]
    public async Task Mount_WithoutPointsAndMount_NamesBoth()
    {
        using SampleFolder sample = new();

        Assert.Equal(["car.axles.front.suspension", "struts.front.topMount"], await FaultPlaces("mount", sample.PathOf("kit.json")));
    }

    [Theory]
    [InlineData("must lie between 0.06 and 45 deg", "--steer", "60 deg")]
    [InlineData("is not a quantity", "--steer", "5")]
    [InlineData("must be a number from 0.01 to 10000", "--per-km", "0")]
    [InlineData("must lie between 1 and 200 mm", "--working", "0 mm")]
    [InlineData("--figure goes with --output.", "--figure", "tilt")]
    public async Task Mount_WronglyAsked_IsRefused(string said, params string[] options)
    {
        (int code, _, string error) = await Prompt.Run(["mount", Street, .. options]);

        Assert.Equal(1, code);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("side", "What pushes the rod aside, front")]
    [InlineData("tilt", "How far the strut tilts in its mount, front")]
    public async Task Mount_Output_WritesTheFigure(string figure, string title)
    {
        string file = Path.Combine(_folder, "mount.svg");

        (int code, string output, _) = await Prompt.Draw("mount", Street, "--figure", figure, "-o", file);

        Assert.Equal(0, code);
        Assert.Contains($"Figure: {file}", output.ReplaceLineEndings(""), StringComparison.Ordinal);
        Assert.Equal(title, XDocument.Load(file).Root!.Elements().First(element => element.Name.LocalName == "title").Value);
    }

    private static async Task<JsonElement> Json(params string[] options) =>
        (await Answer(0, ["mount", Street, .. options])).GetProperty("struts").GetProperty("front");
}
