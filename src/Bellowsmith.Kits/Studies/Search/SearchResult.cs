namespace Bellowsmith.Kits.Studies.Search;

/// <summary>What a search found.</summary>
public sealed record SearchResult
{
    public required SearchQuestion Question { get; init; }

    /// <summary>Settings within the limits of which none is better in all than another, ascending by weighted acceleration; empty where none keeps the limits.</summary>
    public required IReadOnlyList<SearchPoint> Front { get; init; }

    /// <summary>The setting that exceeds its limits least; null where one keeps them, or none can be driven.</summary>
    public required SearchPoint? Nearest { get; init; }

    /// <summary>What to order; null where a setting set exactly keeps the limits, none can be driven, or no such parts would keep them.</summary>
    public required PartsOrder? Order { get; init; }

    /// <summary>The kit as it is set now, for comparison; null where it cannot stand.</summary>
    public required SearchPoint? Present { get; init; }

    /// <summary>How many settings were driven, neighbours not counted.</summary>
    public required int Evaluated { get; init; }

    /// <summary>How many of them keep the limits where all is set exactly.</summary>
    public required int WithinLimits { get; init; }

    /// <summary>How many could not be, for each reason, most first.</summary>
    public required IReadOnlyList<(string Reason, int Settings)> NotDriven { get; init; }
}
