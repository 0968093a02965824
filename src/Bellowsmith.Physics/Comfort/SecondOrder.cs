using System.Numerics;

namespace Bellowsmith.Physics.Comfort;

/// <summary>
/// An analogue section <c>(N0 + N1·s + N2·s²)/(1 + s/(Q·ω) + (s/ω)²)</c>, ω = 2π·Frequency, Q above 1/2. A high pass has N2 alone.
/// </summary>
internal readonly record struct SecondOrder(double N0, double N1, double N2, double Frequency_Hz, double Quality)
{
    private const double HighestMatch = 0.36;

    private double Omega => 2 * Math.PI * Frequency_Hz;

    public static SecondOrder LowPass(double frequency_Hz, double quality) => new(1, 0, 0, frequency_Hz, quality);

    public static SecondOrder HighPass(double frequency_Hz, double quality) =>
        new(0, 0, 1 / (4 * Math.PI * Math.PI * frequency_Hz * frequency_Hz), frequency_Hz, quality);

    public Complex At(double frequency_Hz)
    {
        Complex s = new(0, 2 * Math.PI * frequency_Hz);
        return (N0 + s * (N1 + s * N2)) / (1 + s / (Quality * Omega) + s * s / (Omega * Omega));
    }

    /// <summary>
    /// The digital section with the same poles (z = exp(s·T)) and the same magnitude at three frequencies: 0, half the sampling rate and
    /// the section's own, or 0.36 of the sampling rate where that is lower [Vicanek 2016]. Unlike the bilinear transform
    /// it has no zero forced on half the sampling rate. A high pass keeps its double zero at 0 and its magnitude at its own frequency.
    /// </summary>
    public Biquad Digital(double sampleRate_Hz)
    {
        double turn = Omega / sampleRate_Hz, decay = turn / (2 * Quality);
        double a1 = -2 * Math.Exp(-decay) * Math.Cos(Math.Sqrt(turn * turn - decay * decay)), a2 = Math.Exp(-2 * decay);
        Squares poles = new((1 + a1 + a2) * (1 + a1 + a2), (1 - a1 + a2) * (1 - a1 + a2), -4 * a2);
        double match_Hz = Math.Min(Frequency_Hz, HighestMatch * sampleRate_Hz);
        double high = Math.Pow(Math.Sin(Math.PI * match_Hz / sampleRate_Hz), 2), low = 1 - high;
        double wanted = Magnitude2(match_Hz) * poles.At(high);
        if (N0 == 0)
        {
            double gain = Math.Sqrt(wanted) / (4 * high);
            return new(gain, -2 * gain, gain, a1, a2);
        }

        double atZero = poles.Zero * Magnitude2(0), atHalf = poles.Half * Magnitude2(sampleRate_Hz / 2);
        Squares zeros = new(atZero, atHalf, (wanted - atZero * low - atHalf * high) / (4 * low * high));
        return zeros.Over(a1, a2);
    }

    private double Magnitude2(double frequency_Hz)
    {
        Complex at = At(frequency_Hz);
        return at.Real * at.Real + at.Imaginary * at.Imaginary;
    }

    /// <summary>
    /// |c0 + c1·z⁻¹ + c2·z⁻²|² = Zero·(1 − φ) + Half·φ + Cross·4φ(1 − φ), φ = sin²(ωT/2), with Zero = (c0 + c1 + c2)²,
    /// Half = (c0 − c1 + c2)² and Cross = −4·c0·c2.
    /// </summary>
    private readonly record struct Squares(double Zero, double Half, double Cross)
    {
        public double At(double phi) => Zero * (1 - phi) + Half * phi + Cross * 4 * phi * (1 - phi);

        public Biquad Over(double a1, double a2)
        {
            double zero = Math.Sqrt(Zero), half = Math.Sqrt(Half), ends = (zero + half) / 2;
            double b0 = (ends + Math.Sqrt(ends * ends + Cross)) / 2;
            return new(b0, (zero - half) / 2, -Cross / (4 * b0), a1, a2);
        }
    }
}
