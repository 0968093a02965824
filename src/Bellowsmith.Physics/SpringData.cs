namespace Bellowsmith.Physics;

/// <summary>What was measured of an air spring: load-frame rows, or a characteristic someone already made of them.</summary>
public abstract record SpringData;

/// <summary>Rows from a load frame, in file order.</summary>
public sealed record MeasuredSpring(IReadOnlyList<SpringRow> Rows) : SpringData;

/// <summary>Effective area and volume against height, as a table; heights ascend strictly.</summary>
public sealed record CharacteristicSpring(IReadOnlyList<CharacteristicRow> Rows) : SpringData;

/// <summary>One row of a characteristic: bare spring, no rod through it.</summary>
public readonly record struct CharacteristicRow(double Height_m, double EffectiveArea_m2, double Volume_m3);

/// <summary>How the air was held during a row: kept at one gauge pressure, or shut in and moved slowly or fast.</summary>
public enum AirMode { Regulated, SealedSlow, SealedFast }

public enum SweepDirection { Compressing, Extending }

/// <summary>
/// One load-frame reading. Height between the outer faces of the end plates; force pushes the plates apart, +.
/// Null where the file has no such column or the cell is empty. <paramref name="Line"/> is the line in the file, from 1.
/// </summary>
public readonly record struct SpringRow(
    double Height_m,
    double GaugePressure_Pa,
    double Force_N,
    double? Volume_m3 = null,
    double? Temperature_K = null,
    AirMode Mode = AirMode.Regulated,
    SweepDirection? Direction = null,
    double? Amplitude_m = null,
    string? Sweep = null,
    int Line = 0);
