using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// The plate of a lower mount as its machinist needs it: outline, holes on their centre lines and dimensioned from the strut's axis and the
/// lower datum, the tube and its clamp in thin lines, where brake hose and sensor are held. Every number is the kit's own.
/// </summary>
public sealed class BracketDrawing(Kit kit, AxleEnd end, LowerMount mount, DisplayUnits units)
{
    // In heights of a letter: between upright dimensions, to the first beside the clamp, and the room words take right of the plate.
    private const double Lane = 4.6, ClampLane = 3, Words = 9.5;

    private readonly double _left = Millimetres(mount.Plate.Least.X_m), _right = Millimetres(mount.Plate.Greatest.X_m), _top = Millimetres(mount.Plate.Greatest.Y_m);
    private readonly DrawingPoint[] _holes = [.. mount.Bracket.Holes.Select(At)];
    private readonly double _radius = Millimetres(mount.Bracket.HoleDiameter_m) / 2;

    /// <param name="text_mm">Size of the letters in mm of the part: what stands on the sheet times the scale it is drawn at.</param>
    public SheetDrawing With(double text_mm)
    {
        SectionPen pen = new() { Hatching = text_mm / 3 };
        SectionDimensioning lines = new(pen, units, text_mm, more: 1);
        Axes(pen, text_mm);
        if (mount.Clamp is { } clamp) Clamp(pen, lines, clamp, text_mm);
        pen.Add(new DrawingPath(DrawingRole.Outline, "plate", [new(_left, 0), new(_right, 0), new(_right, _top), new(_left, _top)], Closed: true));
        for (int n = 0; n < _holes.Length; n++) Hole(pen, n, text_mm);
        Place(pen, "hoseBracket", "hose", mount.HoseBracket, text_mm);
        Place(pen, "sensorBracket", "sensor", mount.SensorBracket, text_mm);
        double beside = Up(lines, text_mm), above = Above(lines, text_mm);
        return new()
        {
            Shapes = pen.Shapes,
            Dimensions = lines.Dimensions,
            Frame = new(LeftEdge(text_mm), -3 * text_mm, beside + 3 * text_mm, above + 1.5 * text_mm),
            TitleBlock = [.. Title()],
            Summary = Summary(),
        };
    }

    private void Axes(SectionPen pen, double text)
    {
        pen.Line(DrawingRole.Centre, "axis", 0, -2 * text, 0, _top + 2 * text);
        pen.Line(DrawingRole.Centre, "datum", Math.Min(0, -Tube) - text, 0, _right + text, 0);
    }

    private double Tube => Millimetres(mount.Clamp?.Diameter_m ?? 0) / 2;

    private double LeftEdge(double text) => mount.Clamp is null ? -3 * text : -Tube - (ClampLane + 3) * text;

    private void Clamp(SectionPen pen, SectionDimensioning lines, MountClamp clamp, double text)
    {
        double height = Millimetres(clamp.Height_m);
        pen.Add(new DrawingPath(DrawingRole.Thin, "clamp", [new(-Tube, 0), new(Tube, 0), new(Tube, height), new(-Tube, height)], Closed: true));
        lines.Across("clampDiameter", clamp.Diameter_m, Tube, 0, -1.5 * text, "Ø ");
        lines.Upright("clampHeight", clamp.Height_m, "", new(-Tube, 0), new(-Tube, height), -Tube - ClampLane * text, DrawingRole.Dimension);
    }

    private void Hole(SectionPen pen, int n, double text)
    {
        (DrawingPoint at, string part, double over) = (_holes[n], $"hole{n + 1}", _radius + text);
        double half = n == mount.SlottedHole ? Millimetres(mount.Bracket.Slot_m!.Value) / 2 - _radius : 0;
        pen.Add(half > 0 ? new DrawingSlot(DrawingRole.Outline, part, new(at.X - half, at.Y), new(at.X + half, at.Y), _radius)
            : new DrawingCircle(DrawingRole.Outline, part, at, _radius));
        pen.Line(DrawingRole.Centre, part, at.X - half - over, at.Y, at.X + half + over, at.Y);
        pen.Line(DrawingRole.Centre, part, at.X, at.Y - over, at.X, at.Y + over);
    }

    private void Place(SectionPen pen, string part, string what, PlanePoint? place, double text)
    {
        if (place is not { } there) return;
        (DrawingPoint at, double half) = (At(there), text / 2);
        pen.Add(new DrawingStrokes(DrawingRole.Thin, part, [(new(at.X - half, at.Y), new(at.X + half, at.Y)), (new(at.X, at.Y - half), new(at.X, at.Y + half))]));
        pen.Line(DrawingRole.Dimension, part, at.X + text, at.Y, _right + text, at.Y);
        pen.Add(new DrawingText(DrawingRole.Thin, part, new(_right + 1.5 * text, at.Y), $"{what} {Number(there.X_m)} / {Number(there.Y_m)}", TextAnchor.Start, 0.8 * text));
    }

    // Each place once, nearest first, in lanes outward; where the last lane is.
    private double Up(SectionDimensioning lines, double text)
    {
        double x = _right + (Words + 2 - Lane) * text;
        foreach ((int n, PlanePoint hole) in mount.Bracket.Holes.Index().DistinctBy(h => h.Item.Y_m).OrderBy(h => h.Item.Y_m))
            lines.Upright($"holeY{n + 1}", hole.Y_m, "", new(_right, 0), _holes[n], x += Lane * text, DrawingRole.Dimension);
        lines.Upright("height", mount.Plate.Greatest.Y_m, "", new(_right, 0), new(_right, _top), x += Lane * text, DrawingRole.Dimension);
        return x;
    }

    private double Above(SectionDimensioning lines, double text)
    {
        double y = _top;
        if (mount.SlottedHole is { } slotted && mount.Bracket.Slot_m is { } slot)
        {
            double half = Millimetres(slot) / 2;
            lines.Level("slot", slot, new(_holes[slotted].X - half, _holes[slotted].Y), new(_holes[slotted].X + half, _holes[slotted].Y), y += 2 * text);
        }

        lines.Level("width", mount.Plate.Greatest.X_m - mount.Plate.Least.X_m, new(_left, _top), new(_right, _top), y += 2 * text);
        foreach ((int n, PlanePoint hole) in mount.Bracket.Holes.Index().OrderByDescending(h => h.Item.Y_m).DistinctBy(h => h.Item.X_m).OrderBy(h => Math.Abs(h.Item.X_m)))
            lines.Level($"holeX{n + 1}", hole.X_m, new(0, _top), _holes[n], y += 2 * text);
        int lowest = mount.Bracket.Holes.Index().MinBy(hole => hole.Item.Y_m).Index;
        lines.Hole("holeDiameter", mount.Bracket.HoleDiameter_m, _holes[lowest], _radius, _right + text, $"{_holes.Length} × Ø ");
        return y;
    }

    private IEnumerable<TitleRow> Title()
    {
        yield return new("part", $"lower mount, {Names.Of(end)}: plate, {mount.Bolts.ShearPlanes} off each strut");
        yield return new("kit", kit.Name);
        yield return new("car", kit.Car.Name);
        yield return new("plate", $"{Number(mount.Bracket.Thickness_m)} thick{(mount.Bracket is { Width_m: null } or { Height_m: null } ? "; outline drawn round the holes, not given" : "")}");
        yield return new("holes", $"within {Number(mount.Bracket.Position_m)} of their places, any way; for {mount.Bolts.Bolt.Size}");
        if (mount.Clamp is { } clamp) yield return new("clamp", $"{clamp.Bolts} × {clamp.Bolt.Size} {clamp.Bolt.StrengthClass} across its slot");
        yield return new("else", "ISO 2768-mK");
        yield return new("state", "not released: a calculation's drawing, not an approval");
        yield return new("lengths", units.Symbol(Dimension.Length));
    }

    private string Summary() => $"Plate of the lower mount, {Number(mount.Bracket.Thickness_m)} {units.Symbol(Dimension.Length)} thick, with "
        + string.Join(" and ", mount.Bracket.Holes.Select(hole => $"a hole at {Number(hole.X_m)} outward and {Number(hole.Y_m)} up"))
        + $", Ø {Number(mount.Bracket.HoleDiameter_m)}, from the strut's axis and the lower datum.";

    private string Number(double si) => units.Number(Dimension.Length, si, 1);

    private static DrawingPoint At(PlanePoint place) => new(Millimetres(place.X_m), Millimetres(place.Y_m));

    private static double Millimetres(double si) => si * 1000;
}
