using Bellowsmith.Kits.Studies.DamperClicks;
using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a clicks answer, forces in the file's unit.</summary>
public sealed class ClicksWords(DamperClicksResult result)
{
    private readonly ClickResult _judged = result.Judged;
    private readonly Unit _unit = result.Readings.ForceUnit;

    /// <summary>"Clicks 0 to 7 are all real changes." or what is not, or why nothing can be said.</summary>
    public string Answer() => _judged.Lack switch
    {
        ClickLack.OneClick => "One click alone makes no step: measure its neighbours, each in at least 3 runs.",
        ClickLack.TooFewRuns => "Nothing shows how well a reading repeats: run every click again, in at least 3 runs.",
        ClickLack.NotJoined => "The runs share no clicks, so their drift cannot be told from the clicks: measure every click in every run, in at least 3 runs.",
        ClickLack.NoScatter => "Every reading repeats to the last digit: the instrument does not resolve their scatter, and no interval can be drawn. Record more digits.",
        _ => $"{Usable()} {Open()}".TrimEnd(),
    };

    /// <summary>One step in words: "6 to 7: a real change of 5.0 N (2.9 to 7.1)."</summary>
    public string Of(ClickStep step)
    {
        string size = step.Low is { } low && step.High is { } high ? $"{Force(step.Step)} ({Number(low)} to {Number(high)})" : Force(step.Step);
        return step.Verdict switch
        {
            StepVerdict.Distinct => $"a real change of {size}",
            StepVerdict.Reversed => $"goes the wrong way by {size}: a stuck or worn adjuster",
            StepVerdict.SmallerThanWanted => $"smaller than the wanted {Force(_judged.Wanted!.Value)}: {size}",
            StepVerdict.NotShownDistinct => $"not shown to be a change: {size}; {Runs(step.RunsToDecide)}",
            _ => size,
        };
    }

    public static string Of(StepVerdict? verdict) => verdict switch
    {
        StepVerdict.Distinct => "distinct",
        StepVerdict.Reversed => "reversed",
        StepVerdict.SmallerThanWanted => "smaller than wanted",
        StepVerdict.NotShownDistinct => "not shown distinct",
        _ => "not judged",
    };

    public string Force(double force_N) => $"{Number(force_N)} {_unit.Name}";

    public string Number(double force_N) => PlainNumbers.Fixed(_unit.FromSi(force_N), PlainNumbers.Decimals(_unit.FromSi(_judged.Deviation ?? 1), 2));

    /// <summary>What stands behind the verdicts.</summary>
    public IEnumerable<Note> Notes()
    {
        if (result.Readings.Velocity_m_per_s is { } v) yield return new("read at", $"{PlainNumbers.Chosen(v)} m/s, between the points of each sweep; rebound is +.");
        if (result.Readings.Unit is null) yield return new("unit", "The header has no unit; forces are taken as N.");
        if (_judged.Deviation is not { } deviation || _judged.Anova is not { } anova) yield break;
        yield return new("repeats", $"one reading scatters by {Force(deviation)} about its click and run ({anova.Residual.Degrees} degrees of freedom); runs are blocks, so warm-up drift from run to run does not count.");
        yield return new("interval", $"all steps together 95 %, two-sided: each step ± {PlainNumbers.Fixed(_judged.Critical!.Value, 4)} of its standard errors, "
            + (_judged.IsExact ? "the exact multivariate t of neighbouring differences." : "a bound, because not every click was measured in every run."));
        yield return new("usual way", _judged.Sense > 0 ? "force rises with the click number." : "force falls with the click number.");
        if (_judged.RunsForWanted is { } runs) yield return new("wanted step", $"{Force(_judged.Wanted!.Value)} is shown by {runs} runs nine times in ten.");
    }

    /// <summary>What ignoring the runs would have said, for comparison only.</summary>
    public string Unblocked() => _judged.Unblocked is not { } plain ? "The runs cannot be ignored here: too few readings."
        : $"Ignoring the runs, all pairs by the studentized range: a step of {Force(_judged.Steps.Select((_, k) => Half(plain, k)).Max())} would be needed; "
            + (Hidden(plain) is { Length: > 0 } hidden ? $"{hidden} would wrongly fail." : "no verdict would change.");

    private string Hidden(OneWay plain) => string.Join(", ", _judged.Steps
        .Where((s, k) => s.Verdict == StepVerdict.Distinct && Math.Abs(s.Step) <= Half(plain, k)).Select(s => $"{s.From} to {s.To}"));

    private double Half(OneWay plain, int step) => plain.HalfWidth(step, step + 1, _judged.Confidence);

    private string Usable() => _judged.Usable.Count switch
    {
        0 => "No step between neighbouring clicks is shown to be a real change.",
        1 when _judged.Usable[0] == new ClickRange(_judged.Steps[0].From, _judged.Steps[^1].To) => $"Every click from {_judged.Usable[0].From} to {_judged.Usable[0].To} is a real change.",
        1 => $"The usable range is click {_judged.Usable[0].From} to {_judged.Usable[0].To}.",
        _ => $"Equally long usable ranges: {string.Join(" and ", _judged.Usable.Select(r => $"{r.From} to {r.To}"))}.",
    };

    private string Open()
    {
        string[] open = [.. _judged.Steps.Where(s => s.Verdict != StepVerdict.Distinct).Select(s => $"{s.From} to {s.To} is {Of(s)}.")];
        return open.Length == 0 ? "" : string.Concat(open[0][..1].ToUpperInvariant(), open[0][1..]) + (open.Length > 1 ? " " + string.Join(" ", open[1..]) : "");
    }

    private static string Runs(int? runs) => runs is { } count ? $"{count} runs would settle a step of that size nine times in ten" : "more than a thousand runs would not settle it";
}
