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

/// <summary>The side load at one wheel travel.</summary>
/// <param name="State">Where.</param>
/// <param name="Load">What holds the strut there.</param>
/// <param name="Rod">What it does to the rod; null where the piston would be past its guide.</param>
/// <param name="Friction_N">Of guide and piston, along the rod.</param>
public sealed record SideLoadPlace(LinkageState State, StrutSideLoad Load, RodLoad? Rod, double? Friction_N)
{
    public double Travel_m => State.Travel_m;

    /// <summary>Across the rod at its top.</summary>
    public double Side_N => Load.Side_N.Length;

    /// <summary>Its part across the car, pushing the rod's top outward +.</summary>
    public double Outward_N => Load.Side_N.Dot(SpringSeats.Outward(State.Strut.Axis));

    internal static SideLoadPlace? Of(MountCase mount, SpringSeats seats, LinkageState state)
    {
        if (StrutSideLoad.Of(state, mount.WheelLoad_N * Point.Up, line: seats.Line(state)) is not { } load) return null;
        RodGuides guides = mount.Design.Guides!;
        double compression = state.Strut.Compression_m;
        StrutRod rod = new(((TelescopicDamperPart)mount.Design.Damper).RodDiameter_m, guides.TopToGuide_m - compression, guides.GuideToPiston_m + compression);
        RodLoad? under = rod is { TopToGuide_m: > 0, GuideToPiston_m: > 0 } ? rod.Under(load.Side_N.Length) : null;
        return new(state, load, under, under?.Friction_N(guides.Friction));
    }
}

/// <summary>A rod of one diameter under the side load at drive height: stress goes with 1/d³, deflection with 1/d⁴.</summary>
public sealed record RodSize(double Diameter_m, double Stress_Pa, double Deflection_m)
{
    internal static RodSize Of(double diameter_m, RodGuides guides, double side_N)
    {
        StrutRod rod = new(diameter_m, guides.TopToGuide_m, guides.GuideToPiston_m);
        return new(diameter_m, rod.Under(side_N).Stress_Pa, rod.Deflection_m(side_N));
    }
}

/// <summary>What friction in the strut means at the wheel.</summary>
/// <param name="AtWheel_N">Friction·i.</param>
/// <param name="Breakaway_m_per_s2">What the body must be pushed with before the strut moves: AtWheel/ms.</param>
/// <param name="RestBand_m">± how far from its height the car may come to rest: AtWheel/kw; null without a wheel rate.</param>
/// <param name="Still_m">
/// A bump met at once that the tyre takes alone: held, strut and wheel are pushed with kt·z and the body feels kt·z·ms/(ms + mu), so
/// z = AtWheel·(ms + mu)/(ms·kt); null without a tyre rate (derived).
/// </param>
public sealed record StrutFriction(double AtWheel_N, double Breakaway_m_per_s2, double? RestBand_m, double? Still_m)
{
    internal static StrutFriction Of(MountCase mount, double friction_N)
    {
        double atWheel = friction_N * mount.Corner.Axle.DamperRatio.At(0), sprung = mount.WheelLoad_N / StandardGravity.Value_m_per_s2;
        return new(
            atWheel, atWheel / sprung, atWheel / mount.WheelRate_N_per_m,
            atWheel * (sprung + mount.Corner.Axle.UnsprungMass_kg) / sprung / mount.Corner.Axle.TyreRate_N_per_m);
    }
}
