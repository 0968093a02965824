using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies;

/// <summary>Where the polytropic exponent of an answer comes from.</summary>
public enum ExponentSource { Document, SealedFastRows, InServiceDefault }

/// <summary>
/// One strut of a kit under one load case: everything a static study needs, in SI, with the spring fitted. Balance at drive:
/// the wheel carries W = g·(mean of the axle's two readings − unsprung mass), and W = Fspring·is + Fgas·id, each force
/// through its own motion ratio.
/// </summary>
public sealed record StrutCase
{
    public required AxleEnd End { get; init; }
    public required StrutDesign Design { get; init; }
    public required AirSpringPart Part { get; init; }
    public required AirSpringFit Fit { get; init; }
    public required string Load { get; init; }

    /// <summary>Sprung mass of the left and right corner.</summary>
    public required (double Left_kg, double Right_kg) Sprung { get; init; }

    public required MotionRatio SpringRatio { get; init; }
    public required MotionRatio DamperRatio { get; init; }
    public required double Ambient_Pa { get; init; }
    public required double Exponent { get; init; }
    public required ExponentSource ExponentSource { get; init; }
    public double ParasiticRate_N_per_m { get; init; }
    public double? TyreRate_N_per_m { get; init; }
    public DamperGas Gas { get; init; }

    public TelescopicDamperPart? Damper => Design.Damper as TelescopicDamperPart;

    public double SprungMass_kg => (Sprung.Left_kg + Sprung.Right_kg) / 2;

    public double WheelLoad_N => SprungMass_kg * StandardGravity.Value_m_per_s2;

    /// <summary>Strut force at drive, load / i; where spring and damper sit apart, at the spring.</summary>
    public double StrutForce_N => WheelLoad_N / SpringRatio.At(0);

    /// <summary>Least height at which spring and data both are at home.</summary>
    public double LeastHeight_m => Math.Max(Part.LeastHeight_m, Fit.Spring.LeastHeight_m);

    public double GreatestHeight_m => Math.Min(Part.GreatestHeight_m, Fit.Spring.GreatestHeight_m);

    /// <summary>Rod, stop and line in the spring's air; pass the drive height once it is settled.</summary>
    public StrutSpring Spring(double? driveHeight_m = null) => SpringOf(Fit.Spring, driveHeight_m);

    public StrutSpring SpringOf(AirSpring spring, double? driveHeight_m = null) => new(
        spring, Design.SealAreaInAir_m2 ?? 0, Design.DisplacedVolume_m3 ?? 0, Design.LineVolume_m3 ?? 0, Ambient_Pa, driveHeight_m);

    /// <summary>Damper length where the spring is so high at drive; NaN while springToDamper is not known.</summary>
    public double DamperLength_m(double height_m) => height_m + (Design.SpringToDamper_m ?? double.NaN);

    public double GasForce_N(double driveHeight_m) => Gas.Force_N(DamperLength_m(driveHeight_m), Ambient_Pa);

    /// <summary>What the air spring carries at drive: (W − Fgas·id)/is.</summary>
    public double SpringForce_N(double driveHeight_m) => SpringForce_N(driveHeight_m, WheelLoad_N);

    public double SpringForce_N(double driveHeight_m, double wheelLoad_N) =>
        (wheelLoad_N - GasForce_N(driveHeight_m) * DamperRatio.At(0)) / SpringRatio.At(0);

    /// <summary>What carries the load at drive; NaN outside the spring's data and where it cannot.</summary>
    public double GaugePressure_Pa(double driveHeight_m) =>
        Fit.Spring.Covers(driveHeight_m) ? Spring().GaugePressureFor_Pa(SpringForce_N(driveHeight_m), driveHeight_m) : double.NaN;

    /// <summary>
    /// Wheel rate about drive, N/m: kw = ks·is² + kgas·id² + Fspring·dis/dzw + Fgas·did/dzw + parasitic
    /// [Barton Fieldhouse 2018, eqs 3.29–3.33, with the slope term of a ratio that changes].
    /// </summary>
    public double WheelRate_N_per_m(double springRate_N_per_m, double driveHeight_m)
    {
        double i = SpringRatio.At(0);
        return springRate_N_per_m * i * i + BesideSpring_N_per_m(driveHeight_m);
    }

    /// <summary>The spring rate that makes the wanted rate at the wheel; the inverse of the wheel rate.</summary>
    public double TargetSpringRate_N_per_m(double driveHeight_m)
    {
        Target target = Design.Target!.Value;
        if (target.Kind == TargetKind.SpringRate) return target.Value;
        double omega = 2 * Math.PI * target.Value, i = SpringRatio.At(0);
        double wheelRate = target.Kind == TargetKind.WheelRate ? target.Value : omega * omega * SprungMass_kg;
        return (wheelRate - BesideSpring_N_per_m(driveHeight_m)) / (i * i);
    }

    /// <summary>√(kw/ms)/2π, tyre rigid; NaN for a wheel rate that is not positive.</summary>
    public double RideFrequency_Hz(double wheelRate_N_per_m) => Math.Sqrt(wheelRate_N_per_m / SprungMass_kg) / (2 * Math.PI);

    /// <summary>The same with the tyre in series under the wheel rate.</summary>
    public double? RideFrequencyWithTyre_Hz(double wheelRate_N_per_m) => TyreRate_N_per_m is { } tyre
        ? RideFrequency_Hz(wheelRate_N_per_m * tyre / (wheelRate_N_per_m + tyre))
        : null;

    private double BesideSpring_N_per_m(double driveHeight_m)
    {
        double i = DamperRatio.At(0);
        return Gas.Rate_N_per_m(DamperLength_m(driveHeight_m)) * i * i
            + SpringForce_N(driveHeight_m) * SpringRatio.SlopeAt(0) + GasForce_N(driveHeight_m) * DamperRatio.SlopeAt(0)
            + ParasiticRate_N_per_m;
    }
}
