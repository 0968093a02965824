using Bellowsmith.Quality.Uncertainty;

namespace Bellowsmith.References.Quality;

/// <summary>
/// The end gauge of [JCGM 100 2008, H.1]: <c>l = lS + d − lS(δα·θ + αS·δθ)</c>, in nanometres. Published: 32 nm, 16.7 degrees
/// of freedom, 93 nm at 99 %, 34 nm with second order. The published 93 nm is 2.92 times 32 rounded; unrounded it is 92.5.
/// The temperature θ
/// has sensitivity zero: first order does not see its 11.7 nm, a simulation does. With θ's uncertainty rounded to 0.41 K, as
/// the example prints it, second order gives 33.8447 nm, from its two parts 33.8065 nm; both are the published 34.
/// </summary>
public sealed class UncertaintyBudgets
{
    private static readonly UncertainInput[] _endGauge =
    [
        new("lS", 50000623, 25, Degrees: 18),
        new("d", 215, 5.8, Degrees: 24),
        new("d random", 0, 3.9, Degrees: 5),
        new("d systematic", 0, 6.7, Degrees: 8),
        new("αS", 11.5e-6, UncertainInput.FromHalfWidth(2e-6, InputShape.Rectangular), InputShape.Rectangular),
        new("θ mean", -0.1, 0.2),
        new("θ cycle", 0, UncertainInput.FromHalfWidth(0.5, InputShape.Arcsine), InputShape.Arcsine),
        new("δα", 0, UncertainInput.FromHalfWidth(1e-6, InputShape.Rectangular), InputShape.Rectangular, 50),
        new("δθ", 0, UncertainInput.FromHalfWidth(0.05, InputShape.Rectangular), InputShape.Rectangular, 2),
    ];

    [Fact]
    public void FirstOrder_OfTheEndGauge_IsThePublished()
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(Length_nm, _endGauge, confidence: 0.99);

        Assert.Equal(50000838, budget.Value, 1e-6);
        Assert.Equal(31.663879, budget.StandardUncertainty, 1e-5);
        Assert.Equal(16.75186, budget.EffectiveDegrees!.Value, 1e-4);
        Assert.Equal(2.92078162, budget.CoverageFactor, 1e-7);
        Assert.Equal(92.4833, budget.ExpandedUncertainty, 1e-3);
        Assert.Equal(93, budget.ExpandedUncertainty, 1.0);
        Assert.Equal(33.8065448, budget.WithSecondOrder, 1e-6);
        Assert.Equal(34, budget.WithSecondOrder, 0.5);
        Assert.False(budget.FirstOrderSuffices);
        Assert.Equal(["αS", "θ mean", "θ cycle"], budget.Contributions.Where(c => c.SecondOrderOnly).Select(c => c.Input.Name));
    }

    [Theory]
    [InlineData("lS", 25)]
    [InlineData("d", 5.8)]
    [InlineData("δα", 2.886787)]
    [InlineData("δθ", 16.599027)]
    [InlineData("θ mean", 0)]
    public void FirstOrder_OfTheEndGauge_HasThePublishedContributions(string name, double published_nm)
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(Length_nm, _endGauge);

        Assert.Equal(published_nm, budget.Contributions.Single(c => c.Input.Name == name).Size, 1e-6);
    }

    [Theory] // second order is exact for products of two
    [InlineData(1)]
    [InlineData(2)]
    public void Simulation_OfTheEndGauge_SeesTheTemperature(int seed)
    {
        Simulation simulation = Simulation.Of(Length_nm, _endGauge, seed)!;

        Assert.True(simulation.Settled);
        Assert.Equal(33.8065, simulation.StandardUncertainty, 0.05);
        Assert.Equal(50000838, simulation.Mean, 0.2);
    }

    // l_S + d − l_S(δα·θ + α_S·δθ) with the four readings' uncertainties as Student's t: variance u²·ν/(ν − 2) each.
    [Fact]
    public void Simulation_WithStudentsT_IsWiderByItsDegrees()
    {
        UncertainInput[] inputs = [.. _endGauge.Select(input => input.Degrees < 30 && input.Shape == InputShape.Normal
            ? input with { Shape = InputShape.StudentT } : input)];

        Assert.Equal(35.34, Simulation.Of(Length_nm, inputs)!.StandardUncertainty, 0.2);
    }

    private static double Length_nm(ReadOnlySpan<double> x) =>
        x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * (x[5] + x[6]) + x[4] * x[8]);
}
