namespace Bellowsmith.Quality.Pairs;

/// <summary>
/// The matching of greatest total weight in a general graph by duals and blossoms [Edmonds 1965b], on a dense matrix in O(n³)
/// [Gabow 1976]. Whole-number weights: every dual stays a whole number (weights count twice), so the answer is exact.
/// </summary>
/// <remarks>
/// Vertices are 1 to n, blossoms n + 1 and up, 0 is none. A dual y ≥ 0 stands at each vertex and z ≥ 0 at each blossom with
/// slack(u, v) = y(u) + y(v) − 2·w(u, v) ≥ 0 outside of blossoms; a matched edge has no slack. Trees of edges without slack grow from
/// every unmatched vertex: even nodes lower their dual, odd ones raise it, until an edge becomes tight (grow, shrink a blossom or
/// augment), an odd blossom's dual is used up (expand), or an unmatched vertex's dual is 0, which is the optimum.
/// </remarks>
internal sealed class WeightedMatching
{
    private const int Free = -1, Even = 0, Odd = 1;

    private readonly int _count;
    private readonly Edge[,] _edges;
    private readonly long[] _dual;
    private readonly int[] _match, _slackFrom, _top, _parent, _label, _visited;
    private readonly int[,] _childWith;
    private readonly List<int>[] _cycle;
    private readonly Queue<int> _queue = [];
    private int _last, _visit;

    private WeightedMatching(long[,] weights)
    {
        _count = weights.GetLength(0);
        int size = _count + _count / 2 + 2;
        _edges = new Edge[size, size];
        (_dual, _childWith, _cycle) = (new long[size], new int[size, _count + 1], new List<int>[size]);
        (_match, _slackFrom, _top, _parent, _label, _visited) = (new int[size], new int[size], new int[size], new int[size], new int[size], new int[size]);
        for (int i = 0; i < size; i++) _cycle[i] = [];
        _last = _count;
        long greatest = 0;
        for (int u = 1; u <= _count; u++)
        {
            (_top[u], _childWith[u, u]) = (u, u);
            for (int v = 1; v <= _count; v++)
            {
                _edges[u, v] = new(u, v, u == v ? 0 : weights[u - 1, v - 1]);
                greatest = Math.Max(greatest, _edges[u, v].Weight);
            }
        }

        for (int u = 1; u <= _count; u++) _dual[u] = greatest;
    }

    private readonly record struct Edge(int From, int To, long Weight);

    /// <summary>Each vertex's mate from 0, −1 for one left over. Weights are symmetric, up to 2⁶⁰; 0 is no edge.</summary>
    public static int[] Of(long[,] weights)
    {
        WeightedMatching matching = new(weights);
        while (matching.Augmented()) { }
        return [.. Enumerable.Range(1, matching._count).Select(u => matching._match[u] - 1)];
    }

    private long Slack(in Edge e) => _dual[e.From] + _dual[e.To] - 2 * _edges[e.From, e.To].Weight;

    private bool IsTop(int node) => _top[node] == node;

    // One stage: from all unmatched nodes until one path is augmented, or none can be.
    private bool Augmented()
    {
        Array.Fill(_label, Free);
        Array.Clear(_slackFrom);
        _queue.Clear();
        for (int x = 1; x <= _last; x++)
        {
            if (!IsTop(x) || _match[x] != 0) continue;
            (_parent[x], _label[x]) = (0, Even);
            Enqueue(x);
        }

        if (_queue.Count == 0) return false;
        while (true)
        {
            if (FollowTightEdges()) return true;
            if (!MoveDuals(Step())) return false;
            if (TakeTightened()) return true;
            for (int b = _count + 1; b <= _last; b++)
                if (IsTop(b) && _label[b] == Odd && _dual[b] == 0) Expand(b);
        }
    }

    private bool FollowTightEdges()
    {
        while (_queue.TryDequeue(out int u))
        {
            if (_label[_top[u]] == Odd) continue;
            for (int v = 1; v <= _count; v++)
            {
                if (_edges[u, v].Weight == 0 || _top[u] == _top[v]) continue;
                if (Slack(_edges[u, v]) > 0) NoteSlack(u, _top[v]);
                else if (Take(_edges[u, v])) return true;
            }
        }

        return false;
    }

    private long Step()
    {
        long step = long.MaxValue;
        for (int b = _count + 1; b <= _last; b++)
            if (IsTop(b) && _label[b] == Odd) step = Math.Min(step, _dual[b] / 2);
        for (int x = 1; x <= _last; x++)
        {
            if (!IsTop(x) || _slackFrom[x] == 0 || _label[x] == Odd) continue;
            long slack = Slack(_edges[_slackFrom[x], x]);
            step = Math.Min(step, _label[x] == Free ? slack : slack / 2);
        }

        return step;
    }

    // False where a vertex of an even node has no dual left: no augmenting path would gain weight.
    private bool MoveDuals(long step)
    {
        for (int u = 1; u <= _count; u++)
            if (_label[_top[u]] == Even && _dual[u] <= step) return false;
        for (int u = 1; u <= _count; u++)
            _dual[u] += _label[_top[u]] switch { Even => -step, Odd => step, _ => 0 };
        for (int b = _count + 1; b <= _last; b++)
            if (IsTop(b)) _dual[b] += _label[b] switch { Even => 2 * step, Odd => -2 * step, _ => 0 };
        return true;
    }

    private bool TakeTightened()
    {
        for (int x = 1; x <= _last; x++)
        {
            if (!IsTop(x) || _slackFrom[x] == 0 || _top[_slackFrom[x]] == x) continue;
            Edge edge = _edges[_slackFrom[x], x];
            if (Slack(edge) == 0 && Take(edge)) return true;
        }

        return false;
    }

    // An edge without slack from an even node: it grows the tree, closes a blossom, or joins two trees to a path.
    private bool Take(in Edge edge)
    {
        int u = _top[edge.From], v = _top[edge.To];
        if (_label[v] == Free)
        {
            (_parent[v], _label[v]) = (edge.From, Odd);
            int mate = _top[_match[v]];
            _slackFrom[v] = _slackFrom[mate] = 0;
            _label[mate] = Even;
            Enqueue(mate);
        }
        else if (_label[v] == Even)
        {
            int ancestor = CommonAncestor(u, v);
            if (ancestor != 0) Shrink(u, ancestor, v);
            else
            {
                FlipPath(u, v);
                FlipPath(v, u);
                return true;
            }
        }

        return false;
    }

    private void FlipPath(int u, int v)
    {
        while (true)
        {
            int next = _top[_match[u]];
            Match(u, v);
            if (next == 0) return;
            Match(next, _top[_parent[next]]);
            (u, v) = (_top[_parent[next]], next);
        }
    }

    // Matches a node along its edge to another; inside a blossom the pairs move round the cycle.
    private void Match(int u, int v)
    {
        Edge edge = _edges[u, v];
        _match[u] = edge.To;
        if (u <= _count) return;
        int child = _childWith[u, edge.From], steps = EvenWayTo(u, child);
        List<int> cycle = _cycle[u];
        for (int i = 0; i < steps; i++) Match(cycle[i], cycle[i ^ 1]);
        Match(child, v);
        _cycle[u] = [.. cycle[steps..], .. cycle[..steps]];
    }

    // Turns the cycle so that an even number of edges leads from its base to the child.
    private int EvenWayTo(int blossom, int child)
    {
        List<int> cycle = _cycle[blossom];
        int at = cycle.IndexOf(child);
        if (at % 2 == 0) return at;
        cycle.Reverse(1, cycle.Count - 1);
        return cycle.Count - at;
    }

    private int CommonAncestor(int u, int v)
    {
        for (_visit++; u != 0 || v != 0; (u, v) = (v, u))
        {
            if (u == 0) continue;
            if (_visited[u] == _visit) return u;
            _visited[u] = _visit;
            u = _top[_match[u]];
            if (u != 0) u = _top[_parent[u]];
        }

        return 0;
    }

    private void Shrink(int u, int ancestor, int v)
    {
        int b = _count + 1;
        while (b <= _last && _top[b] != 0) b++;
        _last = Math.Max(_last, b);
        (_dual[b], _label[b], _match[b]) = (0, Even, _match[ancestor]);
        List<int> cycle = _cycle[b] = [ancestor];
        Climb(u);
        cycle.Reverse(1, cycle.Count - 1);
        Climb(v);
        SetTop(b, b);
        JoinEdges(b);
        FindSlack(b);

        void Climb(int from)
        {
            for (int x = from; x != ancestor;)
            {
                int odd = _top[_match[x]];
                cycle.Add(x);
                cycle.Add(odd);
                Enqueue(odd);
                x = _top[_parent[odd]];
            }
        }
    }

    // A blossom's edge to any node is the one of least slack among its children's.
    private void JoinEdges(int b)
    {
        for (int x = 1; x <= _last; x++) _edges[b, x] = _edges[x, b] = default;
        for (int x = 1; x <= _count; x++) _childWith[b, x] = 0;
        foreach (int child in _cycle[b])
        {
            for (int x = 1; x <= _last; x++)
            {
                if (_edges[child, x].Weight == 0) continue;
                if (_edges[b, x].Weight == 0 || Slack(_edges[child, x]) < Slack(_edges[b, x]))
                    (_edges[b, x], _edges[x, b]) = (_edges[child, x], _edges[x, child]);
            }

            for (int x = 1; x <= _count; x++)
                if (_childWith[child, x] != 0) _childWith[b, x] = child;
        }
    }

    private void Expand(int b)
    {
        foreach (int child in _cycle[b]) SetTop(child, child);
        int entry = _childWith[b, _edges[b, _parent[b]].From], steps = EvenWayTo(b, entry);
        List<int> cycle = _cycle[b];
        for (int i = 0; i < steps; i += 2)
        {
            (int odd, int even) = (cycle[i], cycle[i + 1]);
            _parent[odd] = _edges[even, odd].From;
            (_label[odd], _label[even], _slackFrom[odd]) = (Odd, Even, 0);
            FindSlack(even);
            Enqueue(even);
        }

        (_label[entry], _parent[entry]) = (Odd, _parent[b]);
        for (int i = steps + 1; i < cycle.Count; i++)
        {
            _label[cycle[i]] = Free;
            FindSlack(cycle[i]);
        }

        _top[b] = 0;
    }

    private void NoteSlack(int u, int x)
    {
        if (_slackFrom[x] == 0 || Slack(_edges[u, x]) < Slack(_edges[_slackFrom[x], x])) _slackFrom[x] = u;
    }

    private void FindSlack(int x)
    {
        _slackFrom[x] = 0;
        for (int u = 1; u <= _count; u++)
            if (_edges[u, x].Weight > 0 && _top[u] != x && _label[_top[u]] == Even) NoteSlack(u, x);
    }

    private void Enqueue(int node)
    {
        if (node <= _count) _queue.Enqueue(node);
        else foreach (int child in _cycle[node]) Enqueue(child);
    }

    private void SetTop(int node, int top)
    {
        _top[node] = top;
        if (node > _count) foreach (int child in _cycle[node]) SetTop(child, top);
    }
}
