using Bellowsmith.Physics.Numerics;
using Bellowsmith.Physics.Roads;

namespace Bellowsmith.Physics;

/// <summary>
/// Heights of random roads, m, up +, at even distances from 0. The same seed gives the same road on every machine and for
/// every spacing over the same length.
/// </summary>
public static class RoadProfile
{
    /// <summary>Over less than this a road would have too few waves near 0.01 cycle/m to be random; it is then a piece of this length.</summary>
    public const double LeastPeriod_m = 500;

    /// <summary>
    /// A road of a class at its geometric mean, from 0.01 to 10 cycles/m and with zero mean over its length. All harmonics of
    /// the length have exactly the amplitude the class demands and phases drawn from the seed [Rice 1944], [Shinozuka Deodatis 1991]:
    /// the profile does not repeat within its length, and roads of different seeds scatter less about the class than measured ones do.
    /// </summary>
    /// <param name="height_m">Takes the heights; its length times the spacing is the road's length.</param>
    /// <param name="spacing_m">Distance between heights: speed times time step. Above 0.05 m the waves too short for it fold back.</param>
    /// <param name="roadClass">A to H.</param>
    /// <param name="seed">Any number; each is another road.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not positive, or the road longer than 100 km.</exception>
    public static void Fill(Span<double> height_m, double spacing_m, RoadClass roadClass, ulong seed) =>
        Fill(height_m, spacing_m, RoadRoughness.Of(roadClass), seed);

    /// <summary>As the class's, of any roughness.</summary>
    /// <inheritdoc cref="Fill(Span{double}, double, RoadClass, ulong)" path="/exception"/>
    public static void Fill(Span<double> height_m, double spacing_m, RoadRoughness roughness, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing_m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(height_m.Length * spacing_m, 1e5, nameof(spacing_m));
        double period_m = Math.Max(height_m.Length * spacing_m, LeastPeriod_m);
        new Harmonics(period_m, roughness, seed).Fill(height_m, spacing_m);
    }

    /// <summary>
    /// A road whose vertical velocity is white noise in time, held over each step: no end of band but the sampling, so that its
    /// density is G·sinc²(f·step), 1 % low at f = 0.055/step. The height starts at 0 and wanders off, by √(G·t/2) r.m.s.
    /// </summary>
    /// <param name="height_m">Takes the heights at times 0, step, 2·step, …</param>
    /// <param name="step_s">Time between heights.</param>
    /// <param name="velocityDensity_m2_per_s">G, one-sided, (m/s)²/Hz.</param>
    /// <param name="seed">Any number; each is another road.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive or the density negative.</exception>
    public static void FillWhiteVelocity(Span<double> height_m, double step_s, double velocityDensity_m2_per_s, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step_s);
        ArgumentOutOfRangeException.ThrowIfNegative(velocityDensity_m2_per_s);
        double rise_m = Math.Sqrt(velocityDensity_m2_per_s * step_s / 2), height = 0;
        SplitMix64 random = new(seed);
        for (int i = 0; i < height_m.Length; i++)
        {
            height_m[i] = height;
            height += rise_m * random.Normal();
        }
    }

    /// <summary>
    /// What the tyre's contact patch passes on: the mean height under it, a moving average of the straight lines between heights.
    /// Common practice for long waves and low obstacles; a sharp edge higher than a tenth of the wheel needs a tyre model. The
    /// road is level beyond both ends.
    /// </summary>
    /// <param name="height_m">Heights, replaced by what the patch passes on.</param>
    /// <param name="spacing_m">Distance between them.</param>
    /// <param name="patch_m">Length of the contact patch, usually 0.1 m for a car tyre (common practice).</param>
    /// <exception cref="ArgumentOutOfRangeException">Spacing or patch is not positive.</exception>
    public static void Envelop(Span<double> height_m, double spacing_m, double patch_m = 0.1)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing_m);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(patch_m);
        if (height_m.IsEmpty) return;
        RunningIntegral integral = new(height_m);
        double half = patch_m / (2 * spacing_m);
        for (int i = 0; i < height_m.Length; i++) height_m[i] = (integral.To(i + half) - integral.To(i - half)) / (2 * half);
    }
}
