namespace Bellowsmith.Physics.Bellows;

/// <summary>The meridian of a whole spring as points, for drawing.</summary>
internal readonly struct MeridianTrace(CordWall wall, Contour contour)
{
    public IReadOnlyList<(double Z_m, double Radius_m)> Points(int convolutions, double bead, double girdle, int count)
    {
        List<(double Z_m, double Radius_m)> points = [(0, 0), (0, bead)];
        double level = 0;
        for (int k = 0; k < convolutions; k++)
        {
            bool first = k == 0, last = k == convolutions - 1;
            double crown = first || last ? contour.EndCrown : contour.MiddleCrown;
            double lower = first ? contour.Edge : contour.GirdleEdge, upper = last ? contour.Edge : contour.GirdleEdge;
            double middle = level + Height(lower, crown);
            int below = count / 2, above = count - below;
            for (int i = 0; i < below; i++) Add(points, middle, crown, lower, (double)i / below, -1);
            for (int i = above - 1; i >= 0; i--) Add(points, middle, crown, upper, (double)i / (above - 1), +1);
            level = middle + Height(upper, crown);
            if (!last) points.Add((level, girdle));
        }

        points.Add((level, bead));
        points.Add((level, 0));
        return points;
    }

    private double Height(double edge, double crown) => wall.Arc(edge, crown, contour.AreaTerm).Height_m;

    // share 0 is the edge, 1 the crown; both ends are drawn closer, for both may bend sharply.
    private void Add(List<(double Z_m, double Radius_m)> points, double middle, double crown, double edge, double share, int side)
    {
        double radius = crown - (crown - edge) * (1 + Math.Cos(Math.PI * share)) / 2;
        points.Add((middle + side * Height(radius, crown), radius));
    }
}
