using System.Globalization;
using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary><c>gauge</c> at the prompt: the contract's fields on a published trial, verdicts, exit codes and faults.</summary>
public sealed class GaugeCommandTests : IDisposable
{
    /// <summary>Ten parts, three appraisers, three trials, as published [Measurement Systems Analysis 2010].</summary>
    private static readonly double[][] _published =
    [
        [0.29, 0.41, 0.64, 0.08, 0.25, 0.07, 0.04, -0.11, -0.15], [-0.56, -0.68, -0.58, -0.47, -1.22, -0.68, -1.38, -1.13, -0.96],
        [1.34, 1.17, 1.27, 1.19, 0.94, 1.34, 0.88, 1.09, 0.67], [0.47, 0.50, 0.64, 0.01, 1.03, 0.20, 0.14, 0.20, 0.11],
        [-0.80, -0.92, -0.84, -0.56, -1.20, -1.28, -1.46, -1.07, -1.45], [0.02, -0.11, -0.21, -0.20, 0.22, 0.06, -0.29, -0.67, -0.49],
        [0.59, 0.75, 0.66, 0.47, 0.55, 0.83, 0.02, 0.01, 0.21], [-0.31, -0.20, -0.17, -0.63, 0.08, -0.34, -0.46, -0.56, -0.49],
        [2.26, 1.99, 2.01, 1.80, 2.12, 2.19, 1.77, 1.45, 1.87], [-1.36, -1.25, -1.31, -1.68, -1.62, -1.50, -1.49, -1.77, -2.16],
    ];

    private readonly string _folder = Directory.CreateTempSubdirectory("gauge").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Gauge_PublishedTrialByAnova_IsAsPublished()
    {
        JsonElement answer = await Json(0, Published(), "--method", "anova");

        Near(answer, "repeatability", 0.19993318, 1e-8);
        Near(answer, "reproducibility", 0.22683752, 1e-8);
        Near(answer, "gaugeRr", 0.30237152, 1e-8);
        Near(answer, "partToPart", 1.04232749, 1e-8);
        Near(answer, "total", 1.08529956, 1e-8);
        Near(answer, "gaugeRrPercent", 27.8606509, 1e-7);
        Assert.Equal(4, answer.GetProperty("distinctCategories").GetInt32());
        Assert.True(answer.GetProperty("interactionPooled").GetBoolean());
    }

    [Fact]
    public async Task Gauge_PublishedTrialByRange_IsAsPublished()
    {
        JsonElement answer = await Json(0, Published(), "--method", "range");

        Near(answer, "repeatability", 0.20185667, 1e-8);
        Near(answer, "reproducibility", 0.22966703, 1e-8);
        Near(answer, "partToPart", 1.10459556, 1e-8);
        Assert.Equal(5, answer.GetProperty("distinctCategories").GetInt32());
    }

    [Fact]
    public async Task Gauge_RowsInAnyOrder_IsTheSame()
    {
        string[] lines = File.ReadAllLines(Published());
        string shuffled = Written("shuffled.csv", [lines[0], .. lines.Skip(1).Reverse()]);

        Assert.Equal((await Json(0, Published())).GetRawText(), (await Json(0, shuffled)).GetRawText());
    }

    [Fact]
    public async Task Gauge_OfTheExample_JudgesByTheTolerance()
    {
        (int code, string output, _) = await Prompt.Run("gauge", "examples/fenwright/measured/gauge-trial.csv", "--tolerance", "0.03 cm");

        Assert.Equal(0, code);
        Assert.Contains("The gauge takes 16.9 % of the tolerance.", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gauge_ConstantReadings_SaysWhyAndExits3()
    {
        string constant = Written("constant.csv", ["part,appraiser,trial,value", .. Cells((_, _, _) => 1.0)]);

        JsonElement answer = await Json(3, constant);

        Assert.Contains("Every reading is the same", answer.GetProperty("answer").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("gaugeRrPercent").ValueKind);
    }

    [Fact]
    public async Task Gauge_MissingAndDoubledCells_AreNamed()
    {
        string[] lines = File.ReadAllLines(Published());
        string broken = Written("broken.csv", [.. lines[..^1], lines[1]]);

        string?[] told = await JsonReading.FaultPlaces("gauge", broken);

        Assert.Contains("part 10, appraiser C, trial 3", told);
        Assert.Contains(told, where => where!.StartsWith("row 91", StringComparison.Ordinal));
    }

    private static void Near(JsonElement answer, string field, double expected, double tolerance) =>
        Assert.Equal(expected, answer.GetProperty(field).GetDouble(), tolerance);

    private string Published() => Written("published.csv", ["part,appraiser,trial,value", .. Cells((p, a, t) => _published[p][3 * a + t])]);

    private static IEnumerable<string> Cells(Func<int, int, int, double> value) =>
        from p in Enumerable.Range(0, 10)
        from a in Enumerable.Range(0, 3)
        from t in Enumerable.Range(0, 3)
        select string.Create(CultureInfo.InvariantCulture, $"{p + 1},{"ABC"[a]},{t + 1},{value(p, a, t)}");

    private string Written(string name, IEnumerable<string> lines)
    {
        string path = Path.Combine(_folder, name);
        File.WriteAllLines(path, lines);
        return path;
    }

    private static Task<JsonElement> Json(int expected, params string[] arguments) => JsonReading.Answer(expected, ["gauge", .. arguments]);
}
