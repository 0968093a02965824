using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>How long the mount's bearings last at the duty asked for.</summary>
/// <param name="Load_N">Of the strut on them.</param>
/// <param name="Turning">The turning bearing's; null where there is none or the wheel is not steered.</param>
/// <param name="Steering">The spherical bearing's as the strut turns in it; null where a turning bearing takes that.</param>
/// <param name="Tilting">The spherical bearing's as the wheel travels; null without one.</param>
public sealed record MountLives(double Load_N, TurningLife? Turning, SlidingLife? Steering, SlidingLife? Tilting)
{
    /// <summary>Of the spherical bearing under both: wears add up, 1/L = Σ 1/L; null without one or where its surface does not bear the load.</summary>
    public double? Spherical_m => Tilting is { Life_m: null } || Steering is { Life_m: null } || Tilting is null ? null
        : 1 / (1 / Tilting.Life_m!.Value + (Steering is null ? 0 : 1 / Steering.Life_m!.Value));

    internal static MountLives Of(MountCase mount, MountQuestion question, double load_N)
    {
        TopMount top = mount.Mount;
        bool steers = mount.Lock_m > 0;
        SlidingLife? tilting = top.SphericalBearing is { } one && Tilting_rad(mount.Linkage, question.Working_m) is { } tilt
            ? SlidingLife.Of(one, top.LifeFactor, load_N, tilt, question.StrokesPerKilometre, question) : null;
        SlidingLife? steering = top.SphericalBearing is { } other && steers && top.TurningBearing is null
            ? SlidingLife.Of(other, top.LifeFactor, load_N, question.Steer_rad, question.SteersPerKilometre, question) : null;
        return new(load_N, steers && top.TurningBearing is { } turning ? TurningLife.Of(turning, load_N, question) : null, steering, tilting);
    }

    // Half of what the strut's axis swings between droop and bump.
    private static double? Tilting_rad(Linkage linkage, double working_m) => linkage.At(working_m).State is { } bump && linkage.At(-working_m).State is { } droop
        ? bump.Strut.Axis.AngleTo_rad(droop.Strut.Axis) / 2 : null;
}

/// <summary>A spherical plain bearing swung by ± an amplitude.</summary>
/// <param name="Amplitude_rad">To either side.</param>
/// <param name="SpecificLoad_Pa">On its surface.</param>
/// <param name="Velocity_m_per_s">Mean sliding velocity at the speed driven.</param>
/// <param name="Life_m">Way driven; null where the surface does not bear the load.</param>
public sealed record SlidingLife(double Amplitude_rad, double SpecificLoad_Pa, double Velocity_m_per_s, double? Life_m)
{
    internal static SlidingLife Of(SphericalPlainBearing bearing, double factor, double load_N, double amplitude_rad, double perKilometre, MountQuestion question)
    {
        double frequency = perKilometre / 1000 * question.Speed_m_per_s;
        return new(amplitude_rad, bearing.SpecificLoad_Pa(load_N), bearing.SlidingVelocity_m_per_s(amplitude_rad, frequency),
            bearing.Life_s(load_N, amplitude_rad, frequency, factor) * question.Speed_m_per_s);
    }
}

/// <summary>A turning bearing swung by ± the steering's amplitude.</summary>
/// <param name="Amplitude_rad">To either side.</param>
/// <param name="Life_m">Way driven that its rating promises; none where it dents.</param>
/// <param name="LeastAmplitude_rad">Below it each ball or roller dents a place of its own; null where their number is not known.</param>
public sealed record TurningLife(double Amplitude_rad, double Life_m, double? LeastAmplitude_rad)
{
    /// <summary>Its swings are so small that no life can be told.</summary>
    public bool Dents => Amplitude_rad < LeastAmplitude_rad;

    internal static TurningLife Of(TurningBearing bearing, double load_N, MountQuestion question) => new(
        question.Steer_rad, bearing.Bearing.Swings(load_N, question.Steer_rad) / question.SteersPerKilometre * 1000,
        bearing.Elements is { } count ? RollingBearing.LeastAmplitude_rad(count) : null);
}
