using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>Every pair's gap at every wheel and rack travel looked at.</summary>
internal sealed class ClearanceSweep
{
    private readonly Gap?[] _gaps;

    private ClearanceSweep(CornerShapes shapes, double[] travels_m, double[] racks_m)
    {
        (Shapes, Travels_m, Racks_m) = (shapes, travels_m, racks_m);
        States = new LinkageState?[travels_m.Length * racks_m.Length];
        _gaps = new Gap?[States.Length * shapes.Pairs.Count];
    }

    public CornerShapes Shapes { get; }

    public double[] Travels_m { get; }

    public double[] Racks_m { get; }

    /// <summary>Along the racks first; null where the parts do not go.</summary>
    public LinkageState?[] States { get; }

    /// <summary>At a cell; null where the parts do not go.</summary>
    public Gap? this[int pair, int cell] => _gaps[pair * States.Length + cell];

    public static ClearanceSweep Of(CornerShapes shapes, double[] travels_m, double[] racks_m)
    {
        ClearanceSweep sweep = new(shapes, travels_m, racks_m);
        // Each rack travel is one walk of the linkage; they share nothing, so the answer is the same on any number of cores.
        Parallel.For(0, racks_m.Length, sweep.AtRack);
        return sweep;
    }

    /// <summary>The up to eight cells beside one.</summary>
    public IEnumerable<int> Around(int cell)
    {
        int columns = Racks_m.Length, row = cell / columns, column = cell % columns;
        for (int r = Math.Max(row - 1, 0); r <= Math.Min(row + 1, Travels_m.Length - 1); r++)
            for (int c = Math.Max(column - 1, 0); c <= Math.Min(column + 1, columns - 1); c++)
                if (r != row || c != column) yield return r * columns + c;
    }

    /// <summary>Whether a cell is nearer to drive height and straight ahead than another, or as near and earlier.</summary>
    public bool IsBefore(int cell, int other) => (Away(cell), cell).CompareTo((Away(other), other)) < 0;

    /// <summary>The least room over any margin at every place.</summary>
    public ClearanceGrid Grid(ClearanceMargins margins)
    {
        (double[] room, int[] nearest) = (new double[States.Length], new int[States.Length]);
        for (int cell = 0; cell < States.Length; cell++)
        {
            (room[cell], nearest[cell]) = (double.NaN, -1);
            for (int pair = 0; pair < Shapes.Pairs.Count; pair++)
                if (this[pair, cell]?.Distance_m - margins.Of_m(Shapes.Pairs[pair].Margin) is { } left && !(left >= room[cell])) (room[cell], nearest[cell]) = (left, pair);
        }

        return new(Travels_m, Racks_m, room, nearest, Shapes.Pairs);
    }

    private double Away(int cell) => Math.Abs(Travels_m[cell / Racks_m.Length]) + Math.Abs(Racks_m[cell % Racks_m.Length]);

    private void AtRack(int column)
    {
        LinkagePoint[] points = new LinkagePoint[Travels_m.Length];
        Shapes.Linkage.Sweep(Travels_m, Racks_m[column], points);
        for (int row = 0; row < points.Length; row++)
            if (points[row].State is { } state) Ask(state, row * Racks_m.Length + column);
    }

    private void Ask(LinkageState state, int cell)
    {
        States[cell] = state;
        PassingShape[] shapes = Shapes.At(state);
        for (int pair = 0; pair < Shapes.Pairs.Count; pair++)
        {
            (int one, int other) = Shapes.Indices[pair];
            _gaps[pair * States.Length + cell] = shapes[one].GapTo(shapes[other]);
        }
    }
}
