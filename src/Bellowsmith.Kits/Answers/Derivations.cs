using System.Globalization;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>Where one number of an answer comes from: its law, what went in, and who says so.</summary>
public sealed record Derivation(string What, string Value, string Formula, string Inputs, string Source);

/// <summary>The derivation of every number an answer shows.</summary>
public static class Derivations
{
    /// <summary>Of a spring height: force, gauge pressure, rate, what the wheel feels, thread.</summary>
    public static IReadOnlyList<Derivation> Of(StrutCase strut, HeightSolution s, DisplayUnits units)
    {
        string force = units.Text(Dimension.Force, strut.SpringForce_N(s.Height_m)), gas = units.Text(Dimension.Force, strut.GasForce_N(s.Height_m));
        string gauge = units.Text(Dimension.GaugePressure, s.GaugePressure_Pa) + " gauge", rate = units.Text(Dimension.Rate, s.SpringRate_N_per_m);
        string mass = units.Text(Dimension.Mass, strut.SprungMass_kg), ambient = units.Text(Dimension.AbsolutePressure, strut.Ambient_Pa) + " absolute";
        string data = Path.GetFileName(strut.Part.DataFile);
        List<Derivation> all =
        [
            new("spring force", force, "(ms·g − Fgas·id) / is",
                $"ms {mass} (mean of the axle's two scale readings less unsprung mass, {strut.Load}), Fgas {gas}, is {Ratio(strut.SpringRatio.At(0))}, id {Ratio(strut.DamperRatio.At(0))}",
                "balance at the wheel, g = 9.80665 m/s²"),
            new("gauge pressure", gauge, "Fspring = pg·(Ae(h, pg) − As)",
                $"Fspring {force}, Ae {units.Text(Dimension.Area, s.EffectiveArea_m2)} at {units.Text(Dimension.Length, s.Height_m)}, As {units.Text(Dimension.Area, strut.Design.SealAreaInAir_m2 ?? 0)}",
                data),
            new("spring rate", rate, "n·pabs·(∂V/∂h)·(∂F/∂pg) / (V + n·pabs·∂V/∂pg) − pg·∂Ae/∂h",
                string.Create(CultureInfo.InvariantCulture, $"n {strut.Exponent:0.000} ({Names.Of(strut.ExponentSource)}), ambient {ambient}, V {units.Text(Dimension.Volume, s.Volume_m3)} with displaced {units.Text(Dimension.Volume, strut.Design.DisplacedVolume_m3 ?? 0)} off and line {units.Text(Dimension.Volume, strut.Design.LineVolume_m3 ?? 0)} on"),
                $"sealed air at constant mass; {data}"),
            new("wheel rate", units.Text(Dimension.Rate, s.WheelRate_N_per_m), "ks·is² + kgas·id² + Fspring·dis/dzw + Fgas·did/dzw + parasitic",
                $"ks {rate}, parasitic {units.Text(Dimension.Rate, strut.ParasiticRate_N_per_m)}", "[Barton Fieldhouse 2018, eqs 3.29–3.33]"),
            new("ride frequency", units.Text(Dimension.Frequency, s.RideFrequency_Hz), "√(kw/ms) / 2π, tyre rigid",
                $"kw {units.Text(Dimension.Rate, s.WheelRate_N_per_m)}, ms {mass}", "one mass on one spring"),
        ];
        if (s.SpringRateBand_N_per_m is { } band)
            all.Add(new("95 % band of the rate", $"{units.Number(Dimension.Rate, band.Low)} to {units.Text(Dimension.Rate, band.High)}",
                "the rate computed again with each sweep left out, two standard errors",
                $"{strut.Fit.RegulatedRows} regulated rows in {strut.Fit.SweepCount} sweeps", data));
        if (s.Thread is { } thread)
            all.Add(new("exposed thread", $"{units.Text(Dimension.Length, thread.Exposed_m)}, {HeightWords.Turns(thread.Turns)}",
                "strutLength − upperStack − h − lowerStack; turns = (exposed − exposedAtStop) / pitch",
                $"strutLength {units.Text(Dimension.Length, strut.Design.StrutLengthAtDrive_m)}, stacks {units.Text(Dimension.Length, strut.Design.UpperStack_m)} and {units.Text(Dimension.Length, strut.Design.LowerStack_m)}, pitch {units.Text(Dimension.Length, strut.Design.Thread!.Pitch_m)}",
                "lengths between outer faces, car height held"));
        if (s.Thread is not null && double.IsFinite(s.Sensitivities.RateByThread_N_per_m))
            all.Add(new("1 mm more thread", $"{units.Change(Dimension.Rate, s.Sensitivities.RateByThread_N_per_m)}, {units.Change(Dimension.GaugePressure, s.Sensitivities.GaugePressureByThread_Pa)}",
                "the same laws at h − 1 mm, less those at h", $"h {units.Text(Dimension.Length, s.Height_m)}, load and car height held", "difference of two answers"));
        return all;
    }

    /// <summary>Of the travel about drive height.</summary>
    public static IReadOnlyList<Derivation> Of(TravelResult r, DisplayUnits units)
    {
        string at = $"damper {units.Text(Dimension.Length, r.Drive.DamperLength_m)} long at drive";
        List<Derivation> all =
        [
            new("bump", units.Text(Dimension.Length, r.FullBump.WheelTravel_m), "the first of stop solid, damper closed, spring at least height",
                $"{at}; ends at {TravelWords.End(r.FullBump.End)}", "travel at the wheel through the motion ratio"),
            new("droop", units.Text(Dimension.Length, -r.FullDroop.WheelTravel_m), "the first of damper at full length, spring at greatest height",
                $"{at}; ends at {TravelWords.End(r.FullDroop.End)}", "travel at the wheel through the motion ratio"),
            new("stop gap", units.Text(Dimension.Length, r.Drive.StopGap_m), "damper length − shortest + rod at shortest − free length of the stop",
                at, "geometry at drive"),
        ];
        if (r.AiredOut.WheelTravel_m is { } airedOut)
            all.Add(new("aired out", units.Text(Dimension.Length, airedOut), "wheel load = stop force + gas force, no air",
                $"ends at {TravelWords.End(r.AiredOut.End)}", "the stop's measured curve"));
        return all;
    }

    private static string Ratio(double ratio) => ratio.ToString("0.000", CultureInfo.InvariantCulture);
}
