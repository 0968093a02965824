using Bellowsmith.App.Boards;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.App;

/// <summary>The two questions about the damper on the board, without a browser.</summary>
public sealed class KitBoardTests
{
    private static readonly string _kit = ExampleFolder.PathOf("kits/ostrane-street.json");

    [Fact]
    public void Click_SlidReleasedUndone_IsOneStep()
    {
        KitBoard board = new(_kit);
        Assert.Equal(8, board.View().Click);
        board.Slide("click", 5.2);
        board.Slide("click", 4.9);
        board.Slide("click", 99);
        board.Release();
        Assert.Equal(15, board.View().Click);
        Assert.Equal(15, board.View().Ride!.Setting.Click);
        Assert.True(board.IsChanged);
        board.Choose("undo", "");
        Assert.Equal(8, board.View().Click);
        Assert.False(board.CanUndo);
    }

    [Fact]
    public void Asked_SlidAndTyped_IsNoStepToUndo()
    {
        KitBoard board = new(_kit);
        board.Slide("ratio", 0.6);
        board.Release();
        board.Type("speed", "36 km/h");
        board.Choose("road", "D");
        board.Choose("bump", "Kerb");
        Assert.Equal(new Asked(0.6, RoadClass.D, 10, BumpShape.Kerb, Asked.First.BumpSpeed_m_per_s), board.Asked);
        Assert.Null(board.Refused);
        Assert.False(board.CanUndo);
        Assert.False(board.IsChanged);
    }

    [Fact]
    public void Held_WithRideClosed_KeepsItsAnswerUntilReleased()
    {
        KitBoard board = new(_kit);
        RideResult ride = board.View().Ride!;
        DampingResult damping = board.View().Damping!;
        board.Choose("open", Questions.Damping);
        board.Slide("height", 80);
        Assert.Same(ride, board.View().Ride);
        Assert.NotSame(damping, board.View().Damping);
        Assert.Equal(0.080, board.View().Damping!.Case.Drive!.Height_m!.Value, 1e-9);
        board.Release();
        Assert.Equal(0.080, board.View().Ride!.Setting.Height_m!.Value, 1e-9);
    }

    [Fact] // the board settles a corner once and moves it; a study asked afresh must say the same
    public void Damping_AtAnotherHeightAndLoad_IsWhatTheStudySays()
    {
        KitBoard board = new(_kit);
        board.Choose("load", "four up, luggage");
        board.Type("height", "80 mm");
        DampingCase afresh = DampingCases.Of(
            board.Kit with { Rear = null, Front = board.Kit.Front! with { DriveHeight_m = 0.080 } }, new(Load: "four up, luggage"))[0];
        DampingResult expected = DampingStudy.Answer(afresh, 0.5), found = board.View().Damping!;
        Assert.Equal(new DampingWords(expected, board.Units).Answer(), new DampingWords(found, board.Units).Answer());
        Assert.Equal(expected.Case.Heights, found.Case.Heights);
        Assert.Equal(expected.Case.Loads, found.Case.Loads);
    }

    [Fact]
    public void TakeClick_WhereOneIsChosen_SetsIt()
    {
        KitBoard board = new(_kit);
        board.Choose("click", "");
        Assert.Equal(board.View().Damping!.Chosen!.Click, board.View().Setting.Click);
        Assert.True(board.CanUndo);
    }

    [Fact]
    public void Wheel_Closed_IsAnsweredWithoutItsFigure()
    {
        KitBoard board = new(_kit);
        BoardFrame closed = new(board);
        board.Choose("open", Questions.Wheel);

        Assert.Empty(closed.Wheel);
        Assert.StartsWith("The car's own", closed.Say["wheel.answer.0"], StringComparison.Ordinal);
        Assert.Equal("wheelCamber", Assert.Single(new BoardFrame(board).Wheel).Id);
    }

    [Fact]
    public void Look_AskedTwiceInAView_IsReckonedOnce()
    {
        KitBoard board = new(_kit);
        board.Choose("open", Questions.Touch);

        Assert.Same(board.View().Corner.Look, board.View().Corner.Look);
        Assert.NotNull(board.View().Corner.Look);
    }
}
