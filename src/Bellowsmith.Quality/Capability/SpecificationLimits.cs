namespace Bellowsmith.Quality.Capability;

/// <summary>What a part may measure, in the unit of the readings: at least one limit, the lower below the upper; the target is what is aimed at.</summary>
public sealed record SpecificationLimits
{
    /// <exception cref="ArgumentException">No limit, or the lower is not below the upper.</exception>
    public SpecificationLimits(double? lower, double? upper, double? target = null)
    {
        if (lower is null && upper is null) throw new ArgumentException("Capability is told against at least one limit.", nameof(lower));
        if (lower >= upper) throw new ArgumentException("The lower limit lies below the upper.", nameof(lower));
        (Lower, Upper, Target) = (lower, upper, target);
    }

    public double? Lower { get; }

    public double? Upper { get; }

    public double? Target { get; }

    public bool IsOneSided => Lower is null || Upper is null;

    /// <summary>Strictly beyond: a part on its limit is within.</summary>
    public bool IsOutside(double value) => value < Lower || value > Upper;
}
