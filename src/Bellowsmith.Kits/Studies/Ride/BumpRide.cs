using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>Five seconds of one strut over one bump on a level road, step by step; nothing is left out as settling.</summary>
public sealed record BumpRide
{
    private const double Time_s = 5;

    /// <summary>When the tyre meets the bump.</summary>
    public const double Met_s = 0.5;

    public required RideStrut Strut { get; init; }
    public required Bump Bump { get; init; }
    public required double Speed_m_per_s { get; init; }

    /// <summary>Height under the tyre at each step.</summary>
    public required double[] Road_m { get; init; }

    public required RideTrace Trace { get; init; }

    /// <summary>Wheel travel from rest at which the bump stop is first touched, bump +; null without one.</summary>
    public required double? StopContact_m { get; init; }

    /// <summary>Greatest acceleration of the body upward, and downward as +.</summary>
    public double GreatestUp_m_per_s2 => Math.Max(0, Trace.Acceleration_m_per_s2.Max());

    public double GreatestDown_m_per_s2 => Math.Max(0, -Trace.Acceleration_m_per_s2.Min());

    public double PeakStopForce_N => Trace.StopForce_N.Max();

    public bool LeavesRoad => Trace.TyreForce_N.Min() <= 0;

    internal static BumpRide Of(Stand stand, Bump bump, double speed_m_per_s)
    {
        double[] road = new double[(int)Math.Round(Time_s / RideRun.Step_s)];
        bump.Obstacle().AddTo(road, speed_m_per_s * RideRun.Step_s, speed_m_per_s * Met_s);
        RoadProfile.Envelop(road, speed_m_per_s * RideRun.Step_s);
        return new()
        {
            Strut = stand.Strut,
            Bump = bump,
            Speed_m_per_s = speed_m_per_s,
            Road_m = road,
            Trace = RideRun.Trace(stand.Corner, road),
            StopContact_m = stand.Corner.BumpStop?.X[0],
        };
    }
}
