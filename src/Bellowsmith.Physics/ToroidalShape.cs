namespace Bellowsmith.Physics;

/// <summary>
/// What a <see cref="ToroidalBellows"/> looks like at one height. Area slope dA/dH is − where the spring gets
/// narrower as it extends; the outer radius is to the middle of the wall.
/// </summary>
/// <param name="Height_m"></param>
/// <param name="HalfAngle_rad">Half the angle the meridian arc subtends; π/2 is a semicircle.</param>
/// <param name="ArcRadius_m"></param>
/// <param name="OuterRadius_m"></param>
/// <param name="Volume_m3"></param>
/// <param name="EffectiveArea_m2"></param>
/// <param name="AreaSlope_m"></param>
/// <param name="Overhang_m">
/// How far an arc bulges past the plane of its own rings, 0 up to a semicircle. Above 0 neighbouring convolutions
/// would press against each other, which the model leaves out: with two or more, take such a shape as a bound.
/// </param>
public sealed record ToroidalShape(
    double Height_m,
    double HalfAngle_rad,
    double ArcRadius_m,
    double OuterRadius_m,
    double Volume_m3,
    double EffectiveArea_m2,
    double AreaSlope_m,
    double Overhang_m);

/// <summary>Why a <see cref="ToroidalBellows"/> has no shape at a height.</summary>
public enum ToroidalLimit
{
    None,

    /// <summary>The height is zero or negative.</summary>
    PlatesMeet,

    /// <summary>The wall is so nearly straight that gauge pressure would pull the plates together.</summary>
    AreaVanishes,

    /// <summary>The height exceeds the length of the wall.</summary>
    WallTaut,
}
