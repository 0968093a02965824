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
