using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>What a run kept step by step tells beyond its figures.</summary>
internal static class RideDetails
{
    private const double SpeedClass_m_per_s = 0.05;

    private static readonly double[] _shares = [0.01, 0.05, 0.5, 0.95, 0.99];

    public static RideDetail Of(Stand stand, RideTrace trace)
    {
        ReadOnlySpan<double> travel = trace.Travel_m.AsSpan(trace.Settled), speed = trace.DamperVelocity_m_per_s.AsSpan(trace.Settled);
        Corner corner = stand.Corner;
        double rate = 1 / trace.Step_s;
        return new RideDetail
        {
            Trace = trace,
            PrimaryRms_m_per_s2 = Band(RideWeighting.Primary(rate)),
            SecondaryRms_m_per_s2 = Band(RideWeighting.Secondary(rate)),
            GreatestUp_m_per_s2 = Math.Max(0, trace.Acceleration_m_per_s2[trace.Settled..].DefaultIfEmpty().Max()),
            GreatestDown_m_per_s2 = Math.Max(0, -trace.Acceleration_m_per_s2[trace.Settled..].DefaultIfEmpty().Min()),
            OutsideMeasuredSpeed = Share(speed, v => !stand.Strut.Damper.Covers(v)),
            OutsideMeasuredHeight = stand.Air is null ? 0 : Share(travel, w => w < corner.Range.Least_m || w > corner.Range.Greatest_m),
            Air = new(() => (
                Swing(stand, trace, (air, w, k) => air.SealedGaugePressure_Pa(w, k)),
                Swing(stand, trace, (air, w, k) => RideDetail.WallTemperature_K * air.Warmth(w, k)))),
            TravelShares = Shares(travel),
            DamperSpeeds = Histogram(speed),
            StopContact_m = corner.BumpStop?.X[0],
            Hump = new(() => corner.BumpStop is null ? null : RideRoads.HumpSpeed_m_per_s(corner)),
        };

        double Band(Biquad[] sections) => WeightedVibration.Of(trace.Acceleration_m_per_s2, rate, sections, RideRun.Settling_s).Rms_m_per_s2;
    }

    // Every twentieth step: the air's pressure and temperature follow travel, which turns slowly against 20 ms.
    private static (double, double)? Swing(Stand stand, RideTrace trace, Func<StrutCorner, double, double, double> value)
    {
        if (stand.Air is not { } air) return null;
        (double low, double high) = (double.MaxValue, double.MinValue);
        for (int k = trace.Settled; k < trace.Travel_m.Length; k += 20)
        {
            double here = value(air, trace.Travel_m[k], trace.Entropy[k]);
            (low, high) = (Math.Min(low, here), Math.Max(high, here));
        }

        return low <= high ? (low, high) : null;
    }

    private static List<(double, double)> Shares(ReadOnlySpan<double> travel)
    {
        double[] sorted = travel.ToArray();
        Array.Sort(sorted);
        return [.. _shares.Where(_ => sorted.Length > 0).Select(share => (share, sorted[(int)Math.Min(sorted.Length - 1, share * sorted.Length)]))];
    }

    private static List<(double, double, double)> Histogram(ReadOnlySpan<double> speed)
    {
        if (speed.Length == 0) return [];
        (int first, int last) = (int.MaxValue, int.MinValue);
        foreach (double v in speed) (first, last) = (Math.Min(first, BinOf(v)), Math.Max(last, BinOf(v)));
        int[] counts = new int[last - first + 1];
        foreach (double v in speed) counts[BinOf(v) - first]++;
        double all = speed.Length;
        return [.. counts.Index().Where(c => c.Item > 0).Select(c => (
            (first + c.Index) * SpeedClass_m_per_s, (first + c.Index + 1) * SpeedClass_m_per_s, c.Item / all))];

        static int BinOf(double v) => (int)Math.Floor(v / SpeedClass_m_per_s);
    }

    private static double Share(ReadOnlySpan<double> values, Func<double, bool> counts)
    {
        int count = 0;
        foreach (double value in values)
            if (counts(value)) count++;
        return values.Length == 0 ? 0 : (double)count / values.Length;
    }
}
