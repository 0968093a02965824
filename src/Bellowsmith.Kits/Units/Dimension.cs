namespace Bellowsmith.Kits.Units;

/// <summary>What a quantity is; gauge pressure, absolute pressure and stress share their units and nothing else.</summary>
public enum Dimension
{
    Length, Area, Volume, Force, Mass, GaugePressure, AbsolutePressure, Stress,
    Rate, Damping, Frequency, Speed, Time, Temperature, Angle,
}
