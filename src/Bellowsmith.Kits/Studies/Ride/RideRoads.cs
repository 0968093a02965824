using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>The roads a strut is driven over, as heights under the tyre at each step, from 0.</summary>
public static class RideRoads
{
    private const double HumpLength_m = 4, HumpHeight_m = 0.075, AfterHump_s = 1.5;
    private const int SlowestHump_km_per_h = 5, FastestHump_km_per_h = 70, HumpsAtOnce = 16;

    /// <summary>The hump that is asked for its speed; common practice, no source.</summary>
    public const string ReferenceHump = "a round hump 4 m long and 75 mm high";

    /// <summary>Height under the tyre at each step; a random road of the same question is the same road.</summary>
    public static double[] Heights(RoadQuestion road)
    {
        double[] heights = new double[(int)Math.Round(road.Time_s / RideRun.Step_s)];
        double spacing_m = road.Speed_m_per_s * RideRun.Step_s, settling_m = road.Speed_m_per_s * RideRun.Settling_s;
        switch (road.Surface)
        {
            case RoadOfClass random: RoadProfile.Fill(heights, spacing_m, random.Class, road.Seed); break;
            case RoadOfVelocity random: RoadProfile.FillWhiteVelocity(heights, RideRun.Step_s, random.Density, road.Seed); break;
            case RoadWithBump one: one.Bump.Obstacle().AddTo(heights, spacing_m, settling_m); break;
            case RoadAsMeasured measured: measured.Profile.Fill(heights, spacing_m, -settling_m); break;
        }

        // A random road's level is stated as what the tyre follows; a shape is the ground's own.
        if (!road.IsRandom) RoadProfile.Envelop(heights, spacing_m);
        double first = heights[0];
        for (int k = 0; k < heights.Length; k++) heights[k] -= first;
        return heights;
    }

    /// <summary>The least speed at which the hump brings the stop to be touched, looked for km/h by km/h; null up to 70 km/h.</summary>
    internal static double? HumpSpeed_m_per_s(Corner corner)
    {
        double[] speeds = [.. Enumerable.Range(SlowestHump_km_per_h, FastestHump_km_per_h - SlowestHump_km_per_h + 1).Select(v => v / 3.6)];
        foreach (double[] side in speeds.Chunk(HumpsAtOnce))
        {
            RideFigures[] figures = new RideFigures[side.Length];
            double time_s = RideRun.Settling_s + HumpLength_m / side[0] + AfterHump_s;
            RideRun.Over(Enumerable.Repeat(corner, side.Length).ToArray(), Array.ConvertAll(side, speed => Hump(speed, time_s)), figures, threads: 1, CancellationToken.None);
            if (Array.FindIndex(figures, f => f.PeakStopForce_N > 0) is var first and >= 0) return side[first];
        }

        return null;
    }

    private static double[] Hump(double speed_m_per_s, double time_s)
    {
        double[] heights = new double[(int)(time_s / RideRun.Step_s)];
        Obstacle.CircularHump(HumpLength_m, HumpHeight_m).AddTo(heights, speed_m_per_s * RideRun.Step_s, speed_m_per_s * RideRun.Settling_s);
        RoadProfile.Envelop(heights, speed_m_per_s * RideRun.Step_s);
        return heights;
    }
}
