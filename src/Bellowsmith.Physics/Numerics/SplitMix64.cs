namespace Bellowsmith.Physics.Numerics;

/// <summary>
/// Steele, Lea and Flood's generator: a counter of odd step put through a mixing function [Steele Lea Flood 2014]. 64 bits of
/// state, each of 2⁶⁴ values once. Only integers, sums, products and square roots are used here, which IEEE 754 rounds the
/// same way everywhere: a seed gives the same numbers on every machine.
/// </summary>
internal struct SplitMix64(ulong seed)
{
    private ulong _state = seed;

    public ulong Next()
    {
        ulong z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>Even on [0, 1), in steps of 2⁻⁵³.</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>
    /// Mean 0, variance 1, nearly normal: twelve even numbers less six. Excess kurtosis −0.1 and nothing beyond 6, which summing
    /// a road out of them makes invisible; a logarithm would differ in its last digit between machines.
    /// </summary>
    public double Normal()
    {
        double sum = -6;
        for (int i = 0; i < 12; i++) sum += Unit();
        return sum;
    }

    /// <summary>cos and sin of an angle even on the whole turn: a point of the unit disc, moved out to its rim.</summary>
    public (double Cos, double Sin) Direction()
    {
        while (true)
        {
            double x = 2 * Unit() - 1, y = 2 * Unit() - 1, square = x * x + y * y;
            if (square is > 1 or < 1e-12) continue;
            double length = Math.Sqrt(square);
            return (x / length, y / length);
        }
    }
}
