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

/// <summary>Whether a wheel fits, by how much, and what it takes where it does not: that is looked for when it is first asked.</summary>
public sealed record WheelFitResult
{
    internal WheelFitResult(WheelSearch search) => Search = search;

    internal WheelSearch Search { get; }

    public required WheelCorner Corner { get; init; }

    public required WheelFitQuestion Question { get; init; }

    /// <summary>The old wheel, camber as measured.</summary>
    public WheelGaps Old => Search.Old;

    /// <summary>The least change of camber that gives the arch its margin, none at most; null where none within the adjuster's reach does.</summary>
    public WheelGaps? LeastCamber => Search.LeastCamber;

    /// <summary>What camber buys and costs, camber ascending; empty without points.</summary>
    public IReadOnlyList<WheelGaps> TradeOff => Search.TradeOff;

    /// <summary>Which offsets fit, camber as measured, the least with which any does where that is not it, and at the most the adjuster makes; empty where arch or strut are not known.</summary>
    public IReadOnlyList<WheelOffsets> Offsets => Search.Offsets;

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
