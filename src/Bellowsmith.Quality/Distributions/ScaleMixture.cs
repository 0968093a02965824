using Bellowsmith.Quality.Numerics;

namespace Bellowsmith.Quality.Distributions;

/// <summary>
/// <c>E H(c·S)</c>, where <c>S = √(χ²ν/ν)</c> is a standard deviation estimated with <c>ν</c> degrees: what becomes of a
/// probability <c>H(x)</c> at known deviation when the deviation is estimated from the same data.
/// <para>
/// With <c>u = ln S</c> the density is proportional to <c>exp(ν(u − e²ᵘ/2))</c>, analytic and falling off on both sides, so
/// the trapezoid converges exponentially: an error near <c>exp(−π²/(ν·step²))</c> for many degrees and
/// <c>exp(−π²/(2·step))</c> for few. The nodes stand still in <c>ln x</c> and only the density moves with <c>c</c>:
/// a quantile costs hardly more values of <c>H</c> than one probability.
/// </para>
/// </summary>
internal sealed class ScaleMixture(Func<double, double> atKnownDeviation, double degrees, double step)
{
    private const double Negligible = 1e-18;
    private readonly Dictionary<int, double> _known = [];

    public double At(double c) => double.IsPositiveInfinity(degrees) ? atKnownDeviation(c) : Sum(Math.Log(c)).Value;

    /// <summary>The c at which the mixture, rising in c, reaches a probability; from a guess of it.</summary>
    public double Quantile(double probability, double guess)
    {
        double odds = Math.Log(probability / (1 - probability));
        return Math.Exp(RisingRoot.Find(Distance, double.NegativeInfinity, double.PositiveInfinity, Math.Log(guess)));

        // In log odds over ln c the distribution is nearly a straight line.
        (double, double) Distance(double logC)
        {
            (double value, double slope) = double.IsPositiveInfinity(degrees) ? KnownDeviation(logC) : Sum(logC);
            return (Math.Log(value / (1 - value)) - odds, slope / (value * (1 - value)));
        }
    }

    private (double Value, double Slope) Sum(double logC)
    {
        int middle = (int)Math.Round(logC / step);
        double weights = 0, value = 0, slope = 0;
        bool Add(int node)
        {
            // eᵘ·sinh u = (e²ᵘ − 1)/2 keeps its digits near the peak at u = 0.
            double u = node * step - logC, excess = Math.Exp(u) * Math.Sinh(u), density = Math.Exp(degrees * (u - excess));
            weights += density;
            value += density * Known(node);
            slope += density * Known(node) * degrees * 2 * excess;
            return density > Negligible;
        }

        for (int node = middle; Add(node); node++) { }
        for (int node = middle - 1; Add(node); node--) { }
        return (value / weights, slope / weights);
    }

    private (double Value, double Slope) KnownDeviation(double logC)
    {
        const double half = 1e-5;
        double below = atKnownDeviation(Math.Exp(logC - half)), above = atKnownDeviation(Math.Exp(logC + half));
        return (atKnownDeviation(Math.Exp(logC)), (above - below) / (2 * half));
    }

    private double Known(int node)
    {
        if (!_known.TryGetValue(node, out double value)) _known[node] = value = atKnownDeviation(Math.Exp(node * step));
        return value;
    }
}
