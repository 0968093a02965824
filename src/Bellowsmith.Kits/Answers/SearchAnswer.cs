using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Search;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>search</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record SearchAnswer(
    string Strut, string Load, IReadOnlyList<SearchAnswer.Choice> Front, SearchAnswer.Choice? Nearest, string? Reason,
    IReadOnlyList<SearchAnswer.Limited> Limits, int Evaluated, IReadOnlyList<SearchAnswer.Undriven> NotDriven, double Seconds,
    string Sentence, IReadOnlyList<Note> Notes)
{
    public sealed record Choice(
        string Spring, string Damper, double? Height_mm, double? GaugePressure_kPa, double? Click, double WeightedRms_m_per_s2, double TyreLoadRms_N,
        double StopContactsPerKm, Aside? WorstNeighbour, string Sentence);

    /// <summary>A step aside; numbers are null where it cannot stand there, worsening is then null too.</summary>
    public sealed record Aside(
        string Change, double? WeightedRms_m_per_s2, double? TyreLoadRms_N, double? StopContactsPerKm, double? Worsening, string? Reason);

    /// <summary>A limit; greatest is in the unit the name ends with.</summary>
    public sealed record Limited(string Name, double Greatest);

    public sealed record Undriven(string Reason, int Settings);

    public static SearchAnswer Of(SearchResult result, DisplayUnits units, double seconds)
    {
        SearchWords words = new(result, units);
        RideStrut strut = result.Question.Strut;
        return new(
            Names.Of(strut.End), strut.Load, [.. result.Front.Select(p => Of(p, words))], result.Nearest is { } nearest ? Of(nearest, words) : null,
            words.Reason() is { Length: > 0 } reason ? reason : null,
            [.. result.Question.Limits.Select(l => new Limited(l.Quantity.Name, l.Greatest * l.Quantity.Scale))], result.Evaluated,
            [.. result.NotDriven.Select(n => new Undriven(n.Reason, n.Settings))], seconds, words.Answer(), [.. words.Notes()]);
    }

    private static Choice Of(SearchPoint p, SearchWords words) => new(
        p.Pair.Spring, p.Pair.Damper, p.Setting.Height_m * 1e3, p.Setting.GaugePressure_Pa * 1e-3, p.Pair.Strut.Damper.Clicks.Count > 1 ? p.Setting.Click : null,
        p.Figures.WeightedRms_m_per_s2, p.Figures.TyreLoadRms_N, words.Stops(p.Figures), p.Worst is { } worst ? Of(worst, words) : null, words.Sentence(p));

    private static Aside Of(SearchNeighbour n, SearchWords words) => new(
        n.Change, n.Figures?.WeightedRms_m_per_s2, n.Figures?.TyreLoadRms_N, n.Figures is { } f ? words.Stops(f) : null,
        double.IsFinite(n.Worsening) ? n.Worsening : null, n.Reason);
}
