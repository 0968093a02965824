using System.Diagnostics;

namespace Bellowsmith.Physics.Linkages;

/// <summary>A part that turns about an axis of the car and follows a joint of the knuckle.</summary>
internal sealed record Arm(LinkagePart Part, Point Pivot, Point Axis, Point Joint)
{
    public static Arm Between(LinkagePart part, Point front, Point rear, Point joint) => new(part, front, (front - rear).Unit(), joint);

    /// <summary>A link that carries a strut: its bush turns about the level line square to it.</summary>
    public static Arm OfLink(LinkagePart part, Point inner, Point outer) => new(part, inner, Point.Up.Cross(outer - inner).Unit(), outer);

    public BodyMotion Follow(in BodyMotion knuckle)
    {
        Point before = (Joint - Pivot).SquareTo(Axis), now = (knuckle.At(Joint) - Pivot).SquareTo(Axis), lever = Axis.Cross(now);
        double square = now.Dot(now);
        Point velocity = knuckle.VelocityOf(Joint);
        double rate = lever.Dot(velocity) / square;
        double bend = (lever.Dot(knuckle.AccelerationOf(Joint)) - 2 * rate * now.Dot(velocity)) / square;
        Turn turn = Turn.About(Axis, before, now);
        return new() { Rest = Pivot, Pose = new(Pivot, turn), Rate = new(default, rate * Axis), Bend = new(default, bend * Axis) };
    }
}

/// <summary>A link with a joint at either end, told to a point of the car or of the rack.</summary>
internal sealed record Rod(LinkagePart Part, Point Inner, Point Outer, bool OnRack = false);

/// <summary>What the points of a suspension come to: six constraints, and what rides on the knuckle.</summary>
internal sealed record Mechanism
{
    private readonly Constraint[] _constraints = [];

    public required Constraint[] Constraints
    {
        get => _constraints;
        init
        {
            Debug.Assert(value.Length == SixBySix.Size);
            _constraints = value;
        }
    }

    public required Point StrutTop { get; init; }

    public required Point StrutBottom { get; init; }

    /// <summary>What carries the strut's lower end; null for the knuckle.</summary>
    public Arm? StrutCarrier { get; init; }

    /// <summary>The strut turns with the knuckle about its own axis.</summary>
    public bool StrutSteers { get; init; }

    public IReadOnlyList<Arm> Arms { get; init; } = [];

    public IReadOnlyList<Rod> Rods { get; init; } = [];

    /// <summary>The knuckle's joints that it steers about; upper null where the strut's top is it. Null where it steers about none.</summary>
    public (Point Lower, Point? Upper)? SteeringJoints { get; init; }

    public bool HasRack => Rods.Any(rod => rod.OnRack);
}
