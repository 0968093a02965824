namespace Bellowsmith.Physics.Bellows;

/// <summary>
/// A thin wall of two crossed families of inextensible cords that hold on to each other where they cross, turned about
/// the axis: a circle of radius r meets the same number of crossings wherever it lies, so the cord's angle to the meridian
/// follows sinβ = κ·r [Rivlin 1959]. Meridian tension Ns and hoop tension Nθ = Ns·tan²β balance along the meridian,
/// d(r·Ns)/dr = Nθ, so r·Ns = C/cosβ; across the axis p·r² − 2·r·Ns·cosψ = p·q, with ψ the meridian's angle to the axis and
/// π·q the effective area. The crown R has ψ = 0, hence cosψ = G(r)/G(R), G = cosβ·(r² − q).
/// </summary>
internal readonly struct CordWall(double sineByRadius_per_m)
{
    // Roots that many widths beyond the edge, or beyond the crown, no longer slow the quadrature down.
    private const double Far = 8, NearCylinder = 1.0 / 12;

    private readonly double _kappa = sineByRadius_per_m;

    /// <summary>The radius at which cords lie along the circle and the wall cannot grow; infinite for meridional cords.</summary>
    public double WidestRadius_m => 1 / _kappa;

    public double Cosine(double radius) => Math.Sqrt((1 - _kappa * radius) * (1 + _kappa * radius));

    /// <summary>Cord on a flat ring from one radius out to another, ∫dr/cosβ.</summary>
    public double FlatCord(double from, double to) =>
        _kappa == 0 ? to - from : (Math.Asin(_kappa * to) - Math.Asin(_kappa * from)) / _kappa;

    /// <summary>q of a wall whose meridian stands at angle ψ on an edge and has its crown at R.</summary>
    public double AreaTerm(double edge, double angle, double crown)
    {
        double half = Math.Sin(angle / 2), squares = (crown - edge) * (crown + edge);
        double atEdge = Cosine(edge), atCrown = Cosine(crown);
        double below = 2 * half * half * atCrown + _kappa * _kappa * squares / (atEdge + atCrown);
        return edge * edge - Math.Cos(angle) * atCrown * squares / below;
    }

    /// <summary>The crown radius at which the wall would be a cylinder of any length: G'(R) = 0. Crowns lie below it.</summary>
    public double NeutralRadius(double areaTerm) => Math.Sqrt((2 / (_kappa * _kappa) + areaTerm) / 3);

    /// <summary>
    /// Height, cord and volume of the arc from an edge to the crown. With x = R − r, 1 − cosψ = x·D and D free of
    /// cancellation. On the crown's half x = t² lifts the root at the crown; where the wall is nearly a cylinder D vanishes at
    /// x = −A close by, and x = A·sinh²u lifts both. On the edge's half x = x₁ − s² lifts the root of 1 + cosψ at x₁ beyond
    /// the edge, which comes close as the wall folds. Sixteen points each: see docs/accuracy.md.
    /// </summary>
    public CordArc Arc(double edge, double crown, double areaTerm)
    {
        double width = crown - edge;
        if (!(width > 0)) return default;
        double square = _kappa * _kappa, atCrown = Cosine(crown);
        double term = square * (crown * crown - areaTerm), grade = atCrown * (crown * crown - areaTerm);
        double slope = atCrown - term / (2 * atCrown);
        if (!(slope > 0)) return CordArc.Endless;
        double near = BeyondCrown(crown, atCrown, term, slope);

        ArcSums sums = new(_kappa, crown, atCrown, term, grade);
        double from = near > NearCylinder * width ? 0 : width / 16;
        if (from > 0) sums.AddNearCylinder(from, near);
        sums.AddCrownHalf(from, width / 2);
        sums.AddEdgeHalf(width, BeyondEdge(edge, crown, term, grade));
        return sums.Arc;
    }

    /// <summary>A, how far beyond the crown D vanishes, where cosβ² + cosβ·cosβR = T; infinite where it does not.</summary>
    private double BeyondCrown(double crown, double atCrown, double term, double slope)
    {
        if (term <= 0) return double.PositiveInfinity;
        double cosine = (Math.Sqrt(atCrown * atCrown + 4 * term) - atCrown) / 2;
        double narrower = 2 * atCrown * slope / (2 * atCrown + cosine), squares = narrower * (atCrown + cosine) / (_kappa * _kappa);
        return squares / (crown + Math.Sqrt(crown * crown + squares));
    }

    /// <summary>How far beyond the edge the meridian would turn straight down: Newton's steps, from the edge, towards the root of
    /// 1 + cosψ. Any length is sound; the nearer the root, the faster the quadrature.</summary>
    private double BeyondEdge(double edge, double crown, double term, double grade)
    {
        double far = Far * (crown - edge), beyond = 0, square = _kappa * _kappa, atCrown = Cosine(crown);
        for (int step = 0; step < 3; step++)
        {
            double radius = edge - beyond, cosine = Cosine(radius), squares = (crown - radius) * (crown + radius);
            double left = 2 - squares * (cosine - term / (atCrown + cosine)) / grade;
            double next = beyond + left * cosine * grade / (radius * (2 * cosine * cosine + square * squares - term));
            if (!(next > 0 && next < far && next < edge)) return step == 0 ? far : beyond;
            beyond = next;
        }

        return beyond;
    }
}

/// <summary>An arc from edge to crown: its height (− where it hangs below its edge), the cord in it, and ∫πr²dz.</summary>
internal readonly record struct CordArc(double Height_m, double Cord_m, double Volume_m3)
{
    /// <summary>The crown lies at or beyond the cylinder that no length of cord reaches.</summary>
    public static CordArc Endless => new(double.NaN, double.PositiveInfinity, double.NaN);
}
