namespace Bellowsmith.Physics;

/// <summary>A measured profile: straight lines between heights over distance, level beyond both ends.</summary>
public sealed class MeasuredRoad
{
    private readonly double[] _distance_m, _height_m;

    /// <param name="distance_m">Two or more distances, rising.</param>
    /// <param name="height_m">The height at each, up +.</param>
    /// <exception cref="ArgumentException">Fewer than two points, unlike lengths, or distances that do not rise.</exception>
    public MeasuredRoad(ReadOnlySpan<double> distance_m, ReadOnlySpan<double> height_m)
    {
        if (distance_m.Length < 2 || distance_m.Length != height_m.Length)
            throw new ArgumentException("A profile is two or more distances with a height each.", nameof(distance_m));
        for (int i = 1; i < distance_m.Length; i++)
            if (!(distance_m[i] > distance_m[i - 1])) throw new ArgumentException("Distances rise.", nameof(distance_m));
        (_distance_m, _height_m) = (distance_m.ToArray(), height_m.ToArray());
    }

    public double Length_m => _distance_m[^1] - _distance_m[0];

    /// <summary>Heights at even distances.</summary>
    /// <param name="height_m">Takes the heights.</param>
    /// <param name="spacing_m">Distance between them.</param>
    /// <param name="start_m">Where the first stands, from the profile's first point.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not positive.</exception>
    public void Fill(Span<double> height_m, double spacing_m, double start_m = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing_m);
        int piece = 0;
        for (int i = 0; i < height_m.Length; i++)
        {
            double place = _distance_m[0] + start_m + i * spacing_m;
            while (piece < _distance_m.Length - 2 && place > _distance_m[piece + 1]) piece++;
            double share = Math.Clamp((place - _distance_m[piece]) / (_distance_m[piece + 1] - _distance_m[piece]), 0, 1);
            height_m[i] = _height_m[piece] + share * (_height_m[piece + 1] - _height_m[piece]);
        }
    }
}
