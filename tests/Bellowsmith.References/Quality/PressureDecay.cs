using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Pressure decay with temperature compensation, leak rate units, and conformance. The regulation's example is
/// [CFR 40 part 1065 2024, sec. 1065.644], a rise of 25.3 kPa in 2 L and 70 s; its printed result rounds ours. The air spring's decay test is
/// our own example, computed independently. One public converter table lists 1 sccm as 1.333e-3 mbar·L/s, wrong by 12.7 times; one
/// supplier's air masses for 273.15 K are those of 20 °C: both are not followed here.
/// </summary>
public sealed class PressureDecay
{
    private static readonly DecayTest AirSpring = new()
    {
        Volume_m3 = new(3.2e-3, 0.02e-3),
        StartAbsolutePressure_Pa = new(10.013e5, 60),
        StartTemperature_K = new(294.15, 0.05),
        EndAbsolutePressure_Pa = new(9.985e5, 60),
        EndTemperature_K = new(293.85, 0.05),
        Time_s = new(600, 0.5),
    };

    [Fact]
    public void Rate_OfTheRegulationsExample_IsItsMolarFlow()
    {
        DecayTest test = AirSpring with
        {
            Volume_m3 = new(0.002, 0),
            StartAbsolutePressure_Pa = new(25_300, 0),
            StartTemperature_K = new(293.15, 0),
            EndAbsolutePressure_Pa = new(50_600, 0),
            EndTemperature_K = new(293.15, 0),
            Time_s = new(70, 0),
        };

        Assert.Equal(-2.965705e-4, test.Rate.Moles_per_s, 1e-9);
    }

    [Fact]
    public void Rate_OfTheAirSpring_IsTheWorkedOne()
    {
        LeakRate rate = AirSpring.Rate;

        Assert.Equal(0.00946426115, rate.Value_Pa_m3_per_s, 1e-10);
        Assert.Equal(0.0946426, rate.Value_mbar_L_per_s, 1e-7);
        Assert.Equal(3.88295745e-6, rate.Moles_per_s, 1e-13);
        Assert.Equal(1.12470666e-7, rate.Air_kg_per_s, 1e-14);
        Assert.Equal(5.2219494, rate.StandardCubicCentimetres_per_min(273.15), 1e-6);
        Assert.Equal(5.6042997, rate.StandardCubicCentimetres_per_min(293.15), 1e-6);
        Assert.Equal(0.0149333, AirSpring.Uncompensated_Pa_m3_per_s, 1e-7);
        Assert.Equal(3404.05, AirSpring.PascalsPerKelvin, 0.01);
    }

    [Fact] // the leak that a temperature drop of 0.3 K fakes: at constant mass the pressure would have fallen with it
    public void Rate_OfATightSpringThatCools_FakesWhatTheExampleSays() => Assert.Equal(
        0.0054465, DecayTest.Uncompensated(3.2e-3, 10.013e5, 10.013e5 * 293.85 / 294.15, 600), 1e-7);

    [Fact]
    public void FakedByCreep_OfATenthOfAPercent_IsTheWorkedOne() =>
        Assert.Equal(0.0053403, DecayTest.FakedByCreep_Pa_m3_per_s(10.013e5, 3.2e-6, 600), 1e-7);

    [Theory]
    [InlineData(LeakSource.Volume, 5.9152e-5)]
    [InlineData(LeakSource.StartGauge, 3.1891e-4)]
    [InlineData(LeakSource.EndGauge, 3.1924e-4)]
    [InlineData(LeakSource.StartTemperature, 9.0466e-4)]
    [InlineData(LeakSource.EndTemperature, 9.0397e-4)]
    public void Contribution_OfASource_IsTheWorkedOne(LeakSource source, double expected) => Assert.Equal(
        expected, AirSpring.Estimate().Contributions.Single(c => c.Source == source).Rate_Pa_m3_per_s, 1e-8);

    [Fact]
    public void Uncertainty_OfTheAirSpring_IsTheWorkedOne()
    {
        LeakEstimate estimate = AirSpring.Estimate();

        Assert.Equal(7.89e-6, estimate.Contributions.Single(c => c.Source == LeakSource.Time).Rate_Pa_m3_per_s, 1e-8);
        Assert.Equal(0.00135748082, estimate.RateUncertainty_Pa_m3_per_s, 1e-9);
    }

    [Fact]
    public void Units_OfAPublishedTable_AreThePublished()
    {
        Assert.Equal(1, LeakRate.FromMillibarLitres(10, 273.15).Value_Pa_m3_per_s, 1e-15);
        Assert.Equal(0.133322368, LeakRate.FromTorrLitres(1, 273.15).Value_Pa_m3_per_s, 1e-9);
        Assert.Equal(0.101325, LeakRate.FromAtmosphereCubicCentimetres(1, 273.15).Value_Pa_m3_per_s, 1e-15);
        Assert.Equal(0.00168875, LeakRate.FromStandardCubicCentimetres(1, 273.15).Value_Pa_m3_per_s, 1e-15);
        Assert.Equal(0.0168875, LeakRate.FromStandardCubicCentimetres(1, 273.15).Value_mbar_L_per_s, 1e-14);
        Assert.Equal(59.2153960, LeakRate.FromMillibarLitres(1, 273.15).StandardCubicCentimetres_per_min(273.15), 5e-8);
    }

    [Fact]
    public void Units_ThereAndBack_AreTheSame()
    {
        LeakRate rate = LeakRate.FromMillibarLitres(1, 293.15);
        LeakRate back = LeakRate.FromStandardCubicCentimetres(rate.StandardCubicCentimetres_per_min(273.15), 273.15).At(293.15);

        Assert.Equal(1, back.Value_mbar_L_per_s, 1e-9);
        Assert.Equal(1, LeakRate.FromTorrLitres(rate.Value_Torr_L_per_s, 293.15).Value_mbar_L_per_s, 1e-12);
        Assert.Equal(1, LeakRate.FromAtmosphereCubicCentimetres(rate.Value_atm_cm3_per_s, 293.15).Value_mbar_L_per_s, 1e-12);
    }

    [Theory]
    [InlineData(273.15, 7.436e-7)]
    [InlineData(293.15, 6.929e-7)]
    public void Moles_OfAStandardCubicCentimetre_DependOnItsTemperature(double standardTemperature_K, double expected) =>
        Assert.Equal(expected, LeakRate.FromStandardCubicCentimetres(1, standardTemperature_K).Moles_per_s, 1e-10);

    [Theory]
    [InlineData(273.15, 4.59139)]
    [InlineData(293.15, 4.27814)]
    public void AirMass_OfAMillibarLitre_DependsOnItsTemperature(double temperature_K, double expected_g_per_h) =>
        Assert.Equal(expected_g_per_h, LeakRate.FromMillibarLitres(1, temperature_K).Air_kg_per_s * 3.6e6, 1e-5);

    [Theory] // a diode at least as far from nothing, a container's burst, and our leak at two limits
    [InlineData(-5.47, 0.05, -5.40, 0.919243, 5e-7)]
    [InlineData(-509.7, 8.6, -490, 0.989010, 5e-7)]
    [InlineData(0.00946426115, 0.00135748082, 0.0150, 0.9999772827, 1e-9)]
    [InlineData(0.00946426115, 0.00135748082, 0.0120, 0.9691171508, 1e-9)]
    public void Below_OfAWorkedCase_IsItsProbability(double estimate, double uncertainty, double limit, double expected, double tolerance) =>
        Assert.Equal(expected, Conformance.Below(estimate, uncertainty, limit), tolerance);

    [Fact]
    public void Above_OfTheContainer_IsItsProbability() => Assert.Equal(0.989010, Conformance.Above(509.7, 8.6, 490), 5e-7);

    [Fact] // a crimp of 12.46 mm
    public void Between_OfTheCrimp_IsItsProbability() => Assert.Equal(0.9758999700, Conformance.Between(12.46, 0.02, 12.40, 12.50), 1e-9);

    [Theory]
    [InlineData(0.0150, 0.01276714)]
    [InlineData(0.0120, 0.00976714)]
    public void Factor_Of95Percent_GuardsTheLeak(double limit, double acceptance)
    {
        Assert.Equal(1.6448536, Conformance.Factor(0.95), 5e-8);
        Assert.Equal(acceptance, limit - Conformance.Factor(0.95) * 0.00135748082, 5e-9);
    }

    [Theory] // consumer's risk on the edge of the guard band
    [InlineData(2, 0.02275, 5e-6)]
    [InlineData(1.645, 0.04998, 5e-6)]
    public void Below_OnTheEdgeOfAGuardBand_LeavesTheKnownRisk(double factor, double risk, double tolerance) =>
        Assert.Equal(risk, 1 - Conformance.Below(-factor, 1, 0), tolerance);

    [Fact] // four degrees of freedom: five readings
    public void Factor_OfFewReadings_IsTheirT()
    {
        Assert.Equal(3.746947, Conformance.Factor(0.99, 4), 5e-7);
        Assert.Equal(2.326348, Conformance.Factor(0.99), 5e-7);
        Assert.Equal(0.00541128, 1 - Conformance.Below(-4.5, 1, 0, 4), 5e-9);
    }

    [Theory]
    [InlineData(0, 1.7320508)]
    [InlineData(0.05, 1.5588457)]
    public void RectangularFactor_OfARisk_IsTheKnown(double risk, double expected) => Assert.Equal(expected, Conformance.RectangularFactor(risk), 5e-8);
}
