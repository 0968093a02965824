using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

public enum WheelVerdict { Fits, FitsWithCamber, DoesNotFit, NotKnown }

/// <summary>Whether a wheel fits, by how much, and what it takes where it does not.</summary>
public sealed record WheelFitResult
{
    public required WheelCorner Corner { get; init; }

    public required WheelFitQuestion Question { get; init; }

    /// <summary>How the asked camber is made.</summary>
    public required CamberShift Camber { get; init; }

    /// <summary>The old wheel, camber as measured.</summary>
    public required WheelGaps Old { get; init; }

    /// <summary>The new wheel at the asked camber.</summary>
    public required WheelGaps New { get; init; }

    public required WheelVerdict Verdict { get; init; }

    /// <summary>The least change of camber that gives the arch its margin; null where none within the adjuster's reach does.</summary>
    public WheelGaps? LeastCamber { get; init; }

    /// <summary>Offsets of the new wheel that fit at the asked camber, from least to greatest, m; null where none does.</summary>
    public (double Least_m, double Greatest_m)? Offsets { get; init; }

    /// <summary>What camber buys and costs, camber ascending; empty without points.</summary>
    public required IReadOnlyList<WheelGaps> TradeOff { get; init; }
}

/// <summary>What the asked change of camber does at the top of rim and tyre at drive height, over the hub.</summary>
/// <param name="RimOutward_m">At the rim's edge, further out at the arch +.</param>
/// <param name="TyreOutward_m">At the tread.</param>
/// <param name="RimTowardStrut_m">Less room to the strut +.</param>
/// <param name="TyreTowardStrut_m">The same at the tread.</param>
public readonly record struct CamberShift(double RimOutward_m, double TyreOutward_m, double RimTowardStrut_m, double TyreTowardStrut_m);
