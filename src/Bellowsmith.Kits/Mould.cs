using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>
/// A bellows as its mould and cords make it. The cord angle is from the meridian, at the bead; the cord length is that of one
/// cord over one convolution, end to end. End plates of a thickness lie outside the beads: a spring's height counts both.
/// </summary>
public sealed record Mould(
    string Name,
    int Convolutions,
    double BeadRadius_m,
    double CordAngleAtBead_rad,
    double CordLength_m,
    double? GirdleRadius_m = null,
    double WallThickness_m = 0,
    double? PlateRadius_m = null,
    double? PlateThickness_m = null)
{
    public CordBellows Bellows() => new(
        Convolutions, BeadRadius_m, CordAngleAtBead_rad, CordLength_m, GirdleRadius_m, WallThickness_m, PlateRadius_m);
}
