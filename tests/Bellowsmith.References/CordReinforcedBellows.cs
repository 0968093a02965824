using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.References;

/// <summary>
/// Bellows of cords that do not stretch. The inflated disc of meridional cords is published [Paulsen 1994]; the other
/// checks are DERIVED: virtual work, and the balance of forces on the wall stepped along the cord, which knows nothing of the
/// closed form cosψ(r).
/// </summary>
public sealed class CordReinforcedBellows
{
    private const double Degree = Math.PI / 180;

    [Fact] // Inflated radius 1: thickness 1.1981 and pole to crown 1.3110, published to four decimals.
    public void At_MeridionalCordsToTheAxisWithoutForce_IsThePublishedInflatedDisc()
    {
        CordShape shape = new CordBellows(1, 1e-7, 0, 2 * 1.3110).At(1.1981)!.Value;

        Assert.Equal(1, shape.CrownRadius_m, 1e-4);
        Assert.Equal(0, shape.EffectiveArea_m2, 1e-3);
        Assert.Equal(90, shape.AngleAtPlate_rad / Degree, 0.1);
    }

    [Fact] // The same with Γ(1/4): thickness, cord and volume 2.7458 in closed form, DERIVED.
    public void At_InflatedDisc_IsTheClosedForm()
    {
        CordShape shape = new CordBellows(1, 1e-9, 0, 2.622057554292119).At(1.198140234735592)!.Value;

        Assert.Equal(1, shape.CrownRadius_m, 2e-9);
        Assert.Equal(0, shape.EffectiveArea_m2, 1e-8);
        Assert.Equal(2.7458128, shape.Volume_m3, 1e-6);
    }

    [Theory] // DERIVED by an independent program: 64 nodes in one panel, halving.
    [InlineData(50, 36, 168, 60.198997603, 75.3697555, 10_079.47244, 1_007_060.321)] // leaves the plate at 120°
    [InlineData(50, 36, 168, 71.110865360, 74.2477961, 8_751.39688, 1_110_228.044)] // 100°
    [InlineData(50, 36, 168, 95.652638864, 69.7384408, 3_787.03541, 1_270_418.074)] // 60°
    [InlineData(48, 0, 150, 85.783784160, 99.7818586, 7_238.22947, 2_178_318.548)] // 90°
    [InlineData(48, 0, 150, 45.525743993, 105.2593935, 16_427.95340, 1_677_616.859)] // 120°
    public void At_Height_GivesTheIndependentValues(
        double bead_mm, double angle, double cord_mm, double height_mm, double crown_mm, double area_mm2, double volume_mm3)
    {
        CordShape shape = new CordBellows(1, bead_mm / 1e3, angle * Degree, cord_mm / 1e3).At(height_mm / 1e3)!.Value;

        Assert.Equal(crown_mm, shape.CrownRadius_m * 1e3, 1e-6);
        Assert.Equal(area_mm2, shape.EffectiveArea_m2 * 1e6, 1e-4);
        Assert.Equal(volume_mm3, shape.Volume_m3 * 1e9, 1e-2);
    }

    [Theory] // Meridional cords with a finite bead, cords at an angle, the wall hanging past its bead, nearly taut.
    [InlineData(48, 0, 150, 90)]
    [InlineData(48, 0, 150, 40)]
    [InlineData(50, 36, 168, 70)]
    [InlineData(50, 36, 168, 40)]
    [InlineData(50, 36, 168, 120)]
    [InlineData(44, 50, 96, 45)]
    [InlineData(30, 10, 260, 60)]
    public void At_Height_BalancesTheForcesOnTheWall(double bead_mm, double angle, double cord_mm, double height_mm)
    {
        CordShape shape = new CordBellows(1, bead_mm / 1e3, angle * Degree, cord_mm / 1e3).At(height_mm / 1e3)!.Value;

        (double radius, double half, double volume) = FromCrown(
            shape.CrownRadius_m, shape.EffectiveArea_m2 / Math.PI, Math.Sin(angle * Degree) / bead_mm * 1e3, cord_mm / 2e3);

        Assert.Equal(bead_mm / 1e3, radius, 1e-9);
        Assert.Equal(height_mm / 2e3, half, 1e-9);
        Assert.Equal(shape.Volume_m3 / 2, volume, 1e-9 * shape.Volume_m3);
    }

    [Theory] // Convolutions, bead, girdle, plate, cord angle, cord length: contact at plates and girdles among them.
    [InlineData(1, 50, 50, 50, 36, 168)]
    [InlineData(1, 50, 50, 62, 36, 168)]
    [InlineData(2, 44, 44, 44, 38, 96)]
    [InlineData(2, 44, 47, 44, 38, 96)]
    [InlineData(2, 44, 41, 50, 38, 96)]
    [InlineData(3, 44, 44, 44, 38, 96)]
    [InlineData(3, 44, 47, 50, 38, 96)]
    [InlineData(4, 48, 50, 48, 0, 110)]
    public void EffectiveArea_OverEveryHeight_IsTheSlopeOfVolume(
        int convolutions, double bead_mm, double girdle_mm, double plate_mm, double angle, double cord_mm)
    {
        CordBellows bellows = new(convolutions, bead_mm / 1e3, angle * Degree, cord_mm / 1e3, girdle_mm / 1e3, 0, plate_mm / 1e3);
        for (int i = 1; i < 40; i++)
        {
            double height = bellows.LeastHeight_m + (bellows.GreatestHeight_m - bellows.LeastHeight_m) * i / 40;
            CordShape shape = bellows.At(height)!.Value;
            double scale = Math.PI * bead_mm * bead_mm / 1e6;

            Assert.Equal(VolumeSlope(bellows, height), shape.EffectiveArea_m2, 1e-6 * Math.Max(scale, Math.Abs(shape.EffectiveArea_m2)));
        }
    }

    [Fact]
    public void EffectiveArea_OfAnyBellows_IsTheSlopeOfVolume() => Gen.Select(
        Gen.Int[1, 4], Gen.Double[0, 48], Gen.Double[1.8, 4], Gen.Double[0.9, 1.15], Gen.Double[1, 1.3], Gen.Double[0.03, 0.9]).Sample(
        (convolutions, angle, cord, girdle, plate, share) =>
        {
            const double bead_m = 0.05;
            CordBellows bellows = new(convolutions, bead_m, angle * Degree, cord * bead_m, girdle * bead_m, 0, plate * bead_m);
            double height = bellows.LeastHeight_m + share * (bellows.GreatestHeight_m - bellows.LeastHeight_m);

            double area = bellows.At(height)!.Value.EffectiveArea_m2;

            Assert.Equal(VolumeSlope(bellows, height), area, 1e-6 * Math.Max(Math.PI * bead_m * bead_m, Math.Abs(area)));
        });

    // Differences of two steps, extrapolated.
    private static double VolumeSlope(CordBellows bellows, double height_m)
    {
        const double step = 2e-5;
        return (4 * Central(step) - Central(2 * step)) / 3;

        double Central(double by) =>
            (bellows.At(height_m + by)!.Value.Volume_m3 - bellows.At(height_m - by)!.Value.Volume_m3) / (2 * by);
    }

    // Normal and meridional balance of a membrane under unit gauge pressure with Nθ = Ns·tan²β, stepped along the cord
    // from the crown: where half its length ends, bead radius and half the height must be.
    private static (double Radius, double Height, double Volume) FromCrown(double crown, double areaTerm, double kappa, double cord)
    {
        const int steps = 20_000;
        double[] y = [crown, 0, 0, (crown * crown - areaTerm) / 2, 0];
        double[] a = new double[5], b = new double[5], c = new double[5], d = new double[5], at = new double[5];
        double step = cord / steps;
        for (int i = 0; i < steps; i++)
        {
            Slopes(y, a);
            for (int j = 0; j < 5; j++) at[j] = y[j] + step / 2 * a[j];
            Slopes(at, b);
            for (int j = 0; j < 5; j++) at[j] = y[j] + step / 2 * b[j];
            Slopes(at, c);
            for (int j = 0; j < 5; j++) at[j] = y[j] + step * c[j];
            Slopes(at, d);
            for (int j = 0; j < 5; j++) y[j] += step / 6 * (a[j] + 2 * b[j] + 2 * c[j] + d[j]);
        }

        return (y[0], y[1], y[4]);

        void Slopes(double[] from, double[] slopes)
        {
            (double r, double psi, double pull) = (from[0], from[2], from[3]);
            double sine = kappa * r, cosine = Math.Sqrt(1 - sine * sine);
            double meridian = pull / r, hoop = meridian * sine * sine / (cosine * cosine);
            slopes[0] = -cosine * Math.Sin(psi);
            slopes[1] = cosine * Math.Cos(psi);
            slopes[2] = cosine * (1 - hoop * Math.Cos(psi) / r) / meridian;
            slopes[3] = -cosine * hoop * Math.Sin(psi);
            slopes[4] = Math.PI * r * r * slopes[1];
        }
    }
}
