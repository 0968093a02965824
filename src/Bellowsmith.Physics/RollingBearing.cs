namespace Bellowsmith.Physics;

/// <summary>
/// A rolling bearing's basic rating life, which nine in ten outlive: L10 = (C/P)^p million turns [ISO 281 2007]. No account of dirt,
/// grease, water or a hammering load, which end most bearings of a car sooner.
/// </summary>
/// <param name="DynamicRating_N">C, from its maker.</param>
/// <param name="LifeExponent">p: 3 of balls, 10/3 of rollers.</param>
public sealed record RollingBearing(double DynamicRating_N, double LifeExponent)
{
    public const double Ball = 3, Roller = 10.0 / 3;

    /// <summary>L10 in turns under an equivalent load that stays.</summary>
    public double Turns(double load_N) => 1e6 * Math.Pow(DynamicRating_N / load_N, LifeExponent);

    /// <summary>L10 in seconds of running, at so many turns a second.</summary>
    public double Life_s(double load_N, double speed_Hz) => Turns(load_N) / speed_Hz;

    /// <summary>
    /// L10 in swings to and fro, ± an amplitude, as of a strut's top bearing that steers: what counts is the angle passed, four amplitudes a
    /// swing. From memory, as books on rolling bearings have it; it holds from <see cref="LeastAmplitude_rad"/> on.
    /// </summary>
    public double Swings(double load_N, double amplitude_rad) => Turns(load_N) * 2 * Math.PI / (4 * amplitude_rad);

    /// <summary>
    /// Below it each ball or roller keeps to a place of its own, wipes off its grease and wears a dent, and no life can be told. The elements
    /// roll half of what the ring turns: neighbours' paths meet where that is a whole spacing (thrust bearing; derived).
    /// </summary>
    public static double LeastAmplitude_rad(int elements) => 2 * Math.PI / elements;
}
