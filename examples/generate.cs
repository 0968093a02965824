#!/usr/bin/env dotnet
#:property PublishAot=false
#:property RestorePackagesWithLockFile=false
#:project ../src/Bellowsmith.Physics/Bellowsmith.Physics.csproj

// Writes every CSV file of the invented workshop in examples/fenwright; the documents beside them are written by hand.
//
//     dotnet run examples/generate.cs             writes the files, byte for byte the same on every run
//     dotnet run examples/generate.cs -- truth    prints what the invented springs really are; tests hold the fit to it
//
// All data are invented: no workshop, car, part or reading exists. A bellows is its cords and a wall that gives: the mould's
// crossed cords make area A(h) and volume V0(h) with V0' = A, and the stretch c(h), a polynomial of height, adds to it:
// V = V0(h) + c(h)·p. A wall without loss then has ∂F/∂p = ∂V/∂h, hence F = p·A(h) + ½·p²·c'(h): no spring here contradicts
// virtual work. Low, the wall hangs past its plates, and what it holds there is counted. On top come friction of the wall,
// the zero and gain of each sweep, the reading's own noise, the instrument's rounding, and one force with two digits swapped.

using System.Globalization;
using Bellowsmith.Physics;

const double Inch_m = 0.0254, PoundForce_N = 4.4482216152605, Psi_Pa = PoundForce_N / (Inch_m * Inch_m);

// The cords are those of fenwright/moulds.
var single152 = new Bellows(Cords(1, bead_mm: 40, angle_deg: 25, length_mm: 200), 0.075, [7e-11, 4e-11, 0.5e-11]);
var single140 = new Bellows(Cords(1, bead_mm: 37, angle_deg: 27, length_mm: 175), 0.068, [2e-11, 0.4e-11]);
var double146 = new Bellows(Cords(2, bead_mm: 40, angle_deg: 26, length_mm: 125, plate_mm: 50), 0.090, [8e-11, 4e-11, 0.5e-11]);

if (args is ["truth"])
{
    Truth.Print("single-152", single152, [55, 75, 95]);
    Truth.Print("single-140", single140, [50, 68, 86]);
    Truth.Print("double-146", double146, [70, 90, 115]);
    return;
}

var folder = Path.Combine((string)AppContext.GetData("EntryPointFileDirectoryPath")!, "fenwright");

Write("measured/crimp-diameter-batch.csv", CrimpBatch(parts: 40));
Write("measured/endurance.csv", Endurance());
Write("measured/rear-dampers.csv", Dampers(ofEachHand: 12));
Write("measured/leak-log.csv", LeakLog(minutes: 480));
Write("measured/front-street-clicks.csv", Clicks(runs: 5));
Write("measured/gauge-trial.csv", GaugeTrial(parts: 10, trials: 3));
Write("measured/load-cell-calibration.csv", LoadCell(repeats: 3));
Write("measured/load-cell-checks.csv", LoadCellChecks(days: 10));

// A frame that exports decimal commas, one that exports tabs, one in inches.
Write("springs/single-152.csv", new LoadFrame(single152, 152)
    .Regulated([2e5, 3e5, 4e5, 5e5], Heights(36, 114, 6), repeats: 2)
    .Sealed(76e-3, [3e5], [2.5e5, 3e5, 3.5e5])
    .SmallStrokes((70e-3, 3.2e5), (76e-3, 3.2e5), (94e-3, 3.6e5))
    .SwapDigits(62)
    .Export(';', ',', new("mm", 1e-3, 2), new("bar", 1e5, 3), new("N", 1, 0), new("L", 1e-3, 3)));
Write("springs/single-140.csv", new LoadFrame(single140, 140)
    .Regulated([2e5, 3.2e5, 4.4e5], Heights(37, 97, 5), repeats: 3)
    .Sealed(67e-3, [3.4e5], [3e5, 3.4e5, 3.8e5])
    .SmallStrokes((60e-3, 3.3e5), (75e-3, 3.5e5))
    .Export('\t', '.', new("mm", 1e-3, 2), new("kPa", 1e3, 1), new("N", 1, 0), new("cm3", 1e-6, 0)));
Write("springs/double-146.csv", new LoadFrame(double146, 146)
    .Regulated([30 * Psi_Pa, 45 * Psi_Pa, 60 * Psi_Pa, 75 * Psi_Pa], Heights(50.8, 127, 6.35), repeats: 2)
    .Sealed(91.44e-3, [40 * Psi_Pa], [35 * Psi_Pa, 40 * Psi_Pa, 45 * Psi_Pa])
    .SmallStrokes((86.36e-3, 42 * Psi_Pa), (101.6e-3, 45 * Psi_Pa))
    .Export(',', '.', new("in", Inch_m, 3), new("psi", Psi_Pa, 2), new("lbf", PoundForce_N, 1), new("in3", Inch_m * Inch_m * Inch_m, 1)));

Write("cars/front-ratio.csv", ["wheel travel [mm],strut travel [mm]",
    .. Heights(-60, 60, 10).Select(z => Invariant($"{z * 1e3:0},{Rounded((0.93 * z + 0.2 * z * z) * 1e3, 1)}"))]);
// Ring on a needle at the rod's foot: every click out closes less of a bleed that both strokes share, rebound more of it.
Write("dampers/front-street.csv", new Dyno(rebound_N: 1700, compression_N: 620, softer: 0.925, seed: 22).Signed(clicks: 16, thrice: [0, 4, 5, 6, 7, 8, 12, 15]));
Write("dampers/rear-street.csv", new Dyno(rebound_N: 1480, compression_N: 560, softer: 0.925, seed: 26).ByStroke(clicks: 16, thrice: [6, 7, 8, 9]));
Write("measured/rear-street-warm.csv", new Dyno(rebound_N: 1480, compression_N: 560, softer: 0.925, seed: 27).Warmed([4, 8, 12]));

Write("dampers/stop-22.csv", Stop(22, 11, 260));
Write("dampers/stop-26.csv", Stop(26, 13, 210));
Write("measured/crimp-diameter.csv", Crimps(days: 24, perDay: 5, wornFrom: 12));

static CordBellows Cords(int convolutions, double bead_mm, double angle_deg, double length_mm, double? plate_mm = null) =>
    new(convolutions, bead_mm * 1e-3, angle_deg * Math.PI / 180, length_mm * 1e-3, plateRadius_m: plate_mm * 1e-3);

static double[] Heights(double least_mm, double greatest_mm, double step_mm) =>
    [.. Enumerable.Range(0, (int)((greatest_mm - least_mm) / step_mm + 1.5)).Select(k => (least_mm + k * step_mm) * 1e-3)];

// Cellular stops: soft at first, then steeply harder as the cells close.
static IEnumerable<string> Stop(int free_mm, int solid_mm, double soft_N)
{
    yield return "# Cellular bump stop on the press, third squeeze. Invented data.";
    yield return "compression [mm],force [N]";
    for (double at = 0; at <= free_mm - solid_mm; at++)
    {
        double share = at / (free_mm - solid_mm);
        yield return Invariant($"{at:0},{Rounded(soft_N * share * (1 + share * share * share * (3 + 15 * share * share)), 0)}");
    }
}

void Write(string file, IEnumerable<string> lines) =>
    File.WriteAllText(Path.Combine(folder, file), string.Concat(lines.Select(line => line + "\n")));

// A month on the crimp press, five rings measured a day across the crimp. From one day on the die wears by 2 µm a day.
static IEnumerable<string> Crimps(int days, int perDay, int wornFrom)
{
    yield return "# Fenwright Strut Works, crimp press 2: diameter across the crimp of the upper ring. Invented data.";
    yield return "subgroup,value [mm],note";
    NearlyNormal noise = new(118);
    DateOnly date = new(2027, 2, 1);
    for (int day = 0; day < days; day++, date = date.AddDays(date.DayOfWeek == DayOfWeek.Friday ? 3 : 1))
    {
        double wear_mm = 0.002 * Math.Max(0, day - wornFrom), ofDay_mm = 0.002 * noise.Next();
        for (int k = 0; k < perDay; k++)
        {
            string note = (day, k) switch { (0, 0) => "new die", (7, 2) => "press greased", _ => "" };
            yield return Invariant($"{date:yyyy-MM-dd},{Rounded(118.4 + wear_mm + ofDay_mm + 0.015 * noise.Next(), 3)},{note}");
        }
    }
}

// Dampers from the dyno, before left and right are chosen for a car: a dozen of each hand, valves a little apart by lot.
static IEnumerable<string> Dampers(int ofEachHand)
{
    yield return "# Fenwright Strut Works, rear dampers at click 8: force at 0.13 m/s, mean of three strokes. Invented data.";
    yield return "unit,hand,characteristic,value [N],tolerance [N]";
    NearlyNormal noise = new(211);
    for (int unit = 1; unit <= 2 * ofEachHand; unit++)
    {
        double ofUnit = noise.Next();
        string hand = unit % 2 == 1 ? "left" : "right";
        yield return Invariant($"R{unit:00},{hand},rebound,{Rounded(905 + 24 * ofUnit + 10 * noise.Next(), 0)},30");
        yield return Invariant($"R{unit:00},{hand},compression,{Rounded(412 + 9 * ofUnit + 8 * noise.Next(), 0)},20");
    }
}

// A spring held at 80 mm loses 0.2 kPa an hour. Its air comes hot from the pump and settles within minutes, unseen by the thermometer on
// its plate; the room swings, and air and thermometer follow it not quite together.
static IEnumerable<string> LeakLog(int minutes)
{
    yield return "# Fenwright Strut Works, single 152 in the rigid frame at 80 mm, 1.30 L with its line. Invented data.";
    yield return "time [min],gauge pressure [kPa],temperature [degC]";
    NearlyNormal noise = new(319);
    double apart_K = 0;
    for (int minute = 0; minute <= minutes; minute++)
    {
        double room_K = 294.6 - 0.002 * minute + 0.35 * Math.Sin(minute / 37.0);
        apart_K = 0.9 * apart_K + 0.008 * noise.Next();
        double air_K = room_K + apart_K + 1.4 * Math.Exp(-minute / 4.0);
        double absolute_kPa = (801.3 - 0.2 * minute / 60) * air_K / 294.6;
        yield return Invariant($"{minute},{Rounded(absolute_kPa - 101.325 + 0.02 * noise.Next(), 2)},{Rounded(room_K - 273.15 + 0.01 * noise.Next(), 2)}");
    }
}

static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

// No "-0.0": an instrument does not write one.
static string Rounded(double value, int places) =>
    (Math.Round(value, places) + 0.0).ToString("F" + places, CultureInfo.InvariantCulture);

// A steady batch whose dies close a little wide of the middle between 118.25 and 118.55 mm.
static IEnumerable<string> CrimpBatch(int parts)
{
    yield return "# Diameter across the crimp, one batch in the order crimped. Invented data.";
    yield return "value [mm]";
    NearlyNormal noise = new(45);
    for (int part = 0; part < parts; part++) yield return Rounded(118.41 + 0.03 * noise.Next(), 3);
}

// Two parts were cut up before they failed; the bench was stopped at 1.2 million cycles.
static IEnumerable<string> Endurance()
{
    yield return "# Springs on the endurance bench, full stroke at 5 bar gauge. Invented data.";
    yield return "life [cycles],outcome";
    foreach ((int thousands, bool failed) in new[]
    {
        (695, true), (906, true), (1140, true), (420, true), (500, false), (1200, false), (482, true), (653, true), (749, true),
        (986, true), (790, true), (800, false), (1106, true), (581, true), (1200, false), (1200, false), (1200, false), (1200, false),
    })
        yield return Invariant($"{thousands}000,{(failed ? "failed" : "survived")}");
}

// Eight clicks of a damper that warms from run to run; from 5 to 6 the needle hardly moves the bleed.
static IEnumerable<string> Clicks(int runs)
{
    yield return "# Front street damper, rebound at 0.13 m/s, clicks from fully closed, the damper warming from run to run. Invented data.";
    yield return "click,run,value [N]";
    NearlyNormal noise = new(77);
    double[] force_N = [1180, 1079, 985, 903, 826, 760, 753, 701];
    for (int run = 1; run <= runs; run++)
        for (int click = 0; click < force_N.Length; click++)
            yield return Invariant($"{click},{run},{Rounded(force_N[click] - 12 * (1 - Math.Exp(-0.5 * (run - 1))) + 1.6 * noise.Next(), 1)}");
}

// Ten crimped rings, three hands, a bench micrometer read to 5 µm; one hand presses harder.
static IEnumerable<string> GaugeTrial(int parts, int trials)
{
    yield return "# Fenwright Strut Works: bench micrometer on the diameter across the crimp. Invented data.";
    yield return "part,appraiser,trial,value [mm]";
    NearlyNormal noise = new(61);
    double[] sizes_mm = [.. Enumerable.Range(0, parts).Select(_ => 118.4 + 0.04 * noise.Next())];
    foreach ((string appraiser, double bias_mm) in new[] { ("early", 0.003), ("late", -0.007), ("bench", 0.002) })
        for (int trial = 1; trial <= trials; trial++)
            for (int part = 0; part < parts; part++)
                yield return Invariant($"R{part + 1},{appraiser},{trial},{Rounded(Math.Round((sizes_mm[part] + bias_mm + 0.008 * noise.Next()) / 0.005) * 0.005, 3)}");
}

// A load cell of 10 kN at 2 mV/V that bends by some 2 µV/V in the middle, read to 0.01 µV/V.
static double Signal_mV_per_V(double force_N, NearlyNormal noise) =>
    0.0021 + 2.0004e-4 * force_N - 1.2e-10 * force_N * force_N + 1.2e-4 * noise.Next();

static IEnumerable<string> LoadCell(int repeats)
{
    yield return "# Load frame's load cell against the reference cell, up in steps, unloaded between the series. Invented data.";
    yield return "series,reference [N],reading [mV/V]";
    NearlyNormal noise = new(10);
    for (int series = 1; series <= repeats; series++)
        for (int force_N = 1000; force_N <= 10000; force_N += 1000)
            yield return Invariant($"{series},{force_N},{Rounded(Signal_mV_per_V(force_N, noise), 5)}");
}

// The same cell on later days: from the first it walks by 12 mN a day.
static IEnumerable<string> LoadCellChecks(int days)
{
    yield return "# Three dead weights hung on the load frame every Monday. Invented data.";
    yield return "day,standard,reference [N],reading [mV/V]";
    NearlyNormal noise = new(11);
    for (int day = 7; day <= 7 * days; day += 7)
        foreach ((string standard, int force_N) in new[] { ("W2", 2000), ("W5", 5000), ("W9", 9000) })
            yield return Invariant($"{day},{standard},{force_N},{Rounded(Signal_mV_per_V(force_N + 0.012 * day, noise), 5)}");
}

/// <summary>
/// What a spring really is: its cords, and how its wall gives, a polynomial of x = (h − middle)/40 mm; SI; gauge pressures.
/// Heights are between the outer faces of two end plates of 6 mm, which hold no air.
/// </summary>
internal sealed record Bellows(CordBellows Cords, double Middle_m, double[] Stretch_m3_per_Pa)
{
    private const double Ambient_Pa = 101_325, Reach_m = 0.040, Plates_m = 0.012;

    public double Force_N(double height_m, double gaugePressure_Pa) =>
        gaugePressure_Pa * Shape(height_m).EffectiveArea_m2
        + gaugePressure_Pa * gaugePressure_Pa * Slope(Stretch_m3_per_Pa, Place(height_m)) / Reach_m / 2;

    public double Volume_m3(double height_m, double gaugePressure_Pa) =>
        Shape(height_m).Volume_m3 + Sum(Stretch_m3_per_Pa, Place(height_m)) * gaugePressure_Pa;

    /// <summary>Gauge pressure when the air shut in at one state is brought to another height: pabs·Vⁿ is kept.</summary>
    public double Sealed_Pa(double height_m, double fromHeight_m, double fromGaugePressure_Pa, double exponent)
    {
        double kept = Content(Volume_m3(fromHeight_m, fromGaugePressure_Pa), fromGaugePressure_Pa), low = 0, high = 30e5;
        double slack = Volume_m3(height_m, 0), stretch = Sum(Stretch_m3_per_Pa, Place(height_m));
        for (int step = 0; step < 60; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = Content(slack + stretch * middle, middle) < kept ? (middle, high) : (low, middle);
        }

        return low;

        double Content(double volume, double gauge) => Math.Log(gauge + Ambient_Pa) + exponent * Math.Log(volume);
    }

    /// <summary>−dF/dh with the air shut in, from the law itself.</summary>
    public double SealedRate_N_per_m(double height_m, double gaugePressure_Pa, double exponent)
    {
        const double step_m = 1e-5;
        return (At(height_m - step_m) - At(height_m + step_m)) / (2 * step_m);

        double At(double height) => Force_N(height, Sealed_Pa(height, height_m, gaugePressure_Pa, exponent));
    }

    private CordShape Shape(double height_m) => Cords.At(height_m - Plates_m)!.Value;

    private double Place(double height_m) => (height_m - Middle_m) / Reach_m;

    private static double Sum(double[] c, double x) => c.Reverse().Aggregate(0.0, (sum, next) => sum * x + next);

    private static double Slope(double[] c, double x) => Sum([.. c.Skip(1).Select((next, k) => next * (k + 1))], x);
}

/// <summary>A load frame with its errors: what it writes down of a spring.</summary>
internal sealed class LoadFrame(Bellows spring, ulong seed)
{
    private const double SlowExponent = 1.01, FastExponent = 1.36, FastSpread = 0.005, SmallStrokeStiffer = 1.15, Stroke_m = 0.002;

    private readonly NearlyNormal _noise = new(seed);
    private readonly List<Reading> _readings = [];
    private double[] _heights_m = [];
    private int _sweep;
    private double _zero_N, _gain;

    /// <summary>Gauge pressure held at each level; the water that fills the spring is weighed in the first cycle of each.</summary>
    public LoadFrame Regulated(double[] gaugePressures_Pa, double[] heights_m, int repeats)
    {
        _heights_m = heights_m;
        for (int repeat = 0; repeat < repeats; repeat++)
            foreach (double gauge in gaugePressures_Pa)
                Cycle("regulated", () => _ => gauge * (1 + 0.002 * Noise()), weighWater: repeat == 0);
        return this;
    }

    /// <summary>The valve shut at one height, at each of these gauge pressures.</summary>
    public LoadFrame Sealed(double height_m, double[] slow_Pa, double[] fast_Pa)
    {
        foreach (double gauge in slow_Pa) Cycle("sealed slow", () => Shut(gauge, SlowExponent));
        foreach (double gauge in fast_Pa) Cycle("sealed fast", () => Shut(gauge, FastExponent + FastSpread * Noise()));
        return this;

        Func<double, double> Shut(double gauge, double exponent) => h => spring.Sealed_Pa(h, height_m, gauge, exponent);
    }

    /// <summary>Rubber is stiffer the less it is worked: these readings stay out of the curve and show by how much.</summary>
    public LoadFrame SmallStrokes(params ReadOnlySpan<(double Height_m, double GaugePressure_Pa)> setPoints)
    {
        foreach (var (height, gauge) in setPoints) SmallStroke(height, gauge);
        return this;
    }

    /// <summary>The hand that typed one force in wrote its hundreds and tens the wrong way round.</summary>
    public LoadFrame SwapDigits(int reading)
    {
        double force = Math.Round(_readings[reading].Force_N), tens = Math.Floor(force / 10) % 10, hundreds = Math.Floor(force / 100) % 10;
        _readings[reading] = _readings[reading] with { Force_N = force + 90 * (tens - hundreds) };
        return this;
    }

    public IEnumerable<string> Export(char separator, char mark, Column length, Column gaugePressure, Column force, Column volume)
    {
        yield return "# Fenwright Strut Works, load frame. Bare spring, no rod. Invented data.";
        yield return string.Join(separator,
            $"height [{length.Unit}]", $"gauge pressure [{gaugePressure.Unit}]", $"force [{force.Unit}]", $"volume [{volume.Unit}]",
            $"amplitude [{length.Unit}]", "mode", "direction", "sweep");
        foreach (Reading reading in _readings)
            yield return string.Join(separator,
                Text(reading.Height_m, length), Text(reading.GaugePressure_Pa, gaugePressure), Text(reading.Force_N, force),
                Text(reading.Volume_m3, volume), Text(reading.Amplitude_m, length), reading.Mode, reading.Direction, reading.Sweep);

        string? Text(double? value, Column column) =>
            (value / column.Size)?.ToString("F" + column.Places, CultureInfo.InvariantCulture).Replace('.', mark);
    }

    // Down and up again; each way has a gauge pressure of its own, since no two fast strokes take the same time.
    private void Cycle(string mode, Func<Func<double, double>> gaugePressure_Pa, bool weighWater = false)
    {
        string sweep = NextSweep();
        Func<double, double> down = gaugePressure_Pa(), up = gaugePressure_Pa();
        foreach (double height in _heights_m.Reverse()) Read("compressing", height, down, +1, weighWater);
        foreach (double height in _heights_m) Read("extending", height, up, -1, false);

        void Read(string direction, double nominal_m, Func<double, double> pressed, int friction, bool volume)
        {
            double height = nominal_m + 2e-5 * Noise(), gauge = pressed(height);
            double force = spring.Force_N(height, gauge) + friction * (5 + 4e-5 * gauge);
            Note(height, gauge, force, volume ? spring.Volume_m3(height, gauge) + 1.2e-6 * Noise() : null, null, mode, direction, sweep);
        }
    }

    private void SmallStroke(double height_m, double gaugePressure_Pa)
    {
        string sweep = NextSweep();
        double rate = SmallStrokeStiffer * spring.SealedRate_N_per_m(height_m, gaugePressure_Pa, FastExponent);
        for (int step = -3; step <= 3; step++)
        {
            double away = step * Stroke_m / 3, gauge = spring.Sealed_Pa(height_m + away, height_m, gaugePressure_Pa, FastExponent);
            Note(height_m + away, gauge, spring.Force_N(height_m, gaugePressure_Pa) - rate * away, null, Stroke_m, "sealed fast", "extending", sweep);
        }
    }

    private void Note(double height_m, double gauge_Pa, double force_N, double? volume_m3, double? amplitude_m, string mode, string direction, string sweep) =>
        _readings.Add(new(height_m, gauge_Pa + 60 * Noise(), force_N * (1 + _gain) + _zero_N + 1.5 * Noise(), volume_m3, amplitude_m, mode, direction, sweep));

    private string NextSweep()
    {
        (_zero_N, _gain) = (3 * Noise(), 0.0008 * Noise());
        return (++_sweep).ToString("00", CultureInfo.InvariantCulture);
    }

    private double Noise() => _noise.Next();

    private sealed record Reading(
        double Height_m, double GaugePressure_Pa, double Force_N, double? Volume_m3, double? Amplitude_m, string Mode, string Direction, string Sweep);
}

/// <summary>
/// Nearly normal, deviation 1: twelve uniform numbers (splitmix64) less their mean, so that no platform rounds otherwise.
/// </summary>
internal sealed class NearlyNormal(ulong seed)
{
    private ulong _state = seed;

    public double Next()
    {
        double sum = -6;
        for (int k = 0; k < 12; k++)
        {
            ulong z = _state += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            sum += ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
        }

        return sum;
    }
}

/// <summary>
/// A damper on the dyno, peak velocity: force over the knee of its shims and what its piston passes, in N at 1 m/s and click 0;
/// each click takes away the same share. Later runs are warmer, and each reading has noise of its own.
/// </summary>
internal sealed class Dyno(double rebound_N, double compression_N, double softer, ulong seed)
{
    private static readonly double[] _speeds_m_per_s = [0.05, 0.13, 0.26, 0.52, 1.04];

    private readonly NearlyNormal _noise = new(seed);

    /// <summary>Counted from closed, rebound +, every speed out and in, in m/s and N.</summary>
    public IEnumerable<string> Signed(int clicks, int[] thrice)
    {
        yield return "# Fenwright Strut Works, dyno, 100 mm stroke, gas force taken out. Invented data.";
        yield return "click,velocity [m/s],force [N],temperature [degC],run";
        foreach (var (click, run, speed, stroke) in Order(clicks, thrice))
            yield return Invariant($"{click},{stroke * speed:0.00},{stroke * Force(click, run, speed, stroke):0},{Warmth(run)},{run}");
    }

    /// <summary>Counted from open, the stroke in a word, in mm/s and kN with a decimal comma.</summary>
    public IEnumerable<string> ByStroke(int clicks, int[] thrice)
    {
        yield return "# Fenwright Strut Works, the old dyno. Clicks out from the stop of the open side. Invented data.";
        yield return "run;click;direction;velocity [mm/s];force [kN]";
        foreach (var (click, run, speed, stroke) in Order(clicks, thrice))
            yield return Invariant($"{run};{clicks - 1 - click};{(stroke > 0 ? "rebound" : "compression")};{speed * 1e3:0};{Force(click, run, speed, stroke) / 1e3:0.000}").Replace('.', ',');
    }

    /// <summary>Some clicks cold, warm and cold again, the oil thinner by 0.15 % a kelvin.</summary>
    public IEnumerable<string> Warmed(int[] clicks)
    {
        yield return "# Fenwright Strut Works, dyno, 100 mm stroke, gas force taken out: cold, warmed on the dyno, cold again. Invented data.";
        yield return "click,velocity [m/s],force [N],temperature [degC],run";
        foreach (var (run, warmth) in new[] { (1, 24), (2, 56), (3, 25) })
            foreach (var click in clicks)
                foreach (var speed in _speeds_m_per_s)
                    foreach (var stroke in new[] { 1, -1 })
                        yield return Invariant($"{click},{stroke * speed:0.00},{stroke * Force(click, 1, speed, stroke) * Math.Exp(-0.0015 * (warmth - 24)):0},{warmth},{run}");
    }

    private static IEnumerable<(int Click, int Run, double Speed, int Stroke)> Order(int clicks, int[] thrice) =>
        from run in Enumerable.Range(1, 3)
        from click in Enumerable.Range(0, clicks)
        where run == 1 || thrice.Contains(click)
        from speed in _speeds_m_per_s
        from stroke in Enumerable.Range(0, 2).Select(half => 1 - 2 * half)
        select (click, run, speed, stroke);

    private double Force(int click, int run, double speed, int stroke)
    {
        double bleed = Math.Pow(softer, click), thin = 1 - 0.003 * (run - 1), friction = 18 * Math.Tanh(speed / 0.005);
        double force = stroke > 0
            ? rebound_N * bleed * (Math.Tanh(speed / 0.16) + 0.75 * speed)
            : compression_N * Math.Sqrt(bleed) * (Math.Tanh(speed / 0.14) + 1.3 * speed);
        return (force * thin + friction) * (1 + 0.004 * _noise.Next()) + 1.5 * _noise.Next();
    }

    private static int Warmth(int run) => 22 + 4 * run;

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>How the frame writes a quantity: its unit, the unit's size in SI, decimal places.</summary>
internal readonly record struct Column(string Unit, double Size, int Places);

internal static class Truth
{
    public static void Print(string name, Bellows spring, int[] heights_mm)
    {
        foreach (int height_mm in heights_mm)
            foreach (double gauge_Pa in new[] { 250e3, 350e3, 450e3 })
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{name} at {height_mm} mm, {gauge_Pa / 1e3:0} kPa: area {spring.Force_N(height_mm * 1e-3, gauge_Pa) / gauge_Pa * 1e4:0.00} cm2, volume {spring.Volume_m3(height_mm * 1e-3, gauge_Pa) * 1e6:0.0} cm3, sealed rate at n = 1.36 {spring.SealedRate_N_per_m(height_mm * 1e-3, gauge_Pa, 1.36) / 1e3:0.00} N/mm"));
    }
}
