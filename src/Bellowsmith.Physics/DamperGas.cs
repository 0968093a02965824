namespace Bellowsmith.Physics;

/// <summary>
/// The gas charge of a damper pushes its rod out: Fgas = rod area × gas gauge pressure, extension +. The charge is stated as
/// gauge pressure and gas volume at the longest length and 20 °C; the rod going in takes gas volume. From longest to drive
/// the gas keeps its temperature; about drive it follows pabs·Vⁿ with n = 1.38.
/// </summary>
/// <param name="RodDiameter_m">Diameter of the rod.</param>
/// <param name="Longest_m">Length at which the charge is stated.</param>
/// <param name="GaugePressure_Pa">Charge at the longest length over one standard atmosphere; 0 for a damper without gas.</param>
/// <param name="Volume_m3">Gas volume at the longest length; null: the force is taken as constant and the rate as 0.</param>
public readonly record struct DamperGas(double RodDiameter_m, double Longest_m, double GaugePressure_Pa, double? Volume_m3)
{
    public double RodArea_m2 => Math.PI / 4 * RodDiameter_m * RodDiameter_m;

    /// <summary>Fgas at a damper length, N. Without a gas volume the length does not matter.</summary>
    public double Force_N(double length_m, double ambient_Pa) =>
        GaugePressure_Pa == 0 ? 0 : RodArea_m2 * (Absolute_Pa(length_m) - ambient_Pa);

    /// <summary>Fgas at a length reached fast from drive, N: pabs·Vⁿ is kept from there, n = 1.38.</summary>
    public double ForceFromDrive_N(double length_m, double driveLength_m, double ambient_Pa)
    {
        if (Volume_m3 is null || GaugePressure_Pa == 0) return Force_N(length_m, ambient_Pa);
        double absolute = SealedAir.AbsolutePressure_Pa(
            Absolute_Pa(driveLength_m), GasVolume_m3(driveLength_m), GasVolume_m3(length_m), SealedAir.InServiceExponent);
        return RodArea_m2 * (absolute - ambient_Pa);
    }

    /// <summary>kgas = −dFgas/dx = n·pabs·Ar²/V at a damper length, N/m, + stiff.</summary>
    public double Rate_N_per_m(double length_m) =>
        Volume_m3 is null || GaugePressure_Pa == 0
            ? 0
            : SealedAir.GasRate_N_per_m(
                SealedAir.InServiceExponent, Absolute_Pa(length_m), RodArea_m2, RodArea_m2, GasVolume_m3(length_m));

    private double Absolute_Pa(double length_m)
    {
        double stated = GaugePressure_Pa + StandardAtmosphere.SeaLevel_Pa;
        return Volume_m3 is null ? stated : SealedAir.AbsolutePressure_Pa(stated, Volume_m3.Value, GasVolume_m3(length_m), 1);
    }

    private double GasVolume_m3(double length_m) => Volume_m3!.Value - RodArea_m2 * (Longest_m - length_m);
}
