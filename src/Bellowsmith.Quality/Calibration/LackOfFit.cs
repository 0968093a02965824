
namespace Bellowsmith.Quality.Calibration;

/// <summary>
/// Does a curve miss its readings by more than repeats at the same reference differ [Draper Smith 1998, ch. 2]?
/// </summary>
/// <param name="Misfit">Level means about the curve, tested against the repeats.</param>
/// <param name="Repeats">Repeats about their level mean.</param>
public sealed record LackOfFit(AnovaRow Misfit, AnovaRow Repeats)
{
    /// <summary>Null without repeats, or with no more levels than coefficients.</summary>
    public static LackOfFit? Of(PolynomialFit fit, double[] x, double[] y)
    {
        var levels = x.Zip(y).GroupBy(point => point.First, point => point.Second).Select(level => (X: level.Key, Y: level.Order().ToArray())).ToArray();
        int repeats = y.Length - levels.Length, misfit = fit.Degrees - repeats;
        if (repeats == 0 || misfit <= 0) return null;
        double pure = 0, missed = 0, nothing = Means.RoundingSquares(y);
        foreach ((double level, double[] readings) in levels)
        {
            double mean = Means.Of(readings), miss = mean - fit.At(level);
            pure += Means.SquaresAbout(readings, mean);
            missed += readings.Length * miss * miss;
        }

        AnovaRow error = new(pure <= nothing ? 0 : pure, repeats);
        return new(new AnovaRow(missed <= nothing ? 0 : missed, misfit).Against(error), error);
    }
}
