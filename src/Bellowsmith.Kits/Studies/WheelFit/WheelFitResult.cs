namespace Bellowsmith.Kits.Studies.WheelFit;

public enum WheelVerdict { Fits, FitsWithCamber, DoesNotFit, NotKnown }

public enum WheelPlace { Arch, Strut, Tower }

/// <summary>A gap that lacks its margin.</summary>
public sealed record WheelMiss(WheelPlace Place, double Gap_m, double Margin_m);

/// <summary>Offsets, less the spacer, at which arch and strut both keep their margin at one change of camber; none where the least is the greater.</summary>
public sealed record WheelOffsets(double Camber_rad, double Least_m, double Greatest_m)
{
    public bool Any => Least_m <= Greatest_m;
}

/// <summary>Whether a wheel fits, by how much, and what it takes where it does not.</summary>
public sealed record WheelFitResult
{
    public required WheelCorner Corner { get; init; }

    public required WheelFitQuestion Question { get; init; }

    /// <summary>The old wheel, camber as measured.</summary>
    public required WheelGaps Old { get; init; }

    /// <summary>The least change of camber that gives the arch its margin, none at most; null where none within the adjuster's reach does.</summary>
    public required WheelGaps? LeastCamber { get; init; }

    /// <summary>What camber buys and costs, camber ascending; empty without points.</summary>
    public required IReadOnlyList<WheelGaps> TradeOff { get; init; }

    /// <summary>Which offsets fit, camber as measured, the least with which any does where that is not it, and at the most the adjuster makes; empty where arch or strut are not known.</summary>
    public required IReadOnlyList<WheelOffsets> Offsets { get; init; }

    /// <summary>The new wheel at the asked camber; null, as all below, where no setting of the adjuster makes that camber.</summary>
    public required WheelGaps? New { get; init; }

    /// <summary>What the asked camber does.</summary>
    public required CamberShift? Camber { get; init; }

    public required WheelStance? Stance { get; init; }

    public required IReadOnlyList<WheelMiss> Misses { get; init; }

    public required WheelVerdict Verdict { get; init; }

    /// <summary>How far the gaps may lie off because the section is known from the size only, ±.</summary>
    public double SectionSpread_m => Question.New.SectionSpread_m / 2;
}
