using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Search;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>search</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record SearchAnswer(
    string Strut, string Load, IReadOnlyList<SearchAnswer.Choice> Front, SearchAnswer.Choice? Nearest, SearchAnswer.Ordered? Order, string? Reason, SearchAnswer.Choice? Present,
    IReadOnlyList<SearchAnswer.Limited> Limits, bool Robust, int Evaluated, int WithinLimits, IReadOnlyList<SearchAnswer.Undriven> NotDriven, double Seconds,
    string Sentence, IReadOnlyList<Note> Notes)
{
    public sealed record Choice(
        string Spring, string Damper, double? Height_mm, double? GaugePressure_kPa, double? Click, double WeightedRms_m_per_s2, double TyreLoadRms_N,
        double StopContactsPerKm, Aside? WorstNeighbour, string Sentence);

    /// <summary>A step aside; numbers are null where it cannot stand there, worsening is then null too.</summary>
    public sealed record Aside(
        string Change, double? WeightedRms_m_per_s2, double? TyreLoadRms_N, double? StopContactsPerKm, double? Worsening, bool KeepsLimits, string? Reason);

    /// <summary>Parts that would keep the limits. Rates are in service; lengths are null for a strut without ends.</summary>
    public sealed record Ordered(
        double SpringRate_N_per_mm, double Height_mm, double SpringForce_N, double WheelRate_N_per_mm, double? SpringLeastHeight_mm, double? SpringGreatestHeight_mm,
        IReadOnlyList<OrderedSpeed> DamperForces, double? DamperShortest_mm, double? DamperLongest_mm, double? DamperStroke_mm,
        double RateFactor, double DamperFactor, double MoreBumpTravel_mm, double WeightedRms_m_per_s2, double TyreLoadRms_N, double StopContactsPerKm);

    /// <summary>Both forces +, without gas and friction; null beyond the speeds measured.</summary>
    public sealed record OrderedSpeed(double Speed_m_per_s, double? Compression_N, double? Rebound_N);

    /// <summary>A limit; greatest is in the unit the name ends with.</summary>
    public sealed record Limited(string Name, double Greatest);

    public sealed record Undriven(string Reason, int Settings);

    public static SearchAnswer Of(SearchResult result, DisplayUnits units, double seconds)
    {
        SearchWords words = new(result, units);
        RideStrut strut = result.Question.Strut;
        return new(
            Names.Of(strut.End), strut.Load, [.. result.Front.Select(p => Of(p, words))], result.Nearest is { } nearest ? Of(nearest, words) : null,
            result.Order is { } order ? Of(order, words) : null, words.Reason() is { Length: > 0 } reason ? reason : null, result.Present is { } present ? Of(present, words) : null,
            [.. result.Question.Limits.Select(l => new Limited(l.Quantity.Name, l.Greatest * l.Quantity.Scale))], result.Question.Robust, result.Evaluated, result.WithinLimits,
            [.. result.NotDriven.Select(n => new Undriven(n.Reason, n.Settings))], seconds,
            words.Order() is { Length: > 0 } toOrder ? $"{words.Answer()} {toOrder}" : words.Answer(), [.. words.Notes()]);
    }

    private static Choice Of(SearchPoint p, SearchWords words) => new(
        p.Pair.Spring, p.Pair.Damper, p.Setting.Height_m * 1e3, p.Setting.GaugePressure_Pa * 1e-3, p.Pair.Strut.Damper.Clicks.Count > 1 ? p.Setting.Click : null,
        p.Figures.WeightedRms_m_per_s2, p.Figures.TyreLoadRms_N, words.Stops(p.Figures), p.Worst is { } worst ? Of(worst, words) : null, words.Sentence(p));

    private static Ordered Of(PartsOrder o, SearchWords words) => new(
        o.SpringRate_N_per_m * 1e-3, o.Height_m * 1e3, o.SpringForce_N, o.WheelRate_N_per_m * 1e-3, o.SpringHeights?.Least_m * 1e3, o.SpringHeights?.Greatest_m * 1e3,
        [.. o.Forces.Select(f => new OrderedSpeed(f.Speed_m_per_s, f.Compression_N, f.Rebound_N))],
        o.DamperLengths?.Shortest_m * 1e3, o.DamperLengths?.Longest_m * 1e3, (o.DamperLengths?.Longest_m - o.DamperLengths?.Shortest_m) * 1e3,
        o.Change.Rate, o.Change.DamperForce, o.Change.BumpTravel_m * 1e3,
        o.Figures.WeightedRms_m_per_s2, o.Figures.TyreLoadRms_N, words.Stops(o.Figures));

    private static Aside Of(SearchNeighbour n, SearchWords words) => new(
        n.Change, n.Figures?.WeightedRms_m_per_s2, n.Figures?.TyreLoadRms_N, n.Figures is { } f ? words.Stops(f) : null,
        double.IsFinite(n.Worsening) ? n.Worsening : null, n.KeepsLimits, n.Reason);
}
