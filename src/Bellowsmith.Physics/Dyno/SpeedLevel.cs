namespace Bellowsmith.Physics.Dyno;

/// <summary>The runs of one click at one velocity: their mean and how they scatter.</summary>
internal sealed record SpeedLevel(IReadOnlyList<DynoPoint> Points)
{
    // Two runs at one set speed differ by this much at most; speeds that are set apart differ by more. Common practice.
    public const double SameShare = 0.02;
    private const double Same_m_per_s = 0.0005;

    public double Velocity_m_per_s { get; } = Points.Average(point => point.Velocity_m_per_s);

    public double Force_N { get; } = Points.Average(point => point.Force_N);

    /// <summary>Sum of squares about the mean, with one degree less than there are runs.</summary>
    public double Squares => Points.Sum(point => (point.Force_N - Force_N) * (point.Force_N - Force_N));

    /// <summary>Levels ascending by velocity. A run stands once in a level, so that a fine curve of one run stays fine.</summary>
    public static List<SpeedLevel> Of(IEnumerable<DynoPoint> points)
    {
        List<SpeedLevel> levels = [];
        List<DynoPoint> level = [];
        foreach (DynoPoint point in points.OrderBy(point => point.Velocity_m_per_s))
        {
            if (level.Count > 0 && !Together(level, point))
            {
                levels.Add(new([.. level]));
                level.Clear();
            }

            level.Add(point);
        }

        if (level.Count > 0) levels.Add(new([.. level]));
        return levels;
    }

    private static bool Together(List<DynoPoint> level, DynoPoint point)
    {
        double apart = point.Velocity_m_per_s - level[0].Velocity_m_per_s;
        return apart == 0 || (apart <= Math.Max(Same_m_per_s, SameShare * Math.Abs(point.Velocity_m_per_s))
            && level.TrueForAll(other => other.Run != point.Run));
    }
}
