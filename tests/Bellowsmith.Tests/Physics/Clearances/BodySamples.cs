using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics.Clearances;

/// <summary>Bodies of revolution as they stand round a strut, and where they may stand.</summary>
internal static class BodySamples
{
    private static readonly RoadWheel _wheel = new(new Rim(0.2159, 0.4572, 0.035), new Tyre(0.225, 0.40, 0.4572));

    public static readonly RevolvedProfile Tyre = _wheel.TyreOutline(), Rim = _wheel.RimOutline();

    public static readonly RevolvedProfile Tube = Cylinder(0.025, 0.3), Disc = Cylinder(0.09, 0.01);

    public static readonly RevolvedProfile Cone = new((0, 0), (0, 0.06), (0.15, 0));

    /// <summary>Two folds, ends closed.</summary>
    public static readonly RevolvedProfile Bellows =
        new([(0, 0), .. Enumerable.Range(0, 13).Select(k => (0.0065 * k, 0.05 + 0.015 * Math.Abs(Math.Sin(Math.PI * k / 6)))), (0.078, 0)]);

    private static readonly RevolvedProfile[] _kinds = [Tyre, Rim, Tube, Disc, Cone, Bellows];

    public static readonly Gen<Point> Direction =
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-Math.PI, Math.PI]).Select((z, a) => new Point(Math.Sqrt(1 - z * z) * Math.Cos(a), Math.Sqrt(1 - z * z) * Math.Sin(a), z));

    public static readonly Gen<RevolvedBody> Any =
        Gen.Select(Gen.Int[0, 5], Gen.Double[0, 0.45], Direction, Direction)
            .Select((kind, away, toward, axis) => new RevolvedBody(_kinds[kind], away * toward, axis));

    public static readonly Gen<RoundBar> Bar =
        Gen.Select(Direction, Direction, Gen.Double[0, 0.5], Gen.Double[0, 0.5], Gen.Double[0, 0.02])
            .Select((one, other, near, far, radius) => new RoundBar(near * one, far * other, radius));

    public static RevolvedProfile Cylinder(double radius_m, double length_m) => new((0, 0), (0, radius_m), (length_m, radius_m), (length_m, 0));

    /// <summary>A ball, or with a ring radius a torus, of so many lines.</summary>
    public static RevolvedProfile Round(double ring_m, double radius_m, int lines) => new(
        [.. Enumerable.Range(0, lines + 1).Select(k => (ring_m > 0 ? 2 : 1) * Math.PI * k / lines)
            .Select(a => (-radius_m * Math.Cos(a), Math.Max(0, ring_m + radius_m * Math.Sin(a))))]);
}
