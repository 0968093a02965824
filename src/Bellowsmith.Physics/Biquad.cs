using System.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// A digital filter section: <c>y[i] = B0·x[i] + B1·x[i−1] + B2·x[i−2] − A1·y[i−1] − A2·y[i−2]</c>.
/// </summary>
public readonly record struct Biquad(double B0, double B1, double B2, double A1, double A2)
{
    /// <summary>Complex gain at a frequency, given as a share of the sampling rate, 0 to 0.5.</summary>
    public Complex At(double cyclesPerSample)
    {
        Complex back = Complex.FromPolarCoordinates(1, -2 * Math.PI * cyclesPerSample);
        return (B0 + back * (B1 + back * B2)) / (1 + back * (A1 + back * A2));
    }

    /// <summary>Filters in place, from rest (transposed direct form II).</summary>
    public void Filter(Span<double> values)
    {
        double first = 0, second = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double x = values[i], y = B0 * x + first;
            first = B1 * x - A1 * y + second;
            second = B2 * x - A2 * y;
            values[i] = y;
        }
    }
}
