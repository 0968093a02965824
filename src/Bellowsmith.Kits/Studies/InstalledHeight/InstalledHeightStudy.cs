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
        Span<double> rates = stackalloc double[RateCurve.Places], excess = stackalloc double[RateCurve.Places];
        for (int k = 0; k < rates.Length; k++)
        {
            double height = RateCurve.HeightAt(least, greatest, k);
            rates[k] = curve.Rate_N_per_m(height);
            excess[k] = rates[k] - strut.TargetSpringRate_N_per_m(height);
        }

        double softest = curve.Extremum(least, greatest, rates, +1), stiffest = curve.Extremum(least, greatest, rates, -1);

        List<HeightSolution> solutions = [];
        Span<double> found = stackalloc double[2 * RateCurve.Places];
        int count = Crossings(curve, least, greatest, excess, found);
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

    /// <summary>The same report at any height the spring's data cover, whether or not it gives the wanted rate.</summary>
    public static HeightSolution At(StrutCase strut, double height_m) => SolutionReport.At(strut, height_m);

    /// <summary>Whether the thread can put the spring at a height, car height held; true where the kit says too little to know.</summary>
    internal static bool Reaches(StrutCase strut, double height_m) => SolutionReport.Thread(strut, height_m)?.Reachable != false;

    // Between places whose excess differs in sign. Where it turns back before it reaches zero, the turn itself is a place
    // too, so that two solutions close together are not stepped over.
    private static int Crossings(
        RateCurve curve, double least, double greatest, ReadOnlySpan<double> excess, Span<double> found)
    {
        int count = 0;
        double previous = least, before = excess[0];
        for (int k = 0; k < excess.Length; k++)
        {
            double here = RateCurve.HeightAt(least, greatest, k);
            double turn = TurnsBack(excess, k) ? curve.Turn(least, greatest, k, Math.Sign(excess[k])) : here;
            if (turn < here - AtDataEdge_m) Step(turn, curve.Excess_N_per_m(turn), found);
            if (k > 0) Step(here, excess[k], found);
            if (turn > here + AtDataEdge_m) Step(turn, curve.Excess_N_per_m(turn), found);
        }

        if (before == 0) found[count++] = previous;
        return count;

        void Step(double height, double value, Span<double> found)
        {
            if (double.IsNaN(before) != double.IsNaN(value))
            {
                // The rate may run off to infinity before air or area ends: look up to the very edge.
                double edge = curve.EdgeOfAir(double.IsNaN(value) ? previous : height, double.IsNaN(value) ? height : previous);
                double there = curve.Excess_N_per_m(edge);
                if (double.IsNaN(before)) (previous, before) = (edge, there);
                else (height, value) = (edge, there);
            }

            if (before == 0) found[count++] = previous;
            else if (before * value < 0) found[count++] = curve.Crossing(previous, height);
            (previous, before) = (height, value);
        }
    }

    private static bool TurnsBack(ReadOnlySpan<double> excess, int k) =>
        !double.IsNaN(excess[Math.Max(k - 1, 0)] + excess[k] + excess[Math.Min(k + 1, excess.Length - 1)])
        && !(k > 0 && excess[k] * excess[k - 1] < excess[k] * excess[k])
        && !(k < excess.Length - 1 && excess[k] * excess[k + 1] < excess[k] * excess[k]);

    private static RatePlace? Place(StrutCase strut, double height_m)
    {
        if (double.IsNaN(height_m)) return null;
        StrutSpring spring = strut.Spring();
        double pg = spring.GaugePressureFor_Pa(strut.SpringForce_N(height_m), height_m);
        double rate = spring.SealedRate_N_per_m(height_m, pg, strut.Exponent);
        return new RatePlace(height_m, pg, rate, strut.RideFrequency_Hz(strut.WheelRate_N_per_m(rate, height_m)));
    }

    // Of the places and the extrema, so that a target just out of reach gets the extremum itself. Where no height lies within
    // the pressure limit, the one that takes least.
    private static RatePlace? Nearest(
        StrutCase strut, RateCurve curve, double least, double greatest, ReadOnlySpan<double> extrema)
    {
        StrutSpring spring = strut.Spring();
        double best = double.NaN, miss = double.PositiveInfinity, least_Pa = double.PositiveInfinity, easiest = double.NaN;
        for (int k = 0; k < RateCurve.Places + extrema.Length; k++)
        {
            double height = k < RateCurve.Places ? RateCurve.HeightAt(least, greatest, k) : extrema[k - RateCurve.Places];
            double excess = double.IsNaN(height) ? double.NaN : Math.Abs(curve.Excess_N_per_m(height));
            if (double.IsNaN(excess)) continue;
            double pg = spring.GaugePressureFor_Pa(strut.SpringForce_N(height), height);
            if (pg < least_Pa) (easiest, least_Pa) = (height, pg);
            if (excess < miss && pg <= strut.Part.MaxGaugePressure_Pa) (best, miss) = (height, excess);
        }

        return Place(strut, double.IsNaN(best) ? easiest : best);
    }
}
