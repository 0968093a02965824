using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Bellowsmith.Quality.Distributions;

/// <summary>
/// The chain of <see cref="AdjacentSteps"/> at known deviation. Densities are held at Gauss–Legendre nodes of equal panels;
/// integrals up to a place inside a panel are those of the polynomial through its nodes, so every bound keeps full accuracy.
/// </summary>
internal sealed class StepChain
{
    // Beyond ±8 lie 1.2e-15 of each mean.
    private const double Least = -8, Width = 1;
    private const int Panels = 16, Order = 12;
    private static readonly GaussLegendreRule _rule = new(-1, 1, Order);
    private readonly int _means;
    private readonly double[] _normal = new double[Panels * Order];

    public StepChain(int means)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(means, 2);
        _means = means;
        for (int i = 0; i < _normal.Length; i++)
            _normal[i] = Normal.PDF(0, 1, Least + Width * (i / Order + (_rule.GetAbscissa(i % Order) + 1) / 2));
    }

    /// <summary>The probability that every step lies within ±<paramref name="bound"/> of its standard deviation.</summary>
    public double Within(double bound)
    {
        // Every second step is independent of the others.
        if (Math.Pow(1 - 2 * Normal.CDF(0, 1, -bound), _means / 2) < 1e-18) return 0;
        Reach up = new(bound * Math.Sqrt(2)), down = new(-bound * Math.Sqrt(2));
        return Follow((density, sums, node) => up.Of(density, sums, node) - down.Of(density, sums, node));
    }

    /// <summary>The probability that every step lies below <paramref name="bound"/> of its standard deviation.</summary>
    public double Below(double bound)
    {
        Reach down = new(-bound * Math.Sqrt(2));
        return Follow((density, sums, node) => sums[Panels] - down.Of(density, sums, node));
    }

    private double Follow(Func<double[], double[], int, double> window)
    {
        double[] density = [.. _normal], next = new double[density.Length], sums = new double[Panels + 1];
        for (int step = 1; step < _means; step++)
        {
            Accumulate(density, sums);
            for (int i = 0; i < density.Length; i++) next[i] = _normal[i] * window(density, sums, i);
            (density, next) = (next, density);
        }

        Accumulate(density, sums);
        return sums[Panels];
    }

    // Integrals up to each panel's left end.
    private static void Accumulate(double[] density, double[] sums)
    {
        for (int panel = 0; panel < Panels; panel++)
        {
            double sum = 0;
            for (int j = 0; j < Order; j++) sum += _rule.GetWeight(j) * density[panel * Order + j];
            sums[panel + 1] = sums[panel] + sum * Width / 2;
        }
    }

    /// <summary>The integral of a density from far below up to a node shifted by a distance: where in which panel each node
    /// lands is the same for all panels, so the weights are made once per distance.</summary>
    private sealed class Reach
    {
        private readonly int[] _panels = new int[Order];
        private readonly double[] _weights = new double[Order * Order];

        public Reach(double distance)
        {
            for (int node = 0; node < Order; node++)
            {
                double place = (_rule.GetAbscissa(node) + 1) / 2 + distance / Width;
                _panels[node] = (int)Math.Floor(place);
                Partial(2 * (place - _panels[node]) - 1, _weights.AsSpan(node * Order, Order));
            }
        }

        public double Of(double[] density, double[] sums, int index)
        {
            (int panel, int node) = Math.DivRem(index, Order);
            panel += _panels[node];
            if (panel < 0) return 0;
            if (panel >= Panels) return sums[Panels];
            double sum = sums[panel];
            for (int j = 0; j < Order; j++) sum += _weights[node * Order + j] * density[panel * Order + j];
            return sum;
        }

        // ∫ of the polynomial through the nodes from −1 to t, by its Legendre series: ∫Pₙ = (Pₙ₊₁ − Pₙ₋₁)/(2n + 1).
        private static void Partial(double t, Span<double> weights)
        {
            Span<double> atEnd = stackalloc double[Order + 1], atNode = stackalloc double[Order + 1];
            Legendre(t, atEnd);
            for (int j = 0; j < Order; j++)
            {
                Legendre(_rule.GetAbscissa(j), atNode);
                double sum = 1 + t;
                for (int n = 1; n < Order; n++) sum += atNode[n] * (atEnd[n + 1] - atEnd[n - 1]);
                weights[j] = _rule.GetWeight(j) / 2 * sum * Width / 2;
            }
        }

        private static void Legendre(double t, Span<double> values)
        {
            (values[0], values[1]) = (1, t);
            for (int n = 1; n < Order; n++) values[n + 1] = ((2 * n + 1) * t * values[n] - n * values[n - 1]) / (n + 1);
        }
    }
}
