using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Kits.Studies.Search;

/// <summary>A setting's corner with parts that do not exist yet: a straight spring, its damper's force scaled, its stop met later.</summary>
internal sealed class VirtualParts
{
    private const double Beyond_m = 0.05;

    private readonly RideStrut _strut;
    private readonly StrutCase _case;
    private readonly RideSetting _setting;
    private readonly double _height_m, _wheelRate_N_per_m;
    private readonly Corner _corner;

    public VirtualParts(SearchPoint nearest)
    {
        (_strut, _case) = (nearest.Pair.Strut, nearest.Pair.Strut.Case!);
        _setting = nearest.Setting with { GaugePressure_Pa = null };
        (_height_m, double gauge) = (nearest.Setting.Height_m!.Value, nearest.Setting.GaugePressure_Pa!.Value);
        _wheelRate_N_per_m = _case.WheelRate_N_per_m(_case.Spring(_height_m).SealedRate_N_per_m(_height_m, gauge, _case.Exponent), _height_m);
        _corner = Stand.Of(_strut, _setting, out _)!.Corner;
    }

    /// <summary>Every change looked at, the least first: twice the rate is as much as twice the force or 20 mm of travel.</summary>
    public static IReadOnlyList<(double Rate, double DamperForce, double BumpTravel_m)> Changes { get; } =
        [.. (from rate in Steps(5, 16, 10)
             from force in Steps(4, 20, 10)
             from travel in Steps(0, 4, 200)
             select (rate, force, travel)).OrderBy(Size)];

    /// <summary>The corner to drive.</summary>
    public Corner Corner((double Rate, double DamperForce, double BumpTravel_m) change)
    {
        TravelRange range = new(_corner.Range.Least_m - Beyond_m, _corner.Range.Greatest_m + change.BumpTravel_m + Beyond_m);
        double load = _case.WheelLoad_N, rate = change.Rate * _wheelRate_N_per_m;
        return (_strut with { Damper = Damper(change.DamperForce) }).WithoutHeat(_setting.Click!.Value, range, w => load + rate * w) with
        {
            BumpStop = _corner.BumpStop is { } stop ? Curve(stop, change.BumpTravel_m, 1) : null,
            TopOut = _corner.TopOut,
        };
    }

    /// <summary>The words for parts that were driven.</summary>
    public PartsOrder Order((double Rate, double DamperForce, double BumpTravel_m) change, RideFigures figures)
    {
        double wheelRate = change.Rate * _wheelRate_N_per_m;
        (double bump, double droop)? ends = _corner.BumpStop is { } stop ? Ends(stop, change.BumpTravel_m, figures) : null;
        StrutMotion motion = new(_case, _height_m);
        TravelLimits limits = _case.Design.Limits;
        return new PartsOrder
        {
            Change = change,
            Height_m = _height_m,
            SpringForce_N = _case.SpringForce_N(_height_m),
            SpringRate_N_per_m = (_case with { Design = _case.Design with { Target = new Target(TargetKind.WheelRate, wheelRate) } }).TargetSpringRate_N_per_m(_height_m),
            WheelRate_N_per_m = wheelRate,
            SpringHeights = ends is var (low, high) ? (motion.SpringHeight_m(low) - limits.SolidMargin_m, motion.SpringHeight_m(high) + limits.TopOutMargin_m) : null,
            DamperLengths = ends is var (closed, full) ? (motion.DamperLength_m(closed), motion.DamperLength_m(full)) : null,
            Forces = Forces(Damper(change.DamperForce)),
            Figures = figures,
        };
    }

    // Wheel travel with the stop solid, and hanging: as far as the run went and the kit's travel limits ask.
    private (double Bump_m, double Droop_m) Ends(MonotoneCurve stop, double later_m, RideFigures figures)
    {
        TravelLimits limits = _case.Design.Limits;
        double short_m = Math.Max(0, limits.StopContact_m - (stop.X[0] + later_m));
        return (Math.Max(figures.GreatestTravel_m, stop.X[^1] + later_m + short_m), Math.Min(figures.LeastTravel_m, -limits.Droop_m));
    }

    private OrderedForce[] Forces(Damper damper)
    {
        MonotoneCurve curve = damper.Curve(_setting.Click!.Value);
        return [.. DynoStudy.Speeds_m_per_s.Select(v => new OrderedForce(
            v, damper.Covers(-v) ? -curve.At(-v).Value : null, damper.Covers(v) ? curve.At(v).Value : null))];
    }

    private Damper Damper(double factor) => Physics.Damper.Of([_setting.Click!.Value], [Curve(_strut.Damper.Curve(_setting.Click.Value), 0, factor)]);

    private static MonotoneCurve Curve(MonotoneCurve curve, double moved, double factor) => MonotoneCurve.Through(
        [.. curve.X.Select(x => x + moved)], [.. curve.Y.Select(y => y * factor)],
        factor * curve.At(curve.X[0] - 1).Slope, factor * curve.At(curve.X[^1] + 1).Slope);

    private static double Size((double Rate, double DamperForce, double BumpTravel_m) change) =>
        Math.Abs(Math.Log2(change.Rate)) + Math.Abs(Math.Log2(change.DamperForce)) + change.BumpTravel_m / 0.02;

    private static IEnumerable<double> Steps(int first, int last, double parts) => Enumerable.Range(first, last - first + 1).Select(k => k / parts);
}
