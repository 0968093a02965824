namespace Bellowsmith.Physics.Linkages;

/// <summary>Six linear equations by elimination with row pivoting.</summary>
internal static class SixBySix
{
    public const int Size = 6;

    /// <summary>Overwrites the rows by their factors; the sign of the determinant, 0 where it vanishes.</summary>
    public static int Factor(Span<double> a, Span<int> order)
    {
        int sign = 1;
        for (int k = 0; k < Size; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < Size; i++)
                if (Math.Abs(a[i * Size + k]) > Math.Abs(a[pivot * Size + k])) pivot = i;
            order[k] = pivot;
            if (pivot != k)
            {
                for (int j = 0; j < Size; j++) (a[k * Size + j], a[pivot * Size + j]) = (a[pivot * Size + j], a[k * Size + j]);
                sign = -sign;
            }

            double top = a[k * Size + k];
            if (!(Math.Abs(top) > 1e-14)) return 0;
            if (top < 0) sign = -sign;
            for (int i = k + 1; i < Size; i++)
            {
                double share = a[i * Size + k] /= top;
                if (share == 0) continue;
                for (int j = k + 1; j < Size; j++) a[i * Size + j] -= share * a[k * Size + j];
            }
        }

        return sign;
    }

    public static void Solve(ReadOnlySpan<double> a, ReadOnlySpan<int> order, Span<double> b)
    {
        for (int k = 0; k < Size; k++) (b[k], b[order[k]]) = (b[order[k]], b[k]);
        for (int i = 1; i < Size; i++)
            for (int j = 0; j < i; j++) b[i] -= a[i * Size + j] * b[j];
        for (int i = Size - 1; i >= 0; i--)
        {
            for (int j = i + 1; j < Size; j++) b[i] -= a[i * Size + j] * b[j];
            b[i] /= a[i * Size + i];
        }
    }
}
