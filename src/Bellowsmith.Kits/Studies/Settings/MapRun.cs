using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Settings;

/// <summary>
/// A map being driven, coarse cells first, so that it can be looked at while it grows. Each cell is the ride of its own setting,
/// to the last bit.
/// </summary>
public sealed class MapRun
{
    private const int CoarsestStride = 8;

    private readonly Trials _trials = new();
    private readonly int[] _order;
    private readonly RideFigures?[] _figures;
    private readonly string?[] _reasons;
    private int _next;

    public MapRun(MapQuestion question)
    {
        Question = question;
        (int columns, int rows) = (question.X.Values.Count, question.Y.Values.Count);
        (_figures, _reasons) = (new RideFigures?[columns * rows], new string?[columns * rows]);
        _order = CoarseFirst(columns, rows);
    }

    /// <summary>May change to one that <see cref="MapQuestion.DrivesAs"/> this: what is shown and where the setting stands.</summary>
    public MapQuestion Question { get; set; }

    public bool IsDone => _next == _order.Length;

    /// <summary>Cells settled so far.</summary>
    public int Driven => _next;

    public int Cells => _order.Length;

    /// <summary>What one cell came to; null where it is infeasible or not yet driven.</summary>
    public RideFigures? At(int column, int row) => _figures[row * Question.X.Values.Count + column];

    /// <summary>Why a cell is infeasible; null where it is not or not yet known.</summary>
    public string? Reason(int column, int row) => _reasons[row * Question.X.Values.Count + column];

    /// <summary>The value shown, SI; NaN where there is none.</summary>
    public double Value(int column, int row) => At(column, row) is { } figures ? Question.Show.Of(figures, Question.At(column, row).Road) : double.NaN;

    /// <summary>Drives everything that is left.</summary>
    public MapRun All(CancellationToken cancel = default)
    {
        while (!IsDone) Advance(_order.Length, cancel);
        return this;
    }

    /// <summary>Drives the next so many cells on all cores.</summary>
    /// <exception cref="OperationCanceledException">Cancelled; the cells of this call are then still to be driven.</exception>
    public void Advance(int cells, CancellationToken cancel = default)
    {
        int end = Math.Min(_order.Length, _next + cells), columns = Question.X.Values.Count;
        int[] now = _order[_next..end];
        TrialResult[] results = _trials.Over(Array.ConvertAll(now, cell => Question.At(cell % columns, cell / columns)), cancel);
        for (int k = 0; k < now.Length; k++) (_figures[now[k]], _reasons[now[k]]) = (results[k].Figures, results[k].Reason);
        _next = end;
    }

    // Every eighth cell each way, then every fourth, second and single one of those still left.
    private static int[] CoarseFirst(int columns, int rows)
    {
        List<int> order = [];
        for (int stride = CoarsestStride; stride >= 1; stride /= 2)
        {
            for (int row = 0; row < rows; row += stride)
                for (int column = 0; column < columns; column += stride)
                    if (stride == CoarsestStride || row % (2 * stride) != 0 || column % (2 * stride) != 0) order.Add(row * columns + column);
        }

        return [.. order];
    }
}
