using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Bellowsmith.Physics.Clearances;

/// <summary>
/// How much nearer than its middle any place of a patch can be to lines of another body, given the slope of the distance from each at
/// the middle. Everything in the other body's axes.
/// </summary>
internal readonly struct PatchBound
{
    private const double Least_m = 1e-9;

    private readonly double _greatest, _chord, _sin, _cos, _runAcross, _perRadius;
    private readonly (double Along, double Outward) _run, _outward, _around;

    /// <param name="middle">Of the patch.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="run">Half its stretch along the outline.</param>
    /// <param name="outward">Unit, from the axis of the patch to its middle.</param>
    /// <param name="around">Unit, the way its middle moves as the angle grows.</param>
    public PatchBound(Point middle, in Patch patch, Point run, Point outward, Point around)
    {
        (Along, Radius) = (middle.X, Math.Sqrt(middle.Y * middle.Y + middle.Z * middle.Z));
        (Reach, _greatest, _chord) = (patch.Reach_m, patch.GreatestR, patch.Chord_m);
        (_sin, _cos) = Math.SinCos(patch.HalfAngle_rad);
        (_runAcross, _perRadius) = (Math.Sqrt(run.Y * run.Y + run.Z * run.Z), 1 / Math.Max(Radius, Least_m));
        (double y, double z) = (middle.Y * _perRadius, middle.Z * _perRadius);
        (_run, _outward, _around) = ((run.X, y * run.Y + z * run.Z), (outward.X, y * outward.Y + z * outward.Z), (around.X, y * around.Y + z * around.Z));
    }

    public double Along { get; }

    public double Radius { get; }

    public double Reach { get; }

    /// <summary>By the stretch, and by the angle.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (Vector256<double> ByRun, Vector256<double> ByTurn) Fall(Vector256<double> slopeAlong, Vector256<double> slopeOutward)
    {
        // Toward the axis the distance bends down as the circles about it do.
        Vector256<double> bend = Vector256.Max(-slopeOutward, Vector256<double>.Zero) * _perRadius;
        Vector256<double> byRun = Vector256.Abs(Slope(_run)) + bend * (_runAcross * (_runAcross / 2 + _chord));
        // The most that g·cos φ + h·sin φ falls from φ = 0 within the half angle.
        Vector256<double> g = Slope(_outward) + bend * _greatest, h = Vector256.Abs(Slope(_around));
        Vector256<double> turnsBack = Vector256.LessThanOrEqual(h * _cos + g * _sin, Vector256<double>.Zero);
        Vector256<double> fall = g + Vector256.ConditionalSelect(turnsBack, Vector256.Sqrt(g * g + h * h), h * _sin - g * _cos);
        return (byRun, fall * _greatest);

        Vector256<double> Slope((double Along, double Outward) way) => slopeAlong * way.Along + slopeOutward * way.Outward;
    }
}
