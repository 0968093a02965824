using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>A kind of road.</summary>
public abstract record RoadSurface;

/// <summary>A random road of an ISO 8608 class.</summary>
public sealed record RoadOfClass(RoadClass Class) : RoadSurface;

/// <summary>A random road whose vertical velocity is white in time.</summary>
/// <param name="Density">One-sided, (m/s)²/Hz.</param>
public sealed record RoadOfVelocity(double Density) : RoadSurface;

/// <summary>A level road with one obstacle, met when the first 5 s are over.</summary>
public sealed record RoadWithBump(Bump Bump) : RoadSurface;

/// <summary>A measured profile, driven once from its first point, level at its first height before.</summary>
/// <param name="File">Where it stands, for the words.</param>
/// <param name="Profile">Its heights.</param>
public sealed record RoadAsMeasured(string File, MeasuredRoad Profile) : RoadSurface;

/// <summary>The shapes an obstacle may have.</summary>
public enum BumpShape
{
    /// <summary>The arc of a circle.</summary>
    Round,

    /// <summary>One wave of a cosine.</summary>
    Wave,

    /// <summary>A level table between two ramps.</summary>
    FlatTop,

    /// <summary>A hole with straight edges.</summary>
    Pothole,

    /// <summary>A kerb that is not come down from.</summary>
    Kerb,
}

/// <summary>An obstacle by its shape and size.</summary>
/// <param name="Shape">Its shape.</param>
/// <param name="Length_m">Over all, along the road; of no meaning for a kerb.</param>
/// <param name="Height_m">How high it is, or how deep a pothole is; both +.</param>
/// <param name="Ramp_m">Length of each ramp of a flat top and of each edge of a pothole; else of no meaning.</param>
public sealed record Bump(BumpShape Shape, double Length_m, double Height_m, double Ramp_m = 0)
{
    /// <summary>A bump of a shape as one meets it; common practice, no source.</summary>
    public static Bump Usual(BumpShape shape) => shape switch
    {
        BumpShape.Round => new(shape, 4, 0.075),
        BumpShape.Wave => new(shape, 3, 0.05),
        BumpShape.FlatTop => new(shape, 4.8, 0.075, 1.2),
        BumpShape.Pothole => new(shape, 0.8, 0.05, 0.1),
        _ => new(shape, 0, 0.02),
    };

    internal Obstacle Obstacle() => Shape switch
    {
        BumpShape.Round => Physics.Obstacle.CircularHump(Length_m, Height_m),
        BumpShape.Wave => Physics.Obstacle.CosineHump(Length_m, Height_m),
        BumpShape.FlatTop => Physics.Obstacle.FlatTop(Length_m, Height_m, Ramp_m),
        BumpShape.Pothole => Physics.Obstacle.Pothole(Length_m, Height_m, Ramp_m),
        _ => Physics.Obstacle.Step(Height_m),
    };
}
