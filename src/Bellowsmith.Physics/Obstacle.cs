namespace Bellowsmith.Physics;

/// <summary>A single obstacle of a declared shape on a level road: height over the distance from where it begins, m, up +.</summary>
public sealed class Obstacle
{
    private readonly Func<double, double> _height_m;

    private Obstacle(double length_m, Func<double, double> height_m) => (Length_m, _height_m) = (length_m, height_m);

    /// <summary>Where it ends; 0 for a step, which never does.</summary>
    public double Length_m { get; }

    /// <summary>One wave of a cosine from trough to trough: h/2·(1 − cos 2πx/L).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive.</exception>
    public static Obstacle CosineHump(double length_m, double height_m)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length_m);
        return new(length_m, x => height_m / 2 * (1 - Math.Cos(2 * Math.PI * x / length_m)));
    }

    /// <summary>The arc of a circle over a chord, as road humps are built.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Length or height is not positive, or the arc higher than half a circle.</exception>
    public static Obstacle CircularHump(double length_m, double height_m)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length_m);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(height_m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(height_m, length_m / 2);
        double radius = (length_m * length_m / 4 + height_m * height_m) / (2 * height_m);
        return new(length_m, x => Math.Sqrt(radius * radius - (x - length_m / 2) * (x - length_m / 2)) - radius + height_m);
    }

    /// <summary>A level table between two straight ramps. The length is over all, ramps included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive, or a ramp negative or longer than half of it.</exception>
    public static Obstacle FlatTop(double length_m, double height_m, double ramp_m)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length_m);
        ArgumentOutOfRangeException.ThrowIfNegative(ramp_m);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(ramp_m, length_m / 2);
        return new(length_m, x => Math.Min(x, length_m - x) is var fromEnd && fromEnd < ramp_m ? height_m * fromEnd / ramp_m : height_m);
    }

    /// <summary>A hole with a level floor and straight edges; an edge of 0 is a sharp one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive, or an edge negative or longer than half of it.</exception>
    public static Obstacle Pothole(double length_m, double depth_m, double edge_m) => FlatTop(length_m, -depth_m, edge_m);

    /// <summary>Level, then higher (or with a negative height lower) for good.</summary>
    public static Obstacle Step(double height_m) => new(0, _ => height_m);

    /// <summary>Height at a distance from its beginning; 0 before it and, but for a step, from its end on.</summary>
    public double Height_m(double distance_m) =>
        distance_m < 0 || (Length_m > 0 && distance_m >= Length_m) ? 0 : _height_m(distance_m);

    /// <summary>Puts it on a road of evenly spaced heights, beginning at a distance from the first.</summary>
    public void AddTo(Span<double> height_m, double spacing_m, double start_m)
    {
        for (int i = 0; i < height_m.Length; i++) height_m[i] += Height_m(i * spacing_m - start_m);
    }
}
