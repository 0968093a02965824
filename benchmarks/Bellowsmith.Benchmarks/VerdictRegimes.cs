using Bellowsmith.Quality.Charts;
using Bellowsmith.Quality.Clicks;
using Bellowsmith.Quality.Gauges;
using Bellowsmith.Quality.Pairs;
using BenchmarkDotNet.Attributes;

namespace Bellowsmith.Benchmarks;

/// <summary>Verdicts that are timed. Each returns its answer, so that none is optimised away.</summary>
public class VerdictRegimes
{
    private double[] _series = [], _forces = [];
    private int[] _clicks = [], _runs = [];
    private double[,] _batch = new double[0, 0];

    internal CrossedTrial Trial { get; private set; } = null!;

    [GlobalSetup]
    public void Prepare()
    {
        (_series, _forces, _batch) = (VerdictData.Series(), VerdictData.Forces(), VerdictData.Batch());
        Trial = new(VerdictData.Parts, VerdictData.Appraisers, VerdictData.Trials, VerdictData.Trial());
        _clicks = [.. Enumerable.Range(0, _forces.Length).Select(k => k % VerdictData.Clicks)];
        _runs = [.. Enumerable.Range(0, _forces.Length).Select(k => k / VerdictData.Clicks)];
    }

    [Benchmark]
    public int Chart() => IndividualsChart.Draw(_series, ChartBasis.All, VerdictData.Rules).Signals.Length;

    [Benchmark]
    public double Gauge() => CrossedAnova.Of(new(VerdictData.Parts, VerdictData.Appraisers, VerdictData.Trials, Trial.Values.ToArray())).Components.GaugeRr;

    [Benchmark]
    public int ClickSteps() => ClickStudy.Answer(ClickTable.Of(_clicks, _runs, _forces)).Steps.Count;

    [Benchmark]
    public double Pairs() => Pairing.Of(_batch, [1, 1]).Worst ?? 0;

    [Benchmark]
    public double PairsByHand() => Pairing.Of(_batch, [1, 1], VerdictData.Hands).Worst ?? 0;
}
