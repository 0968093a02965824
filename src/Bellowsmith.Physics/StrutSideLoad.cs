using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>The line a strut's spring pushes along: a place it runs through at its upper end and its unit direction, upward.</summary>
public readonly record struct SpringLine(Point Through, Point Direction);

/// <summary>
/// What holds a MacPherson strut under a force at its wheel, at rest. Free body: knuckle, tube, rod and wheel. Six forces hold it: the
/// lower arm pushes from either bush (its plane), the tie rod along itself, the spring along its line (the damper's gas counted with it), and
/// the top mount square to the rod, twice; its joint takes no moment, the rod slides free. Positive forces push. Unsprung weight
/// left out. Equations: docs/theory/strut-strength.md.
/// </summary>
public sealed record StrutSideLoad
{
    /// <summary>Of the lower arm on its ball joint.</summary>
    public required Point LowerArm_N { get; init; }

    /// <summary>Along the tie rod, on the knuckle; push +.</summary>
    public required double TieRod_N { get; init; }

    /// <summary>Of spring and gas, pushing car and wheel apart +.</summary>
    public required double Spring_N { get; init; }

    /// <summary>Of the top mount on the rod, square to it: what bends the rod.</summary>
    public required Point Side_N { get; init; }

    /// <summary>Spring and side force together, on the strut.</summary>
    public required Point Top_N { get; init; }

    /// <summary>
    /// The way a spring that acts through the top mount would have to push for no side load to be left; unit, upward. Null where the load
    /// does not press the strut together.
    /// </summary>
    public required Point? FreeDirection { get; init; }

    /// <summary>From the strut's axis to that way, 0 to π/2; null where there is none.</summary>
    public required double? FreeTilt_rad { get; init; }

    /// <summary>At a place of a linkage; null where its parts lie in line and hold nothing.</summary>
    /// <param name="state">Of a MacPherson suspension.</param>
    /// <param name="force_N">On the wheel: up + where it carries the car.</param>
    /// <param name="at">Where it acts; the contact point where not given.</param>
    /// <param name="line">The spring's; along the strut's axis where not given.</param>
    /// <exception cref="ArgumentException">The suspension is of another kind.</exception>
    public static StrutSideLoad? Of(LinkageState state, Point force_N, Point? at = null, SpringLine? line = null)
    {
        if (state.Linkage.Suspension is not MacPherson points) throw new ArgumentException("Only a MacPherson strut is solved here.", nameof(state));
        SpringLine onAxis = new(points.StrutTop, state.Strut.Axis);
        (Point Force, Point At) load = (force_N, at ?? state.ContactPoint);
        if (Solve(state, points, load, onAxis) is not { } plain) return null;
        if (line is not { } other) return plain;
        return Solve(state, points, load, other) is { } solved ? solved with { FreeDirection = plain.FreeDirection, FreeTilt_rad = plain.FreeTilt_rad } : null;
    }

    private static StrutSideLoad? Solve(LinkageState state, MacPherson points, (Point Force, Point At) load, SpringLine line)
    {
        Point ball = state.Knuckle.At(points.LowerBallJoint), outer = state.Knuckle.At(points.TieRodOuter);
        Point front = (ball - points.LowerArmFront).Unit(), rear = (ball - points.LowerArmRear).Unit();
        Point tieRod = (outer - points.TieRodInner - state.Rack_m * Point.Left).Unit(), axis = state.Strut.Axis;
        Point across = Point.Left.SquareTo(axis).Unit(), aside = axis.Cross(across);

        Span<double> wrenches = stackalloc double[SixBySix.Length], load6 = stackalloc double[SixBySix.Size], held = stackalloc double[SixBySix.Stride];
        wrenches.Clear();
        Wrench(front, ball, 0, wrenches);
        Wrench(rear, ball, 1, wrenches);
        Wrench(tieRod, outer, 2, wrenches);
        Wrench(across, points.StrutTop, 3, wrenches);
        Wrench(aside, points.StrutTop, 4, wrenches);
        Wrench(-line.Direction, line.Through, 5, wrenches);
        Wrench(-load.Force, load.At, 0, load6);
        if (SixBySix.Invert(wrenches) == 0) return null;
        SixBySix.Combine(wrenches, load6, held);

        Point side = held[3] * across + held[4] * aside, top = side - held[5] * line.Direction;
        bool pressed = top.Dot(axis) < 0;
        return new()
        {
            LowerArm_N = held[0] * front + held[1] * rear,
            TieRod_N = held[2],
            Spring_N = held[5],
            Side_N = side,
            Top_N = top,
            FreeDirection = pressed ? -top.Unit() : null,
            FreeTilt_rad = pressed ? axis.AngleTo_rad(-top) : null,
        };

        // A force and its moment about the ball joint, as one row.
        void Wrench(Point force, Point where, int row, Span<double> rows)
        {
            Point moment = (where - ball).Cross(force);
            ReadOnlySpan<double> six = [force.X, force.Y, force.Z, moment.X, moment.Y, moment.Z];
            six.CopyTo(rows[(row * SixBySix.Stride)..]);
        }
    }
}
