using System.Globalization;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>One thing worth knowing about an answer: what it is about, and a sentence.</summary>
public sealed record Note(string About, string Text);

/// <summary>What stands behind an answer: assumptions made, what the data could not show, what was left out.</summary>
public static class Notes
{
    /// <summary>Of a spring's data alone.</summary>
    public static IEnumerable<Note> Of(AirSpringFit fit, DisplayUnits units)
    {
        if (fit.RegulatedRows > 0)
            yield return new("data", Text($"{fit.RegulatedRows} regulated rows in {fit.SweepCount} sweeps at {fit.PressureLevels} levels of gauge pressure; one reading scatters by {units.Text(Dimension.Force, fit.ReadingDeviation_N)} about its sweep."));
        if (fit.BandFromBlocks)
            yield return new("band", "Fewer than four sweeps: the band is resampled from blocks of rows and likely too narrow. Repeat the sweeps.");
        if (fit.RegulatedRows > 0 && !fit.HasBand)
            yield return new("band", "The rows carry no scatter, so there is no band.");
        switch (fit.VolumeSource)
        {
            case VolumeSource.MeasuredAnchor:
                yield return new("volume", "Volume was measured at few heights; between them ∂V/∂h = ∂F/∂pg of the elastic wall is assumed.");
                break;
            case VolumeSource.SealedSweeps:
                yield return new("volume", "No volume was measured; its constant follows from the sealed sweeps, its shape from ∂V/∂h = ∂F/∂pg of the elastic wall.");
                break;
        }

        if (fit.RegulatedRows > 0 && fit.PressureLevels == 1)
            yield return new("gauge pressure", "Only one level of gauge pressure was tested: the area is taken as the same at every other, and dV/dh = Ae as of a wall that does not stretch.");
        else if (fit.Spring.DependsOnGaugePressure && !fit.StretchMeasured)
            yield return new("volume", "How far the wall stretches at constant height was not measured; the least that fits the area's dependence on gauge pressure is assumed.");
        if (fit.RegulatedRows > 0)
            yield return Direction(fit, units);
        foreach (SetAsideRow row in fit.SetAside)
            yield return new("set aside", Text($"Row {row.Line} lies {units.Change(Dimension.Force, row.Miss_N, 0)} off its sweep, {Math.Abs(row.Deviations):0} times the scatter: kept out of the curve. Look at it."));
        if (fit.Exponent is { } n)
            yield return new("exponent", n.IsPossible ? Text($"Fast sealed sweeps show n = {n.Value:0.000} ({n.Low:0.000} to {n.High:0.000}, {n.Sweeps} sweeps).")
                : Text($"Fast sealed sweeps show n = {n.Value:0.000} ({n.Low:0.000} to {n.High:0.000}), which air cannot do (1 to 1.4): it is not used. The volumes are off; measure them at two gauge pressures."));
        if (fit.Sealed is { } check)
            yield return new("sealed rows", Text($"{check.Rows} sealed rows lie within {units.Text(Dimension.Force, check.RootMeanSquare_N)} rms of the regulated curve (worst {units.Change(Dimension.Force, check.Worst_N, 0)}); they are not part of it."));
        foreach (SmallStroke s in fit.SmallStrokes)
            yield return new("small strokes", Text($"At ±{s.Amplitude_m * 1000:0.##} mm about {units.Text(Dimension.Length, s.Height_m)} the spring is {s.Ratio:0.00} times as stiff as its curve says: {units.Text(Dimension.Rate, s.MeasuredRate_N_per_m)}."));
    }

    /// <summary>Of a ride: what was assumed, where the data end, and what a corner leaves out.</summary>
    public static IEnumerable<Note> Of(RideResult result)
    {
        if (result.Detail is { } d)
        {
            if (d.OutsideMeasuredSpeed > 0)
                yield return new("data", Text($"For {100 * d.OutsideMeasuredSpeed:0.##} % of the time the damper moves faster than its dyno data reach; there its force goes on straight."));
            if (d.OutsideMeasuredHeight > 0)
                yield return new("data", Text($"For {100 * d.OutsideMeasuredHeight:0.##} % of the time the wheel is past the travel the spring's data and the strut's ends leave; there the spring's force stays what it is at the end."));
        }

        if (result.Response is { } response)
            foreach (Note note in new ResponseWords(response, DisplayUnits.Metric).Notes()) yield return note;
        if (result.Strut.Case is { } strut && result.Setting.GaugePressure_Pa > strut.Part.MaxGaugePressure_Pa)
            yield return new("gauge pressure", "It takes more than the spring's greatest gauge pressure: driven here on paper only, not to be set.");
        if (result.Strut.Case is not null)
            yield return new("air", "Valve shut; the air gives heat to the wall so fast that its exponent at body frequency is the one in service.");
        if (result.Strut.HasEnds)
            yield return new("ends", "Past its solid length the stop is steel on steel, 2000 N/mm; topping out meets 400 N/mm. Common practice, no source.");
        if (result.Strut.DamperTemperature_K is { } warm) yield return DynoWords.At(warm);
        if (result.Strut.Friction_N <= 0)
            yield return new("friction", "None beyond what the damper's dyno data hold; small bumps will feel harsher than this.");
        if (result.Neighbours.Count > 0)
            yield return new("loads", "Other loads are driven at the same height, on the gauge pressure that takes.");
        yield return new("corner", "One corner alone: no roll, pitch, seat, brakes, bar or second axle, and a tyre that "
            + (result.Road.IsRandom ? "touches the road in a point." : "feels the mean height under a contact patch of 100 mm."));
    }

    private static Note Direction(AirSpringFit fit, DisplayUnits units)
    {
        double height = (fit.Spring.LeastHeight_m + fit.Spring.GreatestHeight_m) / 2;
        double gauge = (fit.LeastGaugePressure_Pa + fit.GreatestGaugePressure_Pa) / 2;
        return new("direction", fit.Friction_N(height, gauge) is { } friction
            ? $"Compressing and extending lie {units.Text(Dimension.Force, friction)} to either side of the curve at {units.Text(Dimension.Length, height)}."
            : "Only one direction was swept, or the rows do not say which: the curve carries the wall's friction to one side.");
    }

    /// <summary>Of an installed-height answer: the spring's notes and the strut's.</summary>
    public static IEnumerable<Note> Of(InstalledHeightResult result, DisplayUnits units)
    {
        StrutCase strut = result.Case;
        foreach (Note note in LeftOut(strut)) yield return note;
        if (result.Recommended is { WithinTestedPressure: false } s && strut.Fit.PressureLevels > 1)
            yield return new("gauge pressure", Text($"{units.Text(Dimension.GaugePressure, s.GaugePressure_Pa)} lies outside the gauge pressures that were tested ({units.Number(Dimension.GaugePressure, strut.Fit.LeastGaugePressure_Pa)} to {units.Text(Dimension.GaugePressure, strut.Fit.GreatestGaugePressure_Pa)})."));
        if (strut.Design.Damper is TelescopicDamperPart { GasGaugePressure_Pa: null or 0 })
            yield return new("gas force", "The damper's gas is not given and taken as none; leaving it out has moved an answer by about 9 %.");
        if (!strut.SpringRatio.Covers(0.02) || !strut.SpringRatio.Covers(-0.02))
            yield return new("motion ratio", "The ratio table ends within 20 mm of drive height; its slope there is poorly known.");
        foreach (Note note in Of(strut.Fit, units)) yield return note;
    }

    private static IEnumerable<Note> LeftOut(StrutCase strut)
    {
        if (strut.Design.DisplacedVolume_m3 is null)
            yield return new("displacedVolume", "Rod, stop and damper head inside the bellows are not given and taken as none; 80 to 120 cm³ moves the rate by 8 to 14 %.");
        if (strut.Design.SealAreaInAir_m2 is null)
            yield return new("sealAreaInAir", "The area of the seal that slides in the spring's air is not given and taken as none; a 14 mm rod takes 1.5 cm² from spring area and dV/dh.");
        if (strut.Design.LineVolume_m3 is null)
            yield return new("lineVolume", "The line to the closed valve is not given and taken as none; more volume makes the spring softer.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
