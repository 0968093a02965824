using System.Globalization;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of what a dyno says of a damper.</summary>
public sealed class DynoWords(DynoResult result, DisplayUnits units)
{
    /// <summary>What was measured; where the click asked for lies outside, which there are.</summary>
    public string Answer()
    {
        IReadOnlyList<double> clicks = result.Damper.Clicks;
        string span = clicks.Count == 1 ? Text($"click {clicks[0]:0}") : Text($"{clicks.Count} clicks from {clicks[0]:0} to {clicks[^1]:0}, counted from closed,");
        string reach = $"to {Speed(result.Damper.GreatestRebound_m_per_s)} in rebound and {Speed(result.Damper.GreatestCompression_m_per_s)} in compression";
        return result.Clicks.Count == 0
            ? Text($"That click was not measured. The dyno measured {span} {reach}.")
            : Text($"The dyno measured {span} {reach}.{Spread()}");
    }

    /// <summary>The greatest difference to the other unit; empty without one.</summary>
    public string Compared()
    {
        if (result.Other is not { } other) return "";
        if (result.Differences.Count == 0) return $"{other.Name} shares no click and published speed with it.";
        DynoDifference worst = result.Differences.MaxBy(d => Math.Abs(d.Share ?? 0))!;
        return Text($"{other.Name} differs most at click {worst.Click:0} and {Speed(Math.Abs(worst.Velocity_m_per_s))} in {Stroke(worst.Velocity_m_per_s)}: {Force(worst.OtherForce_N)} against {Force(worst.Force_N)}, {Percent(worst.Share)}.");
    }

    public IEnumerable<Note> Notes()
    {
        foreach (Note note in Notes(result.Fit, result.Part.DynoFile ?? "")) yield return note;
        if (result.Fit.Repeatability_N is { } deviation)
            yield return new("repeatability", Text($"Repeated runs at one click and speed scatter by {Force(deviation)} (one standard deviation, {result.Fit.RepeatabilityDegrees} degrees of freedom).{(result.Fit.Temperature is null ? "" : " What warmth does stands in it.")}"));
        if (result.Fit.GasForce_N is { } gas) yield return new("gas force", Gas(gas));
        if (result.Fit.Friction is { } friction)
            yield return new("friction", Text($"The straight line through the two slowest speeds of the gentlest click meets zero speed at {Force(friction.Force_N)}. {Creep(friction.SlowestSpeed_m_per_s)}"));
        if (result.Fit.Loops.Count > 0) yield return Hysteresis();
        if (result.Clicks.SelectMany(click => click.Forces).Select(force => force.Asymmetry).OfType<double>().ToArray() is { Length: > 0 } asymmetry)
            yield return new("asymmetry", Text($"Rebound is {asymmetry.Min():0.0} to {asymmetry.Max():0.0} times compression."));
        if (result.Temperatures is var (least, greatest))
            yield return new("temperature", Text($"Measured from {least - 273.15:0} to {greatest - 273.15:0} °C{Warmth(greatest - least)}"));
    }

    /// <summary>That forces were brought to a temperature.</summary>
    public static Note At(double temperature_K) =>
        new("temperature", Text($"The damper's forces are brought to {temperature_K - 273.15:0.#} °C by what its dyno runs show of temperature, every reading from its own."));

    /// <summary>What stands behind a damper's curves: left-out rows, clicks in between, repeatability missing.</summary>
    public static IEnumerable<Note> Notes(DamperFit fit, string file)
    {
        foreach (DynoLeftOut left in fit.LeftOut)
        {
            Fault fault = DynoFaults.Of(file, left);
            yield return new("left out", $"{char.ToUpperInvariant(fault.Where[0])}{fault.Where[1..]}: {fault.Found}. {fault.Fix}");
        }

        if (fit.MissingClicks.Count > 0)
            yield return new("clicks", Text($"Not measured, or left out: {string.Join(", ", fit.MissingClicks)}. Between measured clicks the force is interpolated straight at equal velocity."));
        if (fit.Damper is { } damper && damper.Clicks.All(click => StiffInCompression(damper, click)))
            yield return new("sign", "Compression resists more than rebound at every click, which is rare in a road damper: check dynoSign, or the file's directions.");
        if (fit.Repeatability_N is null)
            yield return new("repeatability", "Nothing was run twice, so nothing is known of repeatability: run some clicks two or three times.");
    }

    private static bool StiffInCompression(Damper damper, double click)
    {
        double speed = Math.Min(damper.GreatestRebound_m_per_s, damper.GreatestCompression_m_per_s);
        return -damper.Force_N(click, -speed) > damper.Force_N(click, speed);
    }

    private string Spread()
    {
        DynoForce[] forces = [.. result.Clicks.Select(click => click.Forces.FirstOrDefault(force => force.Speed_m_per_s == 0.13)).OfType<DynoForce>()
            .Where(force => force is { Rebound_N: not null, Compression_N: not null })];
        return forces.Length < 2 ? "" : Text($" At {Speed(0.13)} rebound spans {Number(forces.Min(f => f.Rebound_N))} to {Force(forces.Max(f => f.Rebound_N)!.Value)}, compression {Number(forces.Min(f => f.Compression_N))} to {Force(forces.Max(f => f.Compression_N)!.Value)}.");
    }

    private string Gas(double gas_N)
    {
        string document = result.Part is { GasGaugePressure_Pa: { } gauge, RodDiameter_m: var rod }
            ? $" The document's charge makes {Force(Math.PI / 4 * rod * rod * gauge)} at the longest length." : "";
        string sign = gas_N < 0 ? " It pulls the rod in, which gas cannot do: check dynoSign and the cell's zero." : "";
        return $"{Force(gas_N)} taken out of the readings as gas force, + pushing the rod out.{document}{sign}";
    }

    private string Warmth(double span_K)
    {
        if (result.Fit.Temperature is not { } law)
        {
            string why = span_K < ForceByTemperature.LeastSpan_K ? Text($", {span_K:0.#} K: too narrow") : ", but no click and speed over 10 K or more: too little";
            return $"{why} to say what warmth does to the force. Run one click cold, at least 10 K warmer and cold again.";
        }

        (double slope, double half) = (100 * law.Slope_per_K, 100 * law.HalfInterval_per_K);
        string mixed = law.MixedWithRuns ? " Temperature only went one way from run to run, so what else drifted with the runs stands in it too: run the damper cold once more." : "";
        string shown = Math.Abs(slope) > half ? "" : " That is not shown to differ from none.";
        return Text($": force changes by {slope:+0.000;−0.000} % a kelvin ({slope - half:+0.000;−0.000} to {slope + half:+0.000;−0.000}, 95 %), known from {law.Least_K - 273.15:0} to {law.Greatest_K - 273.15:0} °C; the curves as measured hold for {law.Reference_K - 273.15:0} °C on average.{shown}{mixed}");
    }

    private Note Hysteresis()
    {
        (DynoLoop loop, double apart) = result.Fit.Loops
            .Select(loop => (loop, Math.Max(loop.Hysteresis().Rebound_N, loop.Hysteresis().Compression_N))).MaxBy(found => found.Item2);
        return new("hysteresis", Text($"At half the peak speed the force gaining and losing speed differs by up to {Force(apart)} (click {loop.Sweep.Click:0}, {Speed(loop.PeakVelocity_m_per_s)}): air in the oil, valve lag or gas."));
    }

    private string Creep(double slowest) => slowest > 0.02
        ? $"No speed below {Speed(slowest)} was run, so this is an upper limit: a bleed that opens digressively looks alike. Run 0.005 m/s to know it."
        : "That is friction of rod and seals.";

    private static string Stroke(double velocity) => velocity > 0 ? "rebound" : "compression";

    private string Speed(double speed) => units.Text(Dimension.Speed, speed);

    private string Force(double force) => units.Text(Dimension.Force, force);

    private string Number(double? force) => units.Number(Dimension.Force, force);

    public static string Percent(double? share) => share is { } part ? Text($"{part * 100:+0.0;−0.0;0.0} %") : "–";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
