using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Search;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a search: the same on page, terminal and paper.</summary>
public sealed class SearchWords(SearchResult result, DisplayUnits units)
{
    private SearchQuestion Question => result.Question;

    /// <summary>How many choices there are; where none, why, and what comes nearest.</summary>
    public string Answer() => result switch
    {
        { Front.Count: > 0 } => Text($"{result.Evaluated} settings driven{Within()}; none is better than these in all of comfort, tyre load and stop contacts."),
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
        return Text($"{point.Pair.Spring} at {units.Text(Dimension.Length, point.Setting.Height_m)} and {units.Text(Dimension.GaugePressure, point.Setting.GaugePressure_Pa)} gauge{with}: {f.WeightedRms_m_per_s2:F2} m/s² weighted, tyre load ± {units.Text(Dimension.Force, f.TyreLoadRms_N)}, {Stops(f):F1} stop contacts a kilometre{Worst(point)}.");
    }

    /// <summary>"click 12"; empty for a damper without clicks.</summary>
    public static string Click(SearchPoint point) =>
        point.Pair.Strut.Damper.Clicks.Count > 1 ? Text($"click {point.Setting.Click:0.#}") : "";

    /// <summary>"1.72 m/s², ± 884 N, 3.4", or why it cannot stand there.</summary>
    public string Beside(SearchNeighbour neighbour) => neighbour.Figures is { } f
        ? Text($"{f.WeightedRms_m_per_s2:F2} m/s², ± {units.Text(Dimension.Force, f.TyreLoadRms_N)} and {Stops(f):F1}") : $"it cannot stand: {neighbour.Reason}";

    public double Stops(RideFigures figures) => figures.StopContactsPerKm(Question.Road.Speed_m_per_s);

    /// <summary>"On a C road at 80 km/h".</summary>
    public string Road() => new RideWords(
        new RideResult { Strut = Question.Strut, Road = Question.Road, Setting = new(), Figures = null }, units).Road();

    /// <summary>What stands behind the answer.</summary>
    public IEnumerable<Note> Notes()
    {
        yield return new("as the kit says", "Stacks, thread, seal area, displaced and line volume and how much longer the damper is than the spring are the kit's for every part: check them before a part is changed.");
        yield return new("heights", Text($"Every {SearchQuestion.HeightStep_mm:0} mm of those spring and data share, the car levelled to the same height by the thread; every whole click measured."));
        yield return new("at worst", "Of one click, 2 psi with the thread left alone, 10 kg levelled out again and 1 mm of spring height either way, the one that is worse by the greatest share in one of the three; stop contacts against at least one a kilometre.");
        yield return new("chance", "One random road of this class and seed; differences of a few per cent may turn on another. Try another --seed.");
        foreach ((string reason, int settings) in result.NotDriven) yield return new("not driven", Text($"{settings} settings: {reason}."));
        foreach (UnusedDocument document in Question.LeftOut)
            yield return new("left out", $"{document.File}: {document.Faults[0]}{(document.Faults.Count > 1 ? Text($" And {document.Faults.Count - 1} more.") : "")}");
    }

    private string Within() => Question.Limits.Count > 0 ? $" within {Limits()}" : "";

    private string Limits() => string.Join(" and ", Question.Limits.Select(limit => $"{limit.Quantity.Title} of at most {Number(limit.Quantity, limit.Greatest)}"));

    private string Number(RideQuantity quantity, double si) => quantity.Dimension is { } dimension ? units.Text(dimension, si)
        : Text($"{si * quantity.Scale:0.####}{(quantity.Unit.Length > 0 ? " " : "")}{quantity.Unit}");

    private static string On(SearchPoint point) => Click(point) is { Length: > 0 } click ? $" on {click}" : "";

    private string Worst(SearchPoint point) => point.Worst is { } worst ? $"; at worst, {worst.Change}, {Beside(worst)}" : "";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
