using Bellowsmith.Kits.Studies.DamperClicks;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>clicks</c>: steps of neighbouring clicks, higher less lower, in N.</summary>
public sealed record ClicksAnswer(
    IReadOnlyList<ClicksAnswer.StepInterval> Steps, int? UsableFrom, int? UsableTo,
    double? Wanted_N, double? Deviation_N, int? Degrees, double? Critical, double? CriticalOneSided, bool Exact, int Runs,
    IReadOnlyList<ClicksAnswer.Mean> Means, IReadOnlyList<ClicksAnswer.BlockLine> Anova, ClicksAnswer.Plain? Unblocked,
    string Answer, IReadOnlyList<Note> Notes)
{
    public sealed record StepInterval(
        int From, int To, double? Step_N, double? Low_N, double? High_N, string Verdict, double? AtLeast_N, double? StandardError_N, int? RunsToDecide);

    public sealed record Mean(int Click, double? Force_N);

    public sealed record BlockLine(string Source, double SumOfSquares_N2, int Degrees, double? F);

    public sealed record Plain(double Deviation_N, int Degrees, IReadOnlyList<double> HalfWidths_N);

    public static ClicksAnswer Of(DamperClicksResult result)
    {
        (ClickResult r, ClicksWords words) = (result.Judged, new(result));
        ClickRange? usable = r.Usable.Count > 0 ? r.Usable[0] : null;
        return new ClicksAnswer(
            [.. r.Steps.Select(s => new StepInterval(s.From, s.To, Finite(s.Step), s.Low, s.High, ClicksWords.Of(s.Verdict), s.AtLeast, s.StandardError, s.RunsToDecide))],
            usable?.From, usable?.To, r.Wanted, r.Deviation, r.Anova?.Residual.Degrees, r.Critical, r.CriticalOneSided, r.IsExact, result.Readings.Runs.Count,
            [.. r.ClickMeans.Select((mean, k) => new Mean(r.Table.Clicks[k], Finite(mean)))],
            r.Anova is not { } a ? [] :
            [
                new("click", a.Clicks.SumOfSquares, a.Clicks.Degrees, a.Clicks.F), new("run", a.Runs.SumOfSquares, a.Runs.Degrees, a.Runs.F),
                new("residual", a.Residual.SumOfSquares, a.Residual.Degrees, null),
            ],
            r.Unblocked is { } plain ? new(Math.Sqrt(plain.Within.MeanSquare), plain.Within.Degrees,
                [.. r.Steps.Select((_, k) => plain.HalfWidth(k, k + 1, r.Confidence))]) : null,
            words.Answer(), [.. words.Notes()]);
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
