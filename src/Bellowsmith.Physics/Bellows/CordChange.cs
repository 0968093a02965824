namespace Bellowsmith.Physics.Bellows;

/// <summary>
/// The change of cord angle at the bead, rad, and of the cord length's logarithm whose first-order effect on effective area comes nearest to
/// what is wanted, least squares over height. Heights without a shape do not count.
/// </summary>
internal readonly record struct CordChange(double Angle_rad, double LogLength)
{
    private const double Small = 1e-5, Singular = 1e-9;

    public double Size => Math.Abs(Angle_rad) + Math.Abs(LogLength);

    public static CordChange operator *(double share, CordChange whole) => new(share * whole.Angle_rad, share * whole.LogLength);

    /// <summary>None where the heights do not tell angle and length apart.</summary>
    public static CordChange For(CordBellows bellows, ReadOnlySpan<double> heights_m, ReadOnlySpan<double> gains_m2)
    {
        CordShape?[] now = Shapes(bellows, heights_m), turned = Shapes(new CordChange(Small, 0).Of(bellows), heights_m), longer = Shapes(new CordChange(0, Small).Of(bellows), heights_m);
        double aa = 0, al = 0, ll = 0, ag = 0, lg = 0;
        for (int i = 0; i < heights_m.Length; i++)
        {
            if (now[i] is not { } here || turned[i] is not { } byAngle || longer[i] is not { } byLength) continue;
            double a = (byAngle.EffectiveArea_m2 - here.EffectiveArea_m2) / Small, l = (byLength.EffectiveArea_m2 - here.EffectiveArea_m2) / Small, g = gains_m2[i];
            (aa, al, ll, ag, lg) = (aa + a * a, al + a * l, ll + l * l, ag + a * g, lg + l * g);
        }

        double determinant = aa * ll - al * al;
        return determinant > Singular * aa * ll ? new((ll * ag - al * lg) / determinant, (aa * lg - al * ag) / determinant) : default;
    }

    /// <summary>The bellows on the changed cords.</summary>
    public CordBellows Of(CordBellows bellows) => bellows.With(bellows.CordAngleAtBead_rad + Angle_rad, bellows.CordLength_m * Math.Exp(LogLength));

    private static CordShape?[] Shapes(CordBellows bellows, ReadOnlySpan<double> heights_m)
    {
        CordShape?[] shapes = new CordShape?[heights_m.Length];
        bellows.Sweep(heights_m, shapes);
        return shapes;
    }
}
