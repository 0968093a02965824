using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Benchmarks;

/// <summary>
/// What the ride regimes drive: an invented corner with a damper of eleven measured speeds, air in a cylinder that gives heat to
/// its wall and a progressive stop, at 64 settings of the damper, for a minute on a C road at 80 km/h with stop contacts.
/// </summary>
internal static class RideDrive
{
    public const int Corners = 64;
    public const double Time_s = 65, Body_kg = 360, Wheel_kg = 38, Tyre_N_per_m = 225e3, Ratio = 0.95, WallTime_s = 0.6;
    public const double Area_m2 = 6.5e-3, Volume_m3 = 1.1e-3, Contact_m = 0.015, Droop_m = -0.055, TopOutRate_N_per_m = 4e5;
    public const double GaugePressure_Pa = Body_kg * StandardGravity.Value_m_per_s2 / Ratio / Area_m2, Ambient_Pa = 101_325, Exponent = 1.4;

    private const double LightestSetting = 0.8, Settings = 0.4;

    public static double[] Speeds_m_per_s { get; } = [-1.04, -0.52, -0.26, -0.13, -0.05, 0, 0.05, 0.13, 0.26, 0.52, 1.04];

    public static double[] Forces_N { get; } = [-920, -620, -410, -265, -120, 0, 125, 300, 520, 790, 1210];

    public static MonotoneCurve Stop { get; } = MonotoneCurve.Through(
        [.. Enumerable.Range(0, 9).Select(k => Contact_m + 3.5e-3 * k)], [.. Enumerable.Range(0, 9).Select(k => 3e4 * 3.5e-3 * k + 9e6 * 3.5e-3 * k * 3.5e-3 * k)], 0, 2e6);

    public static double Scale(int setting) => LightestSetting + Settings * setting / (Corners - 1);

    public static MonotoneCurve Damper(int setting) => MonotoneCurve.Through(Speeds_m_per_s, Array.ConvertAll(Forces_N, force => Scale(setting) * force));

    public static Corner[] All() => [.. Enumerable.Range(0, Corners).Select(Of)];

    public static Corner Of(int setting)
    {
        TravelRange range = new(-0.075, 0.045);
        double pressure = GaugePressure_Pa + Ambient_Pa;
        double Shrunk(double w) => Volume_m3 / (Volume_m3 - Area_m2 * Ratio * w);
        double Air(double w) => Ratio * Area_m2 * pressure * Math.Pow(Shrunk(w), Exponent);
        TravelPolynomial Fit(Func<double, double> law, double tolerance) => TravelPolynomial.Of(law, range, tolerance);
        return new()
        {
            SprungMass_kg = Body_kg,
            UnsprungMass_kg = Wheel_kg,
            TyreRate_N_per_m = Tyre_N_per_m,
            Range = range,
            Force = Fit(w => Air(w) - Ratio * Area_m2 * Ambient_Pa, 1e-3),
            ForceByEntropy = Fit(Air, 1e-2),
            ForceByEntropySquare = Fit(w => Air(w) / 2, 1e-2),
            Cooling = Fit(w => Math.Pow(Shrunk(w), 1 - Exponent) - 1, 1e-5),
            CoolingByEntropy = Fit(w => -Math.Pow(Shrunk(w), 1 - Exponent), 1e-3),
            TimeConstant_s = WallTime_s,
            DamperRatio = Fit(_ => Ratio, 1e-9),
            DamperForce = Damper(setting),
            BumpStop = Stop,
            TopOut = MonotoneCurve.Through([Droop_m - 1e-3, Droop_m], [-TopOutRate_N_per_m * 5e-4, 0], TopOutRate_N_per_m, 0),
        };
    }

    /// <summary>Heights from 0, the road being level before.</summary>
    public static double[] Road()
    {
        double[] road = new double[(int)(Time_s / RideRun.Step_s)];
        RoadProfile.Fill(road, 80 / 3.6 * RideRun.Step_s, RoadClass.C, 1);
        double first = road[0];
        for (int k = 0; k < road.Length; k++) road[k] -= first;
        return road;
    }
}
