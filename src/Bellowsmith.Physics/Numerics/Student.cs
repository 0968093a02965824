namespace Bellowsmith.Physics.Numerics;

/// <summary>Student's t; the tabulated values are from memory, held to a library's in a test.</summary>
internal static class Student
{
    private static readonly double[] _few = [12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228];

    /// <summary>
    /// Two-sided 95 %: as tabulated to 10 degrees of freedom, beyond them z + (z³ + z)/4n + (5z⁵ + 16z³ + 3z)/96n² with z = 1.95996 (from
    /// memory), within 0.003.
    /// </summary>
    /// <param name="degrees">1 or more.</param>
    public static double TwoSided95(int degrees) =>
        degrees <= _few.Length ? _few[degrees - 1] : 1.95996 + (2.3723 + 2.8225 / degrees) / degrees;
}
