using Bellowsmith.Kits.Studies.Ride;

namespace Bellowsmith.Kits.Studies.Search;

/// <summary>Puts every spring and damper of a shelf into a kit's strut.</summary>
internal static class SearchPairs
{
    /// <summary>The pairs, the kit's own first, and what of the shelf cannot be used with it.</summary>
    /// <param name="kit">With the strut in question alone.</param>
    /// <param name="shelf">What is at hand beside the kit's own parts.</param>
    /// <param name="conditions">Load case and air outside.</param>
    /// <exception cref="FaultsException">The kit's own strut cannot be driven, or has no air spring.</exception>
    public static (IReadOnlyList<SearchPair> Pairs, IReadOnlyList<UnusedDocument> LeftOut) Of(Kit kit, Shelf shelf, StudyConditions conditions)
    {
        (AxleEnd end, StrutDesign design) = kit.Struts().Single();
        StrutDesign free = design with { DriveHeight_m = null };
        RideStrut own = Settled(kit, end, free, conditions);
        List<UnusedDocument> leftOut = [.. shelf.LeftOut];
        List<(string Name, RideStrut Strut)> springs = [(own.Case!.Part.Name, own)], dampers = [(Name(design.Damper), own)];
        foreach (AirSpringPart spring in shelf.Springs.Where(s => !IsSame(s, own.Case.Part)))
            Try(spring.Name, spring.DataFile, free with { Spring = spring }, springs);
        foreach (TelescopicDamperPart damper in shelf.Dampers.Where(d => !IsSame(d, design.Damper)))
            Try(damper.Name, damper.DynoFile!, free with { Damper = damper }, dampers);
        return ([.. springs.SelectMany(spring => dampers.Select(damper => Pair(spring, damper)))], leftOut);

        void Try(string name, string file, StrutDesign with, List<(string Name, RideStrut Strut)> among)
        {
            try
            {
                string called = among.Exists(other => other.Name == name) ? $"{name} ({Path.GetFileName(file)})" : name;
                among.Add((called, Settled(kit, end, with, conditions)));
            }
            catch (FaultsException faulty)
            {
                leftOut.Add(new(file, faulty.Faults));
            }
        }
    }

    // A strut's air comes from its spring alone, its stops, gas and clicks from its damper alone.
    private static SearchPair Pair((string Name, RideStrut Strut) spring, (string Name, RideStrut Strut) damper)
    {
        StrutCase air = spring.Strut.Case!, ends = damper.Strut.Case!;
        return new(spring.Name, damper.Name, damper.Strut with
        {
            Case = air with { Design = ends.Design with { Spring = air.Part }, Gas = ends.Gas },
        });
    }

    private static RideStrut Settled(Kit kit, AxleEnd end, StrutDesign design, StudyConditions conditions)
    {
        Kit with = kit.With(end, design);
        RideStrut strut = RideStruts.Of(with, conditions)[0];
        List<Fault> faults = [];
        StrutNeeds need = new(kit, end, design, faults);
        if (strut.Case is null) need.AirSpring();
        if (design.Damper is TelescopicDamperPart)
            need.Need(design.SpringToDamper_m is not null, "springToDamper", "a length", "Say how much longer the damper is than the spring is high.");
        return faults.Count == 0 ? strut : throw new FaultsException(faults);
    }

    private static string Name(DamperPart damper) => damper is TelescopicDamperPart telescopic ? telescopic.Name : "";

    private static bool IsSame(AirSpringPart one, AirSpringPart other) => (one.Name, one.DataFile) == (other.Name, other.DataFile);

    private static bool IsSame(TelescopicDamperPart one, DamperPart other) =>
        other is TelescopicDamperPart telescopic && (one.Name, one.DynoFile) == (telescopic.Name, telescopic.DynoFile);
}
