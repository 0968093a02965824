using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class DamperTests
{
    private static readonly Damper _two = Damper.Of([2, 4],
    [
        MonotoneCurve.Through([-0.5, 0, 0.25, 1], [-400, 0, 500, 900]),
        MonotoneCurve.Through([-1, -0.5, 0, 0.5], [-300, -200, 0, 300]),
    ]);

    [Fact]
    public void Curve_BetweenClicks_IsTheStraightMixtureAtEveryVelocity()
    {
        var between = _two.Curve(2.5);

        for (var v = -0.5; v <= 0.5; v += 0.01)
        {
            Assert.Equal(0.75 * _two.Curve(2).At(v).Value + 0.25 * _two.Curve(4).At(v).Value, between.At(v).Value, 1e-9);
            Assert.Equal(0.75 * _two.Curve(2).At(v).Slope + 0.25 * _two.Curve(4).At(v).Slope, between.At(v).Slope, 1e-6);
        }
    }

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.5001, false)]
    [InlineData(-0.5, true)]
    [InlineData(-0.5001, false)]
    public void Covers_OfTwoClicks_IsWhatBothWereMeasuredAt(double velocity, bool covered) => Assert.Equal(covered, _two.Covers(velocity));

    [Fact]
    public void Force_OutsideWhatWasMeasured_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => _two.Force_N(1, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => _two.Force_N(5, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => _two.Force_N(2, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => _two.Equivalent(2, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => _two.Equivalent(2, 0));
    }

    [Fact]
    public void Force_WithADeclaredSlope_GoesOn()
    {
        var damper = Damper.Of([2], [MonotoneCurve.Through([-0.5, 0, 0.5], [-400, 0, 500], slopeBelow: 600, slopeAbove: 700)], goesOn: true);

        Assert.Equal(570, damper.Force_N(2, 0.6), 1e-9);
        Assert.Equal(-460, damper.Force_N(2, -0.6), 1e-9);
        Assert.False(damper.Covers(0.6));
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(3)]
    public void Equivalent_LinearDamper_IsItsCoefficient(double amplitude)
    {
        var equivalent = Damper.Linear(1234).Equivalent(0, amplitude);

        Assert.Equal(1234, equivalent.Rebound_N_s_per_m, 1e-6);
        Assert.Equal(1234, equivalent.Compression_N_s_per_m, 1e-6);
    }

    /// <summary>Coulomb friction F: E = 4·F·X per cycle, c = 4·F/(π·V). Spread over 1 % of the amplitude it lacks less than 0.1 %.</summary>
    [Fact]
    public void Equivalent_Friction_IsTheTextbooks()
    {
        var friction = Damper.Of([0], [MonotoneCurve.Through([-1, -0.001, 0, 0.001, 1], [-250, -250, 0, 250, 250])]);

        Assert.Equal(3183.1, friction.Equivalent(0, 0.1).Both_N_s_per_m, 4.0);
    }

    [Fact]
    public void Equivalent_StrokesApart_MeanIsBoth() => Gen.Double[0.1, 5].Sample(scale =>
    {
        var damper = Damper.Of([0], [MonotoneCurve.Through([-1, 0, 1], [-300 * scale, 0, 900 * scale])]);
        var equivalent = damper.Equivalent(0, 0.5);

        Assert.True(equivalent.Rebound_N_s_per_m > equivalent.Compression_N_s_per_m);
        Assert.Equal(scale, equivalent.Both_N_s_per_m / Damper.Of([0], [MonotoneCurve.Through([-1, 0, 1], [-300, 0, 900])]).Equivalent(0, 0.5).Both_N_s_per_m, 1e-9);
    });
}
