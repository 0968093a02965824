namespace Bellowsmith.Physics.Linkages;

/// <summary>
/// One scalar the pose must keep at 0, in m. <paramref name="arm"/> is a point of the knuckle from the wheel centre at rest. Its
/// derivatives are by displacement of the wheel centre and by rotation, so that its multiplier is the force in the part.
/// </summary>
internal abstract class Constraint(LinkagePart part, Point arm)
{
    public LinkagePart Part { get; } = part;

    /// <summary>How fast the value falls with travel and rack, the pose held.</summary>
    public virtual double PerTravel => 0;

    public virtual double PerRack(in Pose pose, double rack_m) => 0;

    /// <summary>The value, and its derivatives into a column of the transposed Jacobian.</summary>
    public abstract double Value(in Pose pose, double travel_m, double rack_m, Span<double> column);

    /// <summary>Minus its second derivative by travel but for the accelerations' own share.</summary>
    public abstract double Bend(in Pose pose, double rack_m, in Twist rate);

    /// <summary>The part as a line from its inner to its outer end; null where it is none.</summary>
    public virtual (Point Inner, Point Outer)? Line(in Pose pose, double rack_m) => null;

    protected Point Arm(in Pose pose) => pose.Rotation.Of(arm);

    protected static Point Centripetal(in Twist rate, Point arm) => rate.Spin.Cross(rate.Spin.Cross(arm));

    protected static void Write(Span<double> column, Point force, Point moment)
    {
        const int Next = SixBySix.Stride;
        column = column[..(5 * Next + 1)];
        (column[0], column[Next], column[2 * Next]) = (force.X, force.Y, force.Z);
        (column[3 * Next], column[4 * Next], column[5 * Next]) = (moment.X, moment.Y, moment.Z);
    }
}

/// <summary>The wheel centre's height follows the travel; of a beam axle the other wheel's too.</summary>
internal sealed class WheelHeight(Point wheel, Point centre) : Constraint(LinkagePart.Wheel, wheel - centre)
{
    public override double PerTravel => 1;

    public override double Value(in Pose pose, double travel_m, double rack_m, Span<double> column)
    {
        Point arm = Arm(pose);
        Write(column, Point.Up, arm.Cross(Point.Up));
        return pose.Position.Z + arm.Z - wheel.Z - travel_m;
    }

    public override double Bend(in Pose pose, double rack_m, in Twist rate) => -Centripetal(rate, Arm(pose)).Z;
}

/// <summary>A point stays so far from a point of the car, or of the rack: (u² − L²)/2L = 0.</summary>
internal sealed class FixedLength(LinkagePart part, Point inner, Point outer, Point centre, double length_m, bool onRack = false)
    : Constraint(part, outer - centre)
{
    private readonly double _length_m = length_m, _perLength = 1 / length_m;

    public override double PerRack(in Pose pose, double rack_m) => onRack ? Rod(pose, Arm(pose), rack_m).Y * _perLength : 0;

    public override double Value(in Pose pose, double travel_m, double rack_m, Span<double> column)
    {
        Point arm = Arm(pose), rod = Rod(pose, arm, rack_m), along = _perLength * rod;
        Write(column, along, arm.Cross(along));
        // (|u| − L)(|u| + L)/2L keeps digits that the squares would lose.
        double now_m = rod.Length;
        return 0.5 * (now_m - _length_m) * (now_m + _length_m) * _perLength;
    }

    public override double Bend(in Pose pose, double rack_m, in Twist rate)
    {
        Point arm = Arm(pose), velocity = rate.Of(arm);
        return -(velocity.Dot(velocity) + Rod(pose, arm, rack_m).Dot(Centripetal(rate, arm))) * _perLength;
    }

    public override (Point Inner, Point Outer)? Line(in Pose pose, double rack_m) => (Inner(rack_m), pose.Position + Arm(pose));

    private Point Rod(in Pose pose, Point arm, double rack_m) => pose.Position + arm - Inner(rack_m);

    private Point Inner(double rack_m) => onRack ? inner with { Y = inner.Y + rack_m } : inner;
}

/// <summary>A point of the car stays on a line of the knuckle, told along one direction square to the line.</summary>
internal sealed class OnAxis(Point top, Point bottom, Point across, Point centre) : Constraint(LinkagePart.Strut, bottom - centre)
{
    public override double Value(in Pose pose, double travel_m, double rack_m, Span<double> column)
    {
        Point arm = Arm(pose), n = pose.Rotation.Of(across), reach = top - pose.Position - arm;
        Write(column, -n, n.Cross(reach) - arm.Cross(n));
        return n.Dot(reach);
    }

    public override double Bend(in Pose pose, double rack_m, in Twist rate)
    {
        Point arm = Arm(pose), n = pose.Rotation.Of(across), reach = top - pose.Position - arm;
        return -(Centripetal(rate, n).Dot(reach) - 2 * rate.Spin.Cross(n).Dot(rate.Of(arm)) - n.Dot(Centripetal(rate, arm)));
    }
}

/// <summary>A point of the knuckle stays in a plane of the car.</summary>
internal sealed class InPlane(LinkagePart part, Point place, Point normal, Point centre) : Constraint(part, place - centre)
{
    public override double Value(in Pose pose, double travel_m, double rack_m, Span<double> column)
    {
        Point arm = Arm(pose);
        Write(column, normal, arm.Cross(normal));
        return normal.Dot(pose.Position + arm - place);
    }

    public override (Point Inner, Point Outer)? Line(in Pose pose, double rack_m) => (place, pose.Position);

    public override double Bend(in Pose pose, double rack_m, in Twist rate) => -normal.Dot(Centripetal(rate, Arm(pose)));
}
