using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Kits.Studies.Damping;

namespace Bellowsmith.Tests.Kits.Studies.Dyno;

public sealed class DynoStudyTests
{
    [Fact]
    public void Answer_LinearClicks_ReadsTheForcesAtPublishedSpeeds()
    {
        var answer = DynoStudy.Answer(Unit(DampingTests.Rows(2000, 1000)));

        Assert.Equal([0, 1], answer.Clicks.Select(click => click.Click));
        Assert.Equal([100, 260, 520, 1040, null], answer.Clicks[0].Forces.Select(force => force.Rebound_N is { } n ? Math.Round(n, 9) : (double?)null));
        Assert.Equal(1, answer.Clicks[0].Forces[0].Asymmetry!.Value, 1e-9);
    }

    [Fact]
    public void Answer_AnotherUnit_IsComparedWhereBothWereMeasured()
    {
        var answer = DynoStudy.Answer(Unit(DampingTests.Rows(2000, 1000)), other: Unit(DampingTests.Rows(2100)));

        Assert.Equal(8, answer.Differences.Count);
        Assert.All(answer.Differences, d => Assert.Equal(0.05, d.Share!.Value, 1e-9));
        Assert.Contains("+5.0 %", new DynoWords(answer, DisplayUnits.Metric).Compared(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_ClickThatWasNotMeasured_SaysWhichWere()
    {
        var answer = DynoStudy.Answer(Unit(DampingTests.Rows(2000, 1000)), click: 7);

        Assert.Empty(answer.Clicks);
        Assert.StartsWith("That click was not measured. The dyno measured 2 clicks from 0 to 1", new DynoWords(answer, DisplayUnits.Metric).Answer(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_CrossedSigns_IsAFaultThatNamesTheRows()
    {
        var rows = DampingTests.Rows(2000, 1000).Select(p => p.Click == 1 ? p with { Force_N = -p.Force_N } : p).ToArray();

        var fault = Assert.Single(Assert.Throws<FaultsException>(() => DynoStudy.Answer(Unit(rows))).Faults);

        Assert.Equal(("d.csv", "row 3"), (fault.File, fault.Where));
    }

    [Fact]
    public void Answer_OneClickTooShort_RunsOnTheOthersAndSaysSo()
    {
        var rows = DampingTests.Rows(3000, 2000, 1000).Where(p => p.Click != 1 || p.Velocity_m_per_s > -0.04).ToArray();
        var answer = DynoStudy.Answer(Unit(rows));

        Assert.Equal([0, 2], answer.Clicks.Select(click => click.Click));
        var notes = new DynoWords(answer, DisplayUnits.Metric).Notes().ToArray();
        Assert.Contains(notes, note => note is { About: "left out" } && note.Text.Contains("click 1", StringComparison.Ordinal));
        Assert.Contains(notes, note => note.Text.StartsWith("Not measured, or left out: 1.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(-1, true)]
    [InlineData(1, false)]
    public void Notes_StrokesThatMayBeSwapped_AskForTheSign(double stroke, bool asks)
    {
        var rows = DampingTests.Rows(2000, 1000).Select(p => p.Velocity_m_per_s * stroke > 0 ? p with { Force_N = 1.5 * p.Force_N } : p).ToArray();
        var notes = new DynoWords(DynoStudy.Answer(Unit(rows)), DisplayUnits.Metric).Notes();

        Assert.Equal(asks, notes.Any(note => note.About == "sign"));
    }

    [Fact]
    public void Answer_NothingSound_IsAFault() => Assert.Contains(
        Assert.Throws<FaultsException>(() => DynoStudy.Answer(Unit([new(0, 0.1, 100, null, null, 2)]))).Faults,
        fault => fault.Found.Contains("fewer than two sound speeds", StringComparison.Ordinal));

    private static DynoUnit Unit(DynoPoint[] rows) => new(DampingTests.Part, new DynoPoints(rows, GasIn: false));
}
