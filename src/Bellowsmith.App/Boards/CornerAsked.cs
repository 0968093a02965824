namespace Bellowsmith.App.Boards;

/// <summary>What a page is asked of one corner: where the wheel stands, how it is to be aligned, and which wheel is tried. Never saved.</summary>
/// <param name="Travel_m">Of the wheel from drive height, bump +.</param>
/// <param name="Rack_m">To the left +.</param>
public sealed record CornerAsked(double Travel_m, double Rack_m)
{
    public static CornerAsked First { get; } = new(0, 0);

    /// <summary>Wanted at drive height; null leaves it as it was measured.</summary>
    public double? Camber_rad { get; init; }

    public double? Toe_rad { get; init; }

    /// <summary>The wheel tried, as one writes it; empty for the car's own.</summary>
    public string Wheel { get; init; } = "";

    public double Spacer_m { get; init; }

    /// <summary>Change of camber for the wheel tried.</summary>
    public double CamberChange_rad { get; init; }

    /// <summary>Where the swept corner is looked at: wheel travel, bump +, and rack, to the left +, m; null where it has least room.</summary>
    public (double Travel_m, double Rack_m)? Touch { get; init; }

    /// <summary>Where the tried wheel is looked at, from drive height, bump +; null where it comes nearest.</summary>
    public double? LookedAt_m { get; init; }
}
