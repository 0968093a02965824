using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

/// <summary>
/// An air spring known in closed form: V(h, pg) = V₀(h) + pg·C(h), so that F = ∂/∂h ∫V dpg = pg·∂V/∂h at half the gauge
/// pressure. Derivatives are differenced (fourth order), nothing here comes from the code under test.
/// </summary>
internal sealed record KnownSpring(string Name, double Least_m, double Greatest_m, Func<double, double> V0, Func<double, double> C)
{
    private const double Step_m = 2e-4;

    public static readonly KnownSpring Single = new("single", 0.040, 0.075, h => Toroids(0.055, 0.115, 1, h), _ => 0);

    public static readonly KnownSpring Double = new("double", 0.062, 0.112, h => Toroids(0.058, 0.075, 2, h), _ => 0);

    /// <summary>A wall that gives: from 2 to 5 bar the area grows by some 2 %, the volume by some 3 %.</summary>
    public static readonly KnownSpring Elastic = new(
        "elastic", 0.040, 0.075, h => Toroids(0.055, 0.115, 1, h), h => 6e-11 + 1.6e-9 * (h - 0.035) + 6e-9 * (h - 0.055) * (h - 0.055));

    public static readonly KnownSpring[] All = [Single, Double, Elastic];

    public override string ToString() => Name;

    public double Volume_m3(double h, double pg) => V0(h) + pg * C(h);

    public double Force_N(double h, double pg) => pg * Slope(x => Volume_m3(x, pg / 2), h);

    public double Area_m2(double h, double pg) => Slope(x => Volume_m3(x, pg / 2), h);

    /// <summary>∂Ae/∂h at constant gauge pressure.</summary>
    public double AreaSlope_m(double h, double pg) => Slope(x => Area_m2(x, pg), h);

    public double GaugePressureFor_Pa(double force_N, double h)
    {
        var pg = force_N / Area_m2(h, 0);
        for (var step = 0; step < 60; step++) pg = force_N / Area_m2(h, pg);
        return pg;
    }

    /// <summary>−dF/dh with the air shut in, from the force itself: pabs·Vⁿ is kept a little above and below.</summary>
    public double Rate_N_per_m(double h, double pg, double n, double ambient_Pa = 101_325)
    {
        return -Slope(Sealed, h);

        double Sealed(double x)
        {
            double kept = Math.Pow(Volume_m3(h, pg), n) * (pg + ambient_Pa), p = pg;
            for (var step = 0; step < 40; step++) p = kept / Math.Pow(Volume_m3(x, p), n) - ambient_Pa;
            return Force_N(x, p);
        }
    }

    /// <summary>Rows without scatter: every gauge pressure over evenly spaced heights, volume at each.</summary>
    public List<SpringRow> Rows(double[] gaugePressures_Pa, int heights, SweepDirection? direction = null, bool volume = true) =>
    [
        .. from pg in gaugePressures_Pa
           from k in Enumerable.Range(0, heights)
           let h = Least_m + (Greatest_m - Least_m) * k / (heights - 1)
           select new SpringRow(h, pg, Force_N(h, pg), volume ? Volume_m3(h, pg) : null, Direction: direction),
    ];

    public double At(double share) => Least_m + (Greatest_m - Least_m) * share;

    private static double Slope(Func<double, double> f, double x) =>
        (8 * (f(x + Step_m) - f(x - Step_m)) - (f(x + 2 * Step_m) - f(x - 2 * Step_m))) / (12 * Step_m);

    // Equal convolutions, circular meridian of constant length ℓ between rings of radius R: sinφ/φ = h/ℓ.
    private static double Toroids(double ring_m, double arc_m, int convolutions, double height_m)
    {
        double low = 1e-6, high = Math.PI - 1e-6;
        for (var step = 0; step < 100; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = Math.Sin(middle) / middle > height_m / convolutions / arc_m ? (middle, high) : (low, middle);
        }

        double angle = (low + high) / 2, r = arc_m / (2 * angle), a = ring_m - r * Math.Cos(angle), s = Math.Sin(angle);
        return convolutions * Math.PI * r * (2 * a * a * s + 2 * a * r * (angle + s * Math.Cos(angle)) + r * r * (2 * s - 2.0 / 3 * s * s * s));
    }
}
