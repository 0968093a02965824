using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>
/// A brake hose or sensor line, m: from where it leaves the body over points on the body to one that moves with the wheel, on knuckle or
/// strut.
/// </summary>
public sealed record CornerLine(string Name, Point Body, IReadOnlyList<Point> Via, Point Wheel, double Length_m)
{
    /// <summary>Its length less the shortest way along its points; below 0 it is taut.</summary>
    public double Slack_m(LinkageState state)
    {
        double slack = Length_m;
        Point from = Body;
        foreach (Point next in (IEnumerable<Point>)[.. Via, state.Knuckle.At(Wheel)])
        {
            slack -= (next - from).Length;
            from = next;
        }

        return slack;
    }
}
