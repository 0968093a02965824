using System.Text.Json;

namespace Bellowsmith.Tests.App;

/// <summary>What a command answers to <c>--json</c>, read back.</summary>
internal static class JsonReading
{
    /// <summary>The one object of a run that writes nothing else, and its exit code.</summary>
    public static async Task<(int Code, JsonElement Answer)> Answered(params string[] arguments)
    {
        (int code, string output, string error) = await Prompt.Run([.. arguments, "--json"]);
        Assert.Empty(error);
        return (code, JsonDocument.Parse(output).RootElement);
    }

    /// <summary>The same where the exit code is the expected one.</summary>
    public static async Task<JsonElement> Answer(int expected, params string[] arguments)
    {
        (int code, JsonElement answer) = await Answered(arguments);
        Assert.True(code == expected, answer.ToString());
        return answer;
    }

    /// <summary>The faults of a run that answers nothing else.</summary>
    public static async Task<JsonElement[]> Faults(params string[] arguments)
    {
        (int code, string output, string error) = await Prompt.Run([.. arguments, "--json"]);
        Assert.Equal((2, ""), (code, output));
        return [.. JsonDocument.Parse(error).RootElement.EnumerateArray()];
    }

    /// <summary>Where they lie.</summary>
    public static async Task<string?[]> FaultPlaces(params string[] arguments) =>
        [.. (await Faults(arguments)).Select(fault => fault.GetProperty("where").GetString())];

    public static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();
}
