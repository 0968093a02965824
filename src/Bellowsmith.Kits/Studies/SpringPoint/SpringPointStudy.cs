using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.SpringPoint;

/// <summary>What a bare spring does at one height under one load.</summary>
public sealed record SpringPointResult
{
    public required AirSpringPart Part { get; init; }
    public required AirSpringFit Fit { get; init; }
    public required double Height_m { get; init; }
    public required double Load_N { get; init; }
    public required double Exponent { get; init; }
    public required ExponentSource ExponentSource { get; init; }

    /// <summary>Null where the spring has no data at the height or cannot carry the load there.</summary>
    public required SpringPointState? State { get; init; }
}

public sealed record SpringPointState(
    double GaugePressure_Pa, double EffectiveArea_m2, double Volume_m3, double Rate_N_per_m,
    (double Low, double High)? RateBand_N_per_m, double RateIsothermal_N_per_m, double RateAdiabatic_N_per_m, double NaturalFrequency_Hz);

/// <summary>One height and load of a bare spring: gauge pressure, area, volume, rates and natural frequency √(k·g/F)/2π.</summary>
public static class SpringPointStudy
{
    public static SpringPointResult Answer(AirSpringPart part, AirSpringFit fit, double height_m, double load_N, double ambient_Pa)
    {
        (double exponent, ExponentSource source) = StrutCases.Exponent(part, fit);
        return new SpringPointResult
        {
            Part = part,
            Fit = fit,
            Height_m = height_m,
            Load_N = load_N,
            Exponent = exponent,
            ExponentSource = source,
            State = fit.Spring.Covers(height_m) ? At(fit, height_m, load_N, exponent, source, ambient_Pa) : null,
        };
    }

    private static SpringPointState? At(AirSpringFit fit, double height_m, double load_N, double exponent, ExponentSource source, double ambient_Pa)
    {
        StrutSpring spring = new(fit.Spring, Ambient_Pa: ambient_Pa);
        double pg = spring.GaugePressureFor_Pa(load_N, height_m);
        if (!(pg > 0)) return null;
        double rate = Rate(spring, exponent);
        AirSpringState at = fit.Spring.At(height_m, pg);
        return new SpringPointState(
            pg, at.EffectiveArea_m2, at.Volume_m3, rate,
            fit.Band((s, n) => Rate(spring with { Spring = s }, n), exponent, source == ExponentSource.SealedFastRows),
            Rate(spring, 1), Rate(spring, SealedAir.AdiabaticExponent),
            Math.Sqrt(rate * StandardGravity.Value_m_per_s2 / load_N) / (2 * Math.PI));

        double Rate(in StrutSpring s, double n) =>
            s.SealedRate_N_per_m(height_m, s.GaugePressureFor_Pa(load_N, height_m), n);
    }
}
