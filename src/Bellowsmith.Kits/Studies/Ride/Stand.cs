using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>A strut standing at a setting, ready to be driven.</summary>
internal sealed record Stand(RideStrut Strut, RideSetting Setting, StrutCorner? Air, Corner Corner)
{
    /// <summary>Null, with the reason, where the strut cannot stand there. The click must be given.</summary>
    public static Stand? Of(RideStrut strut, RideSetting setting, out string reason)
    {
        reason = "";
        double click = setting.Click!.Value;
        if (strut.Unmeasured(click) is { } unmeasured) reason = unmeasured;
        else if (strut.Case is not { } air) return new(strut, setting, null, strut.LinearCorner(click));
        else if ((setting.Height_m ?? strut.DriveHeight_m()) is not { } height) reason = "the kit fixes no spring height at drive and no height gives the rate it asks for";
        else if (StrutCorner.Of(air, height, setting, out reason) is { } corner) return At(strut, setting with { Height_m = height }, corner, click);
        return null;
    }

    private static Stand At(RideStrut strut, RideSetting setting, StrutCorner corner, double click) => new(
        strut, setting with { GaugePressure_Pa = corner.GaugePressure_Pa }, corner,
        corner.Corner(strut.HasEnds, strut.DamperForce(click), strut.TyreRate_N_per_m, strut.UnsprungMass_kg));
}
