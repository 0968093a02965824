using System.Text.Json;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;
using BenchmarkDotNet.Attributes;

namespace Bellowsmith.Benchmarks;

/// <summary>What is timed. Each returns its answer, so that none is optimised away.</summary>
public class Regimes
{
    private const int Evaluations = 64;

    private BenchKit _kit = null!;
    private StrutCase _strut = null!;
    private string[] _files = [];

    [GlobalSetup]
    public void Prepare()
    {
        _kit = new BenchKit();
        _strut = _kit.Strut();
        _files = _kit.Files;
    }

    [GlobalCleanup]
    public void Leave() => _kit.Dispose();

    [Benchmark]
    public AirSpringFit Fit() => AirSpringFit.Of(_strut.Part.Data);

    [Benchmark]
    public InstalledHeightResult Height() => InstalledHeightStudy.Answer(_strut);

    [Benchmark]
    public double Kernel()
    {
        RateCurve curve = new(_strut, _strut.Spring());
        double sum = 0;
        for (int k = 0; k < RateCurve.Places; k++)
            sum += curve.Rate_N_per_m(RateCurve.HeightAt(_strut.LeastHeight_m, _strut.GreatestHeight_m, k));
        return sum;
    }

    [Benchmark]
    public TravelResult? Travel() => TravelStudy.Answer(_strut);

    [Benchmark]
    public Kit Read() => KitReader.Read(_kit.Path);

    /// <summary>The least that reading the same files can take: their bytes, the documents parsed as JSON.</summary>
    [Benchmark]
    public int ReadBytes()
    {
        int size = 0;
        foreach (string file in _files)
        {
            byte[] bytes = File.ReadAllBytes(file);
            size += bytes.Length;
            if (file.EndsWith(".json", StringComparison.Ordinal)) JsonDocument.Parse(bytes).Dispose();
        }

        return size;
    }

    [Benchmark(OperationsPerInvoke = Evaluations)]
    public double At()
    {
        AirSpring spring = _strut.Fit.Spring;
        double sum = 0;
        for (int k = 0; k < Evaluations; k++) sum += spring.At(0.063 + 0.0007 * k, 2e5 + 4e3 * k).Volume_m3;
        return sum;
    }

    /// <summary>One exponential, a yardstick for the machine.</summary>
    [Benchmark(OperationsPerInvoke = Evaluations)]
    public double Exponential()
    {
        double sum = 0;
        for (int k = 0; k < Evaluations; k++) sum += Math.Exp(0.063 + 0.0007 * k);
        return sum;
    }
}
