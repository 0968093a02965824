using System.Numerics;

namespace Bellowsmith.Physics.Numerics;

/// <summary>Lower Cholesky factor of a small symmetric positive definite matrix, row by row in one array.</summary>
internal static class Cholesky
{
    /// <summary>Overwrites the lower triangle of an n × n matrix by its factor; false where it is not positive definite.</summary>
    public static bool Factor(Span<double> matrix, int n)
    {
        for (int i = 0; i < n; i++)
        {
            Span<double> row = matrix.Slice(i * n, n);
            for (int j = 0; j < i; j++)
                row[j] = (row[j] - Dot(row[..j], matrix.Slice(j * n, j))) / matrix[j * n + j];
            double square = row[i] - Dot(row[..i], row[..i]);
            if (!(square > 0)) return false;
            row[i] = Math.Sqrt(square);
        }

        return true;
    }

    /// <summary>Solves L·x = b in place.</summary>
    public static void Forward(ReadOnlySpan<double> factor, int n, Span<double> b)
    {
        for (int i = 0; i < n; i++) b[i] = (b[i] - Dot(b[..i], factor.Slice(i * n, i))) / factor[i * n + i];
    }

    /// <summary>Solves Lᵀ·x = b in place.</summary>
    public static void Backward(ReadOnlySpan<double> factor, int n, Span<double> b)
    {
        for (int i = n - 1; i >= 0; i--)
        {
            b[i] /= factor[i * n + i];
            AddScaled(b[..i], factor.Slice(i * n, i), -b[i]);
        }
    }

    /// <summary>Solves L·Lᵀ·x = b in place.</summary>
    public static void Solve(ReadOnlySpan<double> factor, int n, Span<double> b)
    {
        Forward(factor, n, b);
        Backward(factor, n, b);
    }

    /// <summary>The inverse of L·Lᵀ, both triangles.</summary>
    public static void Inverse(ReadOnlySpan<double> factor, int n, Span<double> inverse)
    {
        inverse[..(n * n)].Clear();
        for (int i = 0; i < n; i++)
        {
            Span<double> row = inverse.Slice(i * n, n);
            row[i] = 1;
            for (int k = i; k < n; k++)
                row[k] = (row[k] - Dot(row[i..k], factor.Slice(k * n + i, k - i))) / factor[k * n + k];
        }

        // Rows now hold the columns of L⁻¹; their products make the inverse.
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = Dot(inverse.Slice(i * n + i, n - i), inverse.Slice(j * n + i, n - i));
                inverse[j * n + i] = sum;
            }
        }

        for (int i = 0; i < n; i++)
            for (int j = 0; j < i; j++) inverse[i * n + j] = inverse[j * n + i];
    }

    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        int width = Vector<double>.Count, i = 0;
        Vector<double> sum = default;
        for (; i <= a.Length - width; i += width) sum += new Vector<double>(a[i..]) * new Vector<double>(b[i..]);
        double total = Vector.Sum(sum);
        for (; i < a.Length; i++) total += a[i] * b[i];
        return total;
    }

    public static void AddScaled(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        int width = Vector<double>.Count, i = 0;
        Vector<double> scale = new(factor);
        for (; i <= target.Length - width; i += width)
            (new Vector<double>(target[i..]) + scale * new Vector<double>(source[i..])).CopyTo(target[i..]);
        for (; i < target.Length; i++) target[i] += factor * source[i];
    }
}
