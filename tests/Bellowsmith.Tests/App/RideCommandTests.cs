using System.Text.Json;

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

    [Fact]
    public async Task Ride_OfLinearParts_NeedsNoLengths()
    {
        JsonElement front = (await Json(0, Linear("\"tyreRate\": \"160 N/mm\""), "--velocity-psd", "1.263309e-4", "--speed", "20 m/s")).GetProperty("front");

        Assert.Equal(0.354270, front.GetProperty("rms_m_per_s2").GetDouble(), 0.04);
        Assert.Equal(0, front.GetProperty("stopContactsPerKm").GetDouble());
        Assert.Equal(JsonValueKind.Null, front.GetProperty("gaugePressure_kPa").ValueKind);
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

    private static async Task<JsonElement> Json(int expected, params string[] arguments)
    {
        (int code, string output, string error) = await Prompt.Run(["ride", .. arguments, "--json"]);
        Assert.True(code == expected, error + output);
        return JsonDocument.Parse(output).RootElement.GetProperty("struts");
    }
}
