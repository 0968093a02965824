using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.InstalledHeight;

/// <summary>Everything worth saying of one installed height.</summary>
internal static class SolutionReport
{
    private const double Millimetre_m = 1e-3, Psi_Pa = 6894.757293168, TenKilograms_kg = 10, TenCubicCentimetres_m3 = 10e-6;
    private const double ExponentStep = 0.02, Small_m = 1e-5;

    public static HeightSolution At(StrutCase strut, double height_m)
    {
        StrutSpring spring = strut.Spring();
        double force = strut.SpringForce_N(height_m), pg = spring.GaugePressureFor_Pa(force, height_m);
        double rate = spring.SealedRate_N_per_m(height_m, pg, strut.Exponent);
        double wheelRate = strut.WheelRate_N_per_m(rate, height_m);
        (double Low, double High)? band = strut.Fit.Band(
            (s, n) => RateAt(strut.SpringOf(s), force, height_m, n), strut.Exponent, strut.ExponentSource == ExponentSource.SealedFastRows);
        HeightSensitivities sensitivities = Sensitivities(strut, height_m, pg, rate);
        return new HeightSolution
        {
            Height_m = height_m,
            GaugePressure_Pa = pg,
            SpringRate_N_per_m = rate,
            SpringRateBand_N_per_m = band,
            HeightBand_m = HeightBand(strut, height_m, rate, band, sensitivities.RateSlope_N_per_m2),
            SpringRateIsothermal_N_per_m = spring.SealedRate_N_per_m(height_m, pg, 1),
            SpringRateAdiabatic_N_per_m = spring.SealedRate_N_per_m(height_m, pg, SealedAir.AdiabaticExponent),
            WheelRate_N_per_m = wheelRate,
            RideFrequency_Hz = strut.RideFrequency_Hz(wheelRate),
            RideFrequencyWithTyre_Hz = strut.RideFrequencyWithTyre_Hz(wheelRate),
            EffectiveArea_m2 = spring.Spring.At(height_m, pg).EffectiveArea_m2,
            Volume_m3 = spring.Volume_m3(height_m, pg),
            WithinPressureLimit = pg <= strut.Part.MaxGaugePressure_Pa,
            WithinTestedPressure = pg >= strut.Fit.LeastGaugePressure_Pa && pg <= strut.Fit.GreatestGaugePressure_Pa,
            Room = Room(strut, height_m),
            Thread = Thread(strut, height_m),
            SideGaugePressures = (Side(strut, height_m, strut.Sprung.Left_kg), Side(strut, height_m, strut.Sprung.Right_kg)),
            Sensitivities = sensitivities,
        };
    }

    private static double RateAt(in StrutSpring spring, double force_N, double height_m, double exponent)
    {
        double pg = spring.GaugePressureFor_Pa(force_N, height_m);
        return pg > 0 ? spring.SealedRate_N_per_m(height_m, pg, exponent) : double.NaN;
    }

    private static (double, double)? HeightBand(
        StrutCase strut, double height_m, double rate, (double Low, double High)? band, double slope)
    {
        if (band is not { } b || Math.Abs(slope) * (strut.GreatestHeight_m - strut.LeastHeight_m) < b.High - b.Low) return null;
        double half = (b.High - rate) / Math.Abs(slope);
        return (height_m - half, height_m + half);
    }

    private static double Side(StrutCase strut, double height_m, double sprung_kg) => strut.Spring().GaugePressureFor_Pa(
        strut.SpringForce_N(height_m, sprung_kg * StandardGravity.Value_m_per_s2), height_m);

    private static HeightSensitivities Sensitivities(StrutCase strut, double height_m, double pg, double rate)
    {
        StrutSpring spring = strut.Spring();
        double force = strut.SpringForce_N(height_m), heavier = strut.SpringForce_N(
            height_m, strut.WheelLoad_N + TenKilograms_kg * StandardGravity.Value_m_per_s2);
        double lower = height_m - Millimetre_m, pgLower = Covered(strut, lower)
            ? spring.GaugePressureFor_Pa(strut.SpringForce_N(lower), lower) : double.NaN;
        double pgHeavier = spring.GaugePressureFor_Pa(heavier, height_m);
        double slope = RateSlope(strut, spring, height_m);

        double wheelRise = RiseWith(strut, height_m, pg + Psi_Pa);
        return new HeightSensitivities(
            pgLower > 0 ? spring.SealedRate_N_per_m(lower, pgLower, strut.Exponent) - rate : double.NaN,
            pgLower - pg,
            wheelRise,
            RateAfter(strut, height_m, wheelRise * strut.SpringRatio.At(0), pg + Psi_Pa) - rate,
            spring.SealedRate_N_per_m(height_m, pgHeavier, strut.Exponent) - rate,
            pgHeavier - pg,
            spring.SealedRate_N_per_m(height_m, pg, strut.Exponent + ExponentStep) - rate,
            RateAt(spring with { DisplacedVolume_m3 = spring.DisplacedVolume_m3 + TenCubicCentimetres_m3 },
                force, height_m, strut.Exponent) - rate,
            slope);
    }

    private static double RateSlope(StrutCase strut, in StrutSpring spring, double height_m)
    {
        double low = Math.Max(height_m - Small_m, strut.LeastHeight_m), high = Math.Min(height_m + Small_m, strut.GreatestHeight_m);
        return (RateAt(spring, strut.SpringForce_N(high), high, strut.Exponent)
            - RateAt(spring, strut.SpringForce_N(low), low, strut.Exponent)) / (high - low);
    }

    // More air at the same load and thread: the car rises until the spring, helped or hindered by what works beside it,
    // carries the load again. NaN where that lies outside the data.
    private static double RiseWith(StrutCase strut, double height_m, double gaugePressure_Pa)
    {
        StrutSpring spring = strut.Spring();
        double i = strut.SpringRatio.At(0), beside = strut.WheelRate_N_per_m(0, height_m), force = strut.SpringForce_N(height_m);
        double low = 0, high = (strut.GreatestHeight_m - height_m) / i;
        if (Excess(high) > 0) return double.NaN;
        for (int step = 0; step < 40; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = Excess(middle) > 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;

        double Excess(double rise_m) => (spring.Force_N(height_m + rise_m * i, gaugePressure_Pa) - force) * i - beside * rise_m;
    }

    // At fixed thread the rod comes out as the car rises, unlike at another thread setting.
    private static double RateAfter(StrutCase strut, double height_m, double rise_m, double pg) => Covered(strut, height_m + rise_m)
        ? strut.Spring(height_m).SealedRate_N_per_m(height_m + rise_m, pg, strut.Exponent)
        : double.NaN;

    private static HeightRoom Room(StrutCase strut, double height_m)
    {
        TravelLimits limits = strut.Design.Limits;
        double i = strut.SpringRatio.At(0), bump = limits.StopContact_m * i, droop = limits.Droop_m * i;
        double down = height_m - strut.Part.LeastHeight_m, up = strut.Part.GreatestHeight_m - height_m;
        double edge = Math.Min(height_m - strut.Fit.Spring.LeastHeight_m, strut.Fit.Spring.GreatestHeight_m - height_m);
        (double? toStop, double? toTopOut) = DamperRoom(strut, height_m);
        double lacksBump = Math.Max(Lacks(bump, down), Lacks(bump, toStop));
        double lacksDroop = Math.Max(Lacks(droop + limits.TopOutMargin_m, up), Lacks(droop, toTopOut));
        double lacking = lacksBump + lacksDroop + Lacks(Recommendation.DataEdge_m, edge);
        if (Thread(strut, height_m) is { } thread && strut.Design.Thread is { } reach)
            lacking += Lacks(reach.Least_m, thread.Exposed_m) + Lacks(thread.Exposed_m, reach.Greatest_m);
        return new HeightRoom(down, up, toStop, toTopOut, edge, lacksBump, lacksDroop, lacking);

        static double Lacks(double wanted, double? there) => there is { } room ? Math.Max(0, wanted - room) : 0;
    }

    private static (double? ToStop_m, double? ToTopOut_m) DamperRoom(StrutCase strut, double height_m)
    {
        if (strut.Damper is not { } damper || strut.Design.SpringToDamper_m is null) return (null, null);
        double length = strut.DamperLength_m(height_m), toClosed = length - damper.Shortest_m;
        double toStop = damper.BumpStop is { } stop ? toClosed + stop.RodAtShortest_m - stop.FreeLength_m : toClosed;
        // Where spring and damper sit apart: how far the spring moves meanwhile.
        double share = strut.SpringRatio.At(0) / strut.DamperRatio.At(0);
        return (Math.Min(toStop, toClosed) * share, (damper.Longest_m - length) * share);
    }

    internal static ThreadSetting? Thread(StrutCase strut, double height_m)
    {
        StrutDesign d = strut.Design;
        if (d.Thread is not { } thread || d.StrutLengthAtDrive_m is not { } length
            || d.UpperStack_m is not { } upper || d.LowerStack_m is not { } lower) return null;
        double exposed = length - upper - height_m - lower, held = Math.Clamp(exposed, thread.Least_m, thread.Greatest_m);
        if (Math.Abs(held - exposed) < 1e-9) return new ThreadSetting(exposed, Turns(exposed), true, null);

        double reach = height_m + exposed - held;
        if (!Covered(strut, reach)) return new ThreadSetting(exposed, Turns(exposed), false, null);
        StrutSpring spring = strut.Spring();
        double pg = spring.GaugePressureFor_Pa(strut.SpringForce_N(reach), reach);
        return new ThreadSetting(exposed, Turns(exposed), false, new ReachableHeight(
            held, Turns(held), reach, pg, spring.SealedRate_N_per_m(reach, pg, strut.Exponent)));

        double Turns(double exposed_m) => (exposed_m - thread.ExposedAtStop_m) / thread.Pitch_m;
    }

    private static bool Covered(StrutCase strut, double height_m) =>
        height_m >= strut.LeastHeight_m && height_m <= strut.GreatestHeight_m;
}
