namespace Bellowsmith.Physics;

/// <summary>
/// A tyre by its size, such as 225/40 R18. Its section is what a catalogue gives on a measuring rim, where it is known; else the size's own
/// number on the rim it belongs to: 0.70 of it wide down to aspect 0.50, 0.85 below (the tyre makers' standards manual, from memory;
/// within 1 % of the catalogue sections of eight usual sizes, also from memory).
/// </summary>
public sealed record Tyre(double NominalSection_m, double Aspect, double RimDiameter_m)
{
    /// <summary>What a section grows by for each metre of rim: 0.2 in for 0.5 in. Common practice of the trade's catalogues.</summary>
    public const double SectionPerRim = 0.4;

    private const double WideShare = 0.70, LowShare = 0.85, LowAspect = 0.50, Spread = 0.03;

    /// <summary>A section measured or catalogued, and the rim width it was measured on; null where only the size is known.</summary>
    public (double Section_m, double RimWidth_m)? Catalogue { get; init; }

    public double SidewallHeight_m => Aspect * NominalSection_m;

    public double FreeRadius_m => RimDiameter_m / 2 + SidewallHeight_m;

    /// <summary>On a rim so wide.</summary>
    public double Section_m(double rimWidth_m)
    {
        (double section, double rim) = Catalogue ?? (NominalSection_m, (Aspect < LowAspect ? LowShare : WideShare) * NominalSection_m);
        return section + SectionPerRim * (rimWidth_m - rim);
    }

    /// <summary>How far the section may lie off, ±: 3 % where only the size is known (common practice, no source), 0 where it was measured.</summary>
    public double SectionSpread_m(double rimWidth_m) => Catalogue is null ? Spread * Section_m(rimWidth_m) : 0;
}
