using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>Does the top mount last, and what does the side load do?</summary>
public static class MountStudy
{
    /// <summary>Least rod of a strut [Reimpell Stoll Betzler 2001]; a damper that leads nothing does with 11 mm.</summary>
    public const double LeastRod_m = 0.018;

    // 3 to 5 mm apart; a tilt bends over many times that.
    private const int Travels = 25;

    // Stacks are measured to 0.1 mm.
    private const double SameHeight_m = 1e-4;

    public static MountResult Answer(MountCase mount, MountQuestion question)
    {
        LinkagePoint[] points = LinkageStudy.Sweep(mount.Linkage, Over(mount));
        MountPlace[] places = [.. points.Select(point => point.State).OfType<LinkageState>().Select(state => Place(mount, state))];
        SideLoads? side = mount.BearsSideLoad ? SideLoads.Of(mount) : null;
        MountResult result = new()
        {
            Case = mount,
            Question = question,
            Places = places,
            Lives = MountLives.Of(mount, question, side?.Drive.Load.Top_N.Length ?? mount.WheelLoad_N / mount.Corner.Axle.SpringRatio.At(0)),
            SideLoad = side,
            Findings = [],
            Reached = places.Length == points.Length && side is not null == mount.BearsSideLoad,
        };
        return result with { Findings = [.. Findings(result)] };
    }

    private static LinkageQuestion Over(MountCase mount)
    {
        double[] travels = [.. Enumerable.Range(0, Travels).Select(k => mount.FullDroop_m + (mount.FullBump_m - mount.FullDroop_m) * k / (Travels - 1)), 0];
        return new([.. travels.Distinct().Order()], mount.Lock_m > 0 ? [-mount.Lock_m, 0, mount.Lock_m] : [0]);
    }

    /// <summary>
    /// How far a strut leans from the spherical bearing's axis, which stands still on the car; at drive height, as measured, by tiltAtDrive, its
    /// foot outward +.
    /// </summary>
    internal static double Tilt_rad(TopMount mount, Point axisAtDrive, Point axis) =>
        axis.AngleTo_rad(Math.Cos(mount.TiltAtDrive_rad) * axisAtDrive + Math.Sin(mount.TiltAtDrive_rad) * SpringSeats.Outward(axisAtDrive));

    private static MountPlace Place(MountCase mount, LinkageState state) =>
        new(state.Travel_m, state.Rack_m, Tilt_rad(mount.Mount, mount.Linkage.Rest.Strut.Axis, state.Strut.Axis), state.Strut.Turn_rad);

    private static IEnumerable<MountFinding> Findings(MountResult result)
    {
        (MountCase mount, TopMount top) = (result.Case, result.Case.Mount);
        double tilt = result.Greatest.Tilt_rad;
        yield return new(MountRule.TiltWithinBearing, tilt, top.SphericalBearing?.TiltLimit_rad, top.SphericalBearing is { } bearing ? bearing.TiltLeft_rad(tilt) >= 0 : null);
        if (mount.Lock_m > 0 && result.Turn_rad is { } turn)
            yield return new(MountRule.TurnsOnBearing, turn, null, top.TurningBearing is not null);
        if (result.Lives.Turning is { LeastAmplitude_rad: { } least } turning)
            yield return new(MountRule.SwingsFarEnough, turning.Amplitude_rad, least, !turning.Dents);
        if (top.StackHeight_m is { } stack)
            yield return new(MountRule.StackAddsUp, stack, mount.Design.UpperStack_m, mount.Design.UpperStack_m is { } upper ? Math.Abs(stack - upper) <= SameHeight_m : null);
        if (mount.BearsSideLoad && mount.Design.Damper is TelescopicDamperPart damper)
            yield return new(MountRule.RodDiameter, damper.RodDiameter_m, LeastRod_m, damper.RodDiameter_m >= LeastRod_m);
    }
}
