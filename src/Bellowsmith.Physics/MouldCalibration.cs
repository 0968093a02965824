using Bellowsmith.Physics.Bellows;

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

    private const int Places = 41;

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

        CordFit fit = new(heights, areas);
        CordBellows after = fit.Of(mould);
        return new MouldCalibration
        {
            Before = mould,
            After = after,
            GaugePressure_Pa = gaugePressure_Pa,
            Swollen = spring.DependsOnGaugePressure ? CordChange.For(after, heights, gains).Of(after) : after,
            DifferenceBefore = fit.Difference(mould),
            DifferenceAfter = fit.Difference(after),
        };
    }
}
