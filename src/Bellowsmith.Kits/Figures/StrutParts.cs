using Bellowsmith.Kits.Studies.Bodies;

namespace Bellowsmith.Kits.Figures;

/// <summary>The parts of a strut in section, from the mount down; what lies in front is drawn last.</summary>
internal sealed class StrutParts(SectionPen pen, StrutLayout at, BellowsWall wall)
{
    /// <summary>How far the lock ring stands out from the body.</summary>
    public const double LockRing = 9;

    private const double Sheet = 4, Collar = 8;

    private double Plate => at.Plate_mm;

    public void Draw(bool threaded, bool damped)
    {
        Mount();
        if (damped) Damper();
        Plates();
        if (damped)
        {
            pen.Block("rod", at.Rod, at.HeadTop, at.Mount);
            Head();
            Stop();
        }

        LowerMount(threaded);
        Bellows();
    }

    // Tower sheet over the mount face, rubber ring, joint and thrust bearing in what the upper stack leaves.
    private void Mount()
    {
        double stack = at.Mount - at.UpperPlate, ring = wall.RingRadius_mm, bore = at.Rod + 3;
        pen.Ring("mount", 18, ring + 28, at.Mount, at.Mount + Sheet, +1);
        if (stack < 16)
        {
            pen.Ring("mount", bore, 26, at.UpperPlate, at.Mount, -1);
            return;
        }

        double bearing = Math.Min(12, stack / 4), housing = at.UpperPlate + bearing + Math.Min(6, stack / 8);
        pen.Ring("mount", bore + 11, 44, housing, at.Mount, -1);
        pen.Ring("mount", bore, bore + 11, housing, at.Mount, +1);
        pen.Block("mount", bore + 4, at.UpperPlate, housing);
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
        {
            double inner = bore + 4, outer = 40;
            pen.Add(new DrawingPath(DrawingRole.Outline, "mount",
                [new(side * inner, at.UpperPlate), new(side * outer, at.UpperPlate), new(side * outer, housing), new(side * inner, housing)], Closed: true, DrawingFill.Paper));
            pen.Add(new DrawingCircle(DrawingRole.Outline, "mount", new(side * (inner + outer) / 2, (at.UpperPlate + housing) / 2), bearing / 2 - 0.5));
        }
    }

    private void Plates()
    {
        double radius = wall.RingRadius_mm + 4;
        pen.Ring("upperPlate", at.Rod + 1, radius, at.UpperPlate - Plate, at.UpperPlate, +1);
        pen.Ring("lowerPlate", at.Body, radius, at.LowerPlate, at.LowerPlate + Plate, +1);
        pen.Ring("perch", at.Body, Math.Min(at.Body + 14, radius), at.LowerPlate - Collar, at.LowerPlate, -1);
    }

    private void Damper()
    {
        pen.Block("body", at.Body, at.DamperBottom, Math.Min(at.HeadTop, at.LowerPlate + Plate));
        if (at.HeadTop > at.LowerPlate + Plate) pen.Block("body", at.Body, at.LowerPlate, at.HeadTop);
    }

    private void Head() => pen.Ring("head", at.Rod + 0.5, at.Body - 3, at.HeadTop - 12, at.HeadTop, -1);

    // Lobes that bulge as the stop is squeezed: its rubber keeps its volume.
    private void Stop()
    {
        if (at.StopEnd is not { } end) return;
        double length = Math.Max(at.StopSeat - end, 1), swell = Math.Sqrt(at.StopFree_mm / length), radius = 0.8 * at.Body;
        const int lobes = 2, points = 9;
        List<DrawingPoint> outline = [new(at.Rod, at.StopSeat)];
        for (int k = 0; k <= lobes * points; k++)
        {
            double share = (double)k / (lobes * points), lobe = 0.78 + 0.22 * Math.Abs(Math.Sin(Math.PI * lobes * share));
            outline.Add(new(at.Rod + (radius * (1 - 0.25 * share) - at.Rod) * lobe * swell, at.StopSeat - length * share));
        }

        outline.Add(new(at.Rod, end));
        pen.Pair(DrawingRole.Outline, "stop", outline, DrawingFill.Rubber);
    }

    // A sleeve the body screws into, its lock ring on top and the lower datum at its foot.
    private void LowerMount(bool threaded)
    {
        double foot = Math.Min(at.Datum, at.DamperBottom - 10), wallOuter = at.Body + 6;
        pen.Ring("lowerMount", at.Body, wallOuter, at.DamperBottom - 4, at.SleeveTop - Collar, +1);
        pen.Block("lowerMount", wallOuter, foot, at.DamperBottom - 4);
        Bracket(wallOuter, at.DamperBottom - foot);
        pen.Ring("lockRing", at.Body, at.Body + LockRing, at.SleeveTop - Collar, at.SleeveTop, -1);
        if (threaded) Thread();
        pen.Line(DrawingRole.Thin, "datum", -wallOuter - 14, at.Datum, wallOuter + 14, at.Datum);
    }

    // Two bolts to the upright, where the housing has room for them.
    private void Bracket(double side, double room)
    {
        const double low = 14, high = 92, depth = 36;
        if (room < high + 10) return;
        pen.Add(new DrawingPath(DrawingRole.Outline, "lowerMount",
            [new(side, at.Datum + low), new(side + depth, at.Datum + low), new(side + depth, at.Datum + high), new(side, at.Datum + high)], Closed: true, DrawingFill.Paper));
        foreach (double y in (ReadOnlySpan<double>)[low + 18, high - 18])
        {
            pen.Add(new DrawingCircle(DrawingRole.Outline, "lowerMount", new(side + depth / 2, at.Datum + y), 7));
            pen.Line(DrawingRole.Centre, "lowerMount", side + depth / 2 - 11, at.Datum + y, side + depth / 2 + 11, at.Datum + y);
            pen.Line(DrawingRole.Centre, "lowerMount", side + depth / 2, at.Datum + y - 11, side + depth / 2, at.Datum + y + 11);
        }
    }

    // ISO 6410: crests thick (the body's outline), roots thin, a thick line where it ends.
    private void Thread()
    {
        (double root, double end) = (at.Body - 2, Math.Max(at.ThreadEnd, at.SleeveTop - Collar));
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
            pen.Line(DrawingRole.Thin, "thread", side * root, at.DamperBottom, side * root, end);
        pen.Line(DrawingRole.Outline, "thread", -at.Body, end, at.Body, end);
    }

    private void Bellows()
    {
        double foot = at.LowerPlate + Plate, half = wall.Thickness_mm / 2;
        DrawingPoint[] middle = [.. wall.Meridian(at.Height_mm, at.GaugePressure_Pa).Select(p => new DrawingPoint(p.Radius_mm, p.Height_mm + foot))];
        DrawingPoint[] outer = [.. middle.Select((_, k) => Beside(middle, k, half))];
        DrawingPoint[] inner = [.. middle.Select((_, k) => Beside(middle, k, -half)).Reverse()];
        foreach (double y in (ReadOnlySpan<double>)[foot + half + 1, at.UpperPlate - Plate - half - 1])
            foreach (int side in (ReadOnlySpan<int>)[-1, 1])
                pen.Add(new DrawingCircle(DrawingRole.Rubber, "bellows", new(side * wall.RingRadius_mm, y), half + 1, DrawingFill.Rubber));
        pen.Pair(DrawingRole.Rubber, "bellows", [.. outer, .. inner], DrawingFill.Rubber);
        for (int c = 1; c < wall.Convolutions; c++)
            foreach (int side in (ReadOnlySpan<int>)[-1, 1])
                pen.Add(new DrawingCircle(DrawingRole.Outline, "girdle", new(side * (wall.RingRadius_mm + 3),
                    foot + (at.Height_mm - 2 * Plate) * c / wall.Convolutions), 3.5, DrawingFill.Paper));
    }

    // The point moved square to the curve, outwards for +; the curve runs downwards on the right side.
    private static DrawingPoint Beside(DrawingPoint[] curve, int k, double distance)
    {
        (DrawingPoint a, DrawingPoint b) = (curve[Math.Max(k - 1, 0)], curve[Math.Min(k + 1, curve.Length - 1)]);
        double length = Math.Sqrt((b.X - a.X) * (b.X - a.X) + (b.Y - a.Y) * (b.Y - a.Y));
        return new(curve[k].X - (b.Y - a.Y) / length * distance, curve[k].Y + (b.X - a.X) / length * distance);
    }
}
