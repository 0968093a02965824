using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Dyno;

/// <summary>What a dyno's readings say of a damper, and how another one differs.</summary>
public sealed record DynoResult
{
    public required TelescopicDamperPart Part { get; init; }
    public required DamperFit Fit { get; init; }

    /// <summary>Clicks asked for that were measured or lie between; empty where the one asked for lies outside.</summary>
    public required IReadOnlyList<DynoClick> Clicks { get; init; }

    /// <summary>Force against another unit's, click by click at each published speed both reach; empty without another.</summary>
    public required IReadOnlyList<DynoDifference> Differences { get; init; }

    public TelescopicDamperPart? Other { get; init; }

    /// <summary>Readings' temperatures, K; null where the file has none.</summary>
    public (double Least_K, double Greatest_K)? Temperatures { get; init; }

    public Damper Damper => Fit.Damper!;
}

/// <summary>One click's forces at the published speeds, and how much rebound outweighs compression.</summary>
public sealed record DynoClick(double Click, bool Interpolated, IReadOnlyList<DynoForce> Forces);

/// <summary>Both + where they resist; null where the speed was not reached. Asymmetry is rebound over compression.</summary>
public sealed record DynoForce(double Speed_m_per_s, double? Rebound_N, double? Compression_N)
{
    public double? Asymmetry => Rebound_N is { } rebound && Compression_N > 0 ? rebound / Compression_N : null;
}

/// <summary>Velocity is + in rebound; force + where it resists.</summary>
public sealed record DynoDifference(double Click, double Velocity_m_per_s, double Force_N, double OtherForce_N)
{
    public double Difference_N => OtherForce_N - Force_N;

    /// <summary>Share of the first unit's force; null where that is none.</summary>
    public double? Share => Force_N > 0 ? Difference_N / Force_N : null;
}

/// <summary>A damper and its dyno readings.</summary>
public sealed record DynoUnit(TelescopicDamperPart Part, DynoData Data);

/// <summary>Force at the published speeds, click by click, and beside another unit's.</summary>
public static class DynoStudy
{
    /// <summary>Speeds forces are published at: a vehicle maker's diagrams and common practice.</summary>
    public static IReadOnlyList<double> Speeds_m_per_s { get; } = [0.05, 0.13, 0.26, 0.52, 1.04];

    // A dyno set to 0.52 m/s runs at 0.519: what misses a published speed by so little is read at the end of its curve.
    private const double Close = 0.01;

    /// <exception cref="FaultsException">The readings of one of them cannot be used.</exception>
    public static DynoResult Answer(DynoUnit unit, double? click = null, DynoUnit? other = null)
    {
        List<Fault> faults = [];
        DamperFit? fit = unit.Part.Fit(unit.Data, faults), second = other?.Part.Fit(other.Data, faults);
        if (faults.Count > 0) throw new FaultsException(faults);
        Damper damper = fit!.Damper!;
        double[] clicks = click is { } one ? [.. new[] { one }.Where(asked => Has(damper, asked))] : [.. damper.Clicks];
        return new DynoResult
        {
            Part = unit.Part,
            Fit = fit,
            Clicks = [.. clicks.Select(at => Forces(damper, at))],
            Differences = second is null ? [] : [.. Differences(damper, second.Damper!, clicks)],
            Other = other?.Part,
            Temperatures = Temperatures(unit.Data),
        };
    }

    /// <summary>A click's forces at the published speeds.</summary>
    internal static DynoClick Forces(Damper damper, double click) =>
        new(click, !damper.Clicks.Contains(click), [.. Speeds_m_per_s.Select(speed => At(damper, click, speed))]);

    private static bool Has(Damper damper, double click) => click >= damper.Clicks[0] && click <= damper.Clicks[^1];

    private static DynoForce At(Damper damper, double click, double speed) =>
        new(speed, Force(damper, click, speed), Force(damper, click, -speed));

    private static double? Force(Damper damper, double click, double velocity)
    {
        double held = Math.Clamp(velocity, -damper.GreatestCompression_m_per_s, damper.GreatestRebound_m_per_s);
        return Math.Abs(velocity - held) <= Close * Math.Abs(velocity) ? Math.Abs(damper.Force_N(click, held)) : null;
    }

    private static IEnumerable<DynoDifference> Differences(Damper first, Damper second, double[] clicks) =>
        from click in clicks
        where Has(second, click)
        from velocity in Speeds_m_per_s.Concat(Speeds_m_per_s.Select(speed => -speed))
        let force = Force(first, click, velocity)
        let other = Force(second, click, velocity)
        where force is not null && other is not null
        select new DynoDifference(click, velocity, force.Value, other.Value);

    private static (double, double)? Temperatures(DynoData data)
    {
        double[] read = data is DynoPoints points ? [.. points.Points.Select(point => point.Temperature_K).OfType<double>()] : [];
        return read.Length == 0 ? null : (read.Min(), read.Max());
    }
}
