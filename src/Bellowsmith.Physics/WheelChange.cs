namespace Bellowsmith.Physics;

/// <summary>
/// Another wheel on the same hub face. Outward + = further out at the arch; toward the strut + = less room inside. Of the rim the edges
/// are meant, of the tyre its widest places. Common practice of the trade: half of a width's growth goes to either side.
/// </summary>
/// <param name="Old">The wheel that was on.</param>
/// <param name="New">The wheel that is to be on.</param>
/// <param name="Spacer_m">Between the new wheel and the hub.</param>
public sealed record WheelChange(RoadWheel Old, RoadWheel New, double Spacer_m = 0)
{
    /// <summary>How much further out the new wheel's middle plane stands: ETold − (ETnew − spacer).</summary>
    public double Shift_m => Old.Rim.Offset_m - New.Rim.Offset_m + Spacer_m;

    public double RimOutward_m => Shift_m + RimGrowth_m;

    public double RimTowardStrut_m => RimGrowth_m - Shift_m;

    public double TyreOutward_m => Shift_m + TyreGrowth_m;

    public double TyreTowardStrut_m => TyreGrowth_m - Shift_m;

    public double FreeRadiusChange_m => New.FreeRadius_m - Old.FreeRadius_m;

    /// <summary>How much faster the car drives at the same speed shown, as a share: the ratio of free radii less 1.</summary>
    public double SpeedChange => New.FreeRadius_m / Old.FreeRadius_m - 1;

    /// <summary>Of one side.</summary>
    private double RimGrowth_m => (New.Rim.Width_m - Old.Rim.Width_m) / 2;

    private double TyreGrowth_m => (New.Section_m - Old.Section_m) / 2;

    /// <summary>
    /// How far a place so high over the hub goes outward where the wheel tilts about the hub: r·sin(camber), top out +. 5.4 to 5.7 mm for a
    /// degree at 310 to 325 mm (common practice, no source). A top mount turns the wheel about the lower ball joint: ask the linkage.
    /// </summary>
    public static double TiltOutward_m(double overHub_m, double camber_rad) => overHub_m * Math.Sin(camber_rad);
}
