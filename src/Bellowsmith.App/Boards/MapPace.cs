using System.Diagnostics;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Boards;

/// <summary>How many cells of a map go into one slice, so that it takes about as long as it may, and how long the rest will take.</summary>
internal sealed class MapPace
{
    private const int FirstCells = 48, LeastCells = 16, MostCells = 512;
    private const double Slice_s = 0.12, Shortest_s = 1e-3;

    private double _driving_s;

    public int Cells { get; private set; } = FirstCells;

    /// <summary>Null before anything was driven.</summary>
    public double? Left_s(MapRun run) => run.Driven == 0 ? null : _driving_s / run.Driven * (run.Cells - run.Driven);

    public void Time(Action drive)
    {
        long start = Stopwatch.GetTimestamp();
        drive();
        double took_s = Stopwatch.GetElapsedTime(start).TotalSeconds;
        _driving_s += took_s;
        Cells = Math.Clamp((int)(Cells * Slice_s / Math.Max(Shortest_s, took_s)), LeastCells, MostCells);
    }
}
