using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class StrutSideLoadTests
{
    private static readonly Gen<Point> _small = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]).Select((x, y, z) => new Point(x, y, z));

    // A car's points moved by up to 40 mm, a wheel and rack travel, a force up to 5 kN at a place round the wheel.
    private static readonly Gen<Case> _any = Gen.Select(LinkageSamples.Any, Gen.Double[-0.05, 0.05], Gen.Double[-0.03, 0.03], _small, _small, _small)
        .Where((suspension, _, _, _, _, _) => suspension is MacPherson)
        .Select((suspension, travel, rack, force, at, tilt) => new Case(suspension, travel, rack, 5000 * force, new Point(0, 0.76, 0.3) + 0.3 * at, 0.1 * tilt));

    [Fact]
    public void Of_AnyForce_LeavesKnuckleAndStrutInBalance() => _any.Sample(any =>
    {
        if (any.State is not { } state) return;
        MacPherson points = any.Points;
        SpringLine line = any.Line(state);
        StrutSideLoad load = StrutSideLoad.Of(state, any.Force, any.At, line)!;
        Point ball = state.Knuckle.At(points.LowerBallJoint), outer = state.Knuckle.At(points.TieRodOuter);
        Point inner = points.TieRodInner + state.Rack_m * Point.Left;
        (Point Force, Point At)[] all =
        [
            (any.Force, any.At), (load.LowerArm_N, ball), (load.TieRod_N * (outer - inner).Unit(), outer), (load.Side_N, points.StrutTop),
            (-load.Spring_N * line.Direction, line.Through),
        ];
        double size = 1 + all.Max(one => one.Force.Length);

        Assert.Equal(0, all.Aggregate(default(Point), (sum, one) => sum + one.Force).Length, 1e-12 * size);
        Assert.Equal(0, all.Aggregate(default(Point), (sum, one) => sum + one.At.Cross(one.Force)).Length, 1e-12 * size);
        Assert.Equal(0, load.Side_N.Dot(state.Strut.Axis), 1e-12 * size);
        Assert.Equal(0, load.LowerArm_N.Dot((points.LowerArmFront - ball).Cross(points.LowerArmRear - ball).Unit()), 1e-12 * size);
        Assert.Equal(0, (load.Top_N - load.Side_N + load.Spring_N * line.Direction).Length, 1e-12 * size);
    });

    [Fact] // what the force does over a little wheel travel, the spring takes up; the linkage knows nothing of forces
    public void Of_SpringAlongTheStrut_TakesWhatVirtualWorkSays() => _any.Sample(any =>
    {
        if (any.State is not { } state) return;
        StrutSideLoad load = StrutSideLoad.Of(state, any.Force, any.At)!;

        Assert.Equal(any.Force.Dot(Velocity(state, any.At)), load.Spring_N * state.Strut.MotionRatio, 1e-8 * (1 + any.Force.Length));
    });

    [Fact]
    public void Of_SpringAlongTheFreeDirection_LeavesNoSideLoad() => _any.Sample(any =>
    {
        if (any.State is not { } state) return;
        StrutSideLoad load = StrutSideLoad.Of(state, any.Force, any.At)!;
        Assert.Equal(load.Spring_N > 0, load.FreeDirection is not null);
        // A force nearly across the strut leaves no line to push along.
        if (load.FreeDirection is not { } direction || load.FreeTilt_rad > 1.5) return;
        StrutSideLoad free = StrutSideLoad.Of(state, any.Force, any.At, new(any.Points.StrutTop, direction))!;

        Assert.Equal(0, free.Side_N.Length, 1e-9 * (1 + load.Top_N.Length));
        Assert.Equal(load.FreeTilt_rad, free.FreeTilt_rad);
        Assert.Equal(0, (load.Top_N - free.Top_N).Length, 1e-9 * (1 + load.Top_N.Length));
    });

    [Fact]
    public void Of_NoForce_HoldsNothingAndNamesNoWay()
    {
        StrutSideLoad load = StrutSideLoad.Of(new Linkage(LinkageSamples.Strut).Rest, default)!;

        Assert.Equal(0, load.Top_N.Length + load.LowerArm_N.Length + Math.Abs(load.TieRod_N));
        Assert.Null(load.FreeDirection);
        Assert.Null(load.FreeTilt_rad);
    }

    [Fact]
    public void Of_MirroredCar_IsTheMirrorImage() => _any.Sample(any =>
    {
        Case other = any with { Suspension = LinkageSamples.Mirrored(any.Suspension), Rack = -any.Rack };
        if (any.State is not { } state || other.State is not { } mirrored) return;
        StrutSideLoad one = StrutSideLoad.Of(state, any.Force, any.At)!, image = StrutSideLoad.Of(mirrored, any.Force.Mirrored, any.At.Mirrored)!;
        double size = 1 + one.Top_N.Length;

        Assert.Equal(one.Spring_N, image.Spring_N, 1e-10 * size);
        Assert.Equal(one.TieRod_N, image.TieRod_N, 1e-10 * size);
        Assert.Equal(0, (one.Side_N - image.Side_N.Mirrored).Length, 1e-10 * size);
    });

    [Fact]
    public void Of_AnotherSuspension_Throws() =>
        Assert.Throws<ArgumentException>(() => StrutSideLoad.Of(new Linkage(LinkageSamples.Wishbones).Rest, Point.Up));

    // Of the wheel body's place that is there now, per travel.
    private static Point Velocity(LinkageState state, Point at) =>
        state.Knuckle.VelocityOf(state.Linkage.Suspension.Wheel.Centre) + state.Knuckle.Spin_rad_per_m.Cross(at - state.WheelCentre);

    private sealed record Case(Suspension Suspension, double Travel, double Rack, Point Force, Point At, Point Tilt)
    {
        public MacPherson Points => (MacPherson)Suspension;

        public LinkageState? State => new Linkage(Suspension).At(Travel, Rack).State;

        // Up to some degrees off the strut and some centimetres off its top.
        public SpringLine Line(LinkageState state) => new(Points.StrutTop + Tilt, (state.Strut.Axis + Tilt).Unit());
    }
}
