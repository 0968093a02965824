using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.BellowsShape;

/// <summary>What a bellows looks like at one height, or why it cannot stand there.</summary>
public sealed record BellowsShapeResult
{
    public required Mould Mould { get; init; }

    public required CordBellows Bellows { get; init; }

    public required double Height_m { get; init; }

    /// <summary>Null where there is none; <see cref="Limit"/> says why.</summary>
    public required CordShape? Shape { get; init; }

    public required CordLimit Limit { get; init; }
}

/// <summary>One height of a bellows known by its mould alone: diameter, effective area, volume and how its wall lies.</summary>
public static class BellowsShapeStudy
{
    public static BellowsShapeResult Answer(Mould mould, double height_m)
    {
        CordBellows bellows = mould.Bellows();
        return new BellowsShapeResult
        {
            Mould = mould,
            Bellows = bellows,
            Height_m = height_m,
            Shape = bellows.At(height_m),
            Limit = bellows.LimitAt(height_m),
        };
    }
}
