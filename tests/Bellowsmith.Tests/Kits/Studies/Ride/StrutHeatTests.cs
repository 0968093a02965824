using System.Numerics;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Ride;

/// <summary>
/// Wall heat of the example's front strut, elastic bellows and all, between a body that cannot move and a wheel that does not care:
/// what its fitted polynomials make of the linear wall's n = (1 + γ·jωτ)/(1 + jωτ), over ± 2 mm, within 1 %.
/// </summary>
public sealed class StrutHeatTests
{
    private const double Amplitude_m = 2e-3, Ambient_Pa = 101_325;

    private static readonly Stand _stand = Stand.Of(
        RideStruts.Of(KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")), new StudyConditions())[0], new RideSetting(Click: 8), out _)!;

    [Theory] // ωτ, |n|, phase in degrees
    [InlineData(0.1, 1.00474, 2.25902)]
    [InlineData(0.5, 1.09179, 8.42697)]
    [InlineData(1, 1.21655, 9.46232)]
    [InlineData(2, 1.32966, 6.91123)]
    [InlineData(10, 1.39660, 1.62498)]
    public void Trace_SinusoidalTravel_GivesTheTable(double turn, double magnitude, double phase_deg)
    {
        Complex exponent = Driven(turn / _stand.Corner.TimeConstant_s);

        Assert.Equal(magnitude, exponent.Magnitude, 0.01 * magnitude);
        Assert.Equal(phase_deg, exponent.Phase * 180 / Math.PI, 0.01 * phase_deg);
    }

    private static Complex Driven(double omega_rad_per_s)
    {
        Corner held = _stand.Corner with
        {
            SprungMass_kg = 1e12,
            UnsprungMass_kg = 1e6,
            TyreRate_N_per_m = 1e11,
            DamperForce = MonotoneCurve.Through([-1, 1], [0, 0]),
        };
        int wave = (int)Math.Round(2 * Math.PI / omega_rad_per_s / RideRun.Step_s), settle = 2 + (int)(10 * held.TimeConstant_s / (wave * RideRun.Step_s));
        double[] road = [.. Enumerable.Range(1, (settle + 1) * wave).Select(k => Math.Min(1, k / (double)wave) * Amplitude_m * Math.Sin(2 * Math.PI * k / wave))];
        RideTrace trace = RideRun.Trace(held, road);
        double standing_Pa = _stand.Air!.GaugePressure_Pa + Ambient_Pa;
        (Complex absolute, Complex volume) = (0, 0);
        for (int k = settle * wave; k < road.Length; k++)
        {
            (double w, double entropy) = (trace.Travel_m[k], trace.Entropy[k]);
            double risen = (_stand.Air.SealedGaugePressure_Pa(w, entropy) + Ambient_Pa) / standing_Pa;
            Complex back = Complex.FromPolarCoordinates(1, -2 * Math.PI * (k % wave) / wave);
            absolute += risen * back;
            volume += _stand.Air.Warmth(w, entropy) / risen * back;
        }

        return -absolute / volume;
    }
}
