using System.Numerics;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Roads;

/// <summary>
/// One period of a road as the sum of all its harmonics in the band, amplitude √(2·Gd(n)/period) and random phase, summed on a
/// grid of at least eight points to the shortest wave by one inverse transform. Between grid points a cubic through four of them
/// loses at most 0.9 % of the shortest wave, 0.06 % of one twice as long.
/// </summary>
internal sealed class Harmonics
{
    private const int PointsPerShortestWave = 8, LeastPoints = 4;

    private readonly double[] _height_m;
    private readonly double _pointsPerMetre;

    public Harmonics(double period_m, RoadRoughness roughness, ulong seed)
    {
        double wanted = period_m * PointsPerShortestWave * RoadRoughness.HighestFrequency_cycles_per_m;
        int pairs = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(LeastPoints, Math.Ceiling(wanted / 2)));
        _pointsPerMetre = 2 * pairs / period_m;
        double[] even = new double[pairs], odd = new double[pairs];
        DrawSpectrum(even, odd, period_m, roughness, seed);

        // Exchanged parts make it the inverse; even and odd points then stand in its real and imaginary parts.
        Fourier.Transform(odd, even);
        _height_m = new double[2 * pairs];
        for (int i = 0; i < pairs; i++) (_height_m[2 * i], _height_m[2 * i + 1]) = (even[i], odd[i]);
    }

    public void Fill(Span<double> height_m, double spacing_m)
    {
        int mask = _height_m.Length - 1;
        for (int i = 0; i < height_m.Length; i++)
        {
            double place = i * spacing_m * _pointsPerMetre;
            int at = (int)place;
            double u = place - at, v = 1 - u;
            double before = _height_m[(at - 1) & mask], from = _height_m[at & mask], to = _height_m[(at + 1) & mask], after = _height_m[(at + 2) & mask];
            height_m[i] = v * from + u * to - u * v / 6 * ((1 + v) * (before - 2 * from + to) + (1 + u) * (from - 2 * to + after));
        }
    }

    /// <summary>
    /// The spectrum X of a real profile of N points, folded into that of N/2 complex ones whose parts are its even and odd points:
    /// <c>Z[k] = E + i·O</c>, <c>E = X[k] + X*[N/2−k]</c>, <c>O = (X[k] − X*[N/2−k])·exp(2πik/N)</c>. Harmonics end below N/4, so only
    /// one of the two terms is ever there.
    /// </summary>
    private static void DrawSpectrum(Span<double> real, Span<double> imaginary, double period_m, RoadRoughness roughness, ulong seed)
    {
        SplitMix64 random = new(seed);
        (double[] cos, double[] sin) = Fourier.Roots(real.Length);
        int last = (int)Math.Floor(RoadRoughness.HighestFrequency_cycles_per_m * period_m * (1 + 1e-12));
        for (int k = (int)Math.Ceiling(RoadRoughness.LowestFrequency_cycles_per_m * period_m * (1 - 1e-12)); k <= last; k++)
        {
            double half = Math.Sqrt(2 * roughness.AtSpatialFrequency_m3(k / period_m) / period_m) / 2;
            (double x, double y) = random.Direction();
            (x, y) = (half * x, half * y);
            (double turnedX, double turnedY) = (x * cos[k] - y * sin[k], x * sin[k] + y * cos[k]);
            (real[k], imaginary[k]) = (x - turnedY, y + turnedX);

            // At N/2−k E is the conjugate of X[k], O that of X[k]·exp(2πik/N).
            (real[^k], imaginary[^k]) = (x + turnedY, -y + turnedX);
        }
    }
}
