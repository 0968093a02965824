using System.Buffers.Binary;
using System.Text.Json;
using Bellowsmith.App.Boards;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.App;

/// <summary>The map of settings on the board, without a browser: what is driven, taken, stopped and overtaken.</summary>
public sealed class MapBoardTests
{
    private readonly KitBoard _board = new(ExampleFolder.PathOf("kits/ostrane-street.json"));

    [Fact]
    public void Map_AtFirst_IsClicksAndHeightsOverTheAskedRoad()
    {
        MapQuestion map = _board.Map()!;

        Assert.Equal((MapVariable.Click, MapVariable.Height), (map.X.Variable, map.Y.Variable));
        Assert.Equal((16, 64), (map.X.Values.Count, map.Y.Values.Count));
        Assert.Equal(_board.Asked.Drive, map.Road);
        Assert.Equal((8.0, _board.View().Here.Height_m), (map.Here(MapVariable.Click), map.Here(MapVariable.Height)));
        Assert.Equal(7, _board.MapVariables.Count);
    }

    [Fact]
    public void Choose_AVariableThatIsTaken_ChangesPlaces()
    {
        _board.Choose("mapX", "Height");
        _board.Choose("mapShow", "tyreLoadRms_N");

        Assert.Equal(new MapAsked(MapVariable.Height, MapVariable.Click, RideQuantity.TyreLoad), _board.Asked.Map);
        Assert.False(_board.CanUndo);
    }

    [Fact]
    public void Cell_Taken_IsOneStepToUndo()
    {
        MapQuestion map = _board.Map()!;
        double before = _board.View().Here.Height_m;
        _board.Choose("cell", "11,30");

        Assert.Equal((11.0, map.Y.Values[30]), (_board.View().Click, _board.View().Here.Height_m));
        Assert.True(map.DrivesAs(_board.Map()!));
        _board.Choose("undo", "");
        Assert.Equal((8.0, before), (_board.View().Click, _board.View().Here.Height_m));
        Assert.False(_board.CanUndo);
    }

    [Fact]
    public void Cell_OfRoadAndLoad_IsAskedAndSet()
    {
        _board.Choose("mapX", "Road");
        _board.Choose("mapY", "Load");
        _board.Choose("cell", "3,1");

        Assert.Equal((RoadClass.D, _board.Kit.Car.Loads[1].Name), (_board.Asked.Road, _board.View().Setting.Load));
    }

    [Theory]
    [InlineData("GaugePressure", "Gauge pressure at load moves the car")]
    [InlineData("Stop", "A stop's length is a part of the damper document")]
    public void Cell_OfWhatThePageCannotSet_SaysSoAndSetsNothing(string variable, string words)
    {
        _board.Choose("mapY", variable);
        _board.Choose("cell", "2,3");

        Assert.Equal("cell", _board.Refused!.Value.Field);
        Assert.StartsWith(words, _board.Refused.Value.Words, StringComparison.Ordinal);
        Assert.False(_board.CanUndo);
    }

    [Theory]
    [InlineData("99,3")]
    [InlineData("-1,3")]
    [InlineData("3")]
    [InlineData("a,b")]
    public void Cell_ThatIsNone_SetsNothing(string cell)
    {
        _board.Choose("cell", cell);
        Assert.False(_board.CanUndo);
    }

    [Fact]
    public async Task Ask_AMap_IsShownInPiecesUntilItIsWhole()
    {
        List<JsonElement> shown = [];
        TaskCompletionSource whole = new();
        using MapDrive drive = Drive(shown, whole);
        drive.Ask(Few(), DisplayUnits.Metric);
        await whole.Task.WaitAsync(TestContext.Current.CancellationToken);

        Assert.True(shown.Count > 1);
        Assert.Equal(16 * 9, shown[0].GetProperty("settings").GetProperty("values")[1].GetInt32());
        Assert.Equal(new MapWords(new MapRun(Few()).All(TestContext.Current.CancellationToken), DisplayUnits.Metric).Answer(), Answer(shown[^1]));
    }

    [Fact]
    public async Task Ask_WhileDriving_EndsWithTheNewest()
    {
        List<JsonElement> shown = [];
        TaskCompletionSource whole = new();
        using MapDrive drive = Drive(shown, whole);
        MapQuestion few = Few(), last = few with { Road = few.Road with { Speed_m_per_s = 30 } };
        for (int speed = 15; speed < 30; speed++) drive.Ask(few with { Road = few.Road with { Speed_m_per_s = speed } }, DisplayUnits.Metric);
        drive.Ask(last, DisplayUnits.Metric);
        await whole.Task.WaitAsync(TestContext.Current.CancellationToken);

        Assert.Contains("108 km/h", shown[^1].GetProperty("say").GetProperty("map.shared").GetString(), StringComparison.Ordinal);
        Assert.Single(shown, s => s.GetProperty("say").GetProperty("map.whole").GetString() == "yes");
    }

    [Fact]
    public async Task StopOrGo_Twice_DrivesToTheEnd()
    {
        List<JsonElement> shown = [];
        TaskCompletionSource whole = new(), stopped = new();
        using MapDrive drive = Drive(shown, whole, stopped);
        drive.Ask(Few(), DisplayUnits.Metric);
        drive.StopOrGo();
        await stopped.Task.WaitAsync(TestContext.Current.CancellationToken);
        drive.StopOrGo();
        await whole.Task.WaitAsync(TestContext.Current.CancellationToken);

        Assert.Contains(shown, s => s.GetProperty("say").GetProperty("map.progress").GetString()!.StartsWith("Stopped: ", StringComparison.Ordinal));
    }

    private MapQuestion Few()
    {
        MapQuestion map = _board.Map()!;
        return map with { Y = map.Y with { Values = [.. map.Y.Values.Where((_, k) => k % 8 == 0).Append(map.Y.Values[^1])] }, Road = map.Road with { Time_s = 7 } };
    }

    private static MapDrive Drive(List<JsonElement> shown, TaskCompletionSource whole, TaskCompletionSource? stopped = null) => new(
        bytes =>
        {
            int length = BinaryPrimitives.ReadInt32LittleEndian(bytes);
            JsonElement frame = JsonDocument.Parse(bytes.AsMemory(4, length)).RootElement;
            shown.Add(frame);
            if (frame.GetProperty("say").GetProperty("map.whole").GetString() == "yes") whole.TrySetResult();
            if (frame.GetProperty("say").GetProperty("map.stop").GetString() == "Drive on") stopped?.TrySetResult();
            return Task.CompletedTask;
        },
        exception =>
        {
            whole.TrySetException(exception);
            return Task.CompletedTask;
        });

    private static string Answer(JsonElement frame) =>
        string.Concat(Enumerable.Range(0, BoardWords.Pieces).Select(k => frame.GetProperty("say").GetProperty($"map.answer.{k}").GetString()));
}
