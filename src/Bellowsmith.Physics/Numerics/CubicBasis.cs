namespace Bellowsmith.Physics.Numerics;

/// <summary>
/// Cubic B-splines on equal segments of [Start, End] [Eilers Marx 1996]: Count = segments + 3 functions, four of
/// them non-zero at any place. Second derivatives are continuous.
/// </summary>
internal readonly struct CubicBasis(double start, double end, int segments)
{
    public double Start { get; } = start;
    public double End { get; } = end;
    public int Segments { get; } = segments;
    public int Count => Segments + 3;
    public double Step => (End - Start) / Segments;

    /// <summary>The four values at x and the index of the first of them. x is held within [Start, End].</summary>
    public int Weights(double x, Span<double> weights)
    {
        double place = Math.Clamp((x - Start) / Step, 0, Segments);
        int segment = Math.Min((int)place, Segments - 1);
        double u = place - segment, v = 1 - u;
        weights[0] = v * v * v / 6;
        weights[1] = (3 * u * u * u - 6 * u * u + 4) / 6;
        weights[2] = (3 * v * v * v - 6 * v * v + 4) / 6;
        weights[3] = u * u * u / 6;
        return segment;
    }

    /// <summary>Writes factor times the four values into the row of a design matrix.</summary>
    public void Scatter(double x, double factor, Span<double> row)
    {
        Span<double> weights = stackalloc double[4];
        int first = Weights(x, weights);
        for (int k = 0; k < 4; k++) row[first + k] = factor * weights[k];
    }

    /// <summary>The curve Σ cⱼ Bⱼ as polynomials, one a segment.</summary>
    public SmoothCurve Curve(ReadOnlySpan<double> coefficients)
    {
        double[] powers = new double[Segments * SmoothCurve.Terms];
        for (int s = 0; s < Segments; s++)
        {
            double a = coefficients[s], b = coefficients[s + 1], c = coefficients[s + 2], d = coefficients[s + 3];
            double step = Step;
            Span<double> p = powers.AsSpan(s * SmoothCurve.Terms, SmoothCurve.Terms);
            p[0] = (a + 4 * b + c) / 6;
            p[1] = (c - a) / 2 / step;
            p[2] = (a - 2 * b + c) / 2 / (step * step);
            p[3] = (d - a + 3 * (b - c)) / 6 / (step * step * step);
        }

        return SmoothCurve.OnEqualSegments(Start, End, powers);
    }
}
