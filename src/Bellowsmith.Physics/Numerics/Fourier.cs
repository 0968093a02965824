using System.Numerics;

namespace Bellowsmith.Physics.Numerics;

/// <summary>
/// Fast Fourier transform of a power-of-two length, radix 2 [Cooley Tukey 1965], real and imaginary parts apart. Roots of
/// unity come from halving angles with square roots, so that every machine rounds alike; error about log₂N rounding errors.
/// </summary>
internal static class Fourier
{
    /// <summary>
    /// In place, <c>X[k] = Σ x[j]·exp(−2πi·jk/N)</c>. With real and imaginary parts exchanged it is the inverse, times N.
    /// </summary>
    public static void Transform(Span<double> real, Span<double> imaginary)
    {
        int length = real.Length;
        if (!BitOperations.IsPow2(length) || imaginary.Length != length) throw new ArgumentException("The length is a power of two.", nameof(real));
        ReverseBits(real, imaginary);
        double[] cos = new double[Math.Max(1, length / 2)], sin = new double[cos.Length];
        Root root = new(-1, 0);
        cos[0] = 1;
        for (int half = 1; half < length; half *= 2)
        {
            for (int start = 0; start < length; start += 2 * half)
                Butterflies(real.Slice(start, 2 * half), imaginary.Slice(start, 2 * half), cos.AsSpan(0, half), sin.AsSpan(0, half));
            root = root.HalfAngle();
            if (2 * half < length) Refine(cos, sin, half, root);
        }
    }

    /// <summary>cos and sin of π·j/count for j from 0 below count, a power of two.</summary>
    public static (double[] Cos, double[] Sin) Roots(int count)
    {
        double[] cos = new double[count], sin = new double[count];
        cos[0] = 1;
        Root root = new Root(-1, 0).HalfAngle();
        for (int half = 1; half < count; half *= 2, root = root.HalfAngle()) Refine(cos, sin, half, root);
        return (cos, sin);
    }

    // The finer table holds the coarser one at its even places.
    private static void Refine(Span<double> cos, Span<double> sin, int count, Root root)
    {
        for (int j = count - 1; j >= 0; j--)
        {
            (double c, double s) = (cos[j], sin[j]);
            (cos[2 * j + 1], sin[2 * j + 1]) = (c * root.Cos - s * root.Sin, c * root.Sin + s * root.Cos);
            (cos[2 * j], sin[2 * j]) = (c, s);
        }
    }

    private static void Butterflies(Span<double> real, Span<double> imaginary, ReadOnlySpan<double> cos, ReadOnlySpan<double> sin)
    {
        int half = cos.Length, j = 0;
        Span<double> lowReal = real[..half], highReal = real[half..], lowImaginary = imaginary[..half], highImaginary = imaginary[half..];
        for (; j <= half - Vector<double>.Count; j += Vector<double>.Count)
        {
            Vector<double> c = new(cos[j..]), s = new(sin[j..]), x = new(highReal[j..]), y = new(highImaginary[j..]);
            Vector<double> a = new(lowReal[j..]), b = new(lowImaginary[j..]), turnedX = x * c + y * s, turnedY = y * c - x * s;
            (a + turnedX).CopyTo(lowReal[j..]);
            (b + turnedY).CopyTo(lowImaginary[j..]);
            (a - turnedX).CopyTo(highReal[j..]);
            (b - turnedY).CopyTo(highImaginary[j..]);
        }

        for (; j < half; j++)
        {
            double turnedX = highReal[j] * cos[j] + highImaginary[j] * sin[j], turnedY = highImaginary[j] * cos[j] - highReal[j] * sin[j];
            (highReal[j], lowReal[j]) = (lowReal[j] - turnedX, lowReal[j] + turnedX);
            (highImaginary[j], lowImaginary[j]) = (lowImaginary[j] - turnedY, lowImaginary[j] + turnedY);
        }
    }

    private static void ReverseBits(Span<double> real, Span<double> imaginary)
    {
        for (int i = 1, reversed = 0; i < real.Length; i++)
        {
            int bit = real.Length / 2;
            for (; (reversed & bit) != 0; bit /= 2) reversed ^= bit;
            reversed |= bit;
            if (i >= reversed) continue;
            (real[i], real[reversed]) = (real[reversed], real[i]);
            (imaginary[i], imaginary[reversed]) = (imaginary[reversed], imaginary[i]);
        }
    }

    /// <summary>A root of unity in the upper half plane.</summary>
    private readonly record struct Root(double Cos, double Sin)
    {
        // From −1 the half angle is a right one, where the quotient would be 0/0.
        public Root HalfAngle()
        {
            if (Cos < 0) return new(0, 1);
            double cos = Math.Sqrt((1 + Cos) / 2);
            return new(cos, Sin / (2 * cos));
        }
    }
}
