namespace Bellowsmith.Physics.Linkages;

/// <summary>Three directions square to each other on a part, by which its other points are found again once it has moved.</summary>
internal readonly record struct Frame(Point Origin, Point Along, Point Across)
{
    /// <summary>Of an arm: its joint, the line of its pivots, and square to that toward the joint.</summary>
    public static Frame OfArm(Point front, Point rear, Point joint)
    {
        Point along = (rear - front).Unit();
        return new(joint, along, (joint - front).SquareTo(along).Unit());
    }

    /// <summary>Of a link: its outer joint, its line, and the level line square to it that its bush turns about.</summary>
    public static Frame OfLink(Point inner, Point outer)
    {
        Point along = (outer - inner).Unit();
        return new(outer, along, Point.Up.Cross(along).Unit());
    }

    /// <summary>A point of the part that stood so in this frame, where another frame stands now.</summary>
    public Point Carried(Point point, Frame now)
    {
        Point off = point - Origin;
        return now.Origin + off.Dot(Along) * now.Along + off.Dot(Across) * now.Across
            + off.Dot(Along.Cross(Across)) * now.Along.Cross(now.Across);
    }
}
