using System.Globalization;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of the installed-height answer: the same on page, terminal and paper.</summary>
public sealed class HeightWords(InstalledHeightResult result, DisplayUnits units)
{
    private readonly StrutCase _strut = result.Case;

    /// <summary>"At 81.2 mm and 4.27 bar gauge the spring gives 92.6 N/mm (90.9 to 94.3): 1.95 Hz at the wheel."</summary>
    public string Answer() => result.Recommended is { } chosen ? At(chosen, units) : $"No installed height. {Reason()}";

    /// <summary>The thread setting of the recommended height; empty where the kit names no thread.</summary>
    public string Thread() => result.Recommended?.Thread switch
    {
        { Reachable: true } t => $"Set {Length(t.Exposed_m)} of exposed thread, {Turns(t.Turns)}.",
        { Nearest: { } n } t => $"The thread does not reach: {Length(t.Exposed_m)} would have to show. Nearest is {Length(n.Exposed_m)}, {Turns(n.Turns)}: "
            + $"{Length(n.Height_m)}, {Gauge(n.GaugePressure_Pa)}, {Rate(n.SpringRate_N_per_m)}.",
        { } t => $"The thread does not reach: {Length(t.Exposed_m)} would have to show.",
        _ => "",
    };

    /// <summary>Why one height is recommended, or why none is and what can be had.</summary>
    public string Reason() => result.Recommended is { } chosen ? Why(chosen) : WhyNone();

    /// <summary>What the spring does at a height someone chose, recommended or not.</summary>
    public static string At(HeightSolution s, DisplayUnits units)
    {
        string band = s.SpringRateBand_N_per_m is { } b
            ? $" ({units.Number(Dimension.Rate, b.Low)} to {units.Number(Dimension.Rate, b.High)})" : "";
        return $"At {units.Text(Dimension.Length, s.Height_m)} and {units.Text(Dimension.GaugePressure, s.GaugePressure_Pa)} gauge the spring gives "
            + $"{units.Text(Dimension.Rate, s.SpringRate_N_per_m)}{band}: {units.Text(Dimension.Frequency, s.RideFrequency_Hz)} at the wheel.";
    }

    private string Why(HeightSolution chosen)
    {
        string room = Room(chosen);
        HeightSolution[] others = result.Solutions.Where(s => s != chosen).ToArray();
        HeightSolution? rival = others.MinBy(s => s.Room.Shortfall_m);
        return result.RecommendedFor switch
        {
            RecommendedFor.GaugePressureLimit => $"The only height within the spring's {Gauge(_strut.Part.MaxGaugePressure_Pa)}: "
                + string.Join(", ", others.Select(o => $"{Length(o.Height_m)} would take {Gauge(o.GaugePressure_Pa)}")) + $". {room}",
            RecommendedFor.MoreRoom => $"{room} At {Length(rival!.Height_m)} {Lacking(rival)}.",
            RecommendedFor.FlatterRate => $"{room} The rate is flatter here than at {Length(rival!.Height_m)}: "
                + $"{Slope(chosen)} against {Slope(rival)}.",
            _ => $"The only height that gives the rate. {room}",
        };
    }

    private string WhyNone()
    {
        string range = $"between {Length(_strut.LeastHeight_m)} and {Length(_strut.GreatestHeight_m)}";
        string force = units.Text(Dimension.Force, result.SpringForce_N), wanted = Rate(result.TargetSpringRate_N_per_m);
        if (result.SpringForce_N <= 0) return "The damper's gas alone carries more than this corner; the spring would have to pull.";
        if (result.Minimum is not { } soft || result.Maximum is not { } stiff)
            return $"The spring cannot carry {force} at any height {range}.";
        if (result.Solutions.Count > 0)
        {
            HeightSolution least = result.Solutions.MinBy(s => s.GaugePressure_Pa)!;
            string within = result.Nearest is { } near
                ? $" Within the limit the nearest is {Rate(near.SpringRate_N_per_m)} at {Length(near.Height_m)}." : "";
            return $"Every height that gives {wanted} takes more than the spring's {Gauge(_strut.Part.MaxGaugePressure_Pa)}; "
                + $"the least is {Gauge(least.GaugePressure_Pa)} at {Length(least.Height_m)}.{within}";
        }

        bool tooSoft = result.TargetSpringRate_N_per_m < soft.SpringRate_N_per_m;
        RatePlace end = tooSoft ? soft : stiff;
        return $"{wanted} is {(tooSoft ? "softer" : "stiffer")} than this spring can be. Carrying {force} it gives "
            + $"{Rate(soft.SpringRate_N_per_m)} to {Rate(stiff.SpringRate_N_per_m)} {range}; "
            + $"{(tooSoft ? "softest" : "stiffest")} at {Length(end.Height_m)} and {Gauge(end.GaugePressure_Pa)}, "
            + $"{units.Text(Dimension.Frequency, end.RideFrequency_Hz)} at the wheel.";
    }

    private string Room(HeightSolution s)
    {
        string text = $"It leaves {Length(s.Room.Down_m)} of strut travel down and {Length(s.Room.Up_m)} up, "
            + $"and stands {Length(s.Room.ToDataEdge_m)} from the data's edge.";
        return s.Room.Shortfall_m > 5e-4 ? $"{text} Even so {Lacking(s)}." : text;
    }

    private string Lacking(HeightSolution s)
    {
        List<string> lacks = [];
        if (s.Room.BumpShortfall_m > 0) lacks.Add($"{Length(s.Room.BumpShortfall_m)} of bump travel are missing");
        if (s.Room.DroopShortfall_m > 0) lacks.Add($"{Length(s.Room.DroopShortfall_m)} of droop travel are missing");
        if (s.Room.ToDataEdge_m < Recommendation.DataEdge_m) lacks.Add($"the data end {Length(s.Room.ToDataEdge_m)} away");
        if (s.Thread is { Reachable: false }) lacks.Add("the thread does not reach");
        return string.Join(" and ", lacks);
    }

    private string Slope(HeightSolution s) =>
        $"{units.Change(Dimension.Rate, s.Sensitivities.RateSlope_N_per_m2 * 1e-3)} per mm";

    private string Length(double si) => units.Text(Dimension.Length, si);

    private string Rate(double si) => units.Text(Dimension.Rate, si);

    private string Gauge(double si) => units.Text(Dimension.GaugePressure, si) + " gauge";

    public static string Turns(double turns)
    {
        string number = Math.Abs(turns).ToString("0.0", CultureInfo.InvariantCulture);
        return number == "0.0" ? "at its stop" : $"{number} turns {(turns > 0 ? "out" : "in")} from its stop";
    }
}
