namespace Bellowsmith.Physics.Clearances;

/// <summary>
/// The place of a surface of revolution that is nearest to another body: branch and bound over patches of that surface. A patch is
/// dropped when no place of it can be nearer than the nearest found, by more than the tolerance; else it is halved. The bound comes from
/// the distance's slope, which turns only as fast as the other body curves inward; derivation: docs/theory/clearance.md.
/// </summary>
internal ref struct PatchSearch
{
    public const double Tolerance_m = 2e-5;

    // Once bodies overlap a deeper place elsewhere is searched for only so far.
    private const double Slack_m = 1e-3, SlackShare = 0.25;

    // A stride that gains no more than so much of its length leads nowhere: a shallow valley is not followed to its end.
    private const double LongestStride_m = 4e-3, ShortestStride_m = 1e-5, LeastGain = 1e-3;

    private const int Sectors = 3, Depth = 64, Strides = 16;
    private const double Sector_rad = Math.PI / Sectors;

    private readonly OutlineLines _body;
    private readonly Point _origin, _along, _across, _aside;
    private readonly Span<Patch> _open;
    private double _least;
    private Point _place;

    // Everything in the axes of the body whose distance is asked.
    private PatchSearch(OutlineLines body, in Frame bodyFrame, in Frame surface, Span<Patch> open)
    {
        (_body, _least) = (body, double.PositiveInfinity);
        _open = open;
        _origin = bodyFrame.Into(surface.Origin);
        (_along, _across, _aside) = (bodyFrame.Turned(surface.X), bodyFrame.Turned(surface.Y), bodyFrame.Turned(surface.Z));
    }

    /// <summary>From a body's surface to the nearest place of a smaller one's.</summary>
    public static Gap Nearest(in RevolvedBody body, in RevolvedBody smaller)
    {
        OutlineLines lines = body.Profile.Lines, surface = smaller.Profile.Lines;
        Point middle = smaller.Origin + surface.Middle_m * smaller.Axis;
        Frame frame = Frame.Of(body.Origin, body.Axis, middle);
        PatchSearch search = new(lines, frame, Frame.Of(smaller.Origin, smaller.Axis, body.GapTo(middle).On), stackalloc Patch[Depth]);
        search.Guess(surface);
        search.Approach(body, smaller, frame);
        search.Prove(surface);
        search.Deepen(body, smaller, frame);
        Point place = frame.OutOf(search._place);
        Gap gap = body.GapTo(place);
        // The smaller surface may lie all round the other.
        return gap.Distance_m > 0 && smaller.GapTo(gap.On) is { Distance_m: < 0 } within ? within.Turned() : gap;
    }

    /// <summary>From a body's surface to the nearest place of a bar's axis.</summary>
    public static Gap Nearest(in RevolvedBody body, in RoundBar bar)
    {
        Point run = bar.End - bar.Start;
        double length = run.Length;
        if (!(length > 0)) return body.GapTo(bar.Start);
        Frame frame = Frame.Of(body.Origin, body.Axis, bar.Start);
        PatchSearch search = new(body.Profile.Lines, frame, Frame.Of(bar.Start, run / length, body.Origin), stackalloc Patch[Depth]);
        search.Over(new(length / 2, 0, length / 2, 0, 0, 0));
        return body.GapTo(frame.OutOf(search._place));
    }

    private static Patch Whole(OutlineLines surface, int line, double angle_rad, double halfAngle_rad)
    {
        (double x, double y, double dx, double dy) = surface.Line(line);
        return new(x + dx / 2, y + dy / 2, dx / 2, dy / 2, angle_rad, halfAngle_rad);
    }

    // The middle of each line, turned toward the body.
    private void Guess(OutlineLines surface)
    {
        for (int k = 0; k < surface.Count; k++) Take(Whole(surface, k, 0, 0), out _);
    }

    // To and fro between the two surfaces, from the nearest place found.
    private void Approach(in RevolvedBody body, in RevolvedBody smaller, in Frame frame)
    {
        for (int n = 0; n < Strides && _least > 0; n++)
        {
            double before = _least;
            Point facing = body.GapTo(frame.OutOf(_place)).On;
            if (Keep(frame.Into(smaller.GapTo(facing).On)) > before - Tolerance_m / 4) return;
        }
    }

    // Where they overlap, on along the surface away from the nearest way out.
    private void Deepen(in RevolvedBody body, in RevolvedBody smaller, in Frame frame)
    {
        for (double stride = LongestStride_m; stride > ShortestStride_m && _least < 0;)
        {
            double before = _least;
            Gap here = body.GapTo(frame.OutOf(_place));
            Point inward = here.Other + stride / -here.Distance_m * (here.Other - here.On);
            if (!(Keep(frame.Into(smaller.GapTo(inward).On)) < before - LeastGain * stride)) stride /= 2;
        }
    }

    private void Prove(OutlineLines surface)
    {
        for (int k = 0; k < surface.Count; k++)
            for (int s = 0; s < Sectors; s++) Over(Whole(surface, k, 2 * s * Sector_rad, Sector_rad));
    }

    private void Over(in Patch whole)
    {
        _open[0] = whole;
        int count = 1;
        while (count > 0)
        {
            Patch patch = _open[--count];
            double apart = Take(patch, out Point place);
            if (apart - patch.Reach_m >= Enough_m || Dropped(patch, place, out bool narrow)) continue;
            (_open[count], _open[count + 1]) = narrow ? patch.Narrower : patch.Shorter;
            count += 2;
        }
    }

    // What may be left unfound.
    private readonly double Enough_m => _least > 0 ? _least - Tolerance_m : _least * (1 + SlackShare) - Slack_m;

    // How far the middle of a patch is outside the body, kept where it is the least.
    private double Take(in Patch patch, out Point place)
    {
        place = At(patch.X, patch.R, patch.Angle_rad);
        return Keep(place);
    }

    private double Keep(Point place)
    {
        double apart = _body.Outside_m(place.X, Radius(place));
        if (apart < _least) (_least, _place) = (apart, place);
        return apart;
    }

    private readonly Point At(double x, double r, double angle_rad)
    {
        (double sin, double cos) = Math.SinCos(angle_rad);
        return _origin + x * _along + r * cos * _across + r * sin * _aside;
    }

    // No place of the patch is nearer to any line of the body; else which way of halving it gains more.
    private readonly bool Dropped(in Patch patch, Point place, out bool narrow)
    {
        narrow = patch.Chord_m > patch.HalfLength_m;
        if (_least <= 0) return false;
        (double sin, double cos) = Math.SinCos(patch.Angle_rad);
        Point outward = cos * _across + sin * _aside, around = cos * _aside - sin * _across;
        return !_body.Within(new(place, patch, patch.HalfX * _along + patch.HalfR * outward, outward, around), Enough_m, ref narrow);
    }

    private static double Radius(Point place) => Math.Sqrt(place.Y * place.Y + place.Z * place.Z);
}
