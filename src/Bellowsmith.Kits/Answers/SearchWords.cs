using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Search;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a search: the same on page, terminal and paper.</summary>
public sealed class SearchWords(SearchResult result, DisplayUnits units)
{
    private const string Aside = "one click, 2 psi, 10 kg and 1 mm aside";

    private SearchQuestion Question => result.Question;

    /// <summary>How many choices there are; where none, why, and what comes nearest.</summary>
    public string Answer() => result switch
    {
        { Front.Count: > 0 } => Text($"{result.Evaluated} settings driven{Within()}; none is better than these in all of comfort, tyre load and stop contacts."),
        { Nearest: { } nearest, WithinLimits: > 0 } => Text($"{result.WithinLimits} of {result.Evaluated} settings keep {Limits()} where all is set exactly, none of them also {Aside}. Nearest: {Sentence(nearest)}"),
        { Nearest: { } nearest } => Text($"None of {result.Evaluated} settings keeps {Limits()}. Nearest: {Sentence(nearest)}"),
        _ => "No setting of the parts at hand can be driven.",
    };

    /// <summary>Why there is no choice; empty where there is one.</summary>
    public string Reason() => result.Front.Count > 0 ? "" : Answer();

    /// <summary>"Single 152 at 74.0 mm and 3.61 bar gauge with Front street on click 12: 1.67 m/s² weighted, …; at worst, one click harder, …"</summary>
    public string Sentence(SearchPoint point)
    {
        RideFigures f = point.Figures;
        string with = point.Pair.Damper.Length > 0 ? $" with {point.Pair.Damper}{On(point)}" : "";
        return Text($"{point.Pair.Spring} at {units.Text(Dimension.Length, point.Setting.Height_m)} and {units.Text(Dimension.GaugePressure, point.Setting.GaugePressure_Pa)} gauge{with}: {f.WeightedRms_m_per_s2:F2} m/s² weighted, tyre load ± {units.Text(Dimension.Force, f.TyreLoadRms_N)}, {Contacts(point.Pair, f)}{Worst(point)}.");
    }

    /// <summary>The kit as it is set now, in the same words; empty where it cannot stand.</summary>
    public string Present() => result.Present is { } present ? Sentence(present) : "";

    /// <summary>What to order, or that nothing would help; empty where a setting keeps the limits.</summary>
    public string Order() => result switch
    {
        { Order: { } order } => Text($"To order: a spring of {units.Text(Dimension.Rate, order.SpringRate_N_per_m)} at {units.Text(Dimension.Length, order.Height_m)}, carrying {units.Text(Dimension.Force, order.SpringForce_N)} there{Heights(order)}; {Damper(order, result.Nearest!)}{Lengths(order)}. Such parts come to {order.Figures.WeightedRms_m_per_s2:F2} m/s² weighted, tyre load ± {units.Text(Dimension.Force, order.Figures.TyreLoadRms_N)} and {Contacts(result.Nearest!.Pair, order.Figures)}."),
        { Nearest: not null, WithinLimits: 0 } => "Nothing to order: from the nearest setting half to 1.6 times the spring's rate, 0.4 to 2 times the damper's force and up to 20 mm more travel before the stop do not keep them either.",
        _ => "",
    };

    /// <summary>"0.13 m/s: 210 N in compression, 640 N in rebound", speed by speed.</summary>
    public IEnumerable<string> OrderedForces() => result.Order is not { } order ? []
        : order.Forces.Where(f => f.Compression_N is not null || f.Rebound_N is not null)
            .Select(f => $"{units.Text(Dimension.Speed, f.Speed_m_per_s)}: {units.Text(Dimension.Force, f.Compression_N)} in compression, {units.Text(Dimension.Force, f.Rebound_N)} in rebound");

    /// <summary>"click 12"; empty for a damper without clicks.</summary>
    public static string Click(SearchPoint point) =>
        point.Pair.Strut.Damper.Clicks.Count > 1 ? Text($"click {point.Setting.Click:0.#}") : "";

    /// <summary>"1.72 m/s², ± 884 N, 3.4", or why it cannot be set.</summary>
    public string Beside(SearchNeighbour neighbour) => neighbour.Figures is { } f
        ? Text($"{f.WeightedRms_m_per_s2:F2} m/s², ± {units.Text(Dimension.Force, f.TyreLoadRms_N)} and {Met(f)}") : $"it cannot be set: {neighbour.Reason}";

    public double Stops(RideFigures figures) => figures.StopContactsPerKm(Question.Road.Speed_m_per_s);

    /// <summary>How often the stop is met: each kilometre of a random road, else in all.</summary>
    public string Met(RideFigures figures) => Question.Road.IsRandom ? Text($"{Stops(figures):F1}") : Text($"{figures.StopContacts}");

    /// <summary>What <see cref="Met"/> counts, as a heading.</summary>
    public string MetHeading => Question.Road.IsRandom ? "stops/km" : "stops";

    /// <summary>"On a C road at 80 km/h".</summary>
    public string Road() => RoadWords.Of(Question.Road, units);

    /// <summary>What stands behind the answer.</summary>
    public IEnumerable<Note> Notes()
    {
        yield return new("as the kit says", "Stacks, thread, seal area, displaced and line volume and how much longer the damper is than the spring are the kit's for every part: check them before a part is changed.");
        yield return new("heights", Text($"Every {SearchQuestion.HeightStep_mm:0} mm of those spring and data share, the car levelled to the same height by the thread; every whole click measured."));
        yield return new("at worst", "Of one click, 2 psi with the thread left alone, 10 kg levelled out again and 1 mm of spring height either way, the one that is worse by the greatest share in one of the three; stop contacts against at least one a kilometre.");
        if (Question.Road.IsRandom)
            yield return new("chance", "One random road of this class and seed; differences of a few per cent may turn on another. Try another --seed.");
        if (result is { Nearest: not null, WithinLimits: 0 })
            yield return new("order", "Worked out about the nearest setting for a spring whose rate is the same at every height; a real air spring stiffens in bump, so drive it again with its own data.");
        foreach ((string reason, int settings) in result.NotDriven) yield return new("not driven", Text($"{settings} settings: {reason}."));
        foreach (UnusedDocument document in Question.LeftOut)
            yield return new("left out", $"{Fault(document)}{(document.Faults.Count > 1 ? Text($" And {document.Faults.Count - 1} more.") : "")}");
    }

    private string Contacts(SearchPair pair, RideFigures figures) => !pair.Strut.HasEnds ? "no stops known"
        : $"{Met(figures)} stop contact{(Met(figures) == "1" ? "" : "s")}{(Question.Road.IsRandom ? " a kilometre" : "")}";

    private string Within() => (Question.Limits.Count > 0 ? $" within {Limits()}" : "") + (Question.Robust ? $", also {Aside}" : "");

    private string Limits() => Question.Limits.Count == 0 ? "the parts' own limits" : string.Join(" and ", Question.Limits.Select(limit => $"{limit.Quantity.Title} of at most {Number(limit.Quantity, limit.Greatest)}"));

    private string Number(RideQuantity quantity, double si) => quantity.Dimension is { } dimension ? units.Text(dimension, si)
        : Text($"{si * quantity.Scale:0.####}{(quantity.Unit.Length > 0 ? " " : "")}{quantity.Unit}");

    private string Heights(PartsOrder order) => order.SpringHeights is { } heights
        ? $" and usable from {units.Number(Dimension.Length, heights.Least_m)} to {units.Text(Dimension.Length, heights.Greatest_m)}" : "";

    private static string Damper(PartsOrder order, SearchPoint nearest)
    {
        string which = nearest.Pair.Damper.Length > 0 ? nearest.Pair.Damper : "the kit's damper";
        return Math.Abs(order.Change.DamperForce - 1) < 1e-9 ? $"a damper with the force of {which}{On(nearest)}"
            : Text($"a damper with {order.Change.DamperForce:0.0} times the force of {which}{On(nearest)}");
    }

    private string Lengths(PartsOrder order) => order.DamperLengths is { } lengths
        ? $", {units.Text(Dimension.Length, lengths.Shortest_m)} long with its stop solid and {units.Text(Dimension.Length, lengths.Longest_m)} at full length, a stroke of {units.Text(Dimension.Length, lengths.Longest_m - lengths.Shortest_m)}" : "";

    private static string On(SearchPoint point) => Click(point) is { Length: > 0 } click ? $" on {click}" : "";

    private string Worst(SearchPoint point) => point.Worst is { } worst ? $"; at worst, {worst.Change}, {Beside(worst)}{Broken(worst)}" : "";

    // Where the setting itself keeps limits and this one does not.
    private string Broken(SearchNeighbour worst) =>
        result.Front.Count > 0 && Question.Limits.Count > 0 && worst is { Figures: not null, KeepsLimits: false } ? ", beyond the limits" : "";

    // A fault in a file the document names stands under that file's name; the document is named first then.
    private static string Fault(UnusedDocument document) =>
        document.Faults[0].File == document.File ? document.Faults[0].ToString() : $"{document.File}: {document.Faults[0]}";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
