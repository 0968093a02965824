namespace Bellowsmith.Physics;

/// <summary>
/// A bump stop that stands on the damper rod between its seat and the damper head: force against how far it is squeezed,
/// pushing the strut apart, +; between its points a <see cref="MonotoneCurve"/>. It is solid at its solid length or where its
/// curve ends, whichever is met first.
/// </summary>
public sealed class BumpStop
{
    private readonly MonotoneCurve _force;

    /// <param name="freeLength_m">Length without load.</param>
    /// <param name="solidLength_m">Length at which it gives no further.</param>
    /// <param name="compression_m">Squeezed lengths of the curve, ascending from 0, two or more.</param>
    /// <param name="force_N">Force at each, never falling.</param>
    public BumpStop(double freeLength_m, double solidLength_m, ReadOnlySpan<double> compression_m, ReadOnlySpan<double> force_N)
    {
        _force = MonotoneCurve.Through(compression_m, force_N);
        FreeLength_m = freeLength_m;
        SolidLength_m = Math.Max(solidLength_m, freeLength_m - _force.X[^1]);
    }

    public double FreeLength_m { get; }

    public double SolidLength_m { get; }

    /// <summary>Force at a length; 0 when free, and past solid what it is there.</summary>
    public double Force_N(double length_m)
    {
        double squeezed = Math.Min(FreeLength_m - length_m, FreeLength_m - SolidLength_m);
        return squeezed <= 0 ? 0 : _force.At(squeezed).Value;
    }
}
