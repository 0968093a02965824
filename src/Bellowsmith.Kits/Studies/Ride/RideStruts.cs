using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>Settles a kit's struts for driving: masses, tyre, damper data and, where the spring holds air, its case. Faults come all at once.</summary>
public static class RideStruts
{
    /// <exception cref="FaultsException">The kit lacks what a run needs, strut by strut.</exception>
    public static IReadOnlyList<RideStrut> Of(Kit kit, StudyConditions conditions)
    {
        List<Fault> faults = [];
        List<RideStrut> struts = [];
        foreach ((AxleEnd end, StrutDesign design) in kit.Struts())
        {
            try
            {
                Kit alone = kit.Only(end);
                struts.Add(Settle(alone, end, design, conditions));
            }
            catch (FaultsException faulty)
            {
                faults.AddRange(faulty.Faults);
            }
        }

        return faults.Count == 0 ? struts : throw new FaultsException([.. faults.Distinct()]);
    }

    private static RideStrut Settle(Kit kit, AxleEnd end, StrutDesign design, StudyConditions conditions)
    {
        StrutCase? air = design.Spring is AirSpringPart ? StrutCases.Of(WithLengths(kit, end, design), conditions, _ => { })[0] : null;
        List<Fault> faults = [];
        StrutNeeds need = new(kit, end, design, faults);
        Axle axle = kit.Car.At(end)!;
        if (axle.TyreRate_N_per_m is null)
            faults.Add(new(kit.File, $"car.axles.{(end == AxleEnd.Front ? "front" : "rear")}.tyreRate", "nothing", "a rate", "A ride needs the tyre's rate: give tyreRate in the car document."));
        (Damper? damper, _) = need.DamperData(conditions.DamperTemperature_K);
        LoadCase? load = need.LoadCase(conditions.Load);
        double? mass = load is null ? null : need.SprungMass_kg(load);
        if (faults.Count > 0) throw new FaultsException(faults);
        return new RideStrut
        {
            End = end,
            Load = load!.Name,
            SprungMass_kg = mass!.Value,
            UnsprungMass_kg = axle.UnsprungMass_kg,
            TyreRate_N_per_m = axle.TyreRate_N_per_m!.Value,
            SpringRatio = axle.SpringRatio,
            DamperRatio = axle.DamperRatio,
            ParasiticRate_N_per_m = axle.ParasiticRate_N_per_m,
            Damper = damper!,
            DamperTemperature_K = conditions.DamperTemperature_K,
            Click = design.Click ?? damper!.Clicks[damper.Clicks.Count / 2],
            Case = air,
            HasEnds = air is not null && design.Damper is TelescopicDamperPart,
            LinearRate_N_per_m = (design.Spring as LinearSpringPart)?.Rate_N_per_m,
            Friction_N = design.Friction_N ?? 0,
        };
    }

    // A damper given by its coefficient alone has no lengths; the spring's data say how far the air is known.
    private static Kit WithLengths(Kit kit, AxleEnd end, StrutDesign design)
    {
        if (design.Damper is TelescopicDamperPart) return kit;
        AirSpringPart spring = (AirSpringPart)design.Spring;
        TelescopicDamperPart lengths = new("", 0.01, spring.LeastHeight_m, spring.GreatestHeight_m, null, null, null, null);
        return kit.With(end, design with { Damper = lengths, SpringToDamper_m = 0 });
    }
}
