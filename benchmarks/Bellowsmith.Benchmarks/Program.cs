using System.Globalization;
using Bellowsmith.Benchmarks;
using Bellowsmith.Kits.Studies.InstalledHeight;

// Arguments, from ./bench: the repository's root, a Python with SciPy or "", the SDK's version, "--save" or nothing.
(string root, string python, string sdk) = (args[0], args[1], args[2]);
string benchmarks = Path.Combine(root, "benchmarks");

using BenchKit kit = new();
Console.Error.WriteLine("Timing the regimes ...");
Dictionary<string, Measured> timed = Measured.Regimes();
Console.Error.WriteLine("Timing the start of a process ...");
(Measured launcher, Measured empty) = ProcessStart.Compare(
    [Path.Combine(root, "bellowsmith"), "--version"], ["dotnet", Path.Combine(AppContext.BaseDirectory, "EmptyProgram.dll")]);
Console.Error.WriteLine("Timing SciPy ...");
SciPy? scipy = python.Length == 0 ? null : SciPy.Run(python, Path.Combine(benchmarks, "scipy", "fit_and_height.py"), kit);

Line[] lines =
[
    new("fit of 300 rows with its band", timed["Fit"], "SciPy, the same fit", scipy?.Fit, MostTime_s: 30e-3),
    new("height study", timed["Height"], "SciPy, solutions and their band only", scipy?.Solve, MostTime_s: 100e-6),
    new("its kernel, 129 rates over height", timed["Kernel"], "SciPy, 129 rates as arrays", scipy?.Scan, MostBytes: 0),
    new("spring at a height", timed["At"], "one Math.Exp", timed["Exponential"], MostBytes: 0),
    new("travel study", timed["Travel"], "height study", timed["Height"]),
    new("reading a kit", timed["Read"], "bytes of its files, JSON parsed", timed["ReadBytes"]),
    new("bellowsmith --version, warm", launcher, "empty program on dotnet", empty),
];
string report = Report.Machine(scipy, sdk) + Environment.NewLine + Report.Table(lines);
bool agrees = true;
if (scipy is not null)
{
    InstalledHeightResult ours = InstalledHeightStudy.Answer(kit.Strut());
    agrees = !scipy.Disagreements(ours).Any();
    report += Environment.NewLine + Report.Agreement(ours, scipy) + Environment.NewLine;
}

Console.Write(report);
if (args.Contains("--save"))
{
    string date = DateTime.UtcNow.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    File.WriteAllText(Path.Combine(benchmarks, "results", $"{date}.md"), $"# Benchmarks, {date}\n\n{report}");
}

return agrees && lines.All(l => l.Holds) ? 0 : 1;
