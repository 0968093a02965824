using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

public enum SuspensionKind { MacPherson, DoubleWishbone, TrailingArm, BeamAxle, FiveLink }

/// <summary>One axle's left suspension as its document has it: points by the document's names, m, at drive height.</summary>
public sealed record SuspensionPart(
    string Name, string File, SuspensionKind Kind, double WheelRadius_m, double StaticCamber_rad, double StaticToe_rad,
    IReadOnlyDictionary<string, Point> Points, StrutCarrier StrutOn = StrutCarrier.Upright)
{
    /// <summary>The unit first written for each dimension.</summary>
    public IReadOnlyDictionary<Dimension, string> WrittenUnits { get; init; } = new Dictionary<Dimension, string>();

    /// <summary>How much lower the car stands at these points than as it left its maker; its old drive height is so much droop.</summary>
    public double? LoweredBy_m { get; init; }

    /// <summary>From the middle to either lock.</summary>
    public double? RackTravel_m { get; init; }

    /// <summary>Points measured on the body; empty where none were.</summary>
    public IReadOnlyList<Point> ArchEdge { get; init; } = [];

    public IReadOnlyList<Point> Liner { get; init; } = [];

    public IReadOnlyList<Point> Tower { get; init; } = [];

    /// <summary>The body's lowest fixed parts.</summary>
    public IReadOnlyList<Point> Underbody { get; init; } = [];

    public BarDiameters Diameters { get; init; } = new();

    public IReadOnlyList<CornerLine> Lines { get; init; } = [];

    /// <exception cref="ArgumentException">The points leave the wheel no travel, or more than one way to go.</exception>
    public Linkage Linkage() => new(Suspension() with
    {
        HalfshaftInner = Points.TryGetValue("halfshaftInner", out Point inner) ? inner : null,
        HalfshaftOuter = Points.TryGetValue("halfshaftOuter", out Point outer) ? outer : null,
    });

    /// <summary>Null where the points leave the wheel no travel, or more than one way to go.</summary>
    public Linkage? LinkageIfAny()
    {
        try
        {
            return Linkage();
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The same with one point moved; camber and toe at drive height stay, for they are set on the car.</summary>
    public SuspensionPart Moved(string point, Point by) =>
        this with { Points = new Dictionary<string, Point>(Points) { [point] = Points[point] + by } };

    private Suspension Suspension()
    {
        LinkageWheel wheel = new(At("wheelCentre"), WheelRadius_m, StaticCamber_rad, StaticToe_rad);
        return Kind switch
        {
            SuspensionKind.MacPherson => MacPherson(wheel),
            SuspensionKind.DoubleWishbone => DoubleWishbone(wheel),
            SuspensionKind.TrailingArm => TrailingArm(wheel),
            SuspensionKind.BeamAxle => BeamAxle(wheel),
            _ => FiveLink(wheel),
        };
    }

    private MacPherson MacPherson(LinkageWheel wheel) => new(wheel)
    {
        LowerArmFront = At("lowerArmFront"),
        LowerArmRear = At("lowerArmRear"),
        LowerBallJoint = At("lowerBallJoint"),
        StrutTop = At("strutTop"),
        StrutAxisPoint = At("strutAxisPoint"),
        TieRodInner = At("tieRodInner"),
        TieRodOuter = At("tieRodOuter"),
    };

    private DoubleWishbone DoubleWishbone(LinkageWheel wheel) => new(wheel)
    {
        LowerArmFront = At("lowerArmFront"),
        LowerArmRear = At("lowerArmRear"),
        LowerBallJoint = At("lowerBallJoint"),
        UpperArmFront = At("upperArmFront"),
        UpperArmRear = At("upperArmRear"),
        UpperBallJoint = At("upperBallJoint"),
        TieRodInner = At("tieRodInner"),
        TieRodOuter = At("tieRodOuter"),
        StrutTop = At("strutTop"),
        StrutBottom = At("strutBottom"),
        StrutOn = StrutOn,
    };

    private TrailingArm TrailingArm(LinkageWheel wheel) => new(wheel)
    {
        PivotOuter = At("pivotOuter"),
        PivotInner = At("pivotInner"),
        StrutTop = At("strutTop"),
        StrutBottom = At("strutBottom"),
    };

    private BeamAxle BeamAxle(LinkageWheel wheel) => new(wheel)
    {
        TrailingArmFront = At("trailingArmFront"),
        TrailingArmRear = At("trailingArmRear"),
        UpperLinkFront = At("upperLinkFront"),
        UpperLinkRear = At("upperLinkRear"),
        PanhardRodFrame = At("panhardRodFrame"),
        PanhardRodAxle = At("panhardRodAxle"),
        StrutTop = At("strutTop"),
        StrutBottom = At("strutBottom"),
        StrutOn = StrutOn,
    };

    private FiveLink FiveLink(LinkageWheel wheel) => new(wheel)
    {
        LowerFrontInner = At("lowerFrontInner"),
        LowerFrontOuter = At("lowerFrontOuter"),
        LowerRearInner = At("lowerRearInner"),
        LowerRearOuter = At("lowerRearOuter"),
        UpperFrontInner = At("upperFrontInner"),
        UpperFrontOuter = At("upperFrontOuter"),
        UpperRearInner = At("upperRearInner"),
        UpperRearOuter = At("upperRearOuter"),
        TieRodInner = At("tieRodInner"),
        TieRodOuter = At("tieRodOuter"),
        StrutTop = At("strutTop"),
        StrutBottom = At("strutBottom"),
        StrutOn = StrutOn,
    };

    private Point At(string name) => Points[name];
}
