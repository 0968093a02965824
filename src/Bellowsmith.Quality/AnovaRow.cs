using MathNet.Numerics;

namespace Bellowsmith.Quality;

/// <summary>One line of an analysis of variance.</summary>
/// <param name="SumOfSquares">In the readings' unit squared.</param>
/// <param name="Degrees">Degrees of freedom.</param>
/// <param name="F">Mean square over that of the line it is tested against; null where it is tested against none, or that is nothing.</param>
/// <param name="P">Probability of a larger F where there is no effect.</param>
public sealed record AnovaRow(double SumOfSquares, int Degrees, double? F = null, double? P = null)
{
    public double MeanSquare => SumOfSquares / Degrees;

    /// <summary>The same line tested against another; where that one is nothing, anything beside it is certain.</summary>
    internal AnovaRow Against(AnovaRow error)
    {
        if (error.SumOfSquares == 0) return this with { P = SumOfSquares > 0 ? 0 : 1 };
        double f = MeanSquare / error.MeanSquare;
        return this with { F = f, P = UpperTail(f, Degrees, error.Degrees) };
    }

    internal AnovaRow Pooled(AnovaRow other) => new(SumOfSquares + other.SumOfSquares, Degrees + other.Degrees);

    /// <summary>P(F &gt; f), from the beta function's other side so that small tails keep their digits.</summary>
    internal static double UpperTail(double f, double degrees, double errorDegrees) =>
        SpecialFunctions.BetaRegularized(errorDegrees / 2, degrees / 2, errorDegrees / (errorDegrees + degrees * f));
}
