using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary><c>clicks</c> at the prompt: the contract's fields, verdicts, exit codes and faults.</summary>
public sealed class ClicksCommandTests : IDisposable
{
    private const string Clicks = "examples/fenwright/measured/front-street-clicks.csv";

    private readonly string _folder = Directory.CreateTempSubdirectory("clicks").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Clicks_OfTheExample_ShowsTheWeakClickToo()
    {
        JsonElement answer = await Json(0, Clicks);

        Assert.Equal(7, answer.GetProperty("steps").GetArrayLength());
        Assert.All(answer.GetProperty("steps").EnumerateArray(), step => Assert.Equal("distinct", step.GetProperty("verdict").GetString()));
        Assert.Equal((0, 7), (answer.GetProperty("usableFrom").GetInt32(), answer.GetProperty("usableTo").GetInt32()));
    }

    [Fact]
    public async Task Clicks_WithAWantedStep_EndsTheRangeAtTheWeakClick()
    {
        JsonElement answer = await Json(0, Clicks, "--wanted", "15 N");

        Assert.Equal("smaller than wanted", answer.GetProperty("steps")[5].GetProperty("verdict").GetString());
        Assert.Equal((0, 5), (answer.GetProperty("usableFrom").GetInt32(), answer.GetProperty("usableTo").GetInt32()));
    }

    [Fact]
    public async Task Clicks_Unblocked_SaysWhatWouldWronglyFail()
    {
        (int code, string output, _) = await Prompt.Run("clicks", Clicks, "--unblocked");

        Assert.Equal(0, code);
        Assert.Contains("5 to 6 would wrongly fail", string.Join(' ', output.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory] // the rear dyno counts from open: click 0 must be its hardest all the same
    [InlineData("examples/fenwright/dampers/front-street.json")]
    [InlineData("examples/fenwright/dampers/rear-street.json")]
    public async Task Clicks_OfADamper_FollowItsConventions(string damper)
    {
        JsonElement answer = await Json(0, damper);

        Assert.Equal(15, answer.GetProperty("steps").GetArrayLength());
        Assert.All(answer.GetProperty("steps").EnumerateArray(), step => Assert.InRange(step.GetProperty("step_N").GetDouble(), -200, 0));
    }

    [Fact]
    public async Task Clicks_InPoundsForce_AreInNewtons()
    {
        JsonElement answer = await Json(0, File("click;run;value [lbf]\n0;a;100\n1;a;90\n0;b;101\n1;b;90\n0;c;99;\n1;c;89\n".Replace("99;", "99", StringComparison.Ordinal)));

        Assert.Equal(-10.333333 * 4.4482216152605, answer.GetProperty("steps")[0].GetProperty("step_N").GetDouble(), 1e-4);
    }

    [Theory]
    [InlineData("click,run,value [N]\n0,a,100\n1,a,90\n", "several")]
    [InlineData("click,run,value [N]\n0,a,100\n0,b,101\n", "neighbours")]
    [InlineData("click,run,value [N]\n0,a,100\n1,a,90\n0,b,100\n1,b,90\n", "repeats to the last digit")]
    public async Task Clicks_ThatCanShowNothing_SayWhyAndExit3(string text, string why)
    {
        JsonElement answer = await Json(3, File(text));

        string said = answer.GetProperty("answer").GetString()!;
        Assert.Contains(why is "several" ? "at least 3 runs" : why, said, StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("usableFrom").ValueKind);
    }

    [Theory]
    [InlineData("click,run,value [N]\n0.5,a,1\n", "row 2, column click")]
    [InlineData("click,run,value [mm]\n0,a,1\n", "header, column value")]
    [InlineData("click,run,value [N]\n0,a,\n", "row 2, column value [N]")]
    [InlineData("click,run\n0,a\n", "header")]
    public async Task Clicks_BadFile_NamesThePlace(string text, string where)
    {
        Assert.Contains(where, await JsonReading.FaultPlaces("clicks", File(text)));
    }

    private string File(string text)
    {
        string path = Path.Combine(_folder, "clicks.csv");
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    private static Task<JsonElement> Json(int expected, params string[] arguments) => JsonReading.Answer(expected, ["clicks", .. arguments]);
}
