using System.Numerics;
using Bellowsmith.Physics.Comfort;

namespace Bellowsmith.Physics;

/// <summary>
/// How strongly a seated person feels vibration of each frequency: Wk for the vertical and Wd for the horizontal directions
/// [ISO 2631-1 1997], with the analogue transfer functions of [ISO 8041-1 2017, table 3]: band limits at 0.4 and 100 Hz, the transition
/// from acceleration to velocity, and for Wk an upward step. Also the two bands ride is tuned in: primary, the body's own motion,
/// 0.5 to 5 Hz, and secondary, 5 to 25 Hz (common practice).
/// </summary>
public static class RideWeighting
{
    /// <summary>Below this a digital filter reaches too little of the band, which ends at 100 Hz.</summary>
    public const double LeastSampleRate_Hz = 200;

    private const double Transition = 12.5, Step = 2.37, StepEnd = 3.35, StepQuality = 0.91, TransitionQuality = 0.63, Horizontally = 2.0;
    private static readonly double _butterworth = Math.Sqrt(0.5);

    private static readonly SecondOrder[]
        _limits = [SecondOrder.HighPass(0.4, _butterworth), SecondOrder.LowPass(100, _butterworth)],
        _vertical = [.. _limits, ToVelocity(Transition), UpwardStep()],
        _horizontal = [.. _limits, ToVelocity(Horizontally)];

    /// <summary>Wk at a frequency in Hz, phase and all.</summary>
    public static Complex VerticalAt(double frequency_Hz) => Product(_vertical, frequency_Hz);

    /// <summary>Wd at a frequency in Hz, phase and all.</summary>
    public static Complex HorizontalAt(double frequency_Hz) => Product(_horizontal, frequency_Hz);

    /// <summary>
    /// Wk as a cascade of digital sections, to be run one after another in any order. Within 7 % of the analogue magnitude to 63 Hz and
    /// 19 % to 158 Hz (or half the rate) from 200 Hz on, 2 % and 14 % at 500 Hz, 1 % throughout at 2 kHz, where [ISO 8041-1 2017] allows 11 %
    /// and 21 %. It leads the analogue filter by about one sample.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is below 200 Hz.</exception>
    public static Biquad[] Vertical(double sampleRate_Hz) => Digital(_vertical, sampleRate_Hz);

    /// <summary>Wd; see <see cref="Vertical"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is below 200 Hz.</exception>
    public static Biquad[] Horizontal(double sampleRate_Hz) => Digital(_horizontal, sampleRate_Hz);

    /// <summary>
    /// 0.5 to 5 Hz, second-order Butterworth edges: half the power passes at each, and what the primary band loses at 5 Hz the secondary
    /// one holds, so that both mean squares together are that of the whole.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is below 200 Hz.</exception>
    public static Biquad[] Primary(double sampleRate_Hz) => Band(0.5, 5, sampleRate_Hz);

    /// <summary>5 to 25 Hz; see <see cref="Primary"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is below 200 Hz.</exception>
    public static Biquad[] Secondary(double sampleRate_Hz) => Band(5, 25, sampleRate_Hz);

    private static SecondOrder ToVelocity(double frequency_Hz) =>
        new(1, 1 / (2 * Math.PI * frequency_Hz), 0, frequency_Hz, TransitionQuality);

    // Hs tends to 1 at high frequencies: its numerator carries (w5/w6)².
    private static SecondOrder UpwardStep()
    {
        double omega = 2 * Math.PI * Step, gain = Step * Step / (StepEnd * StepEnd);
        return new(gain, gain / (StepQuality * omega), gain / (omega * omega), StepEnd, StepQuality);
    }

    private static Biquad[] Band(double from_Hz, double to_Hz, double sampleRate_Hz) =>
        Digital([SecondOrder.HighPass(from_Hz, _butterworth), SecondOrder.LowPass(to_Hz, _butterworth)], sampleRate_Hz);

    private static Biquad[] Digital(SecondOrder[] sections, double sampleRate_Hz)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sampleRate_Hz, LeastSampleRate_Hz);
        return Array.ConvertAll(sections, section => section.Digital(sampleRate_Hz));
    }

    private static Complex Product(SecondOrder[] sections, double frequency_Hz)
    {
        Complex product = 1;
        foreach (SecondOrder section in sections) product *= section.At(frequency_Hz);
        return product;
    }
}
