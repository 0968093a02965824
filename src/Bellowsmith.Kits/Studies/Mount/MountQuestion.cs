namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>What a top mount is taken to do on the road. All usual values are common practice, no source.</summary>
public sealed record MountQuestion
{
    /// <summary>How far the strut usually turns to either side of straight ahead.</summary>
    public double Steer_rad { get; init; } = 5 * Math.PI / 180;

    /// <summary>How often to and fro, in a kilometre.</summary>
    public double SteersPerKilometre { get; init; } = 40;

    /// <summary>How far the wheel usually travels either way.</summary>
    public double Working_m { get; init; } = 0.030;

    /// <summary>How often there and back, in a kilometre.</summary>
    public double StrokesPerKilometre { get; init; } = 20;

    /// <summary>Driven at, for the velocity at which a bearing slides; lives in kilometres do not depend on it.</summary>
    public double Speed_m_per_s { get; init; } = 50 / 3.6;
}
