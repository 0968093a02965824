using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics.Clearances;

public sealed class GapTests
{
    private const double Tolerance_m = RevolvedBody.Tolerance_m, Rounding_m = 1e-11, Touching_m = 1e-6, NearlyParallel_m = 1e-8;

    [Fact] // the sampled oracle ends at a place no neighbour of which is nearer, so it is never below the least
    public void GapTo_AnotherBody_IsTheLeastASampledSearchFinds() =>
        Gen.Select(BodySamples.Any, BodySamples.Any).Sample((a, b) =>
        {
            Gap gap = a.GapTo(b);
            SampledBody sampledA = new(a), sampledB = new(b);
            double fromA = sampledA.Least_m(sampledB.Outside_m), fromB = sampledB.Least_m(sampledA.Outside_m), least = Math.Min(fromA, fromB);

            Assert.Equal(0, sampledA.Outside_m(gap.On), Rounding_m);
            Assert.Equal(0, sampledB.Outside_m(gap.Other), Rounding_m);
            Assert.Equal(Math.Abs(gap.Distance_m), (gap.On - gap.Other).Length, Rounding_m);
            Assert.InRange(gap.Distance_m, double.NegativeInfinity, Math.Max(least, 0) + Tolerance_m);
            if (gap.Distance_m < 0) Assert.InRange(least, double.NegativeInfinity, Tolerance_m);
            if (least < -Tolerance_m) Assert.InRange(gap.Distance_m, double.NegativeInfinity, 0);
            // How deep either surface lies in the other, to a millimetre and a quarter.
            if (fromA < -1e-3 && fromB < -1e-3) Assert.InRange(gap.Distance_m, double.NegativeInfinity, (Math.Max(fromA, fromB) + 1e-3) / 1.25);
        }, iter: 150);

    [Fact]
    public void GapAtLeast_AnotherBody_IsNoMoreThanTheGap() =>
        Gen.Select(BodySamples.Any, BodySamples.Any).Sample((a, b) => Assert.InRange(a.GapTo(b).Distance_m, a.GapAtLeast_m(b) - Rounding_m, double.PositiveInfinity), iter: 300);

    [Theory] // a disc 10 mm thick from its origin up; a tube of 50 mm across, its middle 0.2 m over it
    [InlineData(0, 0.2 - 0.010)] // upright: from its end
    [InlineData(90, 0.2 - 0.010 - 0.025)] // lying: less its radius
    public void GapAtLeast_ATubeOverADisc_IsTheWayBetweenThem(double turned_deg, double gap_m)
    {
        double turned = turned_deg * Math.PI / 180;
        RevolvedBody disc = new(BodySamples.Disc, default, Point.Up), tube = new(BodySamples.Tube, 0.2 * Point.Up, new(Math.Sin(turned), 0, Math.Cos(turned)));

        Assert.Equal(gap_m, disc.GapAtLeast_m(tube), 1e-12);
    }

    [Fact]
    public void GapTo_ABar_IsTheLeastASampledSearchFinds() =>
        Gen.Select(BodySamples.Any, BodySamples.Bar).Sample((body, bar) =>
        {
            Gap gap = body.GapTo(bar);
            SampledBody sampled = new(body);
            double axis = Enumerable.Range(0, 4001).Min(k => sampled.Outside_m(bar.Start + k / 4000.0 * (bar.End - bar.Start)));

            Assert.InRange(gap.Distance_m, double.NegativeInfinity, Math.Max(axis, 0) - bar.Radius_m + Tolerance_m);
            if (axis < -Tolerance_m)
            {
                Assert.InRange(gap.Distance_m, axis - bar.Radius_m - 3e-4, -bar.Radius_m);
                return;
            }

            if (axis < Touching_m) return;
            Assert.Equal(0, sampled.Outside_m(gap.On), Rounding_m);
            Assert.Equal(0, bar.GapTo(gap.Other).Distance_m, Rounding_m);
            Assert.Equal(Math.Abs(gap.Distance_m), (gap.On - gap.Other).Length, Rounding_m);
        }, iter: 150);

    [Fact]
    public void GapTo_APoint_IsTheSampledDistanceAndLiesOnTheSurface() =>
        Gen.Select(BodySamples.Any, BodySamples.Direction, Gen.Double[0, 0.6]).Sample((body, toward, away) =>
        {
            Gap gap = body.GapTo(away * toward);
            SampledBody sampled = new(body);

            Assert.Equal(sampled.Outside_m(away * toward), gap.Distance_m, Rounding_m);
            Assert.Equal(gap.Distance_m, body.Outside_m(away * toward), Rounding_m);
            Assert.Equal(0, sampled.Outside_m(gap.On), Rounding_m);
            Assert.Equal(Math.Abs(gap.Distance_m), (gap.On - gap.Other).Length, Rounding_m);
        });

    [Fact]
    public void GapTo_BarToBar_IsTheLeastOfANet() =>
        Gen.Select(BodySamples.Bar, BodySamples.Bar).Sample((a, b) =>
        {
            Gap gap = a.GapTo(b);
            double least = double.PositiveInfinity;
            for (int i = 0; i <= 200; i++)
                for (int k = 0; k <= 200; k++)
                    least = Math.Min(least, (a.Start + i / 200.0 * (a.End - a.Start) - b.Start - k / 200.0 * (b.End - b.Start)).Length);

            Assert.InRange(least - a.Radius_m - b.Radius_m, gap.Distance_m - NearlyParallel_m, gap.Distance_m + 6e-3);
            Assert.Equal(gap.Distance_m, b.GapTo(a).Distance_m, NearlyParallel_m);
            if (gap.Distance_m + a.Radius_m + b.Radius_m < Touching_m) return;
            Assert.Equal(0, a.GapTo(gap.On).Distance_m, Rounding_m);
            Assert.Equal(0, b.GapTo(gap.Other).Distance_m, Rounding_m);
        });

    [Fact]
    public void GapTo_Turned_IsTheSame() => BothWays((a, b) => (a.GapTo(b), b.GapTo(a)));

    [Fact]
    public void GapTo_Mirrored_IsTheSame() => BothWays((a, b) => (a.GapTo(b), Mirrored(a).GapTo(Mirrored(b))));

    [Fact]
    public void GapTo_MovedTogether_IsTheSame() => BothWays((a, b) => (a.GapTo(b), Moved(a).GapTo(Moved(b))));

    [Fact] // faces of a cylinder of radius 25 mm and a disc, along and across
    public void GapTo_Cylinders_IsTheClosedForm()
    {
        RevolvedBody tube = new(BodySamples.Tube, default, Point.Up);

        Near(0.03, tube, new(BodySamples.Tube, new(0.08, 0, 0.1), Point.Up)); // side by side
        Near(0.02, tube, new(BodySamples.Disc, new(0.01, 0, 0.32), Point.Up)); // face to face
        Near(0.015, tube, new(BodySamples.Tube, new(0.065, -0.1, 0.15), Point.Left)); // skew, at 90°
        Near(0.0025, tube, new(BodySamples.Cylinder(0.0225, 0.2), new(0.05, -0.07071, 0.07929), new Point(0, 1, 1).Unit())); // skew, at 45°
        Near(0.0583095, tube, new(BodySamples.Tube, new(0.08, 0, 0.35), Point.Up)); // edge to edge: 30 and 50 mm
        Near(0.005, new(new((0, 0.03), (0, 0.05), (0.3, 0.05), (0.3, 0.03)), default, Point.Up), new(BodySamples.Tube, default, Point.Up)); // in a bore
        Near(0.002, new(new((0, 0.03), (0, 0.05), (0.3, 0.05), (0.3, 0.03)), default, Point.Up), new(BodySamples.Tube, new(0, 0.003, 0), Point.Up));
    }

    [Theory] // of 400 lines, whose middles lie r·(1 − cos) = 1 µm within a ball of 30 mm
    [InlineData(0.2, 0.14)]
    [InlineData(0.0605, 0.0005)]
    public void GapTo_Balls_IsTheClosedForm(double apart_m, double gap_m) =>
        Gen.Select(BodySamples.Direction, BodySamples.Direction, BodySamples.Direction).Sample((toward, a, b) =>
        {
            RevolvedProfile ball = BodySamples.Round(0, 0.03, 400);
            Gap gap = new RevolvedBody(ball, default, a).GapTo(new RevolvedBody(ball, apart_m * toward, b));

            Assert.Equal(gap_m, gap.Distance_m, 3e-6 + Tolerance_m);
            Assert.Equal(0, gap.On.SquareTo(toward).Length, 3e-3);
        }, iter: 20);

    [Theory] // the deepest place of either lies on the line of the centres
    [InlineData(0.055, -0.005)]
    [InlineData(0.0599, -0.0001)]
    [InlineData(0.04, -0.02)]
    public void GapTo_BallsThatOverlap_IsHowDeepOneLiesInTheOther(double apart_m, double depth_m) =>
        Gen.Select(BodySamples.Direction, BodySamples.Direction, BodySamples.Direction).Sample((toward, a, b) =>
        {
            RevolvedProfile ball = BodySamples.Round(0, 0.03, 400);

            Assert.Equal(depth_m, new RevolvedBody(ball, default, a).GapTo(new RevolvedBody(ball, apart_m * toward, b)).Distance_m, 2e-5);
        }, iter: 20);

    [Fact] // where every direction is as good as another, or none leads deeper, the search comes to an end
    public void GapTo_BodiesOnOneAxis_IsTheClosedForm()
    {
        RevolvedBody disc = new(BodySamples.Disc, default, Point.Up);
        Point tilted = new Point(-3.58e-7, 0, 1).Unit();

        Near(0, disc, new(BodySamples.Disc, default, -1.0 * Point.Up)); // face on face
        Near(-1e-4, disc, new(BodySamples.Disc, new(0, 0, 1e-4), -1.0 * Point.Up)); // pressed into each other
        Near(0, disc, disc);
        Near(-3.22e-8, disc, new(BodySamples.Disc, default, tilted)); // the rim dips by 0.09 · 3.58e-7
        Assert.True(new RevolvedBody(BodySamples.Tube, default, Point.Up).GapTo(new RevolvedBody(BodySamples.Cone, default, tilted)).Distance_m < 0);
    }

    [Fact]
    public void GapTo_SomePoints_IsTheNearest()
    {
        RevolvedBody tube = new(BodySamples.Tube, default, Point.Up);

        Assert.Equal(0.005, tube.GapTo(new(0, 0.04, 0.1), new(0.03, 0, 0.2), new(0, 0, 0.31)).Distance_m, 1e-15);
        Assert.Throws<ArgumentException>(() => tube.GapTo());
    }

    [Fact] // no length, no thickness, on the axis
    public void GapTo_BarThatIsAPoint_IsThePoints()
    {
        RevolvedBody tube = new(BodySamples.Tube, default, Point.Up);
        Point above = new(0, 0, 0.32);

        Assert.Equal(tube.GapTo(above), tube.GapTo(new RoundBar(above, above, 0)));
        Assert.Equal(0.02, new RoundBar(above, above, 0).GapTo(new RoundBar(default, new(0, 0, 0.3), 0)).Distance_m, 1e-15);
    }

    [Fact]
    public void Profile_OutlinesOfNoBody_Throw()
    {
        Assert.Throws<ArgumentException>(() => new RevolvedProfile((0, 0), (0, 1)));
        Assert.Throws<ArgumentException>(() => new RevolvedProfile((0, 0), (1, -1), (2, 0)));
        Assert.Throws<ArgumentException>(() => new RevolvedProfile((0, 0), (1, 0), (2, 0)));
    }

    [Fact] // ring of radius 60 mm, tube of 20 mm
    public void GapTo_Torus_IsTheClosedForm()
    {
        RevolvedBody torus = new(BodySamples.Round(0.06, 0.02, 720), default, Point.Up);

        Assert.Equal(0.04, torus.GapTo(default(Point)).Distance_m, 1e-6); // from its middle
        Assert.Equal(0.03, torus.GapTo(new Point(0, 0.06, 0.05)).Distance_m, 1e-6);
        Assert.Equal(-0.02, torus.GapTo(new Point(-0.06, 0, 0)).Distance_m, 1e-6);
        Assert.Equal(0.0521110, torus.GapTo(new Point(0, 0.1, 0.06)).Distance_m, 1e-6);
        Assert.Equal(0.03, torus.GapTo(new RoundBar(new(0, 0, -1), new(0, 0, 1), 0.01)).Distance_m, 1e-6 + Tolerance_m); // through its hole
        Assert.Equal(0.01, torus.GapTo(new RoundBar(new(0, -1, 0.04), new(0, 1, 0.04), 0.01)).Distance_m, 1e-6 + Tolerance_m); // over it
        Assert.Equal(0.015, torus.GapTo(new RevolvedBody(BodySamples.Tube, new(0, 0, -0.1), Point.Up)).Distance_m, 1e-6 + Tolerance_m);
    }

    [Fact] // nothing of the surfaces meets
    public void GapTo_OneBodyWithinTheOther_IsBelowZero()
    {
        RevolvedBody large = new(BodySamples.Cylinder(0.2, 0.4), default, Point.Up), small = new(BodySamples.Disc, new(0.01, 0, 0.2), Point.Left);

        Assert.InRange(large.GapTo(small).Distance_m, -0.2, -0.05);
        Assert.InRange(small.GapTo(large).Distance_m, -0.2, -0.05);
    }

    private static void Near(double expected_m, RevolvedBody a, RevolvedBody b)
    {
        Assert.Equal(expected_m, a.GapTo(b).Distance_m, Tolerance_m);
        Assert.Equal(expected_m, b.GapTo(a).Distance_m, Tolerance_m);
    }

    private static void BothWays(Func<RevolvedBody, RevolvedBody, (Gap, Gap)> gaps) =>
        Gen.Select(BodySamples.Any, BodySamples.Any).Sample((a, b) =>
        {
            (Gap one, Gap other) = gaps(a, b);
            if (one.Distance_m > 0 || other.Distance_m > 0) Assert.Equal(one.Distance_m, other.Distance_m, Tolerance_m);
        }, iter: 400);

    private static RevolvedBody Mirrored(RevolvedBody body) => body with { Origin = body.Origin.Mirrored, Axis = body.Axis.Mirrored };

    // A quarter turn about the line x = y = z, then a shift.
    private static RevolvedBody Moved(RevolvedBody body) => body with { Origin = Cycled(body.Origin) + new Point(0.3, -0.7, 0.2), Axis = Cycled(body.Axis) };

    private static Point Cycled(Point p) => new(p.Z, p.X, p.Y);
}
