using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>
/// Turns a strut at a setting into a <see cref="Corner"/>: what its air, gas and stops do over wheel travel, and how quickly the
/// air gives its heat to the wall. τ is the one at which the air's in-phase exponent at body frequency is the exponent in service.
/// </summary>
internal sealed class StrutCorner
{
    /// <summary>Steel on steel through the mounts; common practice, no source.</summary>
    private const double HardRate_N_per_m = 2e6, TopOutRate_N_per_m = 4e5;

    private const double EntropyStep = 0.05, ForceTolerance = 1e-4, ShortestTime_s = 10e-3;

    private readonly StrutCase _strut;
    private readonly StrutMotion _motion;
    private readonly double _offset_m, _gaugePressure_Pa, _volume_m3;
    private readonly double _height_m, _length_m;

    private StrutCorner(StrutCase strut, StrutMotion motion, double offset_m, double gaugePressure_Pa)
    {
        (_strut, _motion, _offset_m, _gaugePressure_Pa) = (strut, motion, offset_m, gaugePressure_Pa);
        (_height_m, _length_m) = (motion.SpringHeight_m(offset_m), motion.DamperLength_m(offset_m));
        _volume_m3 = motion.Spring.Volume_m3(_height_m, gaugePressure_Pa);
        double least = Math.Max(motion.FullDroop_m, WheelAt(strut.Fit.Spring.GreatestHeight_m));
        double greatest = Math.Min(motion.FullBump_m, WheelAt(strut.Fit.Spring.LeastHeight_m));
        Range = new(least - offset_m, greatest - offset_m);
    }

    /// <summary>Wheel travel that the spring's data and the strut's ends leave, from where the car now stands.</summary>
    public TravelRange Range { get; }

    public double Height_m => _height_m;

    public double GaugePressure_Pa => _gaugePressure_Pa;

    /// <summary>A strut at a setting; null, with the reason, where it cannot stand there.</summary>
    public static StrutCorner? Of(StrutCase strut, double driveHeight_m, RideSetting setting, out string reason)
    {
        StrutCase stopped = setting.StopFreeLength_m is { } free ? WithStop(strut, free) : strut;
        StrutMotion motion = new(stopped, setting.Height_m ?? driveHeight_m);
        reason = "";
        double offset = 0, gauge = setting.GaugePressure_Pa ?? motion.DriveGaugePressure_Pa;
        if (setting.GaugePressure_Pa is { } set) offset = motion.Rest(set).WheelTravel_m;
        if (!(gauge > 0) || double.IsNaN(offset)) reason = NotStanding.OutsideData;
        else if (offset >= motion.FullBump_m - 1e-6) reason = NotStanding.OnStop;
        else if (offset <= motion.FullDroop_m + 1e-6) reason = NotStanding.ToppedOut;
        return reason.Length > 0 ? null : new(stopped, motion, offset, gauge);
    }

    /// <summary>The corner's laws, with a damper's force curve and, where it has ends, both stops.</summary>
    public Corner Corner(bool hasEnds, MonotoneCurve damper, double tyreRate_N_per_m, double unsprungMass_kg)
    {
        double load = _strut.WheelLoad_N;
        int count = TravelPolynomial.Places.Length;
        Span<double> force = stackalloc double[count], cooling = stackalloc double[count];
        Span<double> forceSlope = stackalloc double[count], coolingSlope = stackalloc double[count], forceCurve = stackalloc double[count];
        for (int k = 0; k < count; k++)
        {
            double travel = Range.Travel_m(TravelPolynomial.Places[k]);
            (force[k], cooling[k]) = At(travel, 0);
            ((double more, double colder), (double less, double warmer)) = (At(travel, EntropyStep), At(travel, -EntropyStep));
            (forceSlope[k], coolingSlope[k]) = ((more - less) / (2 * EntropyStep), (colder - warmer) / (2 * EntropyStep));
            forceCurve[k] = (more + less - 2 * force[k]) / (2 * EntropyStep * EntropyStep);
        }

        return new Corner
        {
            SprungMass_kg = _strut.SprungMass_kg,
            UnsprungMass_kg = unsprungMass_kg,
            TyreRate_N_per_m = tyreRate_N_per_m,
            Range = Range,
            Force = TravelPolynomial.Through(force, ForceTolerance * load),
            ForceByEntropy = TravelPolynomial.Through(forceSlope, 1e-3 * load),
            ForceByEntropySquare = TravelPolynomial.Through(forceCurve, 1e-2 * load),
            Cooling = TravelPolynomial.Through(cooling, 1e-4),
            CoolingByEntropy = TravelPolynomial.Through(coolingSlope, 1e-2),
            TimeConstant_s = TimeConstant_s(),
            DamperRatio = TravelPolynomial.Of(w => _strut.DamperRatio.At(w + _offset_m), Range, 1e-4),
            DamperForce = damper,
            BumpStop = hasEnds ? BumpStop() : null,
            TopOut = hasEnds ? TopOut() : null,
        };
    }

    /// <summary>The gauge pressure at a wheel travel from here when the air has gained entropy κ.</summary>
    public double SealedGaugePressure_Pa(double travel_m, double entropy) => _motion.Spring.SealedGaugePressure_Pa(
        HeightAt(travel_m), _height_m, _gaugePressure_Pa, SealedAir.AdiabaticExponent, entropy);

    /// <summary>T/Tw of the air there.</summary>
    public double Warmth(double travel_m, double entropy) => WarmthAt(HeightAt(travel_m), SealedGaugePressure_Pa(travel_m, entropy));

    /// <summary>Wheel travel from here at which the stop is first touched.</summary>
    public double StopContact_m => _motion.StopContact_m - _offset_m;

    // Force at the wheel, and Tw/T − 1.
    private (double Force_N, double Cooling) At(double travel_m, double entropy)
    {
        double wheel = travel_m + _offset_m, height = HeightAt(travel_m), gauge = SealedGaugePressure_Pa(travel_m, entropy);
        double gas = _strut.Gas.GaugePressure_Pa == 0 ? 0
            : _strut.Gas.ForceFromDrive_N(_motion.DamperLength_m(wheel), _length_m, _strut.Ambient_Pa);
        double force = _motion.Spring.Force_N(height, gauge) * _strut.SpringRatio.At(wheel) + gas * _strut.DamperRatio.At(wheel)
            + _strut.ParasiticRate_N_per_m * wheel;
        return (force, 1 / WarmthAt(height, gauge) - 1);
    }

    private double TimeConstant_s()
    {
        double n = _strut.Exponent, rate = _motion.Spring.SealedRate_N_per_m(_height_m, _gaugePressure_Pa, n);
        double omega = 2 * Math.PI * _strut.RideFrequency_Hz(_strut.WheelRate_N_per_m(rate, _height_m));
        if (n >= SealedAir.AdiabaticExponent) return double.PositiveInfinity;
        return Math.Max(ShortestTime_s, Math.Sqrt(Math.Max(0, n - 1) / (SealedAir.AdiabaticExponent - n)) / omega);
    }

    private MonotoneCurve BumpStop()
    {
        double solid = _motion.FullBump_m - _offset_m, contact = Math.Min(StopContact_m, solid - 1e-4), slope = HardRate_N_per_m * _strut.DamperRatio.At(0);
        List<(double Travel, double Force)> points = [(contact, 0)];
        const int places = 8;
        for (int k = 1; k <= places; k++)
        {
            double travel = contact + (solid - contact) * k / places;
            points.Add((travel, Math.Max(points[^1].Force, _motion.StopForce_N(travel + _offset_m))));
        }

        return MonotoneCurve.Through([.. points.Select(p => p.Travel)], [.. points.Select(p => p.Force)], 0, slope);
    }

    private MonotoneCurve TopOut()
    {
        const double first = 1e-3;
        double droop = _motion.FullDroop_m - _offset_m, slope = TopOutRate_N_per_m * _strut.DamperRatio.At(0);
        return MonotoneCurve.Through([droop - first, droop], [-slope * first / 2, 0], slope, 0);
    }

    private double WarmthAt(double height_m, double gaugePressure_Pa) =>
        (gaugePressure_Pa + _strut.Ambient_Pa) * _motion.Spring.Volume_m3(height_m, gaugePressure_Pa)
        / ((_gaugePressure_Pa + _strut.Ambient_Pa) * _volume_m3);

    private double HeightAt(double travel_m) =>
        Math.Clamp(_motion.SpringHeight_m(travel_m + _offset_m), _strut.Fit.Spring.LeastHeight_m, _strut.Fit.Spring.GreatestHeight_m);

    private double WheelAt(double height_m) => _strut.SpringRatio.WheelTravel_m(_motion.DriveHeight_m - height_m);

    private static StrutCase WithStop(StrutCase strut, double freeLength_m)
    {
        TelescopicDamperPart damper = strut.Damper!;
        if (damper.BumpStop is not { } stop) return strut;
        double share = freeLength_m / stop.FreeLength_m;
        BumpStopPart other = stop with
        {
            FreeLength_m = freeLength_m,
            SolidLength_m = stop.SolidLength_m * share,
            Curve = [.. stop.Curve.Select(p => p with { Compression_m = p.Compression_m * share })],
        };
        return strut with { Design = strut.Design with { Damper = damper with { BumpStop = other } } };
    }
}
