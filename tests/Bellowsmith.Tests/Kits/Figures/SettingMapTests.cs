using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Papers;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Figures;

/// <summary>A map as data and on paper: cells where the run has them, reasons where it has none, words that never lie on one another.</summary>
public sealed class SettingMapTests
{
    [Fact]
    public void Of_AWholeMap_HasTheRunsCellsInTheUnitsShown()
    {
        MapRun run = Run(MapVariable.Click, MapVariable.Height);
        SettingMap map = SettingMap.Of(run, DisplayUnits.Imperial);

        Assert.Equal((6, 6, 1), (map.X.Count, map.Y.Count, map.Stride));
        Assert.Equal(["0", "3", "6", "9", "12", "15"], map.X.Axis.OwnTicks!.Select(t => t.Label));
        Assert.Null(map.Y.Axis.OwnTicks);
        Assert.Equal(run.Question.Y.Values[2] / 0.0254, map.Y.Values[2], 1e-9);
        Assert.Equal(run.Value(3, 2), map.Values[2 * 6 + 3], 1e-6);
        Assert.Equal(36, map.Reasons.Sum(r => r.Cells.Length) + map.Values.Count(float.IsFinite));
        Assert.All(map.Reasons.SelectMany(r => r.Cells), cell => Assert.Equal(float.NaN, map.Values[cell]));
        Assert.Contains(map.Reasons, r => r.Sentence.StartsWith("Thread, ", StringComparison.Ordinal) && r.Sentence.EndsWith("of the map: the thread does not reach.", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AMapBeingDriven_ShowsEachCellAsTheCoarserOne()
    {
        MapRun run = new(Question(MapVariable.Speed, MapVariable.Height, 16));
        run.Advance(4, TestContext.Current.CancellationToken);
        SettingMap map = SettingMap.Of(run, DisplayUnits.Metric);

        Assert.Equal(8, map.Stride);
        Assert.Equal((float)run.Value(8, 8), map.Values[11 * 16 + 13]);
        Assert.Single(map.Values[(8 * 16 + 8)..(8 * 16 + 16)].Distinct());
        Assert.Equal(16 * 16, map.Reasons.Sum(r => r.Cells.Length) + map.Values.Count(float.IsFinite));
    }

    [Fact]
    public void Darkness_Rises_WithTheValue()
    {
        SettingMap map = SettingMap.Of(Run(MapVariable.Road, MapVariable.Speed), DisplayUnits.Metric);
        double[] darkness = [.. map.Values.Where(float.IsFinite).Order().Select(v => map.Darkness(v))];

        Assert.Equal(darkness.Order(), darkness);
        Assert.Equal((0.0, 1.0), (darkness[0], darkness[^1]));
        Assert.True(map.Levels.Count >= 4);
    }

    [Fact]
    public void Lines_OfAMapWithChoices_AreNone()
    {
        SettingMap map = SettingMap.Of(Run(MapVariable.Road, MapVariable.Speed), DisplayUnits.Metric);

        Assert.Equal(["A", "B", "C", "D", "E"], map.X.Axis.OwnTicks!.Select(t => t.Label));
        Assert.All(map.Levels, level => Assert.Empty(map.Lines(level)));
        Assert.Equal((-0.5, 4.5), (map.X.Axis.Low, map.X.Axis.High));
    }

    [Theory]
    [InlineData(MapVariable.Click, MapVariable.Height)]
    [InlineData(MapVariable.Speed, MapVariable.Road)]
    [InlineData(MapVariable.GaugePressure, MapVariable.Stop)]
    public void Write_AMap_LaysNoWordsOnOthers(MapVariable x, MapVariable y)
    {
        SettingMap map = SettingMap.Of(Run(x, y), DisplayUnits.Metric);
        byte[] svg = MapSvg.Write(map);
        XElement drawn = XElement.Parse(Encoding.UTF8.GetString(svg));
        (double Left, double Right, double Top, double Bottom, string Text)[] words =
            [.. drawn.Descendants().Where(e => e.Name.LocalName == "text").Select(e => (N(e, "x"), N(e, "x") + N(e, "textLength"), N(e, "y") - 0.7 * N(e, "font-size"), N(e, "y"), e.Value))];

        Assert.Equal(svg, MapSvg.Write(map));
        Assert.Contains(words, w => w.Text.StartsWith("this setting", StringComparison.Ordinal));
        Assert.All(map.Reasons, r => Assert.Contains(words, w => w.Text == r.Sentence));
        for (int k = 0; k < words.Length; k++)
            Assert.All(words[..k], w => Assert.False(
                w.Left < words[k].Right && words[k].Left < w.Right && w.Top < words[k].Bottom && words[k].Top < w.Bottom, $"{w.Text} on {words[k].Text}"));
    }

    [Fact]
    public void Patches_OfCellsApart_AreTwo() =>
        Assert.Equal((int[][])[[0, 1, 4], [11]], new MapReason("", "", [0, 1, 4, 11]).Patches(4).Select(p => p.Order().ToArray()));

    [Fact]
    public void Words_OfTheSetting_SayWhatLiesAside()
    {
        MapRun run = Run(MapVariable.Click, MapVariable.Height);
        MapWords words = new(run, DisplayUnits.Metric);
        IReadOnlyList<string> aside = new MapNeighbours(run, DisplayUnits.Metric).Sentences();
        (int column, int row) = words.HereCell()!.Value;
        string left = run.Value(column - 1, row).ToString("F2", CultureInfo.InvariantCulture);

        Assert.StartsWith($"One click aside: {left} m/s²", aside[0], StringComparison.Ordinal);
        Assert.Equal(3, aside.Count);
        Assert.StartsWith("Over all its neighbours it lies from ", aside[2], StringComparison.Ordinal);
        Assert.Equal("Everywhere a C road, 72 km/h, \"driver, half tank\", driven 7 s.", words.Shared());
        Assert.EndsWith(": the thread does not reach.", words.Cell(0, 1), StringComparison.Ordinal);
        Assert.Equal("", words.Cell(0, 6));
    }

    [Fact]
    public void DrivesAs_AnotherShadeOrPlaceOnTheAxes_IsTheSame()
    {
        MapQuestion question = Question(MapVariable.Click, MapVariable.Speed, 6);

        Assert.True(question.DrivesAs(question with { Show = RideQuantity.TyreLoad, Setting = new RideSetting(Click: 3), Road = question.Road with { Speed_m_per_s = 31 } }));
        Assert.False(question.DrivesAs(question with { Road = question.Road with { Surface = new RoadOfClass(RoadClass.D) } }));
        Assert.False(question.DrivesAs(question with { Setting = new RideSetting(Height_m: 0.08) }));
    }

    private static double N(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static MapRun Run(MapVariable x, MapVariable y) => new MapRun(Question(x, y, 6)).All(TestContext.Current.CancellationToken);

    private static MapQuestion Question(MapVariable x, MapVariable y, int count)
    {
        Kit kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));
        RideStrut strut = RideStruts.Of(kit, new StudyConditions())[0];
        return new MapQuestion(
            strut, [.. kit.Car.Loads.Select(load => strut.At(load, kit.Car))], MapAxis.Usual(x, strut, kit.Car, count)!, MapAxis.Usual(y, strut, kit.Car, count)!,
            RideQuantity.WeightedRms, new RoadQuestion(new RoadOfClass(RoadClass.C), 20, 7), new RideSetting());
    }
}
