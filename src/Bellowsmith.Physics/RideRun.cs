using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Physics;

/// <summary>
/// Drives corners over roads. Several go side by side; each is what it would be alone, to the last bit. The first
/// <see cref="Settling_s"/> are not counted.
/// </summary>
public static class RideRun
{
    public const double Settling_s = 5;

    /// <summary>Steps of 1 ms: see docs/theory/ride.md for what they cost in accuracy.</summary>
    public const double Step_s = 1e-3;

    /// <summary>One set of figures a corner, all over one road, on this thread.</summary>
    /// <param name="corners">The corners, any number.</param>
    /// <param name="road_m">Height under the tyre, one a step, from the start.</param>
    /// <param name="step_s">Time between them.</param>
    public static RideFigures[] Over(ReadOnlySpan<Corner> corners, ReadOnlySpan<double> road_m, double step_s = Step_s)
    {
        RideFigures[] figures = new RideFigures[corners.Length];
        if (corners.Length == 1)
        {
            new RideGroup<Lane1>(step_s).Drive(corners, new(road_m), figures);
            return figures;
        }

        RideGroup<Lane8> group = new(step_s);
        for (int first = 0; first < corners.Length; first += Lane8.Count)
        {
            Range side = first..Math.Min(first + Lane8.Count, corners.Length);
            group.Drive(corners[side], new(road_m), figures.AsSpan(side));
        }

        return figures;
    }

    /// <summary>The same for thousands of corners on several threads; the figures do not depend on how many.</summary>
    /// <param name="corners">The corners, any number.</param>
    /// <param name="road_m">Height under the tyre, one a step, from the start.</param>
    /// <param name="figures">Where they go, one a corner; those reached before a cancellation stand.</param>
    /// <param name="threads">At most so many at once.</param>
    /// <param name="cancel">Stops within a few steps.</param>
    /// <param name="step_s">Time between heights.</param>
    /// <exception cref="ArgumentException">Fewer figures than corners.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static void Over(
        ReadOnlyMemory<Corner> corners, ReadOnlyMemory<double> road_m, Memory<RideFigures> figures, int threads, CancellationToken cancel,
        double step_s = Step_s) =>
        Share(corners, figures, threads, step_s, (group, side) => group.Drive(corners.Span[side], new(road_m.Span), figures.Span[side], cancel), cancel);

    /// <summary>Each corner over a road of its own: one hump at eight speeds, say.</summary>
    /// <param name="corners">The corners, any number.</param>
    /// <param name="roads_m">One road a corner, all of one length.</param>
    /// <param name="figures">As above.</param>
    /// <param name="threads">As above.</param>
    /// <param name="cancel">As above.</param>
    /// <param name="step_s">As above.</param>
    /// <exception cref="ArgumentException">Fewer figures than corners, not one road a corner, or roads of different lengths.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static void Over(
        ReadOnlyMemory<Corner> corners, ReadOnlyMemory<double[]> roads_m, Memory<RideFigures> figures, int threads, CancellationToken cancel,
        double step_s = Step_s)
    {
        if (roads_m.Length != corners.Length) throw new ArgumentException("One road a corner.", nameof(roads_m));
        foreach (double[] road in roads_m.Span)
            if (road.Length != roads_m.Span[0].Length) throw new ArgumentException("All roads are of one length.", nameof(roads_m));
        Share(corners, figures, threads, step_s, (group, side) => group.Drive(corners.Span[side], new(roads_m.Span[side]), figures.Span[side], cancel), cancel);
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

    private static void Share(
        ReadOnlyMemory<Corner> corners, Memory<RideFigures> figures, int threads, double step_s, Action<RideGroup<Lane8>, Range> drive, CancellationToken cancel)
    {
        if (figures.Length < corners.Length) throw new ArgumentException("One set of figures a corner.", nameof(figures));
        Parallel.For(
            0, (corners.Length + Lane8.Count - 1) / Lane8.Count, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancel },
            () => new RideGroup<Lane8>(step_s),
            (number, _, group) =>
            {
                int first = number * Lane8.Count;
                drive(group, first..Math.Min(first + Lane8.Count, corners.Length));
                return group;
            },
            _ => { });
    }
}
