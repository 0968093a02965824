using System.Globalization;
using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary><c>search</c> at the prompt: its choices are rides, and where there is none it says what to order.</summary>
public sealed class SearchCommandTests : IDisposable
{
    private const string Street = "examples/fenwright/kits/ostrane-street.json";

    private readonly string _folder = Directory.CreateTempSubdirectory("search").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Search_OfTheKitsOwnParts_AnswersWithRides()
    {
        JsonElement search = await JsonReading.Answer(0, "search", Street, "--shelf", _folder, "--seconds", "7");
        JsonElement front = search.GetProperty("front");

        Assert.InRange(front.GetArrayLength(), 2, 9);
        Assert.Equal(JsonValueKind.Null, search.GetProperty("order").ValueKind);
        JsonElement choice = front[front.GetArrayLength() / 2];
        JsonElement ride = (await JsonReading.Answered("ride", Street, "--road", "C", "--speed", "80km/h", "--seconds", "7",
            "--height", Text(choice, "height_mm") + " mm", "--click", Text(choice, "click"))).Answer.GetProperty("struts").GetProperty("front");
        foreach (string name in (string[])["weightedRms_m_per_s2", "tyreLoadRms_N", "stopContactsPerKm", "height_mm", "gaugePressure_kPa"])
            Assert.Equal(ride.GetProperty(name).GetDouble(), choice.GetProperty(name).GetDouble());
        Assert.Equal("Single 152", choice.GetProperty("spring").GetString());
        Assert.StartsWith("Single 152 at ", choice.GetProperty("sentence").GetString(), StringComparison.Ordinal);
        Assert.NotEqual(JsonValueKind.Null, choice.GetProperty("worstNeighbour").GetProperty("change").ValueKind);
        Assert.True(search.GetProperty("evaluated").GetInt32() > 100);
        Assert.True(search.GetProperty("seconds").GetDouble() > 0);
    }

    [Fact]
    public async Task Search_WhereNothingKeepsTheLimits_SaysWhatToOrder()
    {
        JsonElement search = await JsonReading.Answer(3, "search", Street, "--seconds", "7", "--limit", "weightedRms=1.5", "--limit", "stopContactsPerKm=1");
        JsonElement order = search.GetProperty("order");

        Assert.Equal(0, search.GetProperty("front").GetArrayLength());
        Assert.StartsWith("None of ", search.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.True(search.GetProperty("nearest").GetProperty("weightedRms_m_per_s2").GetDouble() > 1.5 || search.GetProperty("nearest").GetProperty("stopContactsPerKm").GetDouble() > 1);
        Assert.True(order.GetProperty("weightedRms_m_per_s2").GetDouble() <= 1.5);
        Assert.True(order.GetProperty("stopContactsPerKm").GetDouble() <= 1);
        Assert.True(order.GetProperty("springRate_N_per_mm").GetDouble() > 0);
        Assert.Equal(
            order.GetProperty("damperLongest_mm").GetDouble() - order.GetProperty("damperShortest_mm").GetDouble(), order.GetProperty("damperStroke_mm").GetDouble(), 1e-9);
        Assert.Equal(5, order.GetProperty("damperForces").GetArrayLength());
    }

    [Fact]
    public async Task Search_WithAFaultyDocumentOnTheShelf_LeavesItOutByName()
    {
        File.WriteAllText(Path.Combine(_folder, "half-written.json"), "{ \"bellowsmith\": \"air-spring/1\", \"name\": \"Half\" }");
        (int code, string output, _) = await Prompt.Run("search", Street, "--shelf", _folder, "--seconds", "7");

        Assert.Equal(0, code);
        Assert.Contains("half-written.json", output, StringComparison.Ordinal);
        Assert.Contains("Single 152 at ", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Search_OfAStrutWithoutAir_IsAFault()
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
        (int code, string output, string error) = await Prompt.Run("search", kit, "--json");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains("No air spring", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "--limit", "beauty=1")]
    [InlineData(1, "--limit", "stopContactsPerKm")]
    [InlineData(1, "--limit", "stopContactsPerKm=few")]
    [InlineData(1, "--limit", "weightedRms=-1")]
    [InlineData(1, "--road", "C", "--bump", "round")]
    [InlineData(1, "--strut", "middle")]
    [InlineData(2, "--shelf", "nowhere")]
    public async Task Search_WronglyAsked_SaysSo(int expected, params string[] arguments) =>
        Assert.Equal(expected, (await Prompt.Run(["search", Street, .. arguments])).ExitCode);

    private static string Text(JsonElement choice, string name) => choice.GetProperty(name).GetDouble().ToString("R", CultureInfo.InvariantCulture);
}
