using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Bellows;

/// <summary>
/// Brings a bellows' effective area to a measured one over height by its cords: least-squares steps, each halved until it gains. Where a
/// height is without shape, or the steps end short, a triangle wanders there instead.
/// </summary>
internal sealed class CordFit(double[] heights_m, double[] areas_m2)
{
    private const int MostSteps = 30, MostHalvings = 20, Around = 4;
    private const double StartAngle_rad = 0.03, StartLength = 0.03, Tolerance = 1e-7, Arrived = 1e-8, MostAngle_rad = 1.4;

    private readonly double _mean_m2 = areas_m2.Average();
    private readonly CordShape?[] _shapes = new CordShape?[heights_m.Length];

    public CordBellows Of(CordBellows mould) => Stepped(mould) ?? Searched(mould);

    /// <summary>Root mean square difference of effective area as a share of its mean; a height without shape counts as 1.</summary>
    public double Difference(CordBellows bellows)
    {
        bellows.Sweep(heights_m, _shapes);
        double sum = 0;
        for (int i = 0; i < _shapes.Length; i++)
        {
            double share = _shapes[i] is { } shape ? (shape.EffectiveArea_m2 - areas_m2[i]) / _mean_m2 : 1;
            sum += share * share;
        }

        return Math.Sqrt(sum / _shapes.Length);
    }

    private CordBellows? Stepped(CordBellows at)
    {
        double[] lacking = new double[areas_m2.Length];
        for (int n = 0; n < MostSteps; n++)
        {
            double difference = Difference(at);
            for (int i = 0; i < lacking.Length; i++)
            {
                if (_shapes[i] is not { } shape) return null;
                lacking[i] = areas_m2[i] - shape.EffectiveArea_m2;
            }

            CordChange change = CordChange.For(at, heights_m, lacking);
            if (change.Size < Arrived) return at;
            if (Gaining(at, change, difference) is not { } next) return null;
            at = next;
        }

        return null;
    }

    private CordBellows? Gaining(CordBellows from, CordChange change, double difference)
    {
        for (int n = 0; n < MostHalvings; n++, change = 0.5 * change)
            if (Reaches(from, from.CordAngleAtBead_rad + change.Angle_rad, Math.Log(from.CordLength_m) + change.LogLength) && change.Of(from) is var next && Difference(next) < difference) return next;
        return null;
    }

    private CordBellows Searched(CordBellows mould)
    {
        (double angle, double length) = NelderMead.Least(Miss, Nearby(mould, Miss), (StartAngle_rad, StartLength), Tolerance);
        return mould.With(angle, Math.Exp(length));

        double Miss(double angle, double length) =>
            Reaches(mould, angle, length) ? Difference(mould.With(angle, Math.Exp(length))) : double.PositiveInfinity;
    }

    // A mould may lack a shape at some of the heights, and a search that starts there may not find its way out.
    private static (double Angle, double Length) Nearby(CordBellows mould, Func<double, double, double> miss)
    {
        (double angle, double length) = (mould.CordAngleAtBead_rad, Math.Log(mould.CordLength_m));
        return Enumerable.Range(-Around, 2 * Around + 1)
            .SelectMany(i => Enumerable.Range(-Around, 2 * Around + 1)
                .Select(j => (Angle: angle + 2 * i * StartAngle_rad, Length: length + 3 * j * StartLength)))
            .MinBy(place => miss(place.Angle, place.Length));
    }

    private static bool Reaches(CordBellows mould, double angle, double logLength) =>
        angle is >= 0 and < MostAngle_rad && logLength < 10 && mould.GirdleRadius_m < CordBellows.WidestRadius_m(mould.BeadRadius_m, angle);
}
