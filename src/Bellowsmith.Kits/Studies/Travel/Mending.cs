namespace Bellowsmith.Kits.Studies.Travel;

/// <summary>
/// For a rule that is missed: the smallest change of body, stop, thread or perch that meets it, each alone, and what else
/// that change mends or breaks.
/// </summary>
internal sealed class Mending(StrutCase strut, double driveHeight_m, TravelRules rules)
{
    private const double Greatest_m = 0.15, Tolerance_m = 1e-7, Probe_m = 1e-3;

    public IReadOnlyList<Mend> Of(TravelRule missed) =>
        [.. Enum.GetValues<MendKind>().Select(kind => Smallest(kind, [missed])).OfType<double[]>()
            .Select(found => Describe((MendKind)found[0], found[1], missed))
            .OrderByDescending(m => m.AlsoMends.Count - m.Breaks.Count).ThenBy(m => Math.Abs(m.Change_m))];

    /// <summary>Single changes that mend all of several misses and break nothing.</summary>
    public IReadOnlyList<Mend> OfAll(IReadOnlyList<TravelRule> missed) =>
        [.. Enum.GetValues<MendKind>().Select(kind => Smallest(kind, missed)).OfType<double[]>()
            .Select(found => Describe((MendKind)found[0], found[1], missed[0]))
            .Where(m => m.Breaks.Count == 0).OrderBy(m => Math.Abs(m.Change_m))];

    private double[]? Smallest(MendKind kind, IReadOnlyList<TravelRule> missed)
    {
        if (kind == MendKind.Stop && strut.Damper!.BumpStop is null || kind == MendKind.Thread && strut.Design.Thread is null) return null;
        double before = Worst(missed, Change(kind, 0));
        int sign = Worst(missed, Change(kind, Probe_m)) > before ? 1 : Worst(missed, Change(kind, -Probe_m)) > before ? -1 : 0;
        if (sign == 0) return null;
        double low = 0, high = Reach(kind, sign);
        if (Worst(missed, Change(kind, sign * high)) < 0) return null;
        while (high - low > Tolerance_m)
        {
            double middle = (low + high) / 2;
            (low, high) = Worst(missed, Change(kind, sign * middle)) < 0 ? (middle, high) : (low, middle);
        }

        return [(double)kind, sign * high];
    }

    private Mend Describe(MendKind kind, double change_m, TravelRule missed)
    {
        List<TravelRule> mends = [], breaks = [];
        foreach (TravelRule rule in TravelRules.All)
        {
            if (rule == missed || Margin(rule, default) is not { } before || Margin(rule, Change(kind, change_m)) is not { } after) continue;
            if (before < 0 && after >= -Tolerance_m) mends.Add(rule);
            if (before >= 0 && after < -Tolerance_m) breaks.Add(rule);
        }

        return new Mend(kind, change_m, mends, breaks);
    }

    private double Worst(IReadOnlyList<TravelRule> missed, StrutChange change) => missed.Min(r => Margin(r, change) ?? double.NegativeInfinity);

    private double? Margin(TravelRule rule, StrutChange change) => rules.Value_m(rule, change) - rules.Limit_m(rule, change);

    // A stop cannot be cut to nothing, the spring not sent below its least height, the thread not beyond its ends.
    private double Reach(MendKind kind, int sign)
    {
        if (kind == MendKind.Stop && sign < 0) return strut.Damper!.BumpStop!.FreeLength_m * 0.9;
        if (kind != MendKind.Thread) return Greatest_m;
        double toSpring = sign > 0 ? driveHeight_m - strut.LeastHeight_m : strut.GreatestHeight_m - driveHeight_m;
        StrutDesign d = strut.Design;
        if (d.StrutLengthAtDrive_m is not { } length || d.UpperStack_m is not { } upper || d.LowerStack_m is not { } lower) return toSpring;
        double exposed = length - upper - driveHeight_m - lower;
        double toThread = sign > 0 ? d.Thread!.Greatest_m - exposed : exposed - d.Thread!.Least_m;
        return Math.Max(0, Math.Min(toSpring, toThread));
    }

    private static StrutChange Change(MendKind kind, double change_m) => kind switch
    {
        MendKind.Body => new(Body_m: change_m),
        MendKind.Stop => new(Stop_m: change_m),
        MendKind.Thread => new(Thread_m: change_m),
        _ => new(Perch_m: change_m),
    };
}
