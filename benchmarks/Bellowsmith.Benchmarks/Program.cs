using System.Globalization;
using Bellowsmith.Benchmarks;
using Bellowsmith.Kits.Studies.InstalledHeight;

// Arguments, from ./bench: the repository's root, a Python with SciPy or "", the SDK's version, "--save" or nothing.
(string root, string python, string sdk) = (args[0], args[1], args[2]);
const int Rounds = 3;
string busy = Report.Busy();
string benchmarks = Path.Combine(root, "benchmarks");

using BenchKit kit = new();
string launcher = Path.Combine(root, "bellowsmith");
Dictionary<string, Measured> timed = [];
SciPy? scipy = null;
SciPyVerdicts? verdicts = null;
SciPyRide? ride = null;
for (int round = 1; round <= Rounds; round++)
{
    Console.Error.WriteLine($"Round {round} of {Rounds} ...");
    Keep(Measured.Of<Regimes>());
    Keep(Measured.Of<VerdictRegimes>());
    Keep(Measured.Of<RideRegimes>());
    Keep(Measured.Of<LinkageRegimes>());
    Keep(Measured.Of<ClearanceRegimes>());
    Measured[] processes = ProcessStart.Of(
        [launcher, "--version"], [launcher, "height", kit.Path, "--json"],
        ["dotnet", Path.Combine(AppContext.BaseDirectory, "EmptyProgram.dll")]);
    Keep(new() { ["Version"] = processes[0], ["HeightCommand"] = processes[1], ["EmptyProgram"] = processes[2] });
    if (python.Length == 0) continue;
    scipy = SciPy.Run(python, Path.Combine(benchmarks, "scipy", "fit_and_height.py"), kit);
    Keep(scipy.Timed);
    verdicts = SciPyVerdicts.Run(python, Path.Combine(benchmarks, "scipy", "verdicts.py"), kit);
    Keep(verdicts.Timed);
    ride = SciPyRide.Run(python, Path.Combine(benchmarks, "scipy", "ride.py"), kit);
    Keep(ride.Timed);
}

(Regimes regimes, ClearanceRegimes gaps) = (new(), new());
regimes.Prepare();
foreach ((string name, Func<double> call) in new (string, Func<double>)[] { ("Kernel", regimes.Kernel), ("At", regimes.At), ("TyreToBellows", gaps.TyreToBellows), ("TyreToTieRod", gaps.TyreToTieRod) })
    timed[name] = timed[name].Counting(call);
regimes.Leave();

Line[] lines =
[
    new("fit of 300 rows with its band", timed["Fit"], "SciPy, the same fit", InSciPy("fit"), MostTime_s: 30e-3),
    new("height study", timed["Height"], "SciPy, solutions and their band only", InSciPy("solve"), MostTime_s: 100e-6),
    new("its kernel, 129 rates over height", timed["Kernel"], "SciPy, 129 rates as arrays", InSciPy("scan"), MostBytes: 0),
    new("spring at a height", timed["At"], "one Math.Exp", timed["Exponential"], MostBytes: 0),
    new("travel study", timed["Travel"], "height study", timed["Height"]),
    new("reading a kit", timed["Read"], "bytes of its files, JSON parsed", timed["ReadBytes"]),
    new("chart of 1 000 000 values, four rules", timed["Chart"], "NumPy, the same signals", InSciPy("SciPy chart"), MostTime_s: 150e-3),
    new("gauge trial 10 × 3 × 3 by anova", timed["Gauge"], "NumPy and SciPy, the same", InSciPy("SciPy gauge"), MostTime_s: 1e-3),
    new("clicks, 8 by 5 runs", timed["ClickSteps"], "gauge trial", timed["Gauge"]),
    new("200 units paired, left and right", timed["PairsByHand"], "SciPy, bisection on assignments", InSciPy("SciPy pairs"), MostTime_s: 50e-3),
    new("200 units paired, any with any", timed["Pairs"], "left and right", timed["PairsByHand"], MostTime_s: 50e-3),
    new("a second of ride, two threads", timed["OnTwoThreads"], "Numba, RK4 on two threads", InSciPy("Numba ride"), MostTime_s: 4e-6, LeastTimesFaster: 10),
    new("the same", timed["OnTwoThreads"], "SciPy, LSODA", InSciPy("SciPy ride"), LeastTimesFaster: 40_000),
    new("a second of ride, one thread", timed["OnOneThread"], "two threads", timed["OnTwoThreads"]),
    new("corner by corner, its scalar twin", timed["OneByOne"], "one thread, eight lanes", timed["OnOneThread"]),
    new("strut corner, 41 travels × 21 racks", timed["StrutSweep"], "height study", timed["Height"], MostTime_s: 2e-3),
    new("five links, 41 travels × 21 racks", timed["FiveLinkSweep"], "strut corner", timed["StrutSweep"], MostTime_s: 6e-3),
    new("gap of tyre and bellows, 30 corners each", timed["TyreToBellows"], "tyre and tube", timed["TyreToTube"], MostTime_s: 25e-6, MostBytes: 0),
    new("gap of tyre and tie rod", timed["TyreToTieRod"], "tyre and tube", timed["TyreToTube"], MostBytes: 0),
    new("bellowsmith --version, warm", timed["Version"], "empty program on dotnet", timed["EmptyProgram"]),
    new("bellowsmith height KIT.json, warm", timed["HeightCommand"], "empty program on dotnet", timed["EmptyProgram"]),
];
string report = Report.Machine(scipy, sdk, busy, Rounds) + Environment.NewLine + Report.Table(lines);
report += Environment.NewLine + Report.Ride(timed) + Environment.NewLine;
bool agrees = true;
if (scipy is not null)
{
    InstalledHeightResult ours = InstalledHeightStudy.Answer(kit.Strut());
    agrees = !scipy.Disagreements(ours).Any();
    string[] apart = [.. verdicts!.Disagreements()];
    agrees &= apart.Length == 0;
    report += Environment.NewLine + (apart.Length == 0 ? "Verdicts: the same signals, gauge and worst pair in NumPy and SciPy." : "Verdicts differ: " + string.Join("; ", apart)) + Environment.NewLine;
    string[] elsewhere = [.. ride!.Disagreements()];
    agrees &= elsewhere.Length == 0;
    report += Environment.NewLine + (elsewhere.Length == 0 ? $"Ride: the same r.m.s. acceleration within 0.5 % by {ride.Versions}." : "Rides differ: " + string.Join("; ", elsewhere)) + Environment.NewLine;
    report += Environment.NewLine + Report.Agreement(ours, scipy) + Environment.NewLine;
}

Console.Write(report);
if (args.Contains("--save"))
{
    string date = DateTime.UtcNow.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    File.WriteAllText(Path.Combine(benchmarks, "results", $"{date}.md"), $"# Benchmarks, {date}\n\n{report}");
}

return agrees && lines.All(l => l.Holds) ? 0 : 1;

void Keep(Dictionary<string, Measured> round)
{
    foreach ((string name, Measured here) in round)
        timed[name] = timed.TryGetValue(name, out Measured before) ? Measured.Quieter(before, here) : here;
}

Measured? InSciPy(string name) => timed.TryGetValue(name, out Measured measured) ? measured : null;
