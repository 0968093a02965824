using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using static Bellowsmith.Tests.Kits.Studies.SampleStrut;

namespace Bellowsmith.Tests.Kits.Studies.InstalledHeight;

/// <summary>Designs whose air or area ends somewhere within the heights: an answer or a reason, never a nonsense rate.</summary>
public sealed class EdgeOfAirTests
{
    [Theory]
    [InlineData(110)] // more than the least area, 109.50 cm² at 110 mm
    [InlineData(116)]
    [InlineData(125)] // more than any
    public void Answer_SealWiderThanTheSpring_FindsOnlyTrueSolutions(double seal_cm2)
    {
        StrutCase strut = Of(SpringRate(120_000)).Designed(d => d with { SealAreaInAir_m2 = seal_cm2 * 1e-4 });

        InstalledHeightResult result = InstalledHeightStudy.Answer(strut);

        Assert.All(result.Solutions, s => Assert.Equal(120_000, Rate_N_per_m(s.Height_m, Load_N, seal_cm2 * 1e-4), 1));
    }

    [Theory]
    [InlineData(560e-6)] // of 526 cm³ at the least height
    [InlineData(800e-6)]
    public void Answer_MoreDisplacedThanTheSpringHolds_FindsOnlyTrueSolutions(double displaced_m3)
    {
        StrutCase strut = Of(SpringRate(400_000)).Designed(d => d with { DisplacedVolume_m3 = displaced_m3 });

        InstalledHeightResult result = InstalledHeightStudy.Answer(strut);

        HeightSolution solution = Assert.Single(result.Solutions); // the rate falls from infinity where the air begins
        Assert.Equal(400_000, Rate_N_per_m(solution.Height_m, Load_N, 0, displaced_m3), 1);
        Assert.True(solution.Volume_m3 > 0);
        Assert.All(new[] { result.Minimum!, result.Maximum! }, p => Assert.True(p.SpringRate_N_per_m > 0));
    }

    [Fact]
    public void Answer_GasCarriesMoreThanTheCorner_HasNoSolution()
    {
        TelescopicDamperPart damper = new("d", 0.022, 0.3, 0.4, 12e6, null, null, null); // 4562 N of gas over 3300 N
        StrutCase strut = Of(SpringRate(120_000), damper: damper) with { Gas = new(0.022, 0.4, 12e6, null) };

        InstalledHeightResult result = InstalledHeightStudy.Answer(strut);

        Assert.Empty(result.Solutions);
        Assert.Null(result.Minimum);
        Assert.True(result.SpringForce_N < 0);
    }
}
