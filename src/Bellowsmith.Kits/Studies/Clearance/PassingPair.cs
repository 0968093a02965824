using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>What passes what at a corner. Arch edge, liner and tower are points measured on the body.</summary>
public enum BodyKind { Tyre, Rim, Bellows, Strut, Link, Halfshaft, ArchEdge, Liner, Tower }

/// <summary>One body of a corner; of a link or an arm, which.</summary>
public readonly record struct PassingBody(BodyKind Kind, LinkagePart? Part = null)
{
    public bool IsWheel => Kind is BodyKind.Tyre or BodyKind.Rim;

    public bool IsBar => Kind is BodyKind.Link or BodyKind.Halfshaft;
}

/// <summary>Two bodies that pass each other.</summary>
public readonly record struct PassingPair(PassingBody One, PassingBody Other)
{
    public bool IsOfWheel => One.IsWheel;

    /// <summary>Which margin it has to keep.</summary>
    public MarginKind Margin => (One.Kind, Other.Kind) switch
    {
        (BodyKind.Tyre or BodyKind.Rim, BodyKind.ArchEdge) => MarginKind.TyreToArch,
        (BodyKind.Tyre or BodyKind.Rim, BodyKind.Liner) => MarginKind.TyreToLiner,
        (BodyKind.Tyre or BodyKind.Rim, BodyKind.Tower) => MarginKind.TyreToTower,
        (BodyKind.Tyre or BodyKind.Rim, BodyKind.Bellows) => MarginKind.TyreToBellows,
        (BodyKind.Tyre or BodyKind.Rim, BodyKind.Strut) => MarginKind.TyreToStrut,
        (BodyKind.Tyre or BodyKind.Rim, _) => MarginKind.TyreToArms,
        (BodyKind.Bellows, BodyKind.Tower) => MarginKind.BellowsToTower,
        (BodyKind.Bellows, _) => MarginKind.BellowsToArms,
        (BodyKind.Strut, BodyKind.Tower) => MarginKind.StrutToTower,
        (BodyKind.Strut, _) => MarginKind.StrutToArms,
        _ => MarginKind.HalfshaftToArms,
    };

    /// <summary>
    /// Of the bodies there are, those that pass: the wheel passes all but the halfshaft that runs to its hub, the strut all but the arm it
    /// stands on, the halfshaft all links.
    /// </summary>
    internal static IEnumerable<PassingPair> Among(IReadOnlyList<PassingBody> bodies, LinkagePart? carriesStrut)
    {
        foreach (PassingBody one in bodies)
            foreach (PassingBody other in bodies)
                if (Pass(one, other, carriesStrut)) yield return new(one, other);
    }

    private static bool Pass(PassingBody one, PassingBody other, LinkagePart? carriesStrut) => one.Kind switch
    {
        BodyKind.Tyre or BodyKind.Rim => !other.IsWheel && other.Kind != BodyKind.Halfshaft,
        BodyKind.Bellows or BodyKind.Strut => other.Kind is BodyKind.Tower || other.IsBar && (other.Part is null || other.Part != carriesStrut),
        BodyKind.Halfshaft => other.Kind == BodyKind.Link,
        _ => false,
    };
}
