using System.Globalization;
using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary><c>map</c> at the prompt: its cells are rides, to the last bit, and what cannot be driven says why.</summary>
public sealed class MapCommandTests : IDisposable
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json";

    private readonly string _folder = Directory.CreateTempSubdirectory("map").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("click", "height", "weightedRms_m_per_s2", "--road C --speed 80km/h")]
    [InlineData("gauge-pressure", "stop", "peakStopForce_N", "--road D --speed 90km/h")]
    [InlineData("speed", "load", "stopContactsPerKm", "--road D --speed 80km/h")]
    [InlineData("height", "speed", "greatestTravel_mm", "--bump round --speed 80km/h --seconds 8")]
    public async Task Map_EachCell_IsTheRideToTheLastBit(string x, string y, string show, string road)
    {
        string[] driven = [.. road.Split(' '), "--seconds", "8"];
        if (road.Contains("--seconds", StringComparison.Ordinal)) driven = road.Split(' ');
        JsonElement map = await JsonReading.Answer(0, ["map", Street, "--x", x, "--y", y, "--show", show, "--grid", "5x4", .. driven]);

        int compared = 0;
        foreach ((int column, int row) in new[] { (0, 0), (2, 1), (3, 2), (4, 2), (1, 0), (0, 2) })
        {
            if (row >= map.GetProperty("cells").GetArrayLength() || map.GetProperty("cells")[row][column].ValueKind == JsonValueKind.Null) continue;
            string[] at = [.. At(map.GetProperty("x"), column), .. At(map.GetProperty("y"), row)];
            string[] rest = at.Contains("--speed") ? [.. driven.Where((_, k) => driven[k] != "--speed" && (k == 0 || driven[k - 1] != "--speed"))] : driven;
            JsonElement ride = (await JsonReading.Answered(["ride", Street, .. rest, .. at])).Answer.GetProperty("struts").GetProperty("front");
            Assert.Equal(ride.GetProperty(show).GetDouble(), map.GetProperty("cells")[row][column].GetDouble());
            compared++;
        }

        Assert.True(compared >= 2);
    }

    [Fact]
    public async Task Map_WhereNothingStands_IsNullWithTheReason()
    {
        JsonElement map = await JsonReading.Answer(0, "map", Street, "--x", "click", "--y", "height", "--grid", "3x6", "--road", "B", "--speed", "80km/h", "--seconds", "7");

        Assert.Equal(["0", "8", "15"], map.GetProperty("x").GetProperty("values").EnumerateArray().Select(v => v.GetRawText()));
        Assert.Equal(6, map.GetProperty("cells").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, map.GetProperty("cells")[0][0].ValueKind);
        Assert.NotEmpty(map.GetProperty("reasons")[0][0].GetString()!);
        Assert.Equal(JsonValueKind.Null, map.GetProperty("reasons")[3][0].ValueKind);
        Assert.Equal(JsonValueKind.Number, map.GetProperty("cells")[3][0].ValueKind);
    }

    [Fact]
    public async Task Map_WrittenAsCsv_HasOneRowACell()
    {
        string file = Path.Combine(_folder, "map.csv");
        (int code, string output, _) = await Prompt.Run("map", Street, "--x", "road", "--y", "load", "--road", "B", "--speed", "80km/h", "--seconds", "7", "-o", file);

        string[] lines = File.ReadAllLines(file);
        Assert.Equal(0, code);
        Assert.Equal("road,load,weightedRms_m_per_s2,reason", lines[0]);
        Assert.Equal(1 + 5 * 2, lines.Length);
        Assert.StartsWith("A,\"driver, half tank\",", lines[1], StringComparison.Ordinal);
        Assert.True(double.Parse(lines[5].Split(',')[^2], CultureInfo.InvariantCulture) > double.Parse(lines[1].Split(',')[^2], CultureInfo.InvariantCulture));
        Assert.Contains("at this setting. It is least", string.Join(' ', output.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Map_WrittenAsSvg_IsTheMapWithItsSentence()
    {
        string file = Path.Combine(_folder, "map.svg");
        (int code, _, _) = await Prompt.Draw("map", Street, "--x", "click", "--y", "height", "--grid", "4x5", "--road", "B", "--speed", "80km/h", "--seconds", "7", "-o", file);

        string svg = File.ReadAllText(file);
        Assert.Equal(0, code);
        Assert.Contains("Weighted acceleration over click from closed and spring height at drive", svg, StringComparison.Ordinal);
        Assert.Contains("at this setting. It is least", svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--x", "click", "--y", "click", "--road", "B", "--speed", "80km/h")]
    [InlineData("--x", "click", "--y", "height", "--click", "4", "--road", "B", "--speed", "80km/h")]
    [InlineData("--x", "road", "--y", "height", "--bump", "round", "--speed", "80km/h")]
    [InlineData("--x", "click", "--y", "height", "--grid", "1x9", "--road", "B", "--speed", "80km/h")]
    [InlineData("--x", "click", "--y", "height", "--show", "beauty", "--road", "B", "--speed", "80km/h")]
    [InlineData("--x", "click", "--y", "height", "-o", "map.pdf", "--road", "B", "--speed", "80km/h")]
    public async Task Map_WronglyAsked_IsUsage(params string[] arguments) =>
        Assert.Equal(1, (await Prompt.Run(["map", Street, .. arguments])).ExitCode);

    [Fact]
    public async Task Map_OfALinearStrut_HasNoHeightToShow()
    {
        string kit = Path.Combine(_folder, "kit.json");
        File.WriteAllText(kit, """
            {
              "bellowsmith": "kit/1", "name": "Linear",
              "car": { "bellowsmith": "car/1", "name": "Bench", "loads": { "one": { "leftFront": "276 kg", "rightFront": "276 kg", "leftRear": "276 kg", "rightRear": "276 kg" } },
                       "axles": { "front": { "unsprungMass": "36 kg", "motionRatio": 1, "tyreRate": "160 N/mm" } } },
              "struts": { "front": { "spring": { "rate": "16 N/mm" }, "damper": { "coefficient": "980 N*s/m" } } }
            }
            """);
        (int code, string output, string error) = await Prompt.Run("map", kit, "--x", "click", "--y", "height", "--road", "B", "--speed", "80km/h", "--json");
        JsonElement map = await JsonReading.Answer(0, "map", kit, "--x", "speed", "--y", "road", "--grid", "3x3", "--road", "B", "--speed", "80km/h", "--seconds", "7");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains("--x click", error, StringComparison.Ordinal);
        Assert.Contains("--y height", error, StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Number, map.GetProperty("cells")[0][0].ValueKind);
    }

    private static string[] At(JsonElement axis, int at)
    {
        string name = axis.GetProperty("name").GetString()!, unit = axis.GetProperty("unit").GetString()!;
        JsonElement value = axis.GetProperty("values")[at];
        string text = value.ValueKind == JsonValueKind.String ? value.GetString()! : value.GetDouble().ToString("R", CultureInfo.InvariantCulture);
        return [name == "gaugePressure" ? "--gauge-pressure" : $"--{name}", unit.Length > 0 ? $"{text} {unit}" : text];
    }

    // Null where the kit's other strut may not stand at the setting.
}
