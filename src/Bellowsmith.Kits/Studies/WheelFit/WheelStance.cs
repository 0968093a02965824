using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>How the new wheel stands on the road beside the old one, one side, at drive height.</summary>
/// <param name="TrackChange_m">Of the contact point, outward +.</param>
/// <param name="ScrubRadiusChange_m">Axis further inboard of the contact point +.</param>
/// <param name="ToeChange_rad">What the change of camber makes of toe, in +; null where no linkage says.</param>
public sealed record WheelStance(double TrackChange_m, double ScrubRadiusChange_m, double? ToeChange_rad)
{
    /// <summary>Without points the wheel tilts about a hub that stays, on its free radius, and a steering axis that stays.</summary>
    internal static WheelStance Of(WheelCorner corner, CamberSet set, WheelFitQuestion question)
    {
        WheelChange change = question.Change;
        if (corner.Adjuster.Linkage is not { } measured || set.Linkage is not { } adjusted)
        {
            double outward = change.Shift_m - WheelChange.TiltOutward_m(question.New.FreeRadius_m, set.Camber_rad);
            return new(outward, outward, null);
        }

        LinkageState old = measured.Rest, now = With(adjusted.Suspension, change).Rest;
        double track = now.ContactPoint.Y - old.ContactPoint.Y;
        double scrub = now.Steering is { } steering ? steering.ScrubRadius_m - old.Steering!.ScrubRadius_m : track;
        return new(track, scrub, now.Toe_rad - old.Toe_rad);
    }

    // On a tyre of the same rate the loaded radius grows as the free one does.
    private static Linkage With(Suspension suspension, WheelChange change)
    {
        LinkageWheel wheel = suspension.Wheel;
        var (camber, toe) = LinkageWheel.Of(wheel.Centre, wheel.Centre + wheel.Axis);
        return new(suspension with { Wheel = new(wheel.Centre + change.Shift_m * wheel.Axis, wheel.Radius_m + change.FreeRadiusChange_m, camber, toe) });
    }
}
