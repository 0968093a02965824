using System.Globalization;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies;

/// <summary>What a caller may set beside the kit's own documents.</summary>
/// <param name="Ambient_Pa">Absolute pressure outside; null: the kit's, else one standard atmosphere.</param>
/// <param name="Load">A load case by name; null: the kit's, else the car's first.</param>
/// <param name="DamperTemperature_K">What the dampers' forces are brought to; null: as they were measured.</param>
public sealed record StudyConditions(double? Ambient_Pa = null, string? Load = null, double? DamperTemperature_K = null);

/// <summary>Settles every strut of a kit for a study: load case, masses, spring fit, exponent. Faults come all at once.</summary>
public static class StrutCases
{
    /// <exception cref="FaultsException">The kit lacks what <paramref name="needs"/> asks for, strut by strut.</exception>
    public static IReadOnlyList<StrutCase> Of(Kit kit, StudyConditions conditions, Action<StrutNeeds> needs)
    {
        List<Fault> faults = [];
        List<StrutCase> cases = [];
        Dictionary<(string, double?, double), AirSpringFit> fits = [];
        double ambient = conditions.Ambient_Pa ?? kit.Ambient_Pa
            ?? StandardAtmosphere.AbsolutePressure_Pa(kit.Altitude_m ?? 0);
        foreach ((AxleEnd end, StrutDesign design) in kit.Struts())
        {
            StrutNeeds need = new(kit, end, design, faults);
            int before = faults.Count;
            need.AirSpring();
            needs(need);
            LoadCase? load = need.LoadCase(conditions.Load);
            if (faults.Count > before || load is null) continue;
            AirSpringPart part = (AirSpringPart)design.Spring;
            var measured = (part.DataFile, part.Exponent, part.TestAmbient_Pa);
            if (!fits.TryGetValue(measured, out AirSpringFit? fit))
                fits[measured] = fit = part.Fit();
            StrutCase strut = Case(kit.Car, end, design, part, fit, load, ambient);
            if (need.Usable(strut)) cases.Add(strut);
        }

        return faults.Count == 0 ? cases : throw new FaultsException([.. faults.Distinct()]);
    }

    /// <summary>
    /// The document's exponent, else the one fast sealed sweeps show (held to what air can do, 1 to 1.4), else the in-service
    /// default; that too where the sweeps show what air cannot do.
    /// </summary>
    internal static (double Value, ExponentSource Source) Exponent(AirSpringPart part, AirSpringFit fit) =>
        part.Exponent is { } given ? (given, ExponentSource.Document)
        : fit.Exponent is { IsPossible: true } fitted
            ? (Math.Clamp(fitted.Value, 1, SealedAir.AdiabaticExponent), ExponentSource.SealedFastRows)
        : (SealedAir.InServiceExponent, ExponentSource.InServiceDefault);

    private static StrutCase Case(
        Car car, AxleEnd end, StrutDesign design, AirSpringPart part, AirSpringFit fit, LoadCase load, double ambient_Pa)
    {
        Axle axle = car.At(end)!;
        (double left, double right) = load.At(end);
        (double exponent, ExponentSource source) = Exponent(part, fit);
        return new StrutCase
        {
            End = end,
            Design = design,
            Part = part,
            Fit = fit,
            Load = load.Name,
            Sprung = (left - axle.UnsprungMass_kg, right - axle.UnsprungMass_kg),
            SpringRatio = axle.SpringRatio,
            DamperRatio = axle.DamperRatio,
            Ambient_Pa = ambient_Pa,
            Exponent = exponent,
            ExponentSource = source,
            ParasiticRate_N_per_m = axle.ParasiticRate_N_per_m,
            TyreRate_N_per_m = axle.TyreRate_N_per_m,
            Gas = design.Damper is TelescopicDamperPart d
                ? new DamperGas(d.RodDiameter_m, d.Longest_m, d.GasGaugePressure_Pa ?? 0, d.GasVolume_m3)
                : default,
        };
    }
}

/// <summary>What one strut still lacks for a study, gathered as faults that name the field to fill.</summary>
public sealed class StrutNeeds(Kit kit, AxleEnd end, StrutDesign design, List<Fault> faults)
{
    private readonly string _strut = end == AxleEnd.Front ? "struts.front" : "struts.rear";

    public StrutDesign Design => design;

    public void Need(bool present, string field, string allowed, string fix)
    {
        if (!present) Add(field, "nothing", allowed, fix);
    }

    public void Add(string field, string found, string allowed, string fix) =>
        faults.Add(new Fault(kit.File, $"{_strut}.{field}", found, allowed, fix));

    internal void AirSpring()
    {
        if (design.Spring is not AirSpringPart part)
        {
            Add("spring", "a linear rate", "an air spring", "No air spring: give an air-spring document with its test data.");
            return;
        }

        if (part.Lack() is { } lack) faults.Add(lack);
        if (design.Damper is TelescopicDamperPart { GasVolume_m3: not null, GasGaugePressure_Pa: > 0 })
            Need(design.SpringToDamper_m is not null, "springToDamper", "a length",
                "The gas force depends on the damper's length: say how much longer the damper is than the spring is high.");
    }

    internal LoadCase? LoadCase(string? asked)
    {
        string? name = asked ?? design.Load;
        LoadCase? found = name is null ? kit.Car.Loads[0] : kit.Car.Loads.FirstOrDefault(l => l.Name == name);
        if (found is null)
            Add("load", $"\"{name}\"", string.Join(", ", kit.Car.Loads.Select(l => l.Name)), "Name one of the car's load cases.");
        return found;
    }

    /// <summary>The damper's curves, from its dyno data or its coefficient; the fit is null for a coefficient, both where a fault was added.</summary>
    /// <param name="temperature_K">What its forces are brought to; null: as they were measured.</param>
    internal (Damper? Damper, DamperFit? Fit) DamperData(double? temperature_K = null)
    {
        if (design.Damper is LinearDamperPart linear)
        {
            Need(temperature_K is null, "damper", "a damper with a dyno file", "A coefficient says nothing of temperature: name a dyno file, or ask without a damper temperature.");
            return (Damper.Linear(linear.Coefficient_N_s_per_m), null);
        }

        Need(design.Damper is TelescopicDamperPart { DynoFile: not null }, "damper", "a damper with a dyno file, or a coefficient",
            "Name the dyno file in the damper's document: \"dyno\": \"file.csv\".");
        TelescopicDamperPart? part = design.Damper as TelescopicDamperPart;
        DamperFit? fit = part?.Fit(faults);
        if (fit is not null && temperature_K is { } temperature)
        {
            if (DynoFaults.Of(part!.DynoFile!, fit.Temperature, temperature) is { } fault) faults.Add(fault);
            else fit = fit.At(temperature);
        }

        return (fit?.Damper, fit);
    }

    /// <summary>Sprung mass of a corner at a load case; null, with a fault, where the scales show less than the unsprung mass.</summary>
    internal double? SprungMass_kg(LoadCase load)
    {
        double sprung = load.Sprung_kg(end, kit.Car.At(end)!);
        if (sprung > 0) return sprung;
        Add("load", load.Name, "more than the unsprung mass on each corner", "The car's unsprung mass is more than its scales show; check both.");
        return null;
    }

    internal bool Usable(StrutCase strut)
    {
        int before = faults.Count;
        if (strut.Sprung.Left_kg <= 0 || strut.Sprung.Right_kg <= 0)
            Add("load", $"{strut.Load}: {Kilograms(strut.Sprung.Left_kg)} and {Kilograms(strut.Sprung.Right_kg)} sprung",
                "above 0 kg a corner", "The car's unsprung mass is more than its scales show; check both.");
        if (strut.LeastHeight_m >= strut.GreatestHeight_m)
            Add("spring", $"data from {Millimetres(strut.Fit.Spring.LeastHeight_m)} to {Millimetres(strut.Fit.Spring.GreatestHeight_m)}",
                $"heights within {Millimetres(strut.Part.LeastHeight_m)} to {Millimetres(strut.Part.GreatestHeight_m)}",
                "The spring was not measured anywhere in its height range; check both.");
        else if (strut.Spring().Volume_m3(strut.GreatestHeight_m, 0) <= 0)
            Add("displacedVolume", Litres(design.DisplacedVolume_m3 ?? 0),
                $"less than the {Litres(strut.Fit.Spring.At(strut.GreatestHeight_m, 0).Volume_m3)} the spring holds at its greatest height",
                "Count only what stands inside the bellows at drive height.");
        else if (design.DriveHeight_m is { } drive && (drive < strut.LeastHeight_m || drive > strut.GreatestHeight_m))
            Add("driveHeight", Millimetres(drive), $"{Millimetres(strut.LeastHeight_m)} to {Millimetres(strut.GreatestHeight_m)}",
                "Choose a height within the spring's range and its data.");
        return faults.Count == before;
    }

    private static string Kilograms(double mass_kg) => string.Create(CultureInfo.InvariantCulture, $"{mass_kg:0.#} kg");

    private static string Litres(double volume_m3) => string.Create(CultureInfo.InvariantCulture, $"{volume_m3 * 1000:0.###} L");

    private static string Millimetres(double length_m) => string.Create(CultureInfo.InvariantCulture, $"{length_m * 1000:0.#} mm");
}
