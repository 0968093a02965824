namespace Bellowsmith.Physics;

/// <summary>What a dyno measured of a damper. Click counted from fully closed; velocity and force + in rebound, so that a force
/// that resists has its velocity's sign.</summary>
/// <param name="GasIn">Whether the damper's gas, which pushes the rod out, is still in the forces.</param>
public abstract record DynoData(bool GasIn);

/// <summary>Readings at peak velocity, or of a continuous-velocity curve someone already made.</summary>
public sealed record DynoPoints(IReadOnlyList<DynoPoint> Points, bool GasIn) : DynoData(GasIn);

/// <summary>Raw strokes, each a time series.</summary>
public sealed record DynoSweeps(IReadOnlyList<DynoSweep> Sweeps, bool GasIn) : DynoData(GasIn);

/// <summary>One reading. <paramref name="Line"/> is the line in the file, from 1.</summary>
public readonly record struct DynoPoint(
    double Click, double Velocity_m_per_s, double Force_N, string? Run = null, double? Temperature_K = null, int Line = 0);

/// <summary>Cycles at one click and one frequency, in the order of time.</summary>
public sealed record DynoSweep(double Click, string? Run, IReadOnlyList<DynoSample> Samples);

/// <summary>One sample of a sweep; position is extension, +.</summary>
public readonly record struct DynoSample(double Time_s, double Position_m, double Force_N, int Line = 0);

/// <summary>Why readings were left out of the damper's curves.</summary>
public enum DynoTrouble
{
    /// <summary>The force drives the rod instead of resisting it: a sign is wrong somewhere.</summary>
    CrossedSigns,

    /// <summary>Several extreme forces are equal to the last digit at different clicks or speeds: the cell was at its end.</summary>
    SaturatedCell,

    /// <summary>Fewer than two speeds of a stroke are left.</summary>
    TooFewSpeeds,

    /// <summary>The force falls with speed by more than runs differ.</summary>
    FallingForce,

    /// <summary>A sweep that does not follow a sine for a whole cycle.</summary>
    NoSine,
}

/// <summary>Readings of one click that were left out, and the lines they stand on.</summary>
public sealed record DynoLeftOut(DynoTrouble Trouble, double Click, IReadOnlyList<int> Lines)
{
    /// <summary>True where the lines are the first and last of a sweep.</summary>
    public bool IsRange { get; init; }
}
