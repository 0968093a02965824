using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>
/// A spring's line of force: through the middles of its end plates, the upper one held by the mount, the lower one by the strut, so that it
/// leans more as the strut is compressed. Offsets from the strut's axis, outward + and ahead +.
/// </summary>
/// <param name="ToUpper_m">Along the axis from the mount's joint to the upper plate.</param>
/// <param name="Height_m">Between the plates at drive height.</param>
/// <param name="Upper_m">Offset of the upper plate's middle.</param>
/// <param name="Lower_m">Offset of the lower plate's middle.</param>
public sealed record SpringSeats(double ToUpper_m, double Height_m, (double Outward, double Ahead) Upper_m, (double Outward, double Ahead) Lower_m)
{
    /// <summary>As the kit says. Where stack or spring height are not known, the foot is taken at the strut's lower point.</summary>
    public static SpringSeats Of(MountCase mount)
    {
        double slope = Math.Tan(mount.Design.SpringTilt_rad);
        SpringSeats through = Through(mount, slope, 0);
        return mount.Design.SpringOffset_m is not { } offset ? through
            : through with { Lower_m = (offset, 0), Upper_m = (offset - slope * through.Height_m, 0) };
    }

    /// <summary>Along a line through the mount's joint, its foot so far out and ahead per length of the axis.</summary>
    public static SpringSeats Through(MountCase mount, double outward, double ahead)
    {
        (double stack, double height) = mount is { Design.UpperStack_m: { } known, SpringHeight_m: { } at } ? (known, at) : (0, mount.Linkage.Rest.Strut.Length_m);
        return new(stack, height, (outward * stack, ahead * stack), (outward * (stack + height), ahead * (stack + height)));
    }

    public SpringLine Line(LinkageState state)
    {
        Point axis = state.Strut.Axis, top = state.Strut.Bottom + state.Strut.Length_m * axis, outward = Outward(axis), ahead = outward.Cross(axis);
        Point upper = top - ToUpper_m * axis + Upper_m.Outward * outward + Upper_m.Ahead * ahead;
        Point lower = top - (ToUpper_m + Height_m - state.Strut.Compression_m) * axis + Lower_m.Outward * outward + Lower_m.Ahead * ahead;
        return new(upper, (upper - lower).Unit());
    }

    /// <summary>Square to a strut's axis; documents give the left side.</summary>
    public static Point Outward(Point axis) => Point.Left.SquareTo(axis).Unit();
}
