namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>What the top mount has to do and how long it does it, and what the side load does.</summary>
public sealed record MountResult
{
    public required MountCase Case { get; init; }

    public required MountQuestion Question { get; init; }

    /// <summary>From full droop to full bump at right lock, straight ahead and left lock; straight ahead alone where nothing steers.</summary>
    public required IReadOnlyList<MountPlace> Places { get; init; }

    /// <summary>Where the strut tilts most in its bearing.</summary>
    public MountPlace Greatest => Places.MaxBy(place => place.Tilt_rad)!;

    /// <summary>How far the strut turns to the left at most, and to the right, both +; null where it does not lead the wheel.</summary>
    public double? TurnLeft_rad => Places.Max(place => place.Turn_rad);

    public double? TurnRight_rad => -Places.Min(place => place.Turn_rad);

    /// <summary>The greater of the two.</summary>
    public double? Turn_rad => TurnLeft_rad is { } left && TurnRight_rad is { } right ? Math.Max(left, right) : null;

    public required MountLives Lives { get; init; }

    /// <summary>Null where the strut does not lead the wheel, or its parts lie in line.</summary>
    public required SideLoads? SideLoad { get; init; }

    public required IReadOnlyList<MountFinding> Findings { get; init; }

    /// <summary>False where the linkage ends before the travel or the rack does, or its parts lie in line.</summary>
    public required bool Reached { get; init; }

    /// <summary>Whether the linkage goes everywhere and the strut stands: only then is all of it answered.</summary>
    public bool Solved => Reached && Case.Corner.Unsettled is null;
}

/// <summary>The strut in its mount at one wheel and rack travel: tilt from the spherical bearing's axis, turn since straight ahead, left +.</summary>
public sealed record MountPlace(double Travel_m, double Rack_m, double Tilt_rad, double? Turn_rad);

public enum MountRule { TiltWithinBearing, TurnsOnBearing, SwingsFarEnough, StackAddsUp, RodDiameter }

/// <summary>One rule, what there is and what it asks, rad or m. Holds is null where the kit does not say enough to check it.</summary>
public sealed record MountFinding(MountRule Rule, double? Value, double? Limit, bool? Holds)
{
    /// <summary>Whether a user may decide to live with it; a bearing past its tilt is bent.</summary>
    public bool CanBeWaived => Rule != MountRule.TiltWithinBearing;
}
