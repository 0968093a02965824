using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>A spring on the shelf: an air spring with its test data, or a linear spring of a given rate.</summary>
public abstract record SpringPart;

/// <summary>A spring known only by its rate, for studies that need no air: no stops, static position at the origin.</summary>
public sealed record LinearSpringPart(double Rate_N_per_m) : SpringPart;

/// <summary>
/// An air spring. Heights are between the outer faces of the end plates; <paramref name="TestAmbient_Pa"/> is the
/// absolute ambient pressure its data were measured at.
/// </summary>
public sealed record AirSpringPart(
    string Name,
    string Shape,
    double LeastHeight_m,
    double GreatestHeight_m,
    double MaxGaugePressure_Pa,
    double? Exponent,
    double? MaxDiameter_m,
    SpringData Data,
    string DataFile,
    double TestAmbient_Pa = StandardAtmosphere.SeaLevel_Pa,
    Mould? Mould = null) : SpringPart
{
    /// <summary>What its data lack to carry a curve; null where they can.</summary>
    public Fault? Lack() => AirSpringFit.Lacks(Data) is { } lacking
        ? new Fault(DataFile, "rows", "too little", lacking, "Measure it and add the rows.")
        : null;

    /// <summary>The curve of its data, at the ambient and with the exponent the document gives.</summary>
    /// <exception cref="FaultsException">The data cannot carry one.</exception>
    public AirSpringFit Fit() => Lack() is { } lack
        ? throw new FaultsException([lack])
        : AirSpringFit.Of(Data, TestAmbient_Pa, Exponent);
}

/// <summary>A damper on the shelf, or a linear damper of a given coefficient.</summary>
public abstract record DamperPart;

public sealed record LinearDamperPart(double Coefficient_N_s_per_m) : DamperPart;

/// <summary>A telescopic damper. Lengths are between outer faces; gas is stated at <paramref name="Longest_m"/> and 20 °C.</summary>
public sealed record TelescopicDamperPart(
    string Name,
    double RodDiameter_m,
    double Shortest_m,
    double Longest_m,
    double? GasGaugePressure_Pa,
    double? GasVolume_m3,
    BumpStopPart? BumpStop,
    string? DynoFile) : DamperPart
{
    /// <summary>What the dyno file's numbers mean.</summary>
    public DynoConvention DynoConvention { get; init; } = new();

    /// <summary>Declared slopes of the force beyond the measured speeds.</summary>
    public (double Compression, double Rebound)? Beyond_N_s_per_m { get; init; }

    /// <summary>
    /// What the dyno file holds; null where the document names none or, with faults added, where it cannot be read. Only
    /// studies that ask for damping open it: it may be long, and the others stand without it.
    /// </summary>
    public DynoData? ReadDyno(ICollection<Fault> faults)
    {
        if (DynoFile is null) return null;
        byte[]? bytes = InputFile.Read(Path.GetFullPath(DynoFile), out string trouble);
        if (bytes is null) faults.Add(new(DynoFile, "file", $"a path that {trouble}", "a CSV file", "Check the path."));
        return bytes is not null && Table.Parse(bytes, DynoFile, faults) is { } table ? DynoTable.Read(table, DynoConvention, faults) : null;
    }

    /// <summary>The curves of its dyno file; null where it names none or, with faults added, where it cannot be used.</summary>
    public DamperFit? Fit(ICollection<Fault> faults) => ReadDyno(faults) is { } data ? Fit(data, faults) : null;

    /// <summary>The curves of dyno readings; null, with faults added, where they cannot be used.</summary>
    public DamperFit? Fit(DynoData data, ICollection<Fault> faults)
    {
        DamperFit fit = DamperFit.Of(data, Beyond_N_s_per_m);
        DynoLeftOut[] spoils = [.. fit.LeftOut.Where(left => fit.Damper is null || left.Trouble == DynoTrouble.CrossedSigns)];
        foreach (DynoLeftOut left in spoils) faults.Add(DynoFaults.Of(DynoFile ?? Name, left));
        if (spoils.Length == 0 && fit.Damper is not null) return fit;
        if (spoils.Length == 0) faults.Add(new(DynoFile ?? Name, "rows", "no readings", "readings at two speeds or more of each stroke", "Add the dyno's readings."));
        return null;
    }
}

/// <summary>
/// A bump stop on the damper rod. <paramref name="RodAtShortest_m"/> is the rod left between stop seat and damper head
/// when the damper is at its shortest (0 where the seat itself is the end of travel).
/// </summary>
public sealed record BumpStopPart(
    double FreeLength_m,
    double SolidLength_m,
    double RodAtShortest_m,
    IReadOnlyList<StopForce> Curve);

/// <summary>One point of a bump stop's curve: how far it is squeezed and how hard it pushes back.</summary>
public readonly record struct StopForce(double Compression_m, double Force_N);
