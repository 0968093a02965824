using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// One corner of the car from ahead, from its side and from above, to scale and at one place of its travel and steering. The car's body
/// stands still, the wheel moves. From ahead the wheel is cut open, so that rim, strut and arch can be seen against each other.
/// </summary>
public sealed class CornerViews(CornerScene scene, DisplayUnits units, double text_mm)
{
    private const double Joint_mm = 9, Cross_mm = 9, Margin_mm = 40;

    private readonly ViewPen _pen = new(text_mm);
    private Viewpoint _from;
    private DrawingBox _frame;

    /// <summary>All three, as they stand on a drawing.</summary>
    public IEnumerable<CarView> All() => [Front(), Side(), Plan()];

    public CarView Front() => View(Viewpoint.Front, () =>
    {
        _pen.Line(DrawingRole.Centre, "middle", new(0, _frame.Bottom), new(0, _frame.Top));
        RollCentre();
        Camber();
    }, FrontSummary(), [new ViewHandle(scene.Handles.Travel, Viewpoint.Front.On(scene.Here.WheelCentre), scene.Here.Travel_m, 0, 0.001)]);

    public CarView Side() => View(Viewpoint.Side, () => { }, SideSummary(), []);

    public CarView Plan() => View(Viewpoint.Plan, Toe, PlanSummary(),
        scene.Here.Linkage.HasRack && scene.Here.Links.FirstOrDefault(link => link.Part == LinkagePart.TieRod) is { Outer: var outer }
            ? [new ViewHandle(scene.Handles.Rack, Viewpoint.Plan.On(outer), scene.Here.Rack_m, 0.001, 0)] : []);

    private CarView View(Viewpoint from, Action own, string summary, IReadOnlyList<ViewHandle> handles)
    {
        _from = from;
        _frame = FrameOf();
        _pen.Clear();
        Body();
        Wheel();
        if (from != Viewpoint.Plan) Ground();
        Strut();
        Before();
        Links(DrawingRole.Outline, scene.Here);
        Gaps();
        own();
        return new CarView { From = from, Shapes = [.. _pen.Shapes], Handles = handles, Frame = _frame, Summary = summary };
    }

    private void Before()
    {
        if (scene.OtherWheel is { } other) Cut(DrawingRole.Before, CornerBodies.Tyre(other.Wheel, other.At), DrawingFill.None);
        if (scene.Before is not { } before) return;
        if (scene.Wheel is { } on) Outline(DrawingRole.Before, "tyre", CornerBodies.Tyre(on.Wheel, before, on.Outward_m));
        Links(DrawingRole.Before, before);
    }

    // What was measured on the body: a cross at each point, the arch's edge joined.
    private void Body()
    {
        SuspensionPart part = scene.Part;
        if (part.ArchEdge.Count > 1) _pen.Add(new DrawingPath(DrawingRole.Outline, "arch", [.. part.ArchEdge.Select(On)]));
        foreach (Point p in part.ArchEdge.Concat(part.Liner).Concat(part.Tower)) _pen.Cross("body", On(p), Cross_mm);
    }

    private void Wheel()
    {
        if (scene.Wheel is not { } on) return;
        RevolvedBody tyre = CornerBodies.Tyre(on.Wheel, scene.Here, on.Outward_m), rim = CornerBodies.Rim(on.Wheel, scene.Here, on.Outward_m);
        Outline(DrawingRole.Thin, "tyre", tyre);
        Outline(DrawingRole.Thin, "rim", rim);
        if (_from == Viewpoint.Side) return;
        Cut(DrawingRole.Rubber, tyre, DrawingFill.Rubber);
        Cut(DrawingRole.Outline, rim, DrawingFill.Paper);
        _pen.Line(DrawingRole.Centre, "axis", On(rim.Origin - 0.2 * rim.Axis), On(rim.Origin + 0.2 * rim.Axis));
    }

    private void Strut()
    {
        Point top = scene.Here.Strut.Bottom + scene.Here.Strut.Length_m * scene.Here.Strut.Axis;
        if (scene.Bodies is { } bodies)
        {
            Outline(DrawingRole.Outline, "strut", bodies.Strut(scene.Here), DrawingFill.Paper);
            Outline(DrawingRole.Rubber, "bellows", bodies.Bellows(scene.Here), DrawingFill.Rubber);
        }

        _pen.Line(DrawingRole.Centre, "axis", On(top + 0.05 * scene.Here.Strut.Axis), On(scene.Here.Strut.Bottom));
        _pen.Add(new DrawingCircle(DrawingRole.Outline, "link", On(top), Joint_mm, DrawingFill.Paper));
    }

    private void Links(DrawingRole role, LinkageState at)
    {
        foreach ((_, Point inner, Point outer) in at.Links)
        {
            _pen.Line(role, "link", On(inner), On(outer));
            foreach (Point end in (Point[])[inner, outer]) _pen.Add(new DrawingCircle(role, "link", On(end), Joint_mm, DrawingFill.Paper));
        }

        if (at.Steering is { } axis) _pen.Line(role == DrawingRole.Before ? role : DrawingRole.Centre, "kingpin", On(At(axis, at.ContactPoint.Z)), On(At(axis, at.WheelCentre.Z + 0.12)));
    }

    // What of the tyre lies below the road is pressed flat there.
    private void Ground()
    {
        double road = On(scene.Here.ContactPoint).Y;
        _pen.Add(new DrawingPath(DrawingRole.Outline, "ground",
            [new(_frame.Left - 1, road), new(_frame.Right + 1, road), new(_frame.Right + 1, _frame.Bottom - 1), new(_frame.Left - 1, _frame.Bottom - 1)], Closed: true, DrawingFill.Paper));
        if (scene.Before is { } before && On(before.ContactPoint).Y is var was) _pen.Line(DrawingRole.Before, "ground", new(_frame.Left, was), new(_frame.Right, was));
    }

    // The line square to the contact point's path meets the middle of the car in the roll centre.
    private void RollCentre()
    {
        if (_frame.Left > 0) return;
        (DrawingPoint here, string words) = RollCentre(scene.Here);
        _pen.Line(DrawingRole.Accent, "rollCentre", On(scene.Here.ContactPoint), here);
        _pen.Add(new DrawingCircle(DrawingRole.Accent, "rollCentre", here, Joint_mm, DrawingFill.Line));
        List<(DrawingRole, DrawingPoint, string)> labels = [(DrawingRole.Accent, here, $"roll centre {words} over the road")];
        if (scene.Before is { } before)
        {
            (DrawingPoint was, string old) = RollCentre(before);
            _pen.Add(new DrawingCircle(DrawingRole.Before, "rollCentre", was, Joint_mm));
            labels.Add((DrawingRole.Before, was, $"was {old} over it"));
        }

        _pen.Beside("rollCentre", labels, _frame);
    }

    private (DrawingPoint At, string Height) RollCentre(LinkageState state)
    {
        double height = state.RollCentreHeight_m;
        return (new(0, On(state.ContactPoint).Y + height * 1000), units.Text(Dimension.Length, height));
    }

    private void Camber() => OverTheTyre("camber", scene.Here.Camber_rad);

    private void Toe() => OverTheTyre("toe", scene.Here.Toe_rad);

    private void OverTheTyre(string what, double angle_rad)
    {
        DrawingPoint centre = On(scene.Here.WheelCentre);
        _pen.Over(DrawingRole.Accent, what, new(centre.X, centre.Y + TyreRadius_mm + 1.1 * text_mm), $"{what} {Degrees(angle_rad)}", _frame);
    }

    // In one another, the other's place lies behind the first's.
    private void Gaps() => _pen.Gaps(
        [.. scene.Gaps.Select(gap => (gap.Holds ? DrawingRole.Accent : DrawingRole.Miss, gap.Id, On(gap.Gap_m < 0 ? gap.To : gap.From), On(gap.Gap_m < 0 ? gap.From : gap.To), gap.Name, units.Text(Dimension.Length, gap.Gap_m)))], _frame);

    // Bellows, strut and wheel bulge; from above a strut is seen end on.
    private void Outline(DrawingRole role, string part, RevolvedBody body, DrawingFill fill = DrawingFill.None)
    {
        bool flank = _from != Viewpoint.Plan && part is "strut" or "bellows";
        _pen.Add(new DrawingPath(role, part, flank ? _from.Flank(body) : _from.Hull(body), Closed: true, fill));
    }

    // Its section above and below the axis, or ahead and behind.
    private void Cut(DrawingRole role, RevolvedBody body, DrawingFill fill)
    {
        Point out1 = (_from == Viewpoint.Plan ? new Point(1, 0, 0) : Point.Up).SquareTo(body.Axis).Unit();
        RevolvedProfile profile = body.Profile;
        foreach (double side in (double[])[1, -1])
            _pen.Add(new DrawingPath(role, role == DrawingRole.Outline ? "rim" : "tyre", [.. Enumerable.Range(0, profile.Along_m.Length - 1)
                .Select(k => On(body.Origin + profile.Along_m[k] * body.Axis + side * profile.Radius_m[k] * out1))], Closed: true, fill));
    }

    // From the suspension's points at rest alone, so that nothing shifts while the wheel moves.
    private DrawingBox FrameOf()
    {
        LinkageState rest = scene.Here.Linkage.Rest;
        double radius = TyreRadius_mm, reach = (scene.Wheel?.Wheel.WidestWidth_m ?? 0.2) * 500 + 60;
        DrawingPoint centre = On(rest.WheelCentre);
        IEnumerable<DrawingPoint> points = scene.Part.Points.Values.Concat(scene.Part.ArchEdge).Concat(scene.Part.Tower).Concat(scene.Part.Liner).Select(On);
        (double across, double up) = _from switch { Viewpoint.Front => (reach, radius), Viewpoint.Side => (radius, radius), _ => (reach, radius) };
        DrawingPoint[] all = [.. points, .. _from == Viewpoint.Plan ? Steered(reach - 60) : [], new(centre.X - across, centre.Y - up), new(centre.X + across, centre.Y + up)];
        double drop = _from == Viewpoint.Plan || scene.Before is null ? 0 : (scene.Part.LoweredBy_m ?? 0) * 1000;
        double left = _from == Viewpoint.Front && scene.Before is not null ? 0 : all.Min(p => p.X);
        if (scene.UpperHalf) return new(On(scene.Here.Strut.Bottom).X - 5 * Margin_mm, centre.Y - Margin_mm, all.Max(p => p.X) + 4 * Margin_mm, all.Max(p => p.Y) + Margin_mm);
        return new(left - Margin_mm, all.Min(p => p.Y) - Margin_mm - drop, all.Max(p => p.X) + Margin_mm, all.Max(p => p.Y) + Margin_mm + text_mm);
    }

    // The tyre's corners from above at either lock.
    private IEnumerable<DrawingPoint> Steered(double half_mm)
    {
        double rack = scene.Part.RackTravel_m ?? 0;
        foreach (double lock_m in (double[])[-rack, rack])
        {
            if (scene.Here.Linkage.At(0, lock_m).State is not { } state) continue;
            Point ahead = new Point(1, 0, 0).SquareTo(state.WheelAxis).Unit();
            foreach ((double along, double across) in ((double, double)[])[(1, 1), (1, -1), (-1, 1), (-1, -1)])
                yield return On(state.WheelCentre + along * TyreRadius_mm / 1000 * ahead + across * half_mm / 1000 * state.WheelAxis);
        }
    }

    private double TyreRadius_mm => (scene.Wheel?.Wheel.FreeRadius_m ?? scene.Part.WheelRadius_m) * 1000;

    private static Point At(SteeringAxis axis, double z) => axis.Through + (z - axis.Through.Z) / axis.Direction.Z * axis.Direction;

    private DrawingPoint On(Point p) => _from.On(p);

    private string FrontSummary() => $"The corner from ahead: wheel travel {units.Text(Dimension.Length, scene.Here.Travel_m)}, camber {Degrees(scene.Here.Camber_rad)}, "
        + $"roll centre {units.Text(Dimension.Length, scene.Here.RollCentreHeight_m)} over the road.";

    private string SideSummary() => scene.Here.Steering is { } axis
        ? $"The corner from its left side: caster {Degrees(axis.Caster_rad)}, trail {units.Text(Dimension.Length, axis.MechanicalTrail_m)}."
        : "The corner from its left side.";

    private string PlanSummary() => $"The corner from above: toe {Degrees(scene.Here.Toe_rad)}, rack {units.Text(Dimension.Length, scene.Here.Rack_m)}.";

    private static string Degrees(double angle_rad) => LinkageWords.Angle(angle_rad);
}
