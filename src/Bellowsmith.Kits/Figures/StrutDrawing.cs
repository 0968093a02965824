using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Bodies;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// Draws one strut in section at any installed height. What does not depend on the height is settled once, so that a page can
/// ask again while a handle is dragged.
/// </summary>
public sealed class StrutDrawing
{
    private readonly StrutCase _strut;
    private readonly DisplayUnits _units;
    private readonly string _kit;
    private readonly double _text, _widest;
    private readonly BellowsWall _wall;

    /// <param name="strut">The strut under its load.</param>
    /// <param name="kit">Name of the kit, for the title block.</param>
    /// <param name="units">Units of the dimensions.</param>
    /// <param name="textHeight_mm">
    /// Size of the dimensions' letters in mm of the strut: what stands on the sheet times the scale it is drawn at.
    /// </param>
    public StrutDrawing(StrutCase strut, string kit, DisplayUnits units, double textHeight_mm = 9)
    {
        (_strut, _kit, _units, _text) = (strut, kit, units, textHeight_mm);
        _wall = new BellowsWall(strut, 2 * StrutLayout.PlateOf_mm(strut));
        _widest = Math.Max(_wall.OuterDiameter_mm(strut.LeastHeight_m * 1000, strut.GaugePressure_Pa(strut.LeastHeight_m)), (strut.Part.MaxDiameter_m ?? 0) * 1000) / 2;
    }

    public StrutSection At(double height_m)
    {
        StrutLayout at = new(_strut, height_m);
        SectionPen pen = new() { Hatching = _text / 3 };
        StrutParts parts = new(pen, at, _wall);
        parts.Draw(_strut.Design.Thread is not null, _strut.Damper is not null);
        pen.Line(DrawingRole.Centre, "axis", 0, at.Datum - _text, 0, at.Mount + 2 * _text);
        SectionDimensioning dimensioning = new(pen, _units, _text);
        double lane = Dimension(dimensioning, at);
        return new StrutSection
        {
            Shapes = pen.Shapes,
            Dimensions = dimensioning.Dimensions,
            Handles = [.. Handles(at)],
            Frame = Frame(lane),
            TitleBlock = Title(height_m),
            Summary = Words(at),
        };
    }

    private double RightLane => _widest + 2.2 * _text;

    private double LeftLane => -_widest - 2 * _text;

    private double ThreadLane(StrutLayout at) => -at.Body - StrutParts.LockRing - 2 * _text;

    // The lanes keep clear of the widest bellows, so that they stand still while the height changes.
    private double Dimension(SectionDimensioning lines, StrutLayout at)
    {
        double plate = _wall.RingRadius_mm, outer = RightLane + 2 * lines.HalfWidth("spring") + lines.Beyond + 0.8 * _text;
        lines.Upright("height", at.Height_mm / 1000, "spring", new(plate + 4, at.LowerPlate), new(plate + 4, at.UpperPlate), RightLane, DrawingRole.Accent);
        if (at.StrutLength_m is { } strut)
            lines.Upright("strutLength", strut, "strut", new(at.Body + 20, at.Datum), new(plate + 28, at.Mount), outer, DrawingRole.Dimension);
        if (at.StopGap_m is { } gap && at.StopEnd is { } end)
            lines.Upright("stopGap", gap, gap < 0 ? "squeezed" : "stop gap", new(-at.Body / 2, at.HeadTop),
                new(-at.Rod - 6, gap < 0 ? at.HeadTop - gap * 1000 : end), LeftLane, DrawingRole.Dimension);
        if (at.Exposed_m is { } exposed)
            lines.Upright("exposedThread", exposed, "thread exposed", new(-at.Body - StrutParts.LockRing, at.SleeveTop), new(-at.Body, at.ThreadEnd),
                ThreadLane(at), DrawingRole.Dimension, beside: true);
        if (at.DamperLength_m is { } damper)
            lines.Upright("damperLength", damper, "damper", new(-at.Body, at.DamperBottom), new(-at.Rod, at.Mount), -outer, DrawingRole.Dimension);
        double diameter = _wall.OuterDiameter_mm(at.Height_mm, at.GaugePressure_Pa);
        double crown = (at.UpperPlate + at.LowerPlate) / 2 + (_wall.Convolutions - 1) * (at.Height_mm - 2 * at.Plate_mm) / _wall.Convolutions / 2;
        lines.Across("outerDiameter", diameter / 1000, diameter / 2, crown, at.UpperPlate + 1.5 * _text, "≈ Ø ");
        return outer + lines.HalfWidth("damper");
    }

    private IEnumerable<SectionHandle> Handles(StrutLayout at)
    {
        yield return new SectionHandle(
            "height", new(RightLane, at.LowerPlate), at.Height_mm / 1000, _strut.LeastHeight_m, _strut.GreatestHeight_m, -0.001);
        if (at.Exposed_m is { } exposed && _strut.Design.Thread is { } thread)
            yield return new SectionHandle("thread", new(ThreadLane(at), at.ThreadEnd), exposed, thread.Least_m, thread.Greatest_m, 0.001);
    }

    private DrawingBox Frame(double side)
    {
        StrutLayout low = new(_strut, _strut.GreatestHeight_m), high = new(_strut, _strut.LeastHeight_m);
        double bottom = Math.Min(Math.Min(low.Datum, high.Datum), low.DamperBottom - 10);
        return new DrawingBox(-side - _text / 2, bottom - 1.5 * _text, side + _text / 2, low.Mount + 2.5 * _text);
    }

    private TitleRow[] Title(double height_m) =>
    [
        new("kit", $"{_kit}, {Names.Of(_strut.End)}"),
        new("spring", _strut.Part.Name),
        new("section at", $"{_units.Text(Units.Dimension.Length, height_m)}, {_strut.Load}"),
        new("lengths", _units.Symbol(Units.Dimension.Length), Beside: true),
    ];

    private string Words(StrutLayout at)
    {
        string text = $"The strut in section: spring height {Length(at.Height_mm / 1000)}, outer diameter about {Length(_wall.OuterDiameter_mm(at.Height_mm, at.GaugePressure_Pa) / 1000)}";
        if (at.StopGap_m is { } gap) text += gap < 0 ? $", the stop squeezed by {Length(-gap)}" : $", {Length(gap)} to the stop";
        if (at.DamperLength_m is { } damper) text += $", damper {Length(damper)} long";
        if (at.Exposed_m is { } exposed) text += $", {Length(exposed)} of thread exposed";
        return text + (at.StrutLength_m is { } strut ? $", strut {Length(strut)} from mount face to lower datum." : ".");
    }

    private string Length(double si) => _units.Text(Units.Dimension.Length, si);
}
