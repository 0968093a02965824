namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A figure as data: numbers in the units shown, NaN where there is nothing to draw. Page and paper draw it the same way; it
/// knows no colours, pixels or markup.
/// </summary>
public sealed record Chart
{
    /// <summary>Stable name: rate, gaugePressure, rideFrequency, effectiveArea, rideHeight.</summary>
    public required string Id { get; init; }

    /// <summary>What is shown, for a heading and for those who hear it.</summary>
    public required string Title { get; init; }

    /// <summary>What the figure says at this setting, in one sentence.</summary>
    public required string Summary { get; init; }

    public required ChartAxis X { get; init; }
    public required ChartAxis Y { get; init; }
    public IReadOnlyList<ChartCurve> Curves { get; init; } = [];

    /// <summary>95 % bands, drawn below everything else.</summary>
    public IReadOnlyList<ChartBand> Bands { get; init; } = [];

    public IReadOnlyList<ChartPoints> Measured { get; init; } = [];
    public IReadOnlyList<ChartMark> Marks { get; init; } = [];

    /// <summary>What is wanted or allowed, as a line across.</summary>
    public IReadOnlyList<ChartCurve> Limits { get; init; } = [];
}

/// <summary>One axis. <paramref name="Decimals"/> is what a value on it deserves.</summary>
public sealed record ChartAxis(string Title, string Unit, double Low, double High, int Decimals)
{
    private static readonly double[] _steps = [1, 2, 5, 10];

    /// <summary>Round values within the axis, at most so many.</summary>
    public IReadOnlyList<double> Ticks(int most)
    {
        double span = High - Low;
        if (!(span > 0) || most < 1) return [];
        double power = Math.Pow(10, Math.Floor(Math.Log10(span / most)));
        double step = power * _steps.First(s => s * power * most >= span * (1 - 1e-9));
        List<double> ticks = [];
        for (double k = Math.Ceiling(Low / step - 1e-9); k * step <= High + step * 1e-9; k++) ticks.Add(Math.Round(k * step, 12) + 0.0);
        return ticks;
    }
}

/// <summary>
/// A curve: <paramref name="Y"/> is drawn solid, <paramref name="Outside"/> dashed (outside what was tested); each is NaN where
/// the other stands, and they share the point where they meet. <paramref name="LabelAt"/> is the index beside which the label
/// stands, −1 for none.
/// </summary>
public sealed record ChartCurve(string Label, double[] X, double[] Y, double[] Outside, int LabelAt);

public sealed record ChartBand(double[] X, double[] Low, double[] High);

/// <summary>Measured rows as points.</summary>
public sealed record ChartPoints(string Label, double[] X, double[] Y);

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
}

public sealed record ChartMark(MarkKind Kind, double X, double Y, string Label);
