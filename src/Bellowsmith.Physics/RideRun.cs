using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Physics;

/// <summary>
/// Drives corners over one road. Up to eight go side by side; each is what it would be alone, to the last bit. The first
/// <see cref="Settling_s"/> are not counted.
/// </summary>
public static class RideRun
{
    public const double Settling_s = 5;

    /// <summary>Steps of 1 ms: see docs/theory/ride.md for what they cost in accuracy.</summary>
    public const double Step_s = 1e-3;

    private const int BlockLength = 128;

    /// <summary>One set of figures a corner.</summary>
    /// <param name="corners">The corners, any number.</param>
    /// <param name="road_m">Height under the tyre, one a step, from the start.</param>
    /// <param name="step_s">Time between them.</param>
    public static RideFigures[] Over(ReadOnlySpan<Corner> corners, ReadOnlySpan<double> road_m, double step_s = Step_s)
    {
        RideFigures[] figures = new RideFigures[corners.Length];
        for (int first = 0; first < corners.Length; first += Lane8.Count)
        {
            ReadOnlySpan<Corner> side = corners[first..Math.Min(first + Lane8.Count, corners.Length)];
            if (side.Length == 1) Over<Lane1>(side, road_m, step_s, figures.AsSpan(first, 1));
            else Over<Lane8>(side, road_m, step_s, figures.AsSpan(first, side.Length));
        }

        return figures;
    }

    /// <summary>One corner over the road with every step kept, settling included: for figures, spectra and distributions.</summary>
    public static RideTrace Trace(Corner corner, ReadOnlySpan<double> road_m, double step_s = Step_s)
    {
        CornerKernel<Lane1> kernel = new([corner], step_s);
        CornerState<Lane1> state = default;
        Lane1[] road = Array.ConvertAll(road_m.ToArray(), Lane1.All);
        double[] body = new double[road.Length];
        CornerSample<Lane1>[] samples = new CornerSample<Lane1>[road.Length];
        for (int k = 0; k < road.Length; k++)
        {
            kernel.Advance(ref state, road.AsSpan(k, 1), samples.AsSpan(k, 1));
            body[k] = state.Body.Value;
        }

        double[] Of(Func<CornerSample<Lane1>, Lane1> part) => Array.ConvertAll(samples, sample => part(sample).Value);
        return new RideTrace(
            step_s, body, Of(s => s.Acceleration), Of(s => s.Travel), Of(s => s.DamperVelocity), Of(s => s.TyreForce), Of(s => s.StopForce), Of(s => s.Entropy));
    }

    internal static void Over<T>(ReadOnlySpan<Corner> corners, ReadOnlySpan<double> road_m, double step_s, Span<RideFigures> figures)
        where T : struct, ILane<T>
    {
        CornerKernel<T> kernel = new(corners, step_s);
        RideStatistics<T> statistics = new(corners, step_s, RideWeighting.Vertical(1 / step_s));
        CornerState<T> state = default;
        Span<T> road = new T[BlockLength];
        Span<CornerSample<T>> samples = new CornerSample<T>[BlockLength];
        int settling = (int)Math.Round(Settling_s / step_s);
        for (int at = 0; at < road_m.Length;)
        {
            int length = Math.Min(BlockLength, road_m.Length - at);
            if (at < settling) length = Math.Min(length, settling - at);
            for (int k = 0; k < length; k++) road[k] = T.All(road_m[at + k]);
            kernel.Advance(ref state, road[..length], samples[..length]);
            statistics.Take(samples[..length], settling: at < settling);
            at += length;
        }

        for (int lane = 0; lane < figures.Length; lane++) figures[lane] = statistics.Of(lane);
    }
}
