namespace Bellowsmith.Quality.Uncertainty;

/// <summary>One draw of an input [JCGM 101 2008, 6.4].</summary>
internal static class Draws
{
    public static double Of(UncertainInput input, Random random) =>
        input.Value + input.StandardUncertainty * Standard(input.Shape, input.Degrees, random);

    private static double Standard(InputShape shape, double degrees, Random random) => shape switch
    {
        InputShape.Rectangular => Math.Sqrt(3) * (2 * random.NextDouble() - 1),
        InputShape.Triangular => Math.Sqrt(6) * (random.NextDouble() - random.NextDouble()),
        InputShape.Arcsine => Math.Sqrt(2) * Math.Sin(2 * Math.PI * random.NextDouble()),
        InputShape.StudentT when double.IsFinite(degrees) => StudentT(degrees, random),
        _ => Normal(random),
    };

    // Box and Muller's angle form; 1 − u because the logarithm of nothing is none.
    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    // Bailey's form of the same for Student's t [Bailey 1994].
    private static double StudentT(double degrees, Random random)
    {
        double u = 1 - random.NextDouble();
        return Math.Sqrt(degrees * (Math.Pow(u, -2 / degrees) - 1)) * Math.Cos(2 * Math.PI * random.NextDouble());
    }
}
