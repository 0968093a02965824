using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Bellowsmith.Physics.Linkages;

/// <summary>A matrix of six rows and columns, inverted in place; rows lie eight apart, so that two vectors make one.</summary>
internal static class SixBySix
{
    public const int Size = 6, Stride = 8, Length = Size * Stride;

    private const double Vanishing = 1e-14;

    /// <summary>By Gauss and Jordan with row pivoting; the sign of the determinant, 0 where it vanishes.</summary>
    public static int Invert(Span<double> a)
    {
        Span<int> order = stackalloc int[Size];
        int sign = 1;
        for (int k = 0; k < Size; k++)
        {
            int pivot = order[k] = Pivot(a, k);
            if (pivot != k)
            {
                Swap(ref Row(a, k), ref Row(a, pivot));
                sign = -sign;
            }

            double top = a[k * Stride + k], reciprocal = 1 / top;
            if (!(Math.Abs(top) > Vanishing)) return 0;
            if (top < 0) sign = -sign;
            // Whole vectors only: a lane written alone would stall the load that follows.
            Vector256<double> atLeft = Lane(k), atRight = Lane(k - 4);
            ref Vector256<double> row = ref Row(a, k);
            Vector256<double> left = row = Vector256.ConditionalSelect(atLeft, Vector256<double>.One, row) * reciprocal;
            Vector256<double> right = Unsafe.Add(ref row, 1) = Vector256.ConditionalSelect(atRight, Vector256<double>.One, Unsafe.Add(ref row, 1)) * reciprocal;
            for (int i = 0; i < Size; i++)
            {
                if (i == k) continue;
                double share = a[i * Stride + k];
                ref Vector256<double> other = ref Row(a, i);
                other = Vector256.AndNot(other, atLeft) - share * left;
                Unsafe.Add(ref other, 1) = Vector256.AndNot(Unsafe.Add(ref other, 1), atRight) - share * right;
            }
        }

        // Rows that changed places are columns of the inverse that must change back.
        for (int k = Size - 1; k >= 0; k--)
            if (order[k] != k)
                for (int i = 0; i < Size; i++) (a[i * Stride + k], a[i * Stride + order[k]]) = (a[i * Stride + order[k]], a[i * Stride + k]);
        return sign;
    }

    /// <summary>The sum of the rows, each so many times as b says.</summary>
    public static void Combine(Span<double> a, ReadOnlySpan<double> b, Span<double> sum)
    {
        Vector256<double> left = default, right = default;
        for (int i = 0; i < Size; i++)
        {
            ref Vector256<double> row = ref Row(a, i);
            left += b[i] * row;
            right += b[i] * Unsafe.Add(ref row, 1);
        }

        left.CopyTo(sum);
        right.CopyTo(sum[4..]);
    }

    private static int Pivot(Span<double> a, int k)
    {
        int pivot = k;
        for (int i = k + 1; i < Size; i++)
            if (Math.Abs(a[i * Stride + k]) > Math.Abs(a[pivot * Stride + k])) pivot = i;
        return pivot;
    }

    private static void Swap(ref Vector256<double> one, ref Vector256<double> other)
    {
        (one, other) = (other, one);
        (Unsafe.Add(ref one, 1), Unsafe.Add(ref other, 1)) = (Unsafe.Add(ref other, 1), Unsafe.Add(ref one, 1));
    }

    private static ref Vector256<double> Row(Span<double> a, int i) =>
        ref Unsafe.As<double, Vector256<double>>(ref Unsafe.Add(ref MemoryMarshal.GetReference(a), i * Stride));

    private static Vector256<double> Lane(int k) => Vector256.Equals(Vector256.Create(0.0, 1.0, 2.0, 3.0), Vector256.Create((double)k));
}
