using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>What the points of a suspension are to each other: ends of a part apart, the wheel on the left and free to travel.</summary>
internal static class SuspensionCheck
{
    // Shorter than any strut, link or lever, and longer than a tape's error of 2 mm (common practice, no source).
    private const double Strut_m = 0.020, Ends_m = 0.005;

    // Less than any wheel travels either way.
    private const double Travel_m = 0.010;

    private static readonly (string One, string Other, double Least_m)[] _ends =
    [
        ("strutTop", "strutAxisPoint", Strut_m), ("strutTop", "strutBottom", Strut_m),
        ("lowerArmFront", "lowerArmRear", Ends_m), ("lowerArmFront", "lowerBallJoint", Ends_m), ("lowerArmRear", "lowerBallJoint", Ends_m),
        ("upperArmFront", "upperArmRear", Ends_m), ("upperArmFront", "upperBallJoint", Ends_m), ("upperArmRear", "upperBallJoint", Ends_m),
        ("lowerBallJoint", "upperBallJoint", Ends_m), ("lowerBallJoint", "strutTop", Ends_m), ("tieRodInner", "tieRodOuter", Ends_m),
        ("lowerBallJoint", "tieRodOuter", Ends_m), ("upperBallJoint", "tieRodOuter", Ends_m),
        ("pivotOuter", "pivotInner", Ends_m), ("pivotOuter", "wheelCentre", Ends_m), ("pivotInner", "wheelCentre", Ends_m),
        ("trailingArmFront", "trailingArmRear", Ends_m), ("upperLinkFront", "upperLinkRear", Ends_m), ("panhardRodFrame", "panhardRodAxle", Ends_m),
        ("lowerFrontInner", "lowerFrontOuter", Ends_m), ("lowerRearInner", "lowerRearOuter", Ends_m),
        ("upperFrontInner", "upperFrontOuter", Ends_m), ("upperRearInner", "upperRearOuter", Ends_m),
    ];

    /// <summary>Whether the points can be used; what is wrong with them is reported by then.</summary>
    public static bool Holds(SuspensionPart part, Place group) => OnTheLeft(part, group) && Apart(part, group) && Travels(part, group);

    private static bool OnTheLeft(SuspensionPart part, Place group)
    {
        if (part.Points["wheelCentre"].Y > 0) return true;
        group.Member("wheelCentre")!.Report("a point of the left side: y above 0", "Give the left side's points, y to the left.");
        return false;
    }

    private static bool Apart(SuspensionPart part, Place group)
    {
        bool apart = true;
        foreach ((string one, string other, double least_m) in _ends)
        {
            if (!part.Points.TryGetValue(one, out Point from) || !part.Points.TryGetValue(other, out Point to)) continue;
            double apart_m = (to - from).Length;
            if (apart_m >= least_m) continue;
            group.Member(other)!.Report($"{Millimetres(apart_m)} from {one}", $"a point at least {Millimetres(least_m)} from {one}", $"Measure {one} and {other} again: they are two places.");
            apart = false;
        }

        return apart;
    }

    private static bool Travels(SuspensionPart part, Place group)
    {
        if (End(part) is not { } end) return true;
        group.Report($"points that leave the wheel one way to go, at least {Millimetres(Travel_m)} up and down", end);
        return false;
    }

    // What to look at where the wheel does not go as far as any goes; null where it does.
    private static string? End(SuspensionPart part)
    {
        if (part.LinkageIfAny() is not { } linkage) return "Check for points that coincide, stand in one line, or bear another's name.";
        return (linkage.At(Travel_m).Limit ?? linkage.At(-Travel_m).Limit) is { } end
            ? $"After {Millimetres(Math.Abs(end.Travel_m))} the {LinkageWords.Part(end.Part)} holds it: check its points, and whether they bear another's name."
            : null;
    }

    private static string Millimetres(double length_m) => string.Create(CultureInfo.InvariantCulture, $"{length_m * 1000:0.#} mm");
}
