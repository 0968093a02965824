using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Search;

/// <summary>
/// A search being driven: every candidate over the same road, then what cannot be bettered among those that keep the limits and
/// what surrounds it. Each is the ride of its own setting, to the last bit.
/// </summary>
public sealed class SearchRun
{
    /// <summary>A person compares so many at a glance.</summary>
    private const int MostChoices = 9;

    private const string Astray = "its ride runs out of all bounds";

    private readonly Trials _trials = new();
    private readonly (SearchPair Pair, Trial Trial)[] _candidates;
    private readonly List<SearchPoint> _points = [];
    private readonly Dictionary<string, int> _reasons = [];
    private int _next;

    public SearchRun(SearchQuestion question)
    {
        Question = question;
        _candidates = [.. question.Candidates()];
    }

    public SearchQuestion Question { get; }

    /// <summary>What it came to; null until all is driven.</summary>
    public SearchResult? Result { get; private set; }

    public bool IsDone => Result is not null;

    /// <summary>How far it is; 1 where it is done.</summary>
    public double Share => IsDone ? 1 : _next / (_candidates.Length + 1.0);

    /// <summary>Drives everything that is left.</summary>
    public SearchResult All(CancellationToken cancel = default)
    {
        while (!IsDone) Advance(256, cancel);
        return Result!;
    }

    /// <summary>Drives the next so many candidates on all cores or, when none is left, what surrounds the front.</summary>
    /// <exception cref="OperationCanceledException">Cancelled; what this call began is then still to be driven.</exception>
    public void Advance(int candidates, CancellationToken cancel = default)
    {
        int end = Math.Min(_candidates.Length, _next + candidates);
        if (_next == end) Result = Finish(cancel);
        else Drive(_candidates[_next..end], cancel);
        _next = end;
    }

    private void Drive((SearchPair Pair, Trial Trial)[] candidates, CancellationToken cancel)
    {
        TrialResult[] results = _trials.Over(Array.ConvertAll(candidates, c => c.Trial), cancel);
        foreach ((TrialResult result, (SearchPair pair, _)) in results.Zip(candidates))
        {
            if (result.Figures is { } figures && SearchPoint.Costs(figures, Question.Road).All(double.IsFinite)) _points.Add(new(pair, result.Setting, figures));
            else _reasons[result.Reason ?? Astray] = _reasons.GetValueOrDefault(result.Reason ?? Astray) + 1;
        }
    }

    private SearchResult Finish(CancellationToken cancel)
    {
        SearchPoint[] within = [.. _points.Where(point => Question.Excess(point.Figures) == 0)], front = Chosen(within);
        SearchPoint? nearest = within.Length == 0 && _points.Count > 0 ? _points.MinBy(p => Question.Excess(p.Figures)) : null;
        TrialResult? present = Question.Present is { } set ? _trials.Over([new(Question.Strut, Question.Road, set)], cancel)[0] : null;
        return new SearchResult
        {
            Question = Question,
            Front = WithNeighbours(front, cancel),
            Nearest = nearest is null ? null : WithNeighbours([nearest], cancel)[0],
            Order = nearest is null ? null : Order(nearest, cancel),
            Present = present is { Figures: { } figures } driven ? new(Question.Pairs[0], driven.Setting, figures) : null,
            Evaluated = _points.Count,
            NotDriven = [.. _reasons.OrderByDescending(r => r.Value).Select(r => (r.Key, r.Value))],
        };
    }

    private PartsOrder? Order(SearchPoint nearest, CancellationToken cancel)
    {
        VirtualParts parts = new(nearest);
        RideFigures[] figures = _trials.Over([.. VirtualParts.Changes.Select(parts.Corner)], Question.Road, cancel);
        int least = Array.FindIndex(figures, f => Question.Excess(f) == 0);
        return least < 0 ? null : parts.Order(VirtualParts.Changes[least], figures[least]);
    }

    private SearchPoint[] Chosen(SearchPoint[] within)
    {
        SearchPoint[] front = [.. Front.Of([.. within.Select(Costs)]).Select(k => within[k])];
        return [.. Front.Spread([.. front.Select(Costs)], MostChoices).Select(k => front[k]).OrderBy(point => point.Figures.WeightedRms_m_per_s2)];

        double[] Costs(SearchPoint point) => SearchPoint.Costs(point.Figures, Question.Road);
    }

    private SearchPoint[] WithNeighbours(SearchPoint[] points, CancellationToken cancel)
    {
        (SearchPoint Point, string Change, Trial Trial)[] beside =
            [.. points.SelectMany(point => SearchNeighbours.Of(point, Question.Road).Select(n => (point, n.Change, n.Trial)))];
        TrialResult[] results = _trials.Over(Array.ConvertAll(beside, b => b.Trial), cancel);
        return [.. points.Select(point => point with
        {
            Neighbours = [.. beside.Zip(results).Where(b => ReferenceEquals(b.First.Point, point))
                .Select(b => SearchNeighbours.Beside(point, b.First.Change, b.Second, Question))],
        })];
    }
}
