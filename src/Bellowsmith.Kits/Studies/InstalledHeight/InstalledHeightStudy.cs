using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.InstalledHeight;

/// <summary>
/// Which spring height and gauge pressure give the wanted rate at this load, and what thread setting puts it there: all
/// solutions within spring and data, or none, with the reason.
/// </summary>
public static class InstalledHeightStudy
{
    private const double AtDataEdge_m = 1e-9;

    /// <summary>What a strut must know for this question.</summary>
    public static void Needs(StrutNeeds need) => need.Need(
        need.Design.Target is not null, "target", "one of rideFrequency, wheelRate, springRate",
        "Say what you want, for example \"target\": { \"rideFrequency\": \"1.9 Hz\" }.");

    public static InstalledHeightResult Answer(StrutCase strut)
    {
        RateCurve curve = new(strut, strut.Spring());
        (double least, double greatest) = (strut.LeastHeight_m, strut.GreatestHeight_m);
        Span<double> rates = stackalloc double[RateCurve.Places];
        for (int k = 0; k < rates.Length; k++) rates[k] = curve.Rate_N_per_m(RateCurve.HeightAt(least, greatest, k));
        double softest = curve.Extremum(least, greatest, rates, +1), stiffest = curve.Extremum(least, greatest, rates, -1);

        List<HeightSolution> solutions = [];
        Span<double> found = stackalloc double[RateCurve.Places + 2];
        int count = Crossings(curve, least, greatest, rates, [softest, stiffest], found);
        foreach (double height in found[..count]) solutions.Add(SolutionReport.At(strut, height));
        (int recommended, RecommendedFor reason) = Recommendation.Among(solutions);
        if (recommended >= 0) solutions[recommended] = solutions[recommended] with { Recommended = true };

        RatePlace? minimum = Place(strut, softest), maximum = Place(strut, stiffest);
        RatePlace? nearest = recommended >= 0 ? null : Nearest(strut, curve, least, greatest, [softest, stiffest]);
        double reference = recommended >= 0 ? solutions[recommended].Height_m : nearest?.Height_m ?? (least + greatest) / 2;
        return new InstalledHeightResult
        {
            Case = strut,
            ReferenceHeight_m = reference,
            SpringForce_N = strut.SpringForce_N(reference),
            GasForce_N = strut.GasForce_N(reference),
            TargetSpringRate_N_per_m = strut.TargetSpringRate_N_per_m(reference),
            Solutions = solutions,
            Minimum = minimum,
            Maximum = maximum,
            Nearest = nearest,
            RecommendedFor = reason,
        };
    }

    // Between places whose excess differs in sign; the refined extrema stand among the places, so that two solutions close
    // together are not stepped over.
    private static int Crossings(
        RateCurve curve, double least, double greatest, ReadOnlySpan<double> rates, ReadOnlySpan<double> extrema, Span<double> found)
    {
        int count = 0;
        double previous = least, before = curve.Excess_N_per_m(least);
        for (int k = 1; k < rates.Length; k++)
        {
            double here = RateCurve.HeightAt(least, greatest, k);
            foreach (double extremum in extrema)
                if (extremum > previous + AtDataEdge_m && extremum < here - AtDataEdge_m) Step(extremum, found);
            Step(here, found);
        }

        if (before == 0) found[count++] = previous;
        return count;

        void Step(double height, Span<double> found)
        {
            double excess = curve.Excess_N_per_m(height);
            if (before == 0) found[count++] = previous;
            else if (before * excess < 0) found[count++] = curve.Crossing(previous, height);
            (previous, before) = (height, excess);
        }
    }

    private static RatePlace? Place(StrutCase strut, double height_m)
    {
        if (double.IsNaN(height_m)) return null;
        StrutSpring spring = strut.Spring();
        double pg = spring.GaugePressureFor_Pa(strut.SpringForce_N(height_m), height_m);
        double rate = spring.SealedRate_N_per_m(height_m, pg, strut.Exponent);
        return new RatePlace(height_m, pg, rate, strut.RideFrequency_Hz(strut.WheelRate_N_per_m(rate, height_m)));
    }

    // Of the places and the extrema, so that a target just out of reach gets the extremum itself.
    private static RatePlace? Nearest(
        StrutCase strut, RateCurve curve, double least, double greatest, ReadOnlySpan<double> extrema)
    {
        StrutSpring spring = strut.Spring();
        double best = double.NaN, miss = double.PositiveInfinity;
        for (int k = 0; k < RateCurve.Places + extrema.Length; k++)
        {
            double height = k < RateCurve.Places ? RateCurve.HeightAt(least, greatest, k) : extrema[k - RateCurve.Places];
            double excess = double.IsNaN(height) ? double.NaN : Math.Abs(curve.Excess_N_per_m(height));
            if (excess < miss && spring.GaugePressureFor_Pa(strut.SpringForce_N(height), height) <= strut.Part.MaxGaugePressure_Pa)
                (best, miss) = (height, excess);
        }

        return Place(strut, best);
    }
}
