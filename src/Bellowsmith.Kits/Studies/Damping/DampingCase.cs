using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Damping;

/// <summary>
/// One corner ready for the question of damping: its masses, what rate the wheel stands on at drive, and its damper. An air
/// spring stands at its drive height; a spring given by its rate alone has no height.
/// </summary>
public sealed record DampingCase
{
    private const double Step_m = 0.005;
    private const int StepsEachWay = 4;

    public required AxleEnd End { get; init; }
    public required string Load { get; init; }
    public required double SprungMass_kg { get; init; }
    public required double UnsprungMass_kg { get; init; }
    public required double? TyreRate_N_per_m { get; init; }

    /// <summary>Damper travel per wheel travel at drive.</summary>
    public required double DamperRatio { get; init; }

    /// <summary>The damper's dyno data; null for a linear damper.</summary>
    public required DamperFit? Fit { get; init; }

    /// <summary>The file they stand in.</summary>
    public string? DynoFile { get; init; }

    public required Damper Damper { get; init; }

    /// <summary>What its forces were brought to; null: as they were measured.</summary>
    public double? DamperTemperature_K { get; init; }

    /// <summary>kw at drive; null where the kit fixes no height and none is recommended.</summary>
    public required WheelState? Drive { get; init; }

    /// <summary>Every load case of the car, the height held and the gauge pressure set for the load.</summary>
    public required IReadOnlyList<WheelState> Loads { get; init; }

    /// <summary>Heights about drive, the load held: what happens on more and on less air.</summary>
    public required IReadOnlyList<WheelState> Heights { get; init; }

    /// <summary>The air-spring strut; null for a spring given by its rate alone.</summary>
    public StrutCase? Strut { get; init; }

    /// <summary>The rate of a spring given by its rate alone.</summary>
    public double? LinearRate_N_per_m { get; init; }

    /// <summary>The same corner at another load case, an air spring so high at drive; no height, no state.</summary>
    public DampingCase At(Car car, LoadCase load, double? height_m)
    {
        Axle axle = car.At(End)!;
        WheelState? drive = State(axle, load, height_m);
        (double left, double right) = load.At(End);
        return this with
        {
            Load = load.Name,
            Strut = Strut is { } strut ? strut with { Load = load.Name, Sprung = (left - axle.UnsprungMass_kg, right - axle.UnsprungMass_kg) } : null,
            SprungMass_kg = load.Sprung_kg(End, axle),
            Drive = drive,
            Loads = drive is null ? [] : [.. car.Loads.Select(at => State(axle, at, height_m)).OfType<WheelState>()],
            Heights = height_m is not { } height || drive is null ? [] : [.. Enumerable.Range(-StepsEachWay, 2 * StepsEachWay + 1)
                .Select(step => State(axle, load, height + step * Step_m)).OfType<WheelState>()],
        };
    }

    // Null where the spring has no data at that height, cannot carry the load there or pushes the wheel off its rest.
    private WheelState? State(Axle axle, LoadCase load, double? height_m)
    {
        double sprung = load.Sprung_kg(End, axle);
        if (sprung <= 0) return null;
        if (LinearRate_N_per_m is { } rate)
        {
            double i = axle.SpringRatio.At(0), force = sprung * StandardGravity.Value_m_per_s2 / i;
            return Sound(new(load.Name, sprung, rate * i * i + force * axle.SpringRatio.SlopeAt(0) + axle.ParasiticRate_N_per_m));
        }

        if (Strut is not { } strut || height_m is not { } h || h < strut.LeastHeight_m || h > strut.GreatestHeight_m) return null;
        StrutCase loaded = strut with { Load = load.Name, Sprung = (sprung, sprung) };
        double gauge = loaded.Spring().GaugePressureFor_Pa(loaded.SpringForce_N(h), h);
        if (!(gauge > 0)) return null;
        return Sound(new(load.Name, sprung,
            loaded.WheelRate_N_per_m(loaded.Spring().SealedRate_N_per_m(h, gauge, loaded.Exponent), h), h, gauge));
    }

    private static WheelState? Sound(WheelState state) => state.WheelRate_N_per_m > 0 ? state : null;
}

/// <summary>What the wheel stands on; height and gauge pressure are null where the spring is a rate alone.</summary>
public sealed record WheelState(
    string Load, double SprungMass_kg, double WheelRate_N_per_m, double? Height_m = null, double? GaugePressure_Pa = null)
{
    /// <summary>2·√(kw·ms): the damping at the wheel at which it just does not swing, tyre rigid.</summary>
    public double Critical_N_s_per_m => 2 * Math.Sqrt(WheelRate_N_per_m * SprungMass_kg);
}

/// <summary>Settles every strut of a kit for the damping study; faults come all at once.</summary>
public static class DampingCases
{
    /// <exception cref="FaultsException">The kit lacks what the study needs, or a dyno file cannot be used.</exception>
    public static IReadOnlyList<DampingCase> Of(Kit kit, StudyConditions conditions)
    {
        List<Fault> faults = [];
        Dictionary<AxleEnd, StrutCase> air = Air(kit, conditions, faults);
        List<DampingCase> cases = [];
        foreach ((AxleEnd end, StrutDesign design) in kit.Struts())
        {
            StrutNeeds need = new(kit, end, design, faults);
            LoadCase? load = need.LoadCase(conditions.Load);
            (Damper? damper, DamperFit? fit) = need.DamperData(conditions.DamperTemperature_K);
            if (load is null || damper is null || (design.Spring is AirSpringPart && !air.ContainsKey(end))) continue;
            if (need.SprungMass_kg(load) is not null) cases.Add(Case(kit.Car, end, load, design, air.GetValueOrDefault(end), fit, damper) with { DamperTemperature_K = conditions.DamperTemperature_K });
        }

        return faults.Count == 0 ? cases : throw new FaultsException([.. faults.Distinct()]);
    }

    private static Dictionary<AxleEnd, StrutCase> Air(Kit kit, StudyConditions conditions, List<Fault> faults)
    {
        Kit airOnly = kit with { Front = OnAir(kit.Front), Rear = OnAir(kit.Rear) };
        try
        {
            return StrutCases.Of(airOnly, conditions, need => need.Need(
                need.Design.DriveHeight_m is not null || need.Design.Target is not null, "driveHeight",
                "a spring height, or a target that yields one", "Give driveHeight or target.")).ToDictionary(strut => strut.End);
        }
        catch (FaultsException lacking)
        {
            faults.AddRange(lacking.Faults);
            return [];
        }

        static StrutDesign? OnAir(StrutDesign? design) => design?.Spring is AirSpringPart ? design : null;
    }

    private static DampingCase Case(
        Car car, AxleEnd end, LoadCase named, StrutDesign design, StrutCase? strut, DamperFit? fit, Damper damper)
    {
        Axle axle = car.At(end)!;
        double? height = strut is null ? null : design.DriveHeight_m ?? InstalledHeightStudy.Answer(strut).Recommended?.Height_m;
        return new DampingCase
        {
            End = end,
            Load = named.Name,
            SprungMass_kg = named.Sprung_kg(end, axle),
            UnsprungMass_kg = axle.UnsprungMass_kg,
            TyreRate_N_per_m = axle.TyreRate_N_per_m,
            DamperRatio = axle.DamperRatio.At(0),
            Fit = fit,
            DynoFile = (design.Damper as TelescopicDamperPart)?.DynoFile,
            Damper = damper,
            Drive = null,
            Loads = [],
            Heights = [],
            Strut = strut,
            LinearRate_N_per_m = (design.Spring as LinearSpringPart)?.Rate_N_per_m,
        }.At(car, named, height);
    }
}
