namespace Bellowsmith.Physics.Bellows;

/// <summary>
/// How a real wall widens: the change of cord angle and cord length whose first-order effect on effective area comes nearest to what the
/// measured area gains with gauge pressure, least squares over height. Heights without a shape do not count.
/// </summary>
internal static class CordSwelling
{
    private const double Small = 1e-5, Singular = 1e-9;

    /// <summary>Changes of the cord angle at the bead, rad, and of the cord length's logarithm; 0 where the heights do not tell them apart.</summary>
    public static (double Angle, double LogLength) Of(CordBellows bellows, ReadOnlySpan<double> heights_m, ReadOnlySpan<double> gains_m2)
    {
        CordBellows turned = bellows.With(bellows.CordAngleAtBead_rad + Small, bellows.CordLength_m), longer = bellows.With(bellows.CordAngleAtBead_rad, bellows.CordLength_m * Math.Exp(Small));
        double aa = 0, al = 0, ll = 0, ag = 0, lg = 0;
        for (int i = 0; i < heights_m.Length; i++)
        {
            if (bellows.At(heights_m[i]) is not { } here || turned.At(heights_m[i]) is not { } byAngle || longer.At(heights_m[i]) is not { } byLength) continue;
            double a = (byAngle.EffectiveArea_m2 - here.EffectiveArea_m2) / Small, l = (byLength.EffectiveArea_m2 - here.EffectiveArea_m2) / Small, g = gains_m2[i];
            (aa, al, ll, ag, lg) = (aa + a * a, al + a * l, ll + l * l, ag + a * g, lg + l * g);
        }

        double determinant = aa * ll - al * al;
        return determinant > Singular * aa * ll ? ((ll * ag - al * lg) / determinant, (aa * lg - al * ag) / determinant) : default;
    }
}
