using System.Numerics;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Bellows;

/// <summary>
/// The three integrals of one arc, ∫cosψ·dm, ∫dm/cosβ and ∫r²·cosψ·dm, dm = dr/sinψ the meridian's length, summed a few
/// nodes at a time. At a node x = R − r: D = (2R − x)·(cosβ − T/(cosβR + cosβ))/G(R) with T = κ²·(R² − q), cosψ = 1 − x·D and
/// sin²ψ = x·D·(2 − x·D).
/// </summary>
internal ref struct ArcSums(double kappa, double crown, double atCrown, double term, double grade)
{
    private readonly Vector<double> _square = new(kappa * kappa), _crown = new(crown), _atCrown = new(atCrown), _term = new(term);
    private readonly double _perGrade = 1 / grade;
    private Vector<double> _height, _cord, _volume;

    public readonly CordArc Arc => new(Vector.Sum(_height), Vector.Sum(_cord), Math.PI * Vector.Sum(_volume));

    /// <summary>x = t² from one x to another.</summary>
    public void AddCrownHalf(double from, double to)
    {
        double start = Math.Sqrt(from), half = (Math.Sqrt(to) - start) / 2;
        for (int i = 0; i < GaussLegendre.Nodes.Length; i += Vector<double>.Count)
        {
            Vector<double> t = Place(start + half, half, i), x = t * t, rise = Rise(x, out Vector<double> cosine);
            Add(x, rise, cosine, 2 * half * Weight(i) / Vector.SquareRoot(rise * (Two - x * rise)));
        }
    }

    /// <summary>x = A·sinh²u from the crown to x = end.</summary>
    public void AddNearCylinder(double end, double near)
    {
        double half = Math.Asinh(Math.Sqrt(end / near)) / 2;
        for (int i = 0; i < GaussLegendre.Nodes.Length; i += Vector<double>.Count)
        {
            Vector<double> power = Vector.Exp(Place(half, half, i)), sinh = (power - Vector<double>.One / power) / 2;
            Vector<double> x = near * sinh * sinh, rise = Rise(x, out Vector<double> cosine);
            Add(x, rise, cosine, 2 * half * Weight(i) * Vector.SquareRoot((new Vector<double>(near) + x) / (rise * (Two - x * rise))));
        }
    }

    /// <summary>x = x₁ − s² over the half of the width next to the edge, x₁ that far beyond it.</summary>
    public void AddEdgeHalf(double width, double beyond)
    {
        double from = Math.Sqrt(beyond), to = Math.Sqrt(beyond + width / 2), half = (to - from) / 2;
        for (int i = 0; i < GaussLegendre.Nodes.Length; i += Vector<double>.Count)
        {
            Vector<double> s = Place(from + half, half, i), x = new Vector<double>(width + beyond) - s * s;
            Vector<double> rise = Rise(x, out Vector<double> cosine);
            Add(x, rise, cosine, 2 * half * s * Weight(i) / Vector.SquareRoot(x * rise * (Two - x * rise)));
        }
    }

    private static Vector<double> Two => new(2.0);

    private static Vector<double> Place(double middle, double half, int i) =>
        new Vector<double>(middle) + half * new Vector<double>(GaussLegendre.Nodes[i..]);

    private static Vector<double> Weight(int i) => new(GaussLegendre.Weights[i..]);

    private readonly Vector<double> Rise(Vector<double> x, out Vector<double> cosine)
    {
        Vector<double> radius = _crown - x;
        cosine = Vector.SquareRoot(Vector<double>.One - _square * radius * radius);
        return (_crown + radius) * (cosine - _term / (_atCrown + cosine)) * _perGrade;
    }

    private void Add(Vector<double> x, Vector<double> rise, Vector<double> cosine, Vector<double> length)
    {
        Vector<double> along = length * (Vector<double>.One - x * rise), radius = _crown - x;
        _height += along;
        _cord += length / cosine;
        _volume += radius * radius * along;
    }
}
