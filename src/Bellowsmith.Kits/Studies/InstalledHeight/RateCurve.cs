using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.InstalledHeight;

/// <summary>
/// The in-service rate of one strut's spring against the height it is installed at, the load held: at every height the gauge
/// pressure is the one that carries the load there. No allocation; NaN where the spring cannot carry it.
/// </summary>
internal readonly struct RateCurve(StrutCase strut, StrutSpring spring)
{
    public const int Places = 129;
    private const int MostSteps = 60;
    private const double HeightTolerance_m = 1e-10, GoldenTolerance_m = 1e-6, GoldenShare = 0.6180339887498949;

    public double Rate_N_per_m(double height_m)
    {
        double pg = spring.GaugePressureFor_Pa(strut.SpringForce_N(height_m), height_m);
        return pg > 0 ? spring.SealedRate_N_per_m(height_m, pg, strut.Exponent) : double.NaN;
    }

    /// <summary>Rate over wanted rate; the wanted one moves a little with height where the damper's gas does.</summary>
    public double Excess_N_per_m(double height_m) => Rate_N_per_m(height_m) - strut.TargetSpringRate_N_per_m(height_m);

    public static double HeightAt(double least_m, double greatest_m, int place) =>
        least_m + (greatest_m - least_m) * place / (Places - 1);

    /// <summary>Least (sign +1) or greatest (−1) rate around the best of the places; NaN where there is none.</summary>
    public double Extremum(double least_m, double greatest_m, ReadOnlySpan<double> rates, int sign)
    {
        int best = -1;
        for (int k = 0; k < Places; k++)
            if (!double.IsNaN(rates[k]) && (best < 0 || sign * rates[k] < sign * rates[best])) best = k;
        if (best < 0) return double.NaN;
        double refined = Golden(least_m, greatest_m, best, sign, overWanted: false);
        double start = HeightAt(least_m, greatest_m, best);
        return sign * Rate_N_per_m(refined) < sign * rates[best] ? refined : start;
    }

    /// <summary>Where the excess around a place turns: its least (sign +1) or greatest (−1).</summary>
    public double Turn(double least_m, double greatest_m, int place, int sign) => Golden(least_m, greatest_m, place, sign, overWanted: true);

    /// <summary>The crossing of the wanted rate between two heights whose excess differs in sign.</summary>
    public double Crossing(double low_m, double high_m)
    {
        // Regula falsi that halves the standing end's excess [Dowell Jarratt 1971].
        double a = low_m, b = high_m, fa = Excess_N_per_m(a), fb = Excess_N_per_m(b);
        for (int step = 0; step < MostSteps && Math.Abs(b - a) > HeightTolerance_m && fb != 0; step++)
        {
            double x = (a * fb - b * fa) / (fb - fa), fx = Excess_N_per_m(x);
            if (fx * fb < 0) (a, fa) = (b, fb);
            else fa /= 2;
            (b, fb) = (x, fx);
        }

        return b;
    }

    /// <summary>The last height towards another at which the rate still exists; it exists at the first, not at the second.</summary>
    public double EdgeOfAir(double inside_m, double outside_m)
    {
        while (Math.Abs(outside_m - inside_m) > HeightTolerance_m)
        {
            double middle = (inside_m + outside_m) / 2;
            (inside_m, outside_m) = double.IsNaN(Rate_N_per_m(middle)) ? (inside_m, middle) : (middle, outside_m);
        }

        return inside_m;
    }

    private double Golden(double least_m, double greatest_m, int place, int sign, bool overWanted)
    {
        double a = HeightAt(least_m, greatest_m, Math.Max(place - 1, 0));
        double b = HeightAt(least_m, greatest_m, Math.Min(place + 1, Places - 1));
        while (b - a > GoldenTolerance_m)
        {
            double x1 = b - GoldenShare * (b - a), x2 = a + GoldenShare * (b - a);
            (a, b) = sign * Value(x1, overWanted) < sign * Value(x2, overWanted) ? (a, x2) : (x1, b);
        }

        return (a + b) / 2;
    }

    private double Value(double height_m, bool overWanted) => overWanted ? Excess_N_per_m(height_m) : Rate_N_per_m(height_m);
}
