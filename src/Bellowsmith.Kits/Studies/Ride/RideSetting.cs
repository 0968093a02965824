namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>
/// What may be set otherwise than the kit says, for one run. Height is the spring's at drive, set by the thread with the car
/// held where it is; gauge pressure is at load, and moves the car from there with the thread left alone.
/// </summary>
public sealed record RideSetting(double? Height_m = null, double? GaugePressure_Pa = null, double? Click = null, double? StopFreeLength_m = null);
