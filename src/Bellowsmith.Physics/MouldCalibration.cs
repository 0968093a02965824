using Bellowsmith.Physics.Bellows;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// A bellows brought to agree with a spring that was measured: cord angle and cord length, which nobody can measure on a
/// finished spring, are moved until its effective area follows the load frame's over height. The data win: forces,
/// volumes and rates stay the measured spring's; the calibrated bellows only lends them its shape. A difference that stays is the wall's: it stretches, which this
/// bellows does not. What the wall stretches with gauge pressure is lent to its cords.
/// </summary>
public sealed record MouldCalibration
{
    /// <summary>The step of gauge pressure that <see cref="Swollen"/> stands for.</summary>
    public const double Swelling_Pa = 1e5;

    private const int Places = 41, Around = 4;
    private const double StartAngle_rad = 0.03, StartLength = 0.03, Tolerance = 1e-7, MostAngle_rad = 1.4;

    /// <summary>As the mould says.</summary>
    public required CordBellows Before { get; init; }

    /// <summary>With the cord angle and cord length that agree best.</summary>
    public required CordBellows After { get; init; }

    /// <summary>The gauge pressure at which it was calibrated.</summary>
    public required double GaugePressure_Pa { get; init; }

    /// <summary>
    /// What <see cref="After"/> becomes under <see cref="Swelling_Pa"/> more: its area gains, to first order, what the measured area gains.
    /// <see cref="After"/> itself where the measured area does not depend on gauge pressure.
    /// </summary>
    public required CordBellows Swollen { get; init; }

    /// <summary>Root mean square difference of effective area over the measured heights, as a share of its mean; a height
    /// without shape counts as 1.</summary>
    public required double DifferenceBefore { get; init; }

    public required double DifferenceAfter { get; init; }

    /// <summary>Calibrates at one gauge pressure, best the middle of those tested.</summary>
    /// <param name="mould">The bellows as its mould says.</param>
    /// <param name="spring">The measured spring.</param>
    /// <param name="gaugePressure_Pa">Where the area may hang on it.</param>
    /// <param name="plates_m">What end plates outside the beads take of the spring's height.</param>
    public static MouldCalibration Of(CordBellows mould, AirSpring spring, double gaugePressure_Pa, double plates_m = 0)
    {
        double[] heights = new double[Places], areas = new double[Places], gains = new double[Places];
        for (int i = 0; i < Places; i++)
        {
            heights[i] = spring.LeastHeight_m + (spring.GreatestHeight_m - spring.LeastHeight_m) * i / (Places - 1);
            areas[i] = spring.At(heights[i], gaugePressure_Pa).EffectiveArea_m2;
            gains[i] = Swelling_Pa * spring.At(heights[i], gaugePressure_Pa).AreaByGaugePressure_m2_per_Pa;
            heights[i] -= plates_m;
        }

        CordShape?[] shapes = new CordShape?[Places];
        (double angle, double length) = NelderMead.Least(Miss, Nearby(mould, Miss), (StartAngle_rad, StartLength), Tolerance);
        CordBellows after = mould.With(angle, Math.Exp(length));
        return new MouldCalibration
        {
            Before = mould,
            After = after,
            GaugePressure_Pa = gaugePressure_Pa,
            Swollen = spring.DependsOnGaugePressure ? Swollen() : after,
            DifferenceBefore = Difference(mould),
            DifferenceAfter = Difference(after),
        };

        CordBellows Swollen()
        {
            (double turned, double longer) = CordSwelling.Of(after, heights, gains);
            return after.With(after.CordAngleAtBead_rad + turned, after.CordLength_m * Math.Exp(longer));
        }

        double Miss(double angle, double length) =>
            Reaches(mould, angle, length) ? Difference(mould.With(angle, Math.Exp(length))) : double.PositiveInfinity;

        double Difference(CordBellows bellows)
        {
            bellows.Sweep(heights, shapes);
            double mean = areas.Average(), sum = 0;
            for (int i = 0; i < Places; i++)
            {
                double share = shapes[i] is { } shape ? (shape.EffectiveArea_m2 - areas[i]) / mean : 1;
                sum += share * share;
            }

            return Math.Sqrt(sum / Places);
        }
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

    private static bool Reaches(CordBellows mould, double angle, double length) =>
        angle is >= 0 and < MostAngle_rad && length < 10 && mould.GirdleRadius_m < CordBellows.WidestRadius_m(mould.BeadRadius_m, angle);
}
