using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>Spectra of evenly spaced readings.</summary>
public static class Spectrum
{
    /// <summary>
    /// One-sided density by averaging over half-overlapping segments [Welch 1967]: each less its mean, under a Hann window, scaled
    /// so that the density summed over frequency is the readings' variance. Entry k stands at frequency k/(segment·spacing), from 0
    /// to half the sampling rate; entries 0 and 1 are pulled down by taking the mean out. Averages of m segments scatter by about
    /// √(11/9m) of the density; a tail after the last whole segment is not used.
    /// </summary>
    /// <param name="readings">At least one segment.</param>
    /// <param name="spacing">Between readings, in s for a density per Hz, in m for one per cycle/m.</param>
    /// <param name="segment">Readings a segment, a power of two, 4 or more.</param>
    /// <returns>segment/2 + 1 densities, the reading's unit squared times that of the spacing.</returns>
    /// <exception cref="ArgumentException">Fewer readings than a segment, or a segment of another length.</exception>
    public static double[] Density(ReadOnlySpan<double> readings, double spacing, int segment)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing);
        if (segment < 4 || !int.IsPow2(segment)) throw new ArgumentException("A segment is a power of two, 4 or more.", nameof(segment));
        if (readings.Length < segment) throw new ArgumentException("Fewer readings than one segment.", nameof(readings));
        double[] density = new double[segment / 2 + 1], window = Hann(segment), real = new double[segment], imaginary = new double[segment];
        int count = 1 + (readings.Length - segment) / (segment / 2);
        double power = 0;
        foreach (double w in window) power += w * w;
        double scale = 2 * spacing / (power * count);
        for (int i = 0; i < count; i++)
        {
            Windowed(readings.Slice(i * (segment / 2), segment), window, real);
            Array.Clear(imaginary);
            Fourier.Transform(real, imaginary);
            for (int k = 0; k < density.Length; k++) density[k] += scale * (real[k] * real[k] + imaginary[k] * imaginary[k]);
        }

        // The two ends have no counterpart at negative frequencies.
        density[0] /= 2;
        density[^1] /= 2;
        return density;
    }

    private static double[] Hann(int length)
    {
        double[] window = new double[length];
        for (int i = 0; i < length; i++) window[i] = (1 - Math.Cos(2 * Math.PI * i / length)) / 2;
        return window;
    }

    private static void Windowed(ReadOnlySpan<double> segment, double[] window, double[] into)
    {
        double mean = 0;
        foreach (double value in segment) mean += value / segment.Length;
        for (int i = 0; i < segment.Length; i++) into[i] = window[i] * (segment[i] - mean);
    }
}
