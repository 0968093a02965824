namespace Bellowsmith.Physics;

/// <summary>
/// What a person feels of a weighted acceleration over a time [ISO 2631-1 1997]: root mean square (eq. 1), the greatest r.m.s. over any
/// one second (MTVV, eqs 2 and 4, linear average), the vibration dose (VDV, fourth-power sum, eq. 5), which answers to shocks, and the peak.
/// </summary>
/// <param name="Duration_s">Time the values are over.</param>
/// <param name="Rms_m_per_s2">a_w.</param>
/// <param name="MaximumTransient_m_per_s2">MTVV; null for less than one second.</param>
/// <param name="Dose_m_per_s175">VDV = (∫a_w⁴ dt)^¼.</param>
/// <param name="Peak_m_per_s2">Greatest |a_w(t)|.</param>
public readonly record struct WeightedVibration(
    double Duration_s, double Rms_m_per_s2, double? MaximumTransient_m_per_s2, double Dose_m_per_s175, double Peak_m_per_s2)
{
    /// <summary>Peak over r.m.s.; null where nothing moves.</summary>
    public double? CrestFactor => Rms_m_per_s2 > 0 ? Peak_m_per_s2 / Rms_m_per_s2 : null;

    /// <summary>
    /// True where the r.m.s. alone understates the shocks: crest factor above 9, MTVV above 1.5·a_w, or VDV above 1.75·a_w·T^¼ (the
    /// last two limits from memory).
    /// </summary>
    public bool NeedsMoreThanRms =>
        CrestFactor > 9 || MaximumTransient_m_per_s2 > 1.5 * Rms_m_per_s2 || Dose_m_per_s175 > 1.75 * Rms_m_per_s2 * Math.Pow(Duration_s, 0.25);

    /// <summary>Weights an acceleration and sums it up. The filters begin at rest and settle while the first seconds are left out.</summary>
    /// <param name="acceleration_m_per_s2">Evenly sampled; not changed.</param>
    /// <param name="sampleRate_Hz">Samples a second, the one the sections were made for.</param>
    /// <param name="weighting">Sections, such as <see cref="RideWeighting.Vertical"/>; none for an acceleration already weighted.</param>
    /// <param name="settle_s">Time from the beginning that is filtered but not counted.</param>
    /// <exception cref="ArgumentException">Nothing is left after settling.</exception>
    public static WeightedVibration Of(
        ReadOnlySpan<double> acceleration_m_per_s2, double sampleRate_Hz, ReadOnlySpan<Biquad> weighting, double settle_s = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sampleRate_Hz);
        ArgumentOutOfRangeException.ThrowIfNegative(settle_s);
        double[] weighted = acceleration_m_per_s2.ToArray();
        foreach (Biquad section in weighting) section.Filter(weighted);
        int first = (int)Math.Round(settle_s * sampleRate_Hz);
        if (first >= weighted.Length) throw new ArgumentException("Nothing is left after settling.", nameof(acceleration_m_per_s2));
        return Sum(weighted.AsSpan(first), sampleRate_Hz);
    }

    /// <summary>a_v = √(kx²·ax² + ky²·ay² + kz²·az²) (eq. 10); all k = 1 for comfort on a seat, 1.4, 1.4 and 1 for health.</summary>
    public static double Total_m_per_s2(double x_m_per_s2, double y_m_per_s2, double z_m_per_s2, double kx = 1, double ky = 1, double kz = 1) =>
        Math.Sqrt(kx * kx * x_m_per_s2 * x_m_per_s2 + ky * ky * y_m_per_s2 * y_m_per_s2 + kz * kz * z_m_per_s2 * z_m_per_s2);

    private static WeightedVibration Sum(ReadOnlySpan<double> weighted, double sampleRate_Hz)
    {
        int second = (int)Math.Round(sampleRate_Hz);
        double squares = 0, fourths = 0, peak = 0, within = 0, greatest = 0;
        for (int i = 0; i < weighted.Length; i++)
        {
            double square = weighted[i] * weighted[i];
            squares += square;
            fourths += square * square;
            peak = Math.Max(peak, Math.Abs(weighted[i]));
            within += square - (i >= second ? weighted[i - second] * weighted[i - second] : 0);
            if (i >= second - 1) greatest = Math.Max(greatest, within);
        }

        return new(
            weighted.Length / sampleRate_Hz,
            Math.Sqrt(squares / weighted.Length),
            weighted.Length < second ? null : Math.Sqrt(greatest / second),
            Math.Pow(fourths / sampleRate_Hz, 0.25),
            peak);
    }
}
