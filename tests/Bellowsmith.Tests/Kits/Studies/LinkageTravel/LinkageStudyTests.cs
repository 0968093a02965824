using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies.LinkageTravel;

public sealed class LinkageStudyTests
{
    private const double Tape_m = 0.002;

    // Wheel at 800 mm of a level arm, upright strut at 400 mm.
    private static readonly SuspensionPart _lever = new("lever", "lever.json", SuspensionKind.TrailingArm, 0.3, 0, 0, new Dictionary<string, Point>
    {
        ["pivotOuter"] = new(0, 0.6, 0.3),
        ["pivotInner"] = new(0, 0.2, 0.3),
        ["wheelCentre"] = new(-0.8, 0.7, 0.3),
        ["strutTop"] = new(-0.4, 0.5, 0.7),
        ["strutBottom"] = new(-0.4, 0.5, 0.3),
    });

    [Theory]
    [InlineData(-0.08, 0.08, 0.01, 17)]
    [InlineData(-0.025, 0.02, 0.01, 6)]
    [InlineData(0.02, -0.02, 0.01, 5)]
    [InlineData(0.0, 0.0, 0.01, 1)]
    [InlineData(0.0, 0.003, 0.01, 2)]
    public void Range_OfTwoEnds_HasBoth(double from, double to, double step, int count)
    {
        IReadOnlyList<double> values = LinkageQuestion.Range(from, to, step);

        Assert.Equal(count, values.Count);
        Assert.Equal((from, to), (values[0], values[^1]));
    }

    [Fact]
    public void Answer_TravelsAndRacks_AreInTheOrderAsked()
    {
        LinkageResult result = LinkageStudy.Answer(_lever, new([0.05, -0.02, 0.01], [0]));

        Assert.Equal([0.05, -0.02, 0.01], result.Points.Select(point => point.Travel_m));
        Assert.All(result.Points, point => Assert.Equal(point.Travel_m, point.State!.Travel_m));
        Assert.True(result.Reached);
    }

    [Fact]
    public void Answer_RackOfATrailingArm_IsAFault() =>
        Assert.Equal("lever.json", Assert.Single(Assert.Throws<FaultsException>(() => LinkageStudy.Answer(_lever, new([0], [0, 0.01]))).Faults).File);

    // i = c/b by 2 mm each: strut 1/0.8; wheel 0.4/0.8²; outer pivot, three quarters of it at the strut and five at the wheel,
    // 0.75/0.8 − 1.25·0.4/0.8²; inner pivot 0.25/0.8 + 0.25·0.4/0.8². Heights and widths do nothing to a level lever.
    [Fact]
    public void Spread_OfALever_IsThatOfItsArms()
    {
        TapeSpread spread = LinkageStudy.Answer(_lever, new([0], [0], Tape_m)).Spreads![0]!;
        double strut = 1 / 0.8, wheel = 0.4 / 0.64, outer = 0.75 / 0.8 - 1.25 * 0.4 / 0.64, inner = 0.25 / 0.8 + 0.25 * 0.4 / 0.64;

        Assert.Equal(Tape_m * Math.Sqrt(strut * strut + wheel * wheel + outer * outer + inner * inner), spread.MotionRatio, 1e-6);
        Assert.Equal(0, spread.Camber_rad, 1e-12);
        Assert.Equal(0, spread.Toe_rad, 1e-12);
    }

    [Fact]
    public void Spread_OfWhatIsNotReached_IsNone()
    {
        LinkageResult result = LinkageStudy.Answer(_lever, new([0, 0.9], [0], Tape_m));

        Assert.Null(result.Spreads![1]);
        Assert.False(result.Reached);
        Assert.Equal(LinkagePart.TrailingArm, result.Points[1].Limit!.Part);
        Assert.Equal(0.8, result.Points[1].Limit!.Travel_m, 1e-6);
    }

    [Fact] // a wheel so near its pivots that a tape may lay it on their axis, where no turn lifts it
    public void Spread_WhereATapeTakesTheWheelsWay_IsNone()
    {
        const double Near_m = 1 / 64.0;
        SuspensionPart near = _lever with { Points = new Dictionary<string, Point>(_lever.Points) { ["wheelCentre"] = new(-Near_m, 0.7, 0.3) } };

        Assert.Equal([null], LinkageStudy.Answer(near, new([0], [0], Near_m)).Spreads!);
    }
}
