using Bellowsmith.Physics;

namespace Bellowsmith.References;

internal static class Natural
{
    /// <summary>Of a mass on a spring that carries it: √(k·g/F)/2π.</summary>
    public static double Frequency_Hz(double rate_N_per_m, double load_N) =>
        Math.Sqrt(rate_N_per_m * StandardGravity.Value_m_per_s2 / load_N) / (2 * Math.PI);
}
