namespace Bellowsmith.Physics;

/// <summary>A reading that lies further from its own sweep than scatter explains; it is shown and kept out of the curve.</summary>
public readonly record struct SetAsideRow(int Line, double Height_m, double GaugePressure_Pa, double Miss_N, double Deviations);

/// <summary>The polytropic exponent that fast sealed sweeps show, with its 95 % interval.</summary>
public readonly record struct ExponentFit(double Value, double Low, double High, int Sweeps)
{
    /// <summary>False where the whole interval lies outside 1 to 1.4: then the volumes are wrong, not the air.</summary>
    public bool IsPossible => High >= 1 && Low <= SealedAir.AdiabaticExponent;
}

/// <summary>Sealed readings against the curve of the regulated ones, N; they are never mixed into it.</summary>
public readonly record struct SealedCheck(int Rows, double RootMeanSquare_N, double Worst_N);

/// <summary>How much stiffer the spring is for small strokes about a set point than its curve's slope says.</summary>
public readonly record struct SmallStroke(
    double Height_m, double GaugePressure_Pa, double Amplitude_m, AirMode Mode, double MeasuredRate_N_per_m, double CurveRate_N_per_m)
{
    public double Ratio => MeasuredRate_N_per_m / CurveRate_N_per_m;
}

/// <summary>Where the enclosed volume comes from, best first.</summary>
public enum VolumeSource
{
    /// <summary>Measured over enough heights to carry its own shape.</summary>
    Measured,

    /// <summary>Measured at a few heights; between them ∂V/∂h = ∂F/∂pg of the elastic wall.</summary>
    MeasuredAnchor,

    /// <summary>Not measured: the constant from sealed sweeps, the shape from ∂V/∂h = ∂F/∂pg.</summary>
    SealedSweeps,

    /// <summary>A characteristic's own column.</summary>
    Characteristic,
}
