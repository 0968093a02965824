using System.Text.Json;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.App;

/// <summary><c>ride</c> at the prompt: the contract's fields, its options, linear parts, exit codes and faults.</summary>
public sealed class RideCommandTests : IDisposable
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json";

    private readonly string _folder = Directory.CreateTempSubdirectory("ride").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Ride_OfTheDemo_HasTheContractsFields()
    {
        JsonElement front = (await Json(0, Street, "--road", "B", "--speed", "90 km/h")).GetProperty("front");

        foreach (string field in (string[])["rms_m_per_s2", "weightedRms_m_per_s2", "travelRms_mm", "tyreLoadRms_N", "stopContactsPerKm", "peakStopForce_N", "liftOffShare", "vdv_m_per_s175", "mtvv_m_per_s2"])
            Assert.Equal(JsonValueKind.Number, front.GetProperty(field).ValueKind);
        Assert.InRange(front.GetProperty("weightedRms_m_per_s2").GetDouble(), 0.3, 2);
        Assert.Contains(front.GetProperty("neighbours").EnumerateArray(), n => n.GetProperty("change").GetString() == "one click harder");
    }

    [Fact] // the rate of the other load would ask for another height: it must not be given one
    public async Task Ride_OfAnotherLoad_IsAtTheSameHeight()
    {
        JsonElement kit = await Json(0, Street, "--road", "B", "--speed", "90 km/h", "--seconds", "20");
        string height = kit.GetProperty("front").GetProperty("height_mm").GetDouble().ToString("R", System.Globalization.CultureInfo.InvariantCulture) + " mm";
        JsonElement loaded = await Json(0, Street, "--road", "B", "--speed", "90 km/h", "--seconds", "20", "--load", "four up, luggage", "--height", height);
        JsonElement beside = kit.GetProperty("front").GetProperty("neighbours").EnumerateArray().Single(n => n.GetProperty("change").GetString() == "four up, luggage");

        Assert.Equal(loaded.GetProperty("front").GetProperty("weightedRms_m_per_s2").GetDouble(), beside.GetProperty("weightedRms_m_per_s2").GetDouble(), 1e-9);
    }

    [Fact]
    public async Task Ride_SameSeed_IsTheSameToTheLastBit() => Assert.Equal(
        (await Json(0, Street, "--road", "C", "--speed", "80 km/h", "--seconds", "20")).GetRawText(),
        (await Json(0, Street, "--road", "C", "--speed", "80 km/h", "--seconds", "20")).GetRawText());

    [Fact]
    public async Task Ride_OnARoughRoad_MeetsTheStopAndSaysSo()
    {
        (int code, string output, _) = await Prompt.Run("ride", Street, "--road", "D", "--speed", "90 km/h", "--seconds", "30");

        Assert.Equal(0, code);
        Assert.Contains("the stop is touched", output, StringComparison.Ordinal);
        Assert.Contains("Drive tests belong off public roads", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ride_OverWaves_AnswersThemOnlyWhenAsked()
    {
        string[] road = [Street, "--road", "B", "--speed", "90 km/h", "--seconds", "7"];
        JsonElement[] waves = [.. (await Json(0, [.. road, "--response", "4 mm"])).GetProperty("front").GetProperty("response").EnumerateArray()];

        Assert.Equal(JsonValueKind.Null, (await Json(0, road)).GetProperty("front").GetProperty("response").ValueKind);
        Assert.Equal([2.0, 4.0, 8.0], waves.Select(wave => Math.Round(wave.GetProperty("amplitude_mm").GetDouble(), 9)).Distinct());
        Assert.All(waves, wave => Assert.InRange(wave.GetProperty("frequency_Hz").GetDouble(), 0.5, 25));
        Assert.All(waves, wave => Assert.True(wave.GetProperty("bodyTransmissibility").GetDouble() > 0));
    }

    [Theory]
    [InlineData("A", "On an A road")]
    [InlineData("B", "On a B road")]
    public async Task Ride_OnAClass_IsSaidAsOneSpeaks(string road, string words) =>
        Assert.Contains(words, (await Prompt.Run("ride", Street, "--road", road, "--speed", "80 km/h", "--seconds", "7")).Output, StringComparison.Ordinal);

    [Fact]
    public async Task Ride_OfLinearParts_NeedsNoLengths()
    {
        JsonElement front = (await Json(0, Linear("\"tyreRate\": \"160 N/mm\""), "--velocity-psd", "1.263309e-4", "--speed", "20 m/s")).GetProperty("front");

        Assert.Equal(0.354270, front.GetProperty("rms_m_per_s2").GetDouble(), 0.04);
        Assert.Equal(0, front.GetProperty("stopContactsPerKm").GetDouble());
        Assert.Equal(JsonValueKind.Null, front.GetProperty("gaugePressure_kPa").ValueKind);
    }

    [Fact] // so slow that the body does what the road does: (2π·v/L)²·h/2 = 7.8957e-3 m/s² at 2 m/s over 100 m and 1 m
    public async Task Ride_OverALongWaveSlowly_FollowsIt()
    {
        JsonElement front = (await Json(0, Linear("\"tyreRate\": \"160 N/mm\""), "--bump", "wave", "--bump-length", "100 m", "--bump-height", "1 m", "--speed", "2 m/s", "--seconds", "60")).GetProperty("front");

        Assert.Equal(7.8957e-3, front.GetProperty("greatestDown_m_per_s2").GetDouble(), 1e-4);
    }

    [Fact]
    public async Task Ride_OverAHumpFast_MeetsTheStopOnceAndSaysSo()
    {
        (int code, string output, _) = await Prompt.Run("ride", Street, "--bump", "round", "--speed", "30 km/h");

        Assert.Equal(0, code);
        Assert.Contains("Over a round hump 4 m long and 75.0 mm high at 30 km/h: the body is pushed up with at most", string.Join(' ', output.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Contains("the stop is touched once", string.Join(' ', output.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact] // a pothole written as a profile is the pothole
    public async Task Ride_OnAProfileOfABump_IsTheBump()
    {
        string profile = Path.Combine(_folder, "hole.csv");
        File.WriteAllText(profile, "distance [m],height [mm]\n0,0\n0.1,-50\n0.7,-50\n0.8,0\n60,0\n");
        string[] driven = ["--speed", "36 km/h", "--seconds", "10"];
        JsonElement hole = (await Json(0, [Street, "--bump", "pothole", .. driven])).GetProperty("front"), measured = (await Json(0, [Street, "--profile", profile, .. driven])).GetProperty("front");

        foreach (string figure in (string[])["rms_m_per_s2", "tyreLoadRms_N", "greatestUp_m_per_s2"])
            Assert.Equal(hole.GetProperty(figure).GetDouble(), measured.GetProperty(figure).GetDouble(), 1e-9 * Math.Abs(hole.GetProperty(figure).GetDouble()));
    }

    [Fact]
    public async Task Ride_AProfileThatRunsBack_NamesTheRow()
    {
        string profile = Path.Combine(_folder, "back.csv");
        File.WriteAllText(profile, "distance [m],height [mm]\n0,0\n2,10\n1,0\n");
        (int code, string output, string error) = await Prompt.Run("ride", Street, "--profile", profile, "--speed", "36 km/h", "--json");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains("more than 2", error, StringComparison.Ordinal);
    }

    [Fact] // the contract: a bare coefficient has no stops, however far the wheel moves
    public async Task Ride_ADamperGivenByItsCoefficient_HasNoStops()
    {
        string path = Path.Combine(_folder, "bare.json");
        File.WriteAllText(path, File.ReadAllText(ExampleFolder.PathOf("kits/ostrane-street.json"))
            .Replace("\"../dampers/front-street.json\"", "{ \"coefficient\": \"3000 N*s/m\" }", StringComparison.Ordinal)
            .Replace("\"../", $"\"{ExampleFolder.Root}/", StringComparison.Ordinal));
        JsonElement front = (await Json(0, path, "--height", "73.5 mm", "--road", "D", "--speed", "90 km/h", "--seconds", "30")).GetProperty("front");

        Assert.Equal(0, front.GetProperty("stopContactsPerKm").GetDouble());
        Assert.Equal(0, front.GetProperty("peakStopForce_N").GetDouble());
        Assert.DoesNotContain(front.GetProperty("notes").EnumerateArray(), n => n.GetProperty("about").GetString() == "ends");
    }

    [Fact] // 3 bar is all this spring may have; the load takes 3.6
    public async Task Ride_AboveTheSpringsGreatestGaugePressure_SaysNotToSetIt()
    {
        string path = Path.Combine(_folder, "weak.json"), spring = Path.Combine(_folder, "weak-spring.json");
        File.WriteAllText(spring, File.ReadAllText(ExampleFolder.PathOf("springs/single-152.json"))
            .Replace("\"maxGaugePressure\": \"7 bar\"", "\"maxGaugePressure\": \"3 bar\"", StringComparison.Ordinal)
            .Replace("\"single-152.csv\"", $"\"{ExampleFolder.Root}/springs/single-152.csv\"", StringComparison.Ordinal)
            .Replace("\"../", $"\"{ExampleFolder.Root}/", StringComparison.Ordinal));
        File.WriteAllText(path, File.ReadAllText(ExampleFolder.PathOf("kits/ostrane-street.json"))
            .Replace("\"../springs/single-152.json\"", "\"weak-spring.json\"", StringComparison.Ordinal)
            .Replace("\"../", $"\"{ExampleFolder.Root}/", StringComparison.Ordinal));
        JsonElement front = (await Json(0, path, "--height", "74 mm", "--road", "B", "--speed", "90 km/h", "--seconds", "7")).GetProperty("front");

        Assert.InRange(front.GetProperty("gaugePressure_kPa").GetDouble(), 300, 700);
        Assert.Contains(front.GetProperty("notes").EnumerateArray(), n => n.GetProperty("text").GetString()!.Contains("more than the spring's greatest gauge pressure", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Ride_ClickThatWasNotMeasured_SaysSoAndExits3()
    {
        JsonElement front = (await Json(3, Street, "--road", "B", "--speed", "90 km/h", "--click", "44")).GetProperty("front");

        Assert.Contains("click 44 was not measured", front.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, front.GetProperty("rms_m_per_s2").ValueKind);
    }

    [Fact]
    public async Task Ride_WithoutATyreRate_NamesIt()
    {
        (int code, string output, string error) = await Prompt.Run("ride", Linear("\"track\": \"1500 mm\""), "--road", "B", "--speed", "90 km/h", "--json");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains("tyreRate", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--speed", "90 km/h")]
    [InlineData("--road", "B", "--velocity-psd", "1e-4", "--speed", "90 km/h")]
    [InlineData("--road", "B")]
    [InlineData("--road", "B", "--bump", "round", "--speed", "90 km/h")]
    [InlineData("--road", "B", "--bump-length", "4 m", "--speed", "90 km/h")]
    [InlineData("--bump", "square", "--speed", "90 km/h")]
    [InlineData("--bump", "round", "--bump-length", "100 mm", "--speed", "90 km/h")]
    [InlineData("--bump", "flat-top", "--bump-ramp", "3 m", "--speed", "90 km/h")]
    [InlineData("--road", "B", "--speed", "90 km/h", "--seconds", "2")]
    public async Task Ride_WronglyAsked_IsUsage(params string[] arguments) =>
        Assert.Equal(1, (await Prompt.Run(["ride", Street, .. arguments])).ExitCode);

    private string Linear(string axle)
    {
        string path = Path.Combine(_folder, "kit.json");
        File.WriteAllText(path, $$"""
            {
              "bellowsmith": "kit/1", "name": "Linear",
              "car": { "bellowsmith": "car/1", "name": "Bench", "loads": { "one": { "leftFront": "276 kg", "rightFront": "276 kg", "leftRear": "276 kg", "rightRear": "276 kg" } },
                       "axles": { "front": { "unsprungMass": "36 kg", "motionRatio": 1, {{axle}} } } },
              "struts": { "front": { "spring": { "rate": "16 N/mm" }, "damper": { "coefficient": "980 N*s/m" } } }
            }
            """);
        return path;
    }

    private static async Task<JsonElement> Json(int expected, params string[] arguments) =>
        (await JsonReading.Answer(expected, ["ride", .. arguments])).GetProperty("struts");
}
