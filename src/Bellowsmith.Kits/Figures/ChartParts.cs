namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A curve: <paramref name="Y"/> is drawn solid, <paramref name="Outside"/> dashed (outside what was tested); each is NaN where
/// the other stands, and they share the point where they meet. <paramref name="LabelAt"/> is the index beside which the label
/// stands, −1 for none. Limits and centre lines are labelled at their right end whatever it says.
/// </summary>
public sealed record ChartCurve(string Label, double[] X, double[] Y, double[] Outside, int LabelAt)
{
    public CurveKind Kind { get; init; }

    /// <summary>A curve without a dashed part, labelled at its end.</summary>
    public static ChartCurve Solid(string label, double[] x, double[] y) =>
        new(label, x, y, [.. Enumerable.Repeat(double.NaN, x.Length)], label.Length > 0 ? x.Length - 1 : -1);

    /// <summary>A level line from one value of X to another.</summary>
    public static ChartCurve Level(string label, double from, double to, double y) => Solid(label, [from, to], [y, y]);

    /// <summary>
    /// Steps such as limits of subgroups of different size: level k from <paramref name="edges"/>[k] to [k + 1]. NaN breaks the
    /// line, which also ends one phase and begins the next.
    /// </summary>
    public static ChartCurve Steps(string label, double[] edges, double[] levels) => Solid(
        label,
        [.. levels.SelectMany((_, k) => (double[])[edges[k], edges[k + 1]])],
        [.. levels.SelectMany(level => (double[])[level, level])]);
}

public enum CurveKind
{
    /// <summary>What the figure is about.</summary>
    Plain,

    /// <summary>One of many, or what stands beside the answer: thin.</summary>
    Beside,

    /// <summary>At this setting: in the accent.</summary>
    Setting,
}

public sealed record ChartBand(double[] X, double[] Low, double[] High);

/// <summary>
/// Bars side by side: bar k stands on <paramref name="Edges"/>[k] to [k + 1] and is <paramref name="Heights"/>[k] high.
/// </summary>
public sealed record ChartBars(string Label, double[] Edges, double[] Heights)
{
    /// <summary>Outside what was measured: dashed and empty.</summary>
    public bool IsOutside { get; init; }
}

/// <summary>Measured rows as points.</summary>
public sealed record ChartPoints(string Label, double[] X, double[] Y)
{
    /// <summary>Joined by a thin line in the order they stand, as on a control chart; NaN breaks it.</summary>
    public bool Joined { get; init; }

    /// <summary>Tells series apart without colour.</summary>
    public PointShape Shape { get; init; }
}

public enum PointShape
{
    Dot,
    Ring,
    Cross,
    Triangle,
    Square,
}

/// <summary>
/// An estimate and the interval around it, upward at <paramref name="X"/>. <see cref="Kind"/> is the verdict it carries, its word
/// belongs into the label.
/// </summary>
public sealed record ChartInterval(double X, double Low, double Y, double High, string Label)
{
    /// <summary>State (no verdict), Caution or Signal.</summary>
    public MarkKind Kind { get; init; } = MarkKind.State;
}

public enum UprightKind
{
    /// <summary>Where one phase ends and the next begins.</summary>
    Phase,

    /// <summary>What is allowed, dashed.</summary>
    Limit,

    /// <summary>A mean or a target, thin and solid.</summary>
    Centre,
}

/// <summary>A line upward through the whole figure, its label above it.</summary>
public sealed record ChartUpright(UprightKind Kind, double X, string Label);

public enum MarkKind
{
    /// <summary>Where the strut is set now: drawn in the accent.</summary>
    Setting,

    /// <summary>The solution to build.</summary>
    Recommended,

    /// <summary>Another height that gives the wanted rate.</summary>
    Solution,

    /// <summary>A solution that takes more than the spring's greatest gauge pressure.</summary>
    OverLimit,

    /// <summary>A measured state such as stop contact.</summary>
    State,

    /// <summary>A point a rule speaks against: red diamond, its label names the rule.</summary>
    Signal,

    /// <summary>A point to look at: amber triangle, its label says why.</summary>
    Caution,
}

public sealed record ChartMark(MarkKind Kind, double X, double Y, string Label);
