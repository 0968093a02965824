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
    private readonly List<SearchPoint> _surrounded = [];
    private SearchPoint[]? _around;
    private int _next, _within;

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
    public double Share => IsDone ? 1
        : (_next + SearchNeighbours.Most * _surrounded.Count)
            / (1.0 + _candidates.Length + SearchNeighbours.Most * (_around?.Length ?? (Question.Robust ? _candidates.Length : MostChoices)));

    /// <summary>Drives everything that is left.</summary>
    public SearchResult All(CancellationToken cancel = default)
    {
        while (!IsDone) Advance(256, cancel);
        return Result!;
    }

    /// <summary>Drives about so many settings on all cores: candidates, then what surrounds those chosen, then parts to order.</summary>
    /// <exception cref="OperationCanceledException">Cancelled; what this call began is then still to be driven.</exception>
    public void Advance(int settings, CancellationToken cancel = default)
    {
        if (_next < _candidates.Length)
        {
            int end = Math.Min(_candidates.Length, _next + settings);
            Drive(_candidates[_next..end], cancel);
            _next = end;
            return;
        }

        _around ??= Around();
        if (_surrounded.Count == _around.Length) Result = Finish(cancel);
        else _surrounded.AddRange(WithNeighbours([.. _around.Skip(_surrounded.Count).Take(Math.Max(1, settings / SearchNeighbours.Most))], cancel));
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

    private SearchPoint[] Around()
    {
        SearchPoint[] within = [.. _points.Where(point => Question.Excess(point.Figures) == 0)];
        _within = within.Length;
        return Question.Robust ? within : Chosen(within);
    }

    private SearchResult Finish(CancellationToken cancel)
    {
        SearchPoint[] front = Question.Robust ? Chosen([.. _surrounded.Where(point => point.Neighbours.All(n => n.KeepsLimits))]) : [.. _surrounded];
        SearchPoint? nearest = front.Length > 0 || _points.Count == 0 ? null
            : _surrounded.MinBy(point => point.Neighbours.Max(n => n.Excess)) ?? WithNeighbours([_points.MinBy(p => Question.Excess(p.Figures))!], cancel)[0];
        TrialResult? present = Question.Present is { } set ? _trials.Over([new(Question.Strut, Question.Road, set)], cancel)[0] : null;
        return new SearchResult
        {
            Question = Question,
            Front = front,
            Nearest = nearest,
            Order = nearest is null || _within > 0 ? null : Order(nearest, cancel),
            Present = present is { Figures: { } figures } driven ? new(Question.Pairs[0], driven.Setting, figures) : null,
            Evaluated = _points.Count,
            WithinLimits = _within,
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
