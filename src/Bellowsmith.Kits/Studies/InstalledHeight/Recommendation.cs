using System.Globalization;

namespace Bellowsmith.Kits.Studies.InstalledHeight;

/// <summary>
/// Which solution to build: among those within the pressure limit the one that lacks least of travel both ways, of distance
/// from the data's edge and of the thread's reach; where they lack alike, the one whose rate changes least with height.
/// </summary>
internal static class Recommendation
{
    /// <summary>Closer than this to the end of the data a slope is poorly known. Common practice, no source.</summary>
    public const double DataEdge_m = 0.003;

    private const double Alike_m = 0.0005;

    /// <summary>Index of the recommended solution, −1 for none, and why.</summary>
    public static (int Index, string Reason) Among(StrutCase strut, IReadOnlyList<HeightSolution> solutions)
    {
        int[] usable = Enumerable.Range(0, solutions.Count).Where(k => solutions[k].WithinPressureLimit).ToArray();
        if (usable.Length == 0) return (-1, "");
        double least = usable.Min(k => solutions[k].Room.Shortfall_m);
        int best = usable.Where(k => solutions[k].Room.Shortfall_m <= least + Alike_m)
            .MinBy(k => Math.Abs(solutions[k].Sensitivities.RateSlope_N_per_m2));
        return (best, Why(strut, solutions, usable, best));
    }

    private static string Why(StrutCase strut, IReadOnlyList<HeightSolution> solutions, int[] usable, int best)
    {
        HeightSolution chosen = solutions[best];
        string room = Room(strut, chosen);
        if (solutions.Count == 1) return $"The only height that gives the rate. {room}";
        if (usable.Length == 1)
        {
            HeightSolution other = solutions.First(s => !s.WithinPressureLimit);
            return $"The only height within the spring's {Psi(strut.Part.MaxGaugePressure_Pa)}: "
                + $"{Millimetres(other.Height_m)} would take {Psi(other.GaugePressure_Pa)}. {room}";
        }

        HeightSolution rival = solutions[usable.Where(k => k != best).MinBy(k => solutions[k].Room.Shortfall_m)];
        return rival.Room.Shortfall_m > chosen.Room.Shortfall_m + Alike_m
            ? $"{room} At {Millimetres(rival.Height_m)} {Lacking(strut, rival)}."
            : $"{room} The rate is flatter here than at {Millimetres(rival.Height_m)}: "
                + $"{PerMillimetre(chosen)} against {PerMillimetre(rival)}.";
    }

    private static string Room(StrutCase strut, HeightSolution s)
    {
        (double down, double up) = Nearest(s);
        string text = $"It leaves {Millimetres(down)} of strut travel down and {Millimetres(up)} up, {Millimetres(s.Room.ToDataEdge_m)} from the data's edge.";
        return s.Room.Shortfall_m > Alike_m ? $"{text} Even so {Lacking(strut, s)}." : text;
    }

    private static string Lacking(StrutCase strut, HeightSolution s)
    {
        TravelLimits limits = strut.Design.Limits;
        double i = strut.SpringRatio.At(0);
        (double down, double up) = Nearest(s);
        List<string> lacks = [];
        if (down < limits.StopContact_m * i) lacks.Add($"{Millimetres(limits.StopContact_m * i - down)} of bump travel are missing");
        if (s.Room.UpToTopOut_m < limits.Droop_m * i || s.Room.UpToSpring_m < limits.Droop_m * i + limits.TopOutMargin_m)
            lacks.Add($"{Millimetres(Math.Max(limits.Droop_m * i - (s.Room.UpToTopOut_m ?? double.PositiveInfinity), limits.Droop_m * i + limits.TopOutMargin_m - s.Room.UpToSpring_m))} of droop travel are missing");
        if (s.Room.ToDataEdge_m < DataEdge_m) lacks.Add($"the data end {Millimetres(s.Room.ToDataEdge_m)} away");
        if (s.Thread is { Reachable: false }) lacks.Add("the thread does not reach");
        return lacks.Count == 0 ? "travel is shorter" : string.Join(" and ", lacks);
    }

    private static (double Down_m, double Up_m) Nearest(HeightSolution s) => (
        Math.Min(s.Room.DownToSpring_m, s.Room.DownToStop_m ?? double.PositiveInfinity),
        Math.Min(s.Room.UpToSpring_m, s.Room.UpToTopOut_m ?? double.PositiveInfinity));

    private static string PerMillimetre(HeightSolution s) => string.Create(
        CultureInfo.InvariantCulture, $"{s.Sensitivities.RateSlope_N_per_m2 * 1e-6:0.00} N/mm a millimetre");

    private static string Millimetres(double length_m) => string.Create(CultureInfo.InvariantCulture, $"{length_m * 1000:0.0} mm");

    private static string Psi(double gaugePressure_Pa) =>
        string.Create(CultureInfo.InvariantCulture, $"{gaugePressure_Pa / 6894.757293168:0.0} psi gauge");
}
