using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;

namespace Bellowsmith.Benchmarks;

/// <summary>Median time of one call and what it allocates; bytes are null where another process did the work.</summary>
internal readonly record struct Measured(double Median_s, long? Allocated_bytes)
{
    /// <summary>Times every regime in this process, by name.</summary>
    public static Dictionary<string, Measured> Of<T>()
    {
        string artifacts = Directory.CreateTempSubdirectory("bellowsmith-bench-").FullName;
        AccumulationLogger log = new();
        Job job = new Job()
            .WithToolchain(InProcessEmitToolchain.Instance)
            .WithWarmupCount(3).WithIterationCount(9).WithIterationTime(TimeInterval.FromMilliseconds(100));
        try
        {
            Summary summary = BenchmarkRunner.Run<T>(ManualConfig.CreateEmpty()
                .AddJob(job).AddDiagnoser(MemoryDiagnoser.Default).AddLogger(log).WithArtifactsPath(artifacts));
            if (summary.Reports.IsEmpty || !summary.Reports.All(r => r.Success)) throw new InvalidOperationException(log.GetLog());
            return summary.Reports.ToDictionary(r => r.BenchmarkCase.Descriptor.WorkloadMethod.Name, Of);
        }
        finally
        {
            Directory.Delete(artifacts, recursive: true);
        }
    }

    /// <summary>The same with what a call allocates counted on its own thread: the diagnoser counts the whole process, and some of its own.</summary>
    public Measured Counting(Func<double> call)
    {
        const int Calls = 200;
        double sum = call();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int k = 0; k < Calls; k++) sum += call();
        long taken = GC.GetAllocatedBytesForCurrentThread() - before;
        return double.IsNaN(sum) ? throw new InvalidOperationException("A regime without an answer.") : this with { Allocated_bytes = taken / Calls };
    }

    /// <summary>The quieter of two.</summary>
    public static Measured Quieter(Measured one, Measured other) => one.Median_s <= other.Median_s ? one : other;

    private static Measured Of(BenchmarkReport report) =>
        new(report.ResultStatistics!.Median * 1e-9, report.GcStats.GetBytesAllocatedPerOperation(report.BenchmarkCase));
}
