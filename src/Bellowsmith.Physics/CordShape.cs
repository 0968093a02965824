using Bellowsmith.Physics.Bellows;

namespace Bellowsmith.Physics;

/// <summary>
/// What a <see cref="CordBellows"/> looks like at one height. Radii are to the middle of the wall, the outer diameter is
/// over it.
/// </summary>
public readonly record struct CordShape
{
    private readonly CordBellows _bellows;

    internal CordShape(CordBellows bellows, double height_m, in Contour contour, double overhang_m) =>
        (_bellows, Height_m, Contour, Overhang_m) = (bellows, height_m, contour, overhang_m);

    /// <summary>Bead to bead, extension +.</summary>
    public double Height_m { get; }

    /// <summary>Ae = dV/dh; negative where gauge pressure would pull the plates together.</summary>
    public double EffectiveArea_m2 => Math.PI * Contour.AreaTerm;

    /// <summary>Enclosed by the wall and the planes of its beads, ∫πr²dz along the wall.</summary>
    public double Volume_m3 => Contour.Volume;

    /// <summary>The widest convolution's.</summary>
    public double CrownRadius_m => Math.Max(Contour.EndCrown, Contour.MiddleCrown);

    /// <summary>Of the convolutions next to the plates.</summary>
    public double EndCrownRadius_m => Contour.EndCrown;

    /// <summary>Of the convolutions between two girdles; with one or two convolutions that of the ends.</summary>
    public double MiddleCrownRadius_m => Contour.MiddleCrown;

    public double OuterDiameter_m => 2 * CrownRadius_m + _bellows.WallThickness_m;

    /// <summary>Between the meridian and the axis where the wall leaves the plate: above π/2 it sets off past the plate.</summary>
    public double AngleAtPlate_rad => Contour.Angle;

    /// <summary>How far the wall hangs past the plane of its bead, 0 up to π/2.</summary>
    public double Overhang_m { get; }

    /// <summary>Out to this radius the wall lies flat on the plate; the bead's where it does not.</summary>
    public double PlateContactRadius_m => Contour.Edge;

    /// <summary>Out to this radius neighbouring convolutions press on each other; the girdle's where they do not, 0 with one
    /// convolution.</summary>
    public double GirdleContactRadius_m => Contour.GirdleEdge;

    internal Contour Contour { get; }

    /// <summary>
    /// The meridian of the whole spring for drawing: from the axis along the lower plate (z = 0), over every convolution and
    /// back to the axis along the upper plate, closer together where it bends.
    /// </summary>
    /// <param name="count">Points on each convolution, 8 or more.</param>
    public IReadOnlyList<(double Z_m, double Radius_m)> Wall(int count) => _bellows.Wall(this, count);
}

/// <summary>Why a <see cref="CordBellows"/> has no shape at a height.</summary>
public enum CordLimit
{
    None,

    /// <summary>The height is zero or negative, or not a number.</summary>
    PlatesMeet,

    /// <summary>Below this the wall would have to fold inwards over its bead, or a convolution is flat already.</summary>
    Folded,

    /// <summary>The cords are taut: the wall no longer bulges beyond its rings.</summary>
    OverExtended,

    /// <summary>These cords reach no shape at any height.</summary>
    NoShape,
}
