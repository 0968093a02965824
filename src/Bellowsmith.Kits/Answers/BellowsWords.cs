using System.Globalization;
using Bellowsmith.Kits.Studies.BellowsShape;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a bellows' shape.</summary>
public sealed class BellowsWords(BellowsShapeResult result, DisplayUnits units)
{
    public string Answer()
    {
        if (result.Shape is not { } s) return Reason();
        return $"At {Length(result.Height_m)} it is {Length(s.OuterDiameter_m)} wide, with {units.Text(Dimension.Area, s.EffectiveArea_m2)} "
            + $"of effective area and {units.Text(Dimension.Volume, s.Volume_m3)} of air.";
    }

    /// <summary>What is worth knowing about how the wall lies, and what the shape leaves out.</summary>
    public IEnumerable<Note> Notes()
    {
        if (result.Shape is { } s)
        {
            if (s.EffectiveArea_m2 <= 0)
                yield return new("force", "Gauge pressure pulls the plates together here: as a spring it is over-extended.");
            if (s.Overhang_m > 0)
                yield return new("plates", $"The wall hangs {Length(s.Overhang_m)} past the plane of its bead; see that nothing stands there.");
            if (s.PlateContactRadius_m > result.Mould.BeadRadius_m)
                yield return new("plates", $"The wall lies on the plates out to a radius of {Length(s.PlateContactRadius_m)}.");
            if (s.GirdleContactRadius_m > result.Bellows.GirdleRadius_m)
                yield return new("girdle", $"Neighbouring convolutions press on each other out to a radius of {Length(s.GirdleContactRadius_m)}.");
        }

        if (result.Calibration is { } c)
            yield return new("load frame", Calibrated(c));
        yield return new("model", "A thin wall of cords that do not stretch; height is bead to bead. A load-frame test of the spring comes first.");
    }

    private string Calibrated(MouldCalibration c) => string.Create(
        CultureInfo.InvariantCulture,
        $"The mould alone misses the measured area by {c.DifferenceBefore:0.0 %} rms; with cords at {c.After.CordAngleAtBead_rad * 180 / Math.PI:0.0}° and {Length(c.After.CordLength_m)} long it misses {c.DifferenceAfter:0.0 %}. The measured area and volume win; the shape is that of these cords.");

    private string Reason() => result.Limit switch
    {
        CordLimit.PlatesMeet => $"At {Length(result.Height_m)} the end plates meet: there is no room for the wall.",
        CordLimit.Folded => $"At {Length(result.Height_m)} the wall would fold inwards over its bead: it stands from {Length(result.Bellows.LeastHeight_m)} on.",
        CordLimit.OverExtended => $"At {Length(result.Height_m)} the bellows is over-extended: its cords are taut at {Length(result.Bellows.GreatestHeight_m)}.",
        _ => "These cords take no shape at any height: they are too short to bulge beyond bead and girdle, or lie along the circle there.",
    };

    private string Length(double length_m) => units.Text(Dimension.Length, length_m);
}
