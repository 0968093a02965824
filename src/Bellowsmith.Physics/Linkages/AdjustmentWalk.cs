namespace Bellowsmith.Physics.Linkages;

/// <summary>
/// Puts a mechanism together again while its adjusters move, wheel height and rack held. Each stride starts where the one before ended and
/// is mended by Newton; one whose mends do not shrink, or which would turn the sign of the Jacobian's determinant, is halved. So it
/// stays on its branch, as <see cref="Walk"/> does.
/// </summary>
internal static class AdjustmentWalk
{
    private const double LongestStride_m = 1e-3, ShortestStride_m = 1e-8, FarthestMove_m = 0.01;

    /// <summary>Where the knuckle ends, and at which share of the adjustment.</summary>
    public static (Pose Pose, double Share) Along(Suspension suspension, Adjustment whole)
    {
        Pose pose = new(suspension.Wheel.Centre, Turn.None);
        double way_m = whole.Size_m, done = 0, longest = LongestStride_m / way_m, stride = longest;
        if (!(way_m > 0 && double.IsFinite(way_m))) return (pose, way_m == 0 ? 1 : 0);
        Span<double> inverse = stackalloc double[SixBySix.Length], value = stackalloc double[SixBySix.Size];
        int sign = Walk.Invert(suspension.Constraints(Adjustment.None), pose, 0, 0, inverse, value);
        while (done < 1)
        {
            double next = Math.Min(1, done + stride);
            Pose there = pose;
            if (Walk.Closes(suspension.Constraints(next * whole), sign, 0, 0, FarthestMove_m, ref there, inverse) && suspension.Wheel.Allows(there.Rotation.Of(suspension.Wheel.Axis)))
                (pose, done, stride) = (there, next, Math.Min(2 * stride, longest));
            else if ((stride /= 2) * way_m < ShortestStride_m) break;
        }

        return (pose, done);
    }
}
