using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// Frequency weightings of whole-body vibration. Wk and Wd at the true one-third-octave centres 10^(n/10) Hz
/// [ISO 8041-1 2017, tables B.3 and B.8], READ in an open vibration library's transcription; Wk at nominal frequencies
/// [ISO 2631-1 1997, table 3], READ in a second source. FLAG: a public array that begins with 0.482 at 0.5 Hz is the right list moved by three
/// bands. FLAG: rational fits of fourth and fifth order in circulation are up to 31 % off at 80 Hz.
/// </summary>
public sealed class RideWeightings
{
    [Theory] // n, Wk, Wd
    [InlineData(-10, 0.03121, 0.06242)]
    [InlineData(-9, 0.04931, 0.09867)]
    [InlineData(-8, 0.07756, 0.1553)]
    [InlineData(-7, 0.1207, 0.2420)]
    [InlineData(-6, 0.1832, 0.3682)]
    [InlineData(-5, 0.2644, 0.5330)]
    [InlineData(-4, 0.3504, 0.7097)]
    [InlineData(-3, 0.4188, 0.8540)]
    [InlineData(-2, 0.4588, 0.9443)]
    [InlineData(-1, 0.4767, 0.9914)]
    [InlineData(0, 0.4825, 1.011)]
    [InlineData(1, 0.4846, 1.007)]
    [InlineData(2, 0.4935, 0.9707)]
    [InlineData(3, 0.5308, 0.8913)]
    [InlineData(4, 0.6335, 0.7733)]
    [InlineData(5, 0.8071, 0.6398)]
    [InlineData(6, 0.9648, 0.5143)]
    [InlineData(7, 1.039, 0.4081)]
    [InlineData(8, 1.054, 0.3226)]
    [InlineData(9, 1.037, 0.2550)]
    [InlineData(10, 0.9884, 0.2017)]
    [InlineData(11, 0.8989, 0.1597)]
    [InlineData(12, 0.7743, 0.1266)]
    [InlineData(13, 0.6373, 0.1004)]
    [InlineData(14, 0.5103, 0.07958)]
    [InlineData(15, 0.4031, 0.06299)]
    [InlineData(16, 0.3160, 0.04965)]
    [InlineData(17, 0.2451, 0.03872)]
    [InlineData(18, 0.1857, 0.02946)]
    [InlineData(19, 0.1339, 0.02130)]
    [InlineData(20, 0.08873, 0.01414)]
    [InlineData(21, 0.05311, 0.008478)]
    [InlineData(22, 0.02922, 0.004668)]
    [InlineData(23, 0.01528, 0.002442)]
    [InlineData(24, 0.007795, 0.001246)]
    [InlineData(25, 0.003935, 0.0006293)]
    [InlineData(26, 0.001978, 0.0003164)]
    public void Analogue_AtTrueBandCentre_IsTheTable(int band, double vertical, double horizontal)
    {
        var frequency_Hz = Math.Pow(10, band / 10.0);

        Assert.Equal(vertical, RideWeighting.VerticalAt(frequency_Hz).Magnitude, 1e-3 * vertical);
        Assert.Equal(horizontal, RideWeighting.HorizontalAt(frequency_Hz).Magnitude, 1e-3 * horizontal);
    }

    [Fact] // the check at 100 rad/s
    public void Analogue_At100RadiansPerSecond_IsThePublishedFactor()
    {
        Assert.Equal(0.7718, RideWeighting.VerticalAt(100 / (2 * Math.PI)).Magnitude, 1e-3 * 0.7718);
        Assert.Equal(0.1261, RideWeighting.HorizontalAt(100 / (2 * Math.PI)).Magnitude, 1e-3 * 0.1261);
    }

    [Theory] // Hz as named, Wk to three digits; 0.2 %
    [InlineData(0.5, 0.418)]
    [InlineData(0.63, 0.459)]
    [InlineData(0.8, 0.477)]
    [InlineData(1, 0.482)]
    [InlineData(1.25, 0.484)]
    [InlineData(1.6, 0.494)]
    [InlineData(2, 0.531)]
    [InlineData(2.5, 0.631)]
    [InlineData(3.15, 0.804)]
    [InlineData(4, 0.967)]
    [InlineData(5, 1.039)]
    [InlineData(6.3, 1.054)]
    [InlineData(8, 1.036)]
    [InlineData(10, 0.988)]
    [InlineData(12.5, 0.902)]
    [InlineData(16, 0.768)]
    [InlineData(20, 0.636)]
    [InlineData(25, 0.513)]
    [InlineData(31.5, 0.405)]
    [InlineData(40, 0.314)]
    [InlineData(50, 0.246)]
    public void Analogue_AtNominalFrequency_IsTheTable(double frequency_Hz, double factor) =>
        Assert.Equal(factor, RideWeighting.VerticalAt(frequency_Hz).Magnitude, 2e-3 * factor);

    [Theory] // tolerance READ: +26/−21 % from 0.25 Hz, +12/−11 % from 0.63 to 63 Hz, +26/−21 % to 158 Hz; Wk and Wd as above
    [InlineData(-6, 0.1832, 0.3682, 0.79, 1.26)]
    [InlineData(-5, 0.2644, 0.5330, 0.79, 1.26)]
    [InlineData(-4, 0.3504, 0.7097, 0.79, 1.26)]
    [InlineData(-3, 0.4188, 0.8540, 0.79, 1.26)]
    [InlineData(-2, 0.4588, 0.9443, 0.89, 1.12)]
    [InlineData(-1, 0.4767, 0.9914, 0.89, 1.12)]
    [InlineData(0, 0.4825, 1.011, 0.89, 1.12)]
    [InlineData(1, 0.4846, 1.007, 0.89, 1.12)]
    [InlineData(2, 0.4935, 0.9707, 0.89, 1.12)]
    [InlineData(3, 0.5308, 0.8913, 0.89, 1.12)]
    [InlineData(4, 0.6335, 0.7733, 0.89, 1.12)]
    [InlineData(5, 0.8071, 0.6398, 0.89, 1.12)]
    [InlineData(6, 0.9648, 0.5143, 0.89, 1.12)]
    [InlineData(7, 1.039, 0.4081, 0.89, 1.12)]
    [InlineData(8, 1.054, 0.3226, 0.89, 1.12)]
    [InlineData(9, 1.037, 0.2550, 0.89, 1.12)]
    [InlineData(10, 0.9884, 0.2017, 0.89, 1.12)]
    [InlineData(11, 0.8989, 0.1597, 0.89, 1.12)]
    [InlineData(12, 0.7743, 0.1266, 0.89, 1.12)]
    [InlineData(13, 0.6373, 0.1004, 0.89, 1.12)]
    [InlineData(14, 0.5103, 0.07958, 0.89, 1.12)]
    [InlineData(15, 0.4031, 0.06299, 0.89, 1.12)]
    [InlineData(16, 0.3160, 0.04965, 0.89, 1.12)]
    [InlineData(17, 0.2451, 0.03872, 0.89, 1.12)]
    [InlineData(18, 0.1857, 0.02946, 0.89, 1.12)]
    [InlineData(19, 0.1339, 0.02130, 0.79, 1.26)]
    [InlineData(20, 0.08873, 0.01414, 0.79, 1.26)]
    [InlineData(21, 0.05311, 0.008478, 0.79, 1.26)]
    [InlineData(22, 0.02922, 0.004668, 0.79, 1.26)]
    public void Digital_AtTrueBandCentre_IsWithinTheTolerance(int band, double vertical, double horizontal, double least, double greatest)
    {
        double[] rates_Hz = [500, 1000, 2000];
        var frequency_Hz = Math.Pow(10, band / 10.0);
        Assert.All(rates_Hz, rate_Hz =>
        {
            Assert.InRange(Gain(RideWeighting.Vertical(rate_Hz), frequency_Hz / rate_Hz) / vertical, least, greatest);
            Assert.InRange(Gain(RideWeighting.Horizontal(rate_Hz), frequency_Hz / rate_Hz) / horizontal, least, greatest);
        });
    }

    private static double Gain(Biquad[] sections, double cyclesPerSample) =>
        sections.Aggregate(1.0, (gain, section) => gain * section.At(cyclesPerSample).Magnitude);
}
