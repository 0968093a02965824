using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// The plate of a lower mount as its machinist needs it: outline, holes on their centre lines and dimensioned from the strut's axis and the
/// lower datum, the tube and its clamp in thin lines, where brake hose and sensor are held. Every number is the kit's own.
/// </summary>
public sealed class BracketDrawing(Kit kit, AxleEnd end, LowerMount mount, DisplayUnits units)
{
    // In heights of a letter: between upright dimensions, and to the first beside the clamp.
    private const double Lane = 4.6, ClampLane = 3;

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
        (double words, double lowest, double highest) = Beside(pen, lines, text_mm);
        double right = Up(lines, words + 2.5 * text_mm, text_mm), above = Above(lines, Math.Max(Math.Max(_top, ClampTop), highest + text_mm / 2), text_mm);
        return new()
        {
            Shapes = pen.Shapes,
            Dimensions = lines.Dimensions,
            Frame = new(LeftEdge(text_mm), Math.Min(-4, lowest / text_mm - 1) * text_mm, right + 3 * text_mm, above + 1.5 * text_mm),
            TitleBlock = [.. new BracketTitle(kit, end, mount, units).Rows()],
            Summary = Summary(),
        };
    }

    private void Axes(SectionPen pen, double text)
    {
        pen.Line(DrawingRole.Centre, "axis", 0, -2 * text, 0, _top + 2 * text);
        pen.Line(DrawingRole.Centre, "datum", Math.Min(0, -Tube) - text, 0, _right + text, 0);
    }

    private double Tube => Millimetres(mount.Clamp?.Diameter_m ?? 0) / 2;

    private double ClampTop => Millimetres(mount.Clamp?.Height_m ?? 0);

    private double LeftEdge(double text) => Math.Min(MarkedLeft - 2 * text, mount.Clamp is null ? -3 * text : -Tube - (ClampLane + 3) * text);

    private double MarkedLeft => Millimetres(new[] { mount.HoseBracket, mount.SensorBracket }.Min(place => place?.X_m) ?? 0);

    private void Clamp(SectionPen pen, SectionDimensioning lines, MountClamp clamp, double text)
    {
        double height = Millimetres(clamp.Height_m);
        pen.Add(new DrawingPath(DrawingRole.Thin, "clamp", [new(-Tube, 0), new(Tube, 0), new(Tube, height), new(-Tube, height)], Closed: true));
        lines.Across("clampDiameter", clamp.Diameter_m, Tube, 0, -1.5 * text, "Ø ");
        lines.Upright("clampHeight", clamp.Height_m, "", new(-Tube, 0), new(-Tube, height), -Tube - ClampLane * text, DrawingRole.Dimension, below: true);
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

    private static void Mark(SectionPen pen, BracketNote note, double text)
    {
        (DrawingPoint at, double half) = (note.At, text / 2);
        pen.Add(new DrawingStrokes(DrawingRole.Thin, note.Part, [(new(at.X - half, at.Y), new(at.X + half, at.Y)), (new(at.X, at.Y - half), new(at.X, at.Y + half))]));
    }

    private IEnumerable<BracketNote> Notes(double text)
    {
        BracketPlate plate = mount.Bracket;
        int[] round = [.. Enumerable.Range(0, _holes.Length).Where(n => n != mount.SlottedHole)];
        DrawingPoint named = round.Select(n => _holes[n]).OrderByDescending(at => at.X).ThenBy(at => at.Y).First();
        yield return new("holeDiameter", $"{(round.Length > 1 ? $"{round.Length} × " : "")}Ø {Number(plate.HoleDiameter_m)}", text, named, _radius, plate.HoleDiameter_m, _radius);
        if (mount.SlottedHole is { } slotted && plate.Slot_m is { } slot)
            yield return new("slot", $"slot {Number(plate.HoleDiameter_m)} × {Number(slot)}", text, _holes[slotted], _radius, slot, Millimetres(slot) / 2);
        if (mount.HoseBracket is { } hose) yield return Place("hoseBracket", "hose", hose);
        if (mount.SensorBracket is { } sensor) yield return Place("sensorBracket", "sensor", sensor);

        BracketNote Place(string part, string what, PlanePoint at) => new(part, $"{what} {Number(at.X_m)} / {Number(at.Y_m)}", 0.8 * text, At(at), text);
    }

    // In one column beside the plate and what is marked right of it; its right edge and the height it takes.
    private (double Right, double Bottom, double Top) Beside(SectionPen pen, SectionDimensioning lines, double text)
    {
        BracketNote[] notes = [.. Notes(text).OrderBy(note => note.Wanted)];
        double x = notes.Max(note => Math.Max(note.At.X, _right)) + text + lines.Beyond, right = x;
        double[] heights = [.. BracketNote.Heights(notes, [0, _top, .. _holes.Select(hole => hole.Y)], text)];
        foreach ((BracketNote note, double y) in notes.Zip(heights))
        {
            DrawingBox box = lines.Leader(note.Value_m is null ? DrawingRole.Thin : DrawingRole.Dimension, note.Part, note.Words, note.Size, note.Tip, note.Radius, new(x, y));
            right = Math.Max(right, box.Right);
            if (note.Value_m is { } value) lines.Measured(note.Part, value, note.Words, new(note.At.X - note.Half, note.At.Y), new(note.At.X + note.Half, note.At.Y), box);
            else Mark(pen, note, text);
        }

        return (right, Math.Min(heights[0], notes.Min(note => note.At.Y)), Math.Max(heights[^1], notes.Max(note => note.At.Y)));
    }

    // Each place once, nearest first, in lanes outward from x; where the last lane is.
    private double Up(SectionDimensioning lines, double x, double text)
    {
        foreach ((int n, PlanePoint hole) in mount.Bracket.Holes.Index().DistinctBy(h => h.Item.Y_m).OrderBy(h => h.Item.Y_m))
        {
            lines.Upright($"holeY{n + 1}", hole.Y_m, "", new(_right, 0), _holes[n], x, DrawingRole.Dimension, below: true);
            x += Lane * text;
        }

        lines.Upright("height", mount.Plate.Greatest.Y_m, "", new(_right, 0), new(_right, _top), x, DrawingRole.Dimension, below: true);
        return x;
    }

    // In lanes upward from y, each clear of what rises to those over it; where the last lane is.
    private double Above(SectionDimensioning lines, double y, double text)
    {
        (string Id, double Value_m, DrawingPoint From, DrawingPoint To)[] lanes =
        [
            ("width", mount.Plate.Greatest.X_m - mount.Plate.Least.X_m, new(_left, _top), new(_right, _top)),
            .. mount.Bracket.Holes.Index().OrderByDescending(h => h.Item.Y_m).DistinctBy(h => h.Item.X_m).OrderBy(h => Math.Abs(h.Item.X_m))
                .Select(h => ($"holeX{h.Index + 1}", h.Item.X_m, new DrawingPoint(0, _top), _holes[h.Index])),
        ];
        foreach ((int k, (string id, double value, DrawingPoint from, DrawingPoint to)) in lanes.Index())
            lines.Level(id, value, from, to, y += 2 * text, [.. lanes.Skip(k).SelectMany(lane => new[] { lane.From.X, lane.To.X })]);
        return y;
    }

    private string Summary() => $"Plate of the lower mount, {Number(mount.Bracket.Thickness_m)} {units.Symbol(Dimension.Length)} thick, with "
        + string.Join(" and ", mount.Bracket.Holes.Select((hole, n) => $"a {(n == mount.SlottedHole ? $"slot {Number(mount.Bracket.Slot_m!.Value)} long" : "hole")} at {Number(hole.X_m)} outward and {Number(hole.Y_m)} up"))
        + $", {Number(mount.Bracket.HoleDiameter_m)} wide, from the strut's axis and the lower datum.";

    private string Number(double si) => units.Number(Dimension.Length, si, 1);

    private static DrawingPoint At(PlanePoint place) => new(Millimetres(place.X_m), Millimetres(place.Y_m));

    private static double Millimetres(double si) => si * 1000;
}
