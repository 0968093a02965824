using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Travel;

/// <summary>What ends a movement: the load is balanced, by air alone or with the stop's help, or something is at its end.</summary>
public enum TravelEnd { LoadBalance, OnBumpStop, BumpStopSolid, DamperClosed, DamperFullLength, SpringLeastHeight, SpringGreatestHeight }

/// <summary>Lengths a designer may change to mend a miss, each from what the kit says now; car height is held.</summary>
/// <param name="Body_m">Damper body and with it its shortest and longest length, + longer.</param>
/// <param name="Stop_m">Free length of the bump stop, + taller; its solid length goes in proportion.</param>
/// <param name="Thread_m">Exposed thread, + more: the spring stands lower.</param>
/// <param name="Perch_m">Spring perch on the damper, + higher: the damper is longer at the same spring height.</param>
public readonly record struct StrutChange(double Body_m = 0, double Stop_m = 0, double Thread_m = 0, double Perch_m = 0);

/// <summary>
/// One strut moving with its wheel from drive height: zw bump +, spring height h = hd − Ss(zw), damper length
/// L = Ld − Sd(zw). Where it stops either way, and what forces it has there.
/// </summary>
internal sealed class StrutMotion
{
    private readonly StrutCase _strut;
    private readonly TelescopicDamperPart _damper;
    private readonly BumpStop? _stop;

    public StrutMotion(StrutCase strut, double driveHeight_m, StrutChange change = default)
    {
        (_strut, _damper) = (strut, strut.Damper!);
        DriveHeight_m = driveHeight_m - change.Thread_m;
        DriveLength_m = strut.DamperLength_m(DriveHeight_m) + change.Perch_m;
        (Shortest_m, Longest_m) = (_damper.Shortest_m + change.Body_m, _damper.Longest_m + change.Body_m);
        Spring = strut.Spring(DriveHeight_m);
        if (_damper.BumpStop is { } part)
        {
            double share = (part.FreeLength_m + change.Stop_m) / part.FreeLength_m;
            _stop = new BumpStop(
                part.FreeLength_m * share, part.SolidLength_m * share,
                part.Curve.Select(p => p.Compression_m * share).ToArray(), part.Curve.Select(p => p.Force_N).ToArray());
        }

        DriveGaugePressure_Pa = strut.GaugePressure_Pa(DriveHeight_m);
        (FullBump_m, BumpEnd) = First(
            (WheelFor(DriveLength_m - SolidLength_m), TravelEnd.BumpStopSolid),
            (WheelFor(DriveLength_m - Shortest_m), TravelEnd.DamperClosed),
            (strut.SpringRatio.WheelTravel_m(DriveHeight_m - strut.Part.LeastHeight_m), TravelEnd.SpringLeastHeight));
        (double droop, DroopEnd) = First(
            (-WheelFor(DriveLength_m - Longest_m), TravelEnd.DamperFullLength),
            (-strut.SpringRatio.WheelTravel_m(DriveHeight_m - strut.Part.GreatestHeight_m), TravelEnd.SpringGreatestHeight));
        FullDroop_m = -droop;
    }

    public double DriveHeight_m { get; }
    public double DriveLength_m { get; }

    /// <summary>NaN where drive height lies outside the spring's data.</summary>
    public double DriveGaugePressure_Pa { get; }

    public double Shortest_m { get; }
    public double Longest_m { get; }
    public StrutSpring Spring { get; }

    /// <summary>Wheel travel at the end of bump, + , and of droop, −.</summary>
    public double FullBump_m { get; }

    public TravelEnd BumpEnd { get; }
    public double FullDroop_m { get; }
    public TravelEnd DroopEnd { get; }

    public bool HasStop => _stop is not null;

    /// <summary>Wheel travel at which the bump stop, or without one the closed damper, is first touched.</summary>
    public double StopContact_m => _stop is null
        ? FullBump_m
        : Math.Min(WheelFor(StopGap_m(0)!.Value), FullBump_m);

    /// <summary>Spring height at which the stop is solid or the damper closed, whichever comes first.</summary>
    public double SolidHeight_m => SpringHeight_m(SolidTravel_m);

    /// <summary>Spring height at which the damper is at full length.</summary>
    public double TopOutHeight_m => SpringHeight_m(-TopOutTravel_m);

    /// <summary>Wheel travel up to the solid stop or the closed damper; negative where drive lies beyond it.</summary>
    public double SolidTravel_m => WheelFor(DriveLength_m - Math.Max(SolidLength_m, Shortest_m));

    /// <summary>Wheel travel down to the damper's full length; negative where drive lies beyond it.</summary>
    public double TopOutTravel_m => -WheelFor(DriveLength_m - Longest_m);

    public double SpringHeight_m(double wheelTravel_m) => DriveHeight_m - _strut.SpringRatio.StrutTravel_m(wheelTravel_m);

    public double DamperLength_m(double wheelTravel_m) => DriveLength_m - _strut.DamperRatio.StrutTravel_m(wheelTravel_m);

    /// <summary>Gap under the free stop, − where it is squeezed; null without a stop.</summary>
    public double? StopGap_m(double wheelTravel_m) => _stop is null ? null : Rod_m(wheelTravel_m) - _stop.FreeLength_m;

    public double StopForce_N(double wheelTravel_m) => _stop?.Force_N(Rod_m(wheelTravel_m)) ?? 0;

    /// <summary>
    /// What the corner carries at a wheel travel with the gauge pressure held, N at the wheel, + up on the body; NaN outside
    /// the spring's data unless it is empty.
    /// </summary>
    public double WheelForce_N(double wheelTravel_m, double gaugePressure_Pa)
    {
        double height = SpringHeight_m(wheelTravel_m);
        double spring = gaugePressure_Pa <= 0 ? 0
            : _strut.Fit.Spring.Covers(height) ? Spring.Force_N(height, gaugePressure_Pa) : double.NaN;
        double damper = _strut.Gas.Force_N(GasLength(wheelTravel_m), _strut.Ambient_Pa) + StopForce_N(wheelTravel_m);
        return spring * _strut.SpringRatio.At(wheelTravel_m) + damper * _strut.DamperRatio.At(wheelTravel_m)
            + _strut.ParasiticRate_N_per_m * wheelTravel_m;
    }

    /// <summary>Gauge pressure at a wheel travel with the valve shut at drive; null outside the spring's data.</summary>
    public double? SealedGaugePressure_Pa(double wheelTravel_m) => SealedGaugePressure_Pa(wheelTravel_m, _strut.Exponent);

    private double? SealedGaugePressure_Pa(double wheelTravel_m, double exponent)
    {
        double height = SpringHeight_m(wheelTravel_m);
        if (!_strut.Fit.Spring.Covers(height)) return null;
        double pg = Spring.SealedGaugePressure_Pa(height, DriveHeight_m, DriveGaugePressure_Pa, exponent);
        return double.IsNaN(pg) ? null : pg;
    }

    /// <summary>
    /// Where the car comes to rest with the gauge pressure held: between full droop and full bump, or against the end that
    /// stops it first. Heights outside the spring's data are not entered: NaN where the rest would lie there.
    /// </summary>
    public (double WheelTravel_m, TravelEnd End) Rest(double gaugePressure_Pa)
    {
        (double low, double high) = (FullDroop_m, FullBump_m);
        if (gaugePressure_Pa > 0) (low, high) = (Math.Max(low, WheelAt(_strut.GreatestHeight_m)), Math.Min(high, WheelAt(_strut.LeastHeight_m)));
        double load = _strut.WheelLoad_N;
        if (WheelForce_N(low, gaugePressure_Pa) > load) return low > FullDroop_m + 1e-9 ? (double.NaN, default) : (low, DroopEnd);
        if (WheelForce_N(high, gaugePressure_Pa) < load) return high < FullBump_m - 1e-9 ? (double.NaN, default) : (high, BumpEnd);
        return Balance(low, high, load, travel => WheelForce_N(travel, gaugePressure_Pa));
    }

    /// <summary>
    /// Where the car comes to rest under another load on the air it holds at drive, settled to the temperature it had (n = 1): between the ends
    /// or at one of them. Null where that lies outside the spring's data.
    /// </summary>
    public (double WheelTravel_m, double GaugePressure_Pa, TravelEnd End)? RestSealed(double wheelLoad_N)
    {
        (double low, double high) = (FullDroop_m, FullBump_m);
        if (Force(low) > wheelLoad_N) return At(low, DroopEnd);
        if (Force(high) < wheelLoad_N) return At(high, BumpEnd);
        (double rest, TravelEnd on) = Balance(low, high, wheelLoad_N, Force);
        return At(rest, on);

        double Force(double travel) => SealedGaugePressure_Pa(travel, 1) is { } gauge ? WheelForce_N(travel, gauge) : double.NaN;
        (double, double, TravelEnd)? At(double travel, TravelEnd end) => double.IsFinite(Force(travel)) ? (travel, SealedGaugePressure_Pa(travel, 1)!.Value, end) : null;
    }

    // The low end carries less than the load, the high end more.
    private (double WheelTravel_m, TravelEnd End) Balance(double low, double high, double load, Func<double, double> force)
    {
        for (int step = 0; step < 50; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = force(middle) < load ? (middle, high) : (low, middle);
        }

        double rest = (low + high) / 2;
        return (rest, StopForce_N(rest) > 0 ? TravelEnd.OnBumpStop : TravelEnd.LoadBalance);
    }

    // Rod between stop seat and damper head.
    private double Rod_m(double wheelTravel_m) => DamperLength_m(wheelTravel_m) - Shortest_m + (_damper.BumpStop?.RodAtShortest_m ?? 0);

    private double SolidLength_m => _stop is null
        ? double.NegativeInfinity
        : Shortest_m - _damper.BumpStop!.RodAtShortest_m + _stop.SolidLength_m;

    // The charge is stated at the part's own longest length; a changed body moves both.
    private double GasLength(double wheelTravel_m) => DamperLength_m(wheelTravel_m) - Longest_m + _damper.Longest_m;

    private double WheelFor(double damperTravel_m) =>
        double.IsInfinity(damperTravel_m) ? damperTravel_m : _strut.DamperRatio.WheelTravel_m(damperTravel_m);

    private double WheelAt(double springHeight_m) => _strut.SpringRatio.WheelTravel_m(DriveHeight_m - springHeight_m);

    private static (double, TravelEnd) First(params ReadOnlySpan<(double Travel_m, TravelEnd End)> ends)
    {
        (double Travel_m, TravelEnd End) first = ends[0];
        foreach ((double Travel_m, TravelEnd End) end in ends)
            if (end.Travel_m < first.Travel_m) first = end;
        return first;
    }
}
