using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>
/// Gathers what a ride is judged by, lane by lane: sums of the raw and the weighted acceleration, of travel and tyre force,
/// stop contacts and peaks. The running r.m.s. over 1 s moves on in blocks of 1/64 s.
/// </summary>
internal sealed class RideStatistics<T>
    where T : struct, ILane<T>
{
    private const int BlocksPerSecond = 64;

    /// <summary>A contact counts when this much clearance was there before.</summary>
    private const double Clearance_m = 1e-3;

    private readonly double _step_s;
    private readonly int _perBlock;
    private readonly Biquad[] _weighting;
    private readonly LaneArray<T> _blocks = new(BlocksPerSecond), _memory;
    private readonly LaneArray<RideSums<T>> _sums = new(1);
    private T _contact, _clear;
    private int _samples, _inBlock, _nextBlock;

    public RideStatistics(double step_s)
    {
        _step_s = step_s;
        _perBlock = Math.Max(1, (int)Math.Round(1 / (BlocksPerSecond * step_s)));
        _weighting = RideWeighting.Vertical(1 / step_s);
        _memory = new(2 * _weighting.Length);
    }

    /// <summary>How many samples the block of the running r.m.s. still wants.</summary>
    public int Wanted => _perBlock - _inBlock;

    /// <summary>Begins anew.</summary>
    public void Load(ReadOnlySpan<Corner> corners)
    {
        _contact = Lanes.Of<T>(corners, c => c.BumpStop?.X[0] ?? double.MaxValue);
        _clear = Lanes.Of<T>(corners, c => (c.BumpStop?.X[0] ?? double.MaxValue) - Clearance_m / c.DamperRatio.At(0));
        _sums.Items[0] = RideSums<T>.None;
        _memory.Items.Clear();
        _blocks.Items.Clear();
        (_samples, _inBlock, _nextBlock) = (0, 0, 0);
    }

    /// <summary>Takes as many samples as are wanted at most; while settling only the filter and the stop's readiness move on.</summary>
    /// <param name="samples">One a step.</param>
    /// <param name="weighted">Room for as many.</param>
    /// <param name="settling">Whether they are too early to count.</param>
    public void Take(ReadOnlySpan<CornerSample<T>> samples, Span<T> weighted, bool settling)
    {
        ref RideSums<T> sums = ref _sums.Items[0];
        Weigh(samples, weighted);
        T contacts = Contacts(samples, ref sums);
        if (settling) return;
        sums.Contacts += contacts;
        CountComfort(samples, weighted, ref sums);
        CountWheel(samples, ref sums);
        _samples += samples.Length;
        _inBlock += samples.Length;
        if (_inBlock == _perBlock) CloseBlock(ref sums);
    }

    /// <summary>What one lane has seen; contacts are counts, to be set against the way driven.</summary>
    public RideFigures Of(int lane)
    {
        RideSums<T> sums = _sums.Items[0];
        double n = _samples;
        double Mean(T sum) => Lanes.Number(sum, lane) / n;
        double Deviation(T sum, T squares) => Math.Sqrt(Math.Max(0, Mean(squares) - Mean(sum) * Mean(sum)));
        double weightedRms = Math.Sqrt(Mean(sums.WeightedSquare + sums.Block));
        return new RideFigures
        {
            Rms_m_per_s2 = Math.Sqrt(Mean(sums.Square)),
            WeightedRms_m_per_s2 = weightedRms,
            CrestFactor = weightedRms > 0 ? Math.Sqrt(Lanes.Number(sums.PeakSquare, lane)) / weightedRms : 0,
            VibrationDose_m_per_s175 = Math.Sqrt(Math.Sqrt(Lanes.Number(sums.WeightedFourth, lane) * _step_s)),
            GreatestRunningRms_m_per_s2 = Math.Sqrt(Math.Max(0, Lanes.Number(sums.GreatestWindow, lane)) / (_perBlock * BlocksPerSecond)),
            TravelRms_m = Deviation(sums.Travel, sums.TravelSquare),
            TyreLoadRms_N = Deviation(sums.Tyre, sums.TyreSquare),
            LiftOffShare = Mean(sums.Lifted),
            StopContacts = (int)Math.Round(Lanes.Number(sums.Contacts, lane)),
            PeakStopForce_N = Lanes.Number(sums.PeakStop, lane),
            LeastTravel_m = Lanes.Number(sums.LeastTravel, lane),
            GreatestTravel_m = Lanes.Number(sums.GreatestTravel, lane),
            GreatestCompression_m_per_s = Math.Max(0, -Lanes.Number(sums.LeastVelocity, lane)),
            GreatestRebound_m_per_s = Math.Max(0, Lanes.Number(sums.GreatestVelocity, lane)),
            Time_s = n * _step_s,
        };
    }

    // One second-order section after the other, in transposed direct form.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Weigh(ReadOnlySpan<CornerSample<T>> samples, Span<T> weighted)
    {
        for (int k = 0; k < samples.Length; k++) weighted[k] = samples[k].Acceleration;
        Span<T> memory = _memory.Items;
        foreach (Biquad section in _weighting)
        {
            (T b0, T b1, T b2, T a1, T a2) = (T.All(section.B0), T.All(section.B1), T.All(section.B2), T.All(-section.A1), T.All(-section.A2));
            (T first, T second) = (memory[0], memory[1]);
            foreach (ref T value in weighted)
            {
                T output = T.MultiplyAdd(b0, value, first);
                first = T.MultiplyAdd(a1, output, T.MultiplyAdd(b1, value, second));
                second = T.MultiplyAdd(a2, output, b2 * value);
                value = output;
            }

            (memory[0], memory[1]) = (first, second);
            memory = memory[2..];
        }
    }

    // Steps at which no lane is in contact are passed over.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private T Contacts(ReadOnlySpan<CornerSample<T>> samples, ref RideSums<T> sums)
    {
        (T contacts, T least, T contact, T clear) = (T.All(0), sums.SinceContact, _contact, _clear);
        foreach (ref readonly CornerSample<T> sample in samples)
        {
            least = T.Min(sample.Travel, least);
            if (!T.AnyAbove(sample.Travel, contact)) continue;
            T touching = T.Positive(sample.Travel - contact);
            contacts = T.MultiplyAdd(touching, T.Positive(clear - least), contacts);
            least = RideSums<T>.Forget(touching, least);
        }

        sums.SinceContact = least;
        return contacts;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void CountComfort(ReadOnlySpan<CornerSample<T>> samples, ReadOnlySpan<T> weighted, ref RideSums<T> sums)
    {
        (T raw, T block, T fourth, T peak) = (sums.Square, sums.Block, sums.WeightedFourth, sums.PeakSquare);
        for (int k = 0; k < samples.Length; k++)
        {
            T acceleration = samples[k].Acceleration, square = weighted[k] * weighted[k];
            raw = T.MultiplyAdd(acceleration, acceleration, raw);
            block += square;
            fourth = T.MultiplyAdd(square, square, fourth);
            peak = T.Max(square, peak);
        }

        (sums.Square, sums.Block, sums.WeightedFourth, sums.PeakSquare) = (raw, block, fourth, peak);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void CountWheel(ReadOnlySpan<CornerSample<T>> samples, ref RideSums<T> sums)
    {
        (T travel, T travelSquare, T tyre, T tyreSquare) = (sums.Travel, sums.TravelSquare, sums.Tyre, sums.TyreSquare);
        (T leastTravel, T greatestTravel, T leastVelocity, T greatestVelocity) = (sums.LeastTravel, sums.GreatestTravel, sums.LeastVelocity, sums.GreatestVelocity);
        (T stop, T lifted, T one, T least) = (sums.PeakStop, sums.Lifted, T.All(1), T.All(double.Epsilon));
        foreach (ref readonly CornerSample<T> sample in samples)
        {
            travel += sample.Travel;
            travelSquare = T.MultiplyAdd(sample.Travel, sample.Travel, travelSquare);
            tyre += sample.TyreForce;
            tyreSquare = T.MultiplyAdd(sample.TyreForce, sample.TyreForce, tyreSquare);
            (leastTravel, greatestTravel) = (T.Min(sample.Travel, leastTravel), T.Max(sample.Travel, greatestTravel));
            (leastVelocity, greatestVelocity) = (T.Min(sample.DamperVelocity, leastVelocity), T.Max(sample.DamperVelocity, greatestVelocity));
            stop = T.Max(sample.StopForce, stop);
            if (T.AnyAbove(least, sample.TyreForce)) lifted += one - T.Positive(sample.TyreForce);
        }

        (sums.Travel, sums.TravelSquare, sums.Tyre, sums.TyreSquare) = (travel, travelSquare, tyre, tyreSquare);
        (sums.LeastTravel, sums.GreatestTravel, sums.LeastVelocity, sums.GreatestVelocity) = (leastTravel, greatestTravel, leastVelocity, greatestVelocity);
        (sums.PeakStop, sums.Lifted) = (stop, lifted);
    }

    private void CloseBlock(ref RideSums<T> sums)
    {
        ref T last = ref _blocks.Items[_nextBlock];
        sums.WeightedSquare += sums.Block;
        sums.Window += sums.Block - last;
        sums.GreatestWindow = T.Max(sums.GreatestWindow, sums.Window);
        (last, sums.Block) = (sums.Block, T.All(0));
        (_inBlock, _nextBlock) = (0, (_nextBlock + 1) % BlocksPerSecond);
    }
}
