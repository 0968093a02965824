using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>
/// A linkage at one wheel and rack travel. Signs are the same for left and right wheels: camber + top out, toe + in, outward +.
/// Slopes are by wheel travel, rack held, and exact.
/// </summary>
public sealed class LinkageState
{
    private readonly Linkage _linkage;
    private readonly Place _place;

    internal LinkageState(Linkage linkage, in Place place) => (_linkage, _place) = (linkage, place);

    public double Travel_m => _place.Travel_m;

    public double Rack_m => _place.Rack_m;

    /// <summary>The knuckle, or what the wheel is on.</summary>
    public BodyMotion Knuckle => new() { Rest = Wheel.Centre, Pose = _place.Pose, Rate = _place.PerTravel, Bend = _place.Bend };

    /// <summary>The strut, spring or damper between its two points.</summary>
    public StrutState Strut => new(_linkage, Knuckle);

    /// <summary>What the wheel steers about; null where nothing steers it.</summary>
    public SteeringAxis? Steering => SteeringAxis.Of(this);

    /// <summary>The halfshaft; null where the suspension names none.</summary>
    public HalfshaftState? Halfshaft => HalfshaftState.Of(_linkage, Knuckle);

    /// <summary>How far the joints of arms and links have swung from rest.</summary>
    public IEnumerable<JointAngles> Joints => JointAngles.Of(_linkage, Knuckle, Rack_m);

    /// <summary>A part that turns about an axis of the car, wishbone or lower arm; null where there is none such.</summary>
    public BodyMotion? Arm(LinkagePart part) =>
        _linkage.Mechanism.Arms.FirstOrDefault(arm => arm.Part == part) is { } known ? known.Follow(Knuckle) : null;

    /// <summary>Arms and links of this wheel as lines from inner to outer end, each once.</summary>
    public IEnumerable<(LinkagePart Part, Point Inner, Point Outer)> Links => _linkage.Mechanism.Constraints
        .Where(constraint => constraint.Part != LinkagePart.OtherTrailingArm)
        .Select(constraint => (constraint.Part, Line: constraint.Line(_place.Pose, Rack_m)))
        .Where(known => known.Line is not null).Select(known => (known.Part, known.Line!.Value.Inner, known.Line.Value.Outer)).Distinct();

    public Point WheelCentre => _place.Pose.Position;

    /// <summary>Spin axis, outward.</summary>
    public Point WheelAxis => _place.Pose.Rotation.Of(Wheel.Axis);

    /// <summary>Lowest point of the circle of the wheel's radius in its plane.</summary>
    public Point ContactPoint
    {
        get
        {
            Point up = Point.Up.SquareTo(WheelAxis);
            return WheelCentre - Wheel.Radius_m * up.Unit();
        }
    }

    public double Camber_rad => LinkageWheel.Of(WheelAxis, Wheel.Outward).Camber_rad;

    public double Toe_rad => LinkageWheel.Of(WheelAxis, Wheel.Outward).Toe_rad;

    public double CamberSlope_rad_per_m
    {
        get
        {
            Point axis = WheelAxis;
            return -AxisRate.Z / Math.Sqrt(1 - axis.Z * axis.Z);
        }
    }

    public double ToeSlope_rad_per_m
    {
        get
        {
            Point axis = WheelAxis, rate = AxisRate;
            return Wheel.Outward * (axis.Y * rate.X - axis.X * rate.Y) / (axis.X * axis.X + axis.Y * axis.Y);
        }
    }

    /// <summary>How far the contact point stands further out than at rest, m, this side only.</summary>
    public double TrackChange_m => Wheel.Outward * (ContactPoint.Y - _linkage.Rest.ContactPoint.Y);

    public double TrackSlope => Wheel.Outward * ContactRate.Y;

    /// <summary>How far the wheel centre stands further forward than at rest, m: wheelbase grows at the front axle and shrinks at the rear.</summary>
    public double WheelForward_m => WheelCentre.X - Wheel.Centre.X;

    /// <summary>Instant centre in front view, in the plane across the car through the wheel centre; at infinity where the camber stands still.</summary>
    public Point FrontInstantCentre
    {
        get
        {
            (Point velocity, Point spin) = _place.PerTravel;
            return WheelCentre + new Point(0, -velocity.Z / spin.X, velocity.Y / spin.X);
        }
    }

    /// <summary>Instant centre in side view, in the plane along the car through the wheel centre; at infinity where the knuckle does not pitch.</summary>
    public Point SideInstantCentre
    {
        get
        {
            (Point velocity, Point spin) = _place.PerTravel;
            return WheelCentre + new Point(velocity.Z / spin.Y, 0, -velocity.X / spin.Y);
        }
    }

    /// <summary>
    /// Over the contact point, m, both wheels alike: where the line square to the velocity of the knuckle's point there meets the middle of the
    /// car, in front view; without toe through the front instant centre [Blundell Harty 2004, eqs 4.33–4.43]. A rigid axle rolls about where its Panhard rod crosses the middle (common practice, no source).
    /// </summary>
    public double RollCentreHeight_m
    {
        get
        {
            if (_linkage.Suspension is BeamAxle beam) return beam.CrossesMiddle(Knuckle).Z - ContactPoint.Z;
            Point velocity = _place.PerTravel.Of(ContactPoint - WheelCentre);
            return ContactPoint.Y * velocity.Y / velocity.Z;
        }
    }

    public Linkage Linkage => _linkage;

    internal Place Place => _place;

    private LinkageWheel Wheel => _linkage.Suspension.Wheel;

    private Point AxisRate => _place.PerTravel.Spin.Cross(WheelAxis);

    // The lowest point wanders round the rim as the wheel tilts: its own velocity, not that of the rubber there.
    private Point ContactRate
    {
        get
        {
            Point axis = WheelAxis, rate = AxisRate, up = Point.Up.SquareTo(axis), turning = -(rate.Z * axis + axis.Z * rate);
            double length = up.Length;
            return _place.PerTravel.Velocity - Wheel.Radius_m * (turning / length - up.Dot(turning) / (length * length * length) * up);
        }
    }
}
