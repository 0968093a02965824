using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

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
