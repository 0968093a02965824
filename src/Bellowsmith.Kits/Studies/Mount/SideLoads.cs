using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>What bends a MacPherson strut's rod from full droop to full bump, straight ahead, under the load the car stands on.</summary>
public sealed record SideLoads
{
    private const int Places = 25;

    /// <summary>Sizes rods are made in, m. Common practice, no source.</summary>
    private static readonly double[] _sizes = [0.010, 0.011, 0.0125, 0.014, 0.016, 0.018, 0.020, 0.022, 0.025, 0.028, 0.032];

    public required SideLoadPlace Drive { get; init; }

    public required SideLoadPlace FullBump { get; init; }

    public required SideLoadPlace FullDroop { get; init; }

    /// <summary>From droop to bump as the spring stands, and along the line that frees the rod at drive height.</summary>
    public required IReadOnlyList<(SideLoadPlace Now, SideLoadPlace Freed)> Curve { get; init; }

    /// <summary>From the strut's axis to that line, 0 to π.</summary>
    public required double FreeTilt_rad { get; init; }

    /// <summary>The same seen from ahead, its foot outward +.</summary>
    public required double FreeTiltOutward_rad { get; init; }

    /// <summary>The same seen from the side, its foot ahead +.</summary>
    public required double FreeTiltAhead_rad { get; init; }

    /// <summary>Where the plates stand then.</summary>
    public required SpringSeats Freed { get; init; }

    public required SideLoadPlace FreedFullBump { get; init; }

    public required SideLoadPlace FreedFullDroop { get; init; }

    /// <summary>The damper's rod, a size down and a size up, under the side load at drive height.</summary>
    public required IReadOnlyList<RodSize> Rods { get; init; }

    public required StrutFriction? Friction { get; init; }

    /// <summary>Null where the suspension's parts lie in line and hold nothing, or nothing presses the strut.</summary>
    internal static SideLoads? Of(MountCase mount)
    {
        SpringSeats seats = SpringSeats.Of(mount);
        if (SideLoadPlace.Of(mount, seats, mount.Linkage.Rest) is not { Load: { FreeDirection: { } free, FreeTilt_rad: { } tilt } } drive) return null;
        Point axis = drive.State.Strut.Axis, outward = SpringSeats.Outward(axis);
        double across = -free.Dot(outward) / free.Dot(axis), ahead = -free.Dot(outward.Cross(axis)) / free.Dot(axis);
        SpringSeats freed = SpringSeats.Through(mount, across, ahead);
        double[] travels = [.. Enumerable.Range(0, Places).Select(k => mount.FullDroop_m + (mount.FullBump_m - mount.FullDroop_m) * k / (Places - 1))];
        LinkagePoint[] points = new LinkagePoint[Places];
        mount.Linkage.Sweep(travels, 0, points);
        (SideLoadPlace Now, SideLoadPlace Freed)[] curve = [.. points.Select(point => point.State).OfType<LinkageState>()
            .Select(state => (SideLoadPlace.Of(mount, seats, state), SideLoadPlace.Of(mount, freed, state)))
            .Where(both => both is { Item1: not null, Item2: not null }).Select(both => (both.Item1!, both.Item2!))];
        return curve.Length == 0 ? null : new()
        {
            Drive = drive,
            FullBump = curve[^1].Now,
            FullDroop = curve[0].Now,
            Curve = curve,
            FreeTilt_rad = tilt,
            FreeTiltOutward_rad = Math.Atan(across),
            FreeTiltAhead_rad = Math.Atan(ahead),
            Freed = freed,
            FreedFullBump = curve[^1].Freed,
            FreedFullDroop = curve[0].Freed,
            Rods = [.. Sizes(((TelescopicDamperPart)mount.Design.Damper).RodDiameter_m).Select(size => RodSize.Of(size, mount.Design.Guides!, drive.Side_N))],
            Friction = drive.Friction_N is { } friction ? StrutFriction.Of(mount, friction) : null,
        };
    }

    private static IEnumerable<double> Sizes(double rod_m) =>
        [.. _sizes.Where(size => size < rod_m - 1e-6).TakeLast(1), rod_m, .. _sizes.Where(size => size > rod_m + 1e-6).Take(1)];
}
