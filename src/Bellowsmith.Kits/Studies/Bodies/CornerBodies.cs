using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Bodies;

/// <summary>
/// The bodies of one corner in car axes at any place of its linkage, m: bellows, strut below it, tyre and rim. The mount face stands at
/// the suspension's strutTop and the strut runs along its axis from there; what the kit does not say of the strut's diameters is taken
/// as usual. The strut's own compression is the linkage's, so that its parts lie where the points put them. The air is shut in at drive height and
/// compressed fast, as over a bump: the bellows swells with it.
/// </summary>
public sealed class CornerBodies
{
    private const double Collar_m = 0.008, CollarWidth_m = 0.014, Sleeve_m = 0.006, LockRing_m = 0.009;

    private readonly StrutCase _strut;
    private readonly StrutSpring _spring;
    private readonly BellowsWall _wall;
    private readonly StrutLayout _layout;
    private readonly double _plate_m, _ring_m;

    /// <param name="strut">The strut under its load.</param>
    /// <param name="driveHeight_m">Spring height at wheel travel 0.</param>
    public CornerBodies(StrutCase strut, double driveHeight_m) : this(strut, new(strut, 2 * StrutLayout.PlateOf_mm(strut)), driveHeight_m)
    {
    }

    private CornerBodies(StrutCase strut, BellowsWall wall, double driveHeight_m)
    {
        (_strut, _spring, _wall, DriveHeight_m) = (strut, strut.Spring(driveHeight_m), wall, driveHeight_m);
        _layout = new(strut, driveHeight_m);
        (_plate_m, _ring_m) = (_layout.Plate_mm / 1000, (_wall.RingRadius_mm + 4) / 1000);
    }

    public double DriveHeight_m { get; }

    /// <summary>What another bar adds to the bellows' outer diameter at drive height; null where no mould says.</summary>
    public double? SwellingPerBar_m => _wall.SwellingPerBar_mm(DriveHeight_m * 1000) / 1000;

    /// <summary>The same strut with its spring at another height at drive: its wall is not calibrated anew.</summary>
    public CornerBodies At(double driveHeight_m) => new(_strut, _wall, driveHeight_m);

    /// <summary>Spring height at a place of the linkage.</summary>
    public double SpringHeight_m(LinkageState state) => DriveHeight_m - state.Strut.Compression_m;

    /// <summary>With the valve shut at drive height, in-service exponent; at the end of the spring's data where the height lies beyond it.</summary>
    public double GaugePressure_Pa(double springHeight_m) => _spring.SealedGaugePressure_Pa(
        Math.Clamp(springHeight_m, _strut.LeastHeight_m, _strut.GreatestHeight_m), DriveHeight_m, _layout.GaugePressure_Pa, _strut.Exponent);

    /// <summary>From the upper plate's outer face to the lower one's, walls and plates; the wall between it and the plates where they are nearer.</summary>
    public RevolvedBody Bellows(LinkageState state)
    {
        double height = SpringHeight_m(state), top = FromMount_m(_layout.UpperPlate), foot = top + height - _plate_m, half = _wall.Thickness_mm / 2000;
        return On(state, new(
        [
            (top, 0), (top, _ring_m), (top + _plate_m, _ring_m),
            .. _wall.Meridian(height * 1000, GaugePressure_Pa(height)).Select(p => (foot - p.Height_mm / 1000, p.Radius_mm / 1000 + half)),
            (foot, _ring_m), (foot + _plate_m, _ring_m), (foot + _plate_m, 0),
        ]));
    }

    /// <summary>Collar, damper body, lock ring and sleeve from the lower plate down to the lower datum. Brackets are not of it.</summary>
    public RevolvedBody Strut(LinkageState state)
    {
        double up = state.Strut.Compression_m, body = _layout.Body / 1000;
        double plate = FromMount_m(_layout.LowerPlate) - up, sleeve = FromMount_m(_layout.SleeveTop) - up, datum = FromMount_m(Math.Min(_layout.Datum, _layout.DamperBottom)) - up;
        double ring = Math.Min(sleeve + Collar_m, datum);
        return On(state, new(
            (plate, 0), (plate, body + CollarWidth_m), (plate + Collar_m, body + CollarWidth_m), (plate + Collar_m, body),
            (sleeve, body), (sleeve, body + LockRing_m), (ring, body + LockRing_m), (ring, body + Sleeve_m), (datum, body + Sleeve_m), (datum, 0)));
    }

    public static RevolvedBody Tyre(RoadWheel wheel, LinkageState state, double outward_m = 0) => new(wheel.TyreOutline(), Middle(state, outward_m), state.WheelAxis);

    public static RevolvedBody Rim(RoadWheel wheel, LinkageState state, double outward_m = 0) => new(wheel.RimOutline(), Middle(state, outward_m), state.WheelAxis);

    /// <summary>The wheel's middle plane on the spin axis, so much further out than the measured wheel's.</summary>
    public static Point Middle(LinkageState state, double outward_m) => state.WheelCentre + outward_m * state.WheelAxis;

    private double FromMount_m(double overDatum_mm) => (_layout.Mount - overDatum_mm) / 1000;

    private static RevolvedBody On(LinkageState state, RevolvedProfile profile) =>
        new(profile, state.Strut.Bottom + state.Strut.Length_m * state.Strut.Axis, -state.Strut.Axis);
}
