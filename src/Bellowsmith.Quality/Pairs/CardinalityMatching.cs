namespace Bellowsmith.Quality.Pairs;

/// <summary>
/// The most pairs a graph allows: augmenting paths found breadth first, odd cycles (blossoms) shrunk to their base on the way
/// [Edmonds 1965]. O(n³). Two vertices are joined where their cost is not above a threshold.
/// </summary>
internal sealed class CardinalityMatching
{
    private const int None = -1;

    private readonly double[,] _costs;
    private readonly double _threshold;
    private readonly int _count;
    private readonly int[] _mate, _parent, _base;
    private readonly bool[] _outer, _inBlossom, _onPath;
    private readonly Queue<int> _queue = [];

    private CardinalityMatching(double[,] costs, double threshold)
    {
        (_costs, _threshold, _count) = (costs, threshold, costs.GetLength(0));
        (_mate, _parent, _base) = (new int[_count], new int[_count], new int[_count]);
        (_outer, _inBlossom, _onPath) = (new bool[_count], new bool[_count], new bool[_count]);
        Array.Fill(_mate, None);
    }

    /// <summary>How many pairs there are at most.</summary>
    public static int Size(double[,] costs, double threshold)
    {
        CardinalityMatching matching = new(costs, threshold);
        int pairs = matching.Greedy();
        for (int root = 0; root < matching._count; root++)
            if (matching._mate[root] == None && matching.Augment(root)) pairs++;
        return pairs;
    }

    private bool Joined(int a, int b) => a != b && _costs[a, b] <= _threshold;

    private int Greedy()
    {
        int pairs = 0;
        for (int a = 0; a < _count; a++)
            for (int b = a + 1; b < _count && _mate[a] == None; b++)
                if (_mate[b] == None && Joined(a, b)) (_mate[a], _mate[b], pairs) = (b, a, pairs + 1);
        return pairs;
    }

    // A tree of alternating paths from the root: outer vertices are an even number of edges away.
    private bool Augment(int root)
    {
        Array.Fill(_parent, None);
        for (int i = 0; i < _count; i++) _base[i] = i;
        Array.Clear(_outer);
        _queue.Clear();
        Grow(root);
        while (_queue.TryDequeue(out int outer))
        {
            for (int next = 0; next < _count; next++)
            {
                if (!Joined(outer, next) || _base[outer] == _base[next] || _mate[outer] == next) continue;
                if (next == root || (_mate[next] != None && _parent[_mate[next]] != None)) Shrink(outer, next);
                else if (_parent[next] == None)
                {
                    _parent[next] = outer;
                    if (_mate[next] == None) return Flip(next);
                    Grow(_mate[next]);
                }
            }
        }

        return false;
    }

    private void Grow(int vertex)
    {
        _outer[vertex] = true;
        _queue.Enqueue(vertex);
    }

    private bool Flip(int end)
    {
        while (end != None)
        {
            int before = _parent[end], next = _mate[before];
            (_mate[end], _mate[before], end) = (before, end, next);
        }

        return true;
    }

    private void Shrink(int a, int b)
    {
        int stem = CommonBase(a, b);
        Array.Clear(_inBlossom);
        MarkCycle(a, stem, b);
        MarkCycle(b, stem, a);
        for (int i = 0; i < _count; i++)
        {
            if (!_inBlossom[_base[i]]) continue;
            _base[i] = stem;
            if (!_outer[i]) Grow(i);
        }
    }

    private int CommonBase(int a, int b)
    {
        Array.Clear(_onPath);
        for (a = _base[a]; ; a = _base[_parent[_mate[a]]])
        {
            _onPath[a] = true;
            if (_mate[a] == None) break;
        }

        for (b = _base[b]; !_onPath[b]; b = _base[_parent[_mate[b]]]) { }
        return b;
    }

    private void MarkCycle(int vertex, int stem, int child)
    {
        for (; _base[vertex] != stem; vertex = _parent[_mate[vertex]])
        {
            _inBlossom[_base[vertex]] = _inBlossom[_base[_mate[vertex]]] = true;
            _parent[vertex] = child;
            child = _mate[vertex];
        }
    }
}
