namespace Bellowsmith.Kits.Figures;

/// <summary>
/// Where the wheel can be, on one upright scale of wheel travel from drive height, bump +, in the unit shown. A rung is a state,
/// a limit what a rule asks for.
/// </summary>
public sealed record TravelLadder
{
    public required ChartAxis Travel { get; init; }

    /// <summary>From bump to droop.</summary>
    public required IReadOnlyList<LadderRung> Rungs { get; init; }

    public required IReadOnlyList<LadderLimit> Limits { get; init; }

    /// <summary>Wheel travels between which the bump stop is squeezed; null where there is none.</summary>
    public required (double From, double To)? Stop { get; init; }

    public required string Summary { get; init; }
}

/// <param name="Id">drive, fullBump, fullDroop, airedOut, lifted or stopContact.</param>
/// <param name="Name">In words.</param>
/// <param name="Travel">Wheel travel; NaN where the data do not reach.</param>
/// <param name="Detail">What holds there, for example "42.0 mm high, 6.10 bar gauge: bump stop solid".</param>
public sealed record LadderRung(string Id, string Name, double Travel, string Detail);

/// <summary>A travel a rule asks for: at least so far from drive, in the direction of its sign.</summary>
public sealed record LadderLimit(string Label, double Travel, bool? Holds, string Source);
