using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

/// <summary>What lowering has done to a wheel's geometry, and which joints would mend it.</summary>
public sealed record LoweringResult
{
    public required SuspensionPart Part { get; init; }

    public required LoweringQuestion Question { get; init; }

    public required Linkage Linkage { get; init; }

    /// <summary>At drive height as it is now, travel 0.</summary>
    public LinkageState Now => Linkage.Rest;

    /// <summary>At the old drive height, as the wheel is set now; null where the linkage does not go so far.</summary>
    public required LinkageState? Old { get; init; }

    /// <summary>Where it ends instead.</summary>
    public LinkageLimit? Limit { get; init; }

    /// <summary>Null without the old drive height.</summary>
    public RollCentreFall? RollCentre { get; init; }

    /// <summary>Over the travel a wheel usually works, as far as it goes.</summary>
    public required ToeOverTravel WorkingToe { get; init; }

    /// <summary>Over all that is asked for, as far as it goes.</summary>
    public required ToeOverTravel WholeToe { get; init; }

    /// <summary>Those this suspension can have, in the order they are to be thought of.</summary>
    public required IReadOnlyList<JointMend> Mends { get; init; }

    /// <summary>Null where no ratio was measured beside the points.</summary>
    public RatioComparison? Ratio { get; init; }

    public JointMend? Mend(MendKind kind) => Mends.FirstOrDefault(mend => mend.Kind == kind);

    /// <summary>The old drive height is within the linkage's way and every joint looked for has its height.</summary>
    public bool Solved => Old is not null && Mends.All(mend => mend.Holds);
}

/// <summary>How far the roll centre came down over the ground, the body with it, and the arm between them grew, m.</summary>
public sealed record RollCentreFall(double Fell_m, double BodyFell_m)
{
    /// <summary>How much further it stands below the body than it did.</summary>
    public double ArmGrew_m => Fell_m - BodyFell_m;
}

/// <summary>Toe from drive height, per wheel, in +: at either end of a travel, and the least and greatest on the way.</summary>
public sealed record ToeOverTravel(double From_m, double To_m, double AtFrom_rad, double AtTo_rad, double Least_rad, double Greatest_rad)
{
    public double Range_rad => Greatest_rad - Least_rad;

    private const double Every_m = 0.001;

    /// <summary>As far as the linkage goes within a travel; drive height lies in it.</summary>
    internal static ToeOverTravel Over(Linkage linkage, double from_m, double to_m)
    {
        double[] travels = [.. LinkageQuestion.Range(from_m, to_m, Every_m)];
        LinkagePoint[] points = new LinkagePoint[travels.Length];
        linkage.Sweep(travels, 0, points);
        LinkageState[] reached = [.. points.Select(point => point.State).OfType<LinkageState>()];
        double[] toe = [.. reached.Select(state => state.Toe_rad - linkage.Rest.Toe_rad)];
        return new(reached[0].Travel_m, reached[^1].Travel_m, toe[0], toe[^1], toe.Min(), toe.Max());
    }
}
