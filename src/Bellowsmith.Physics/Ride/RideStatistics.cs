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
    private readonly LaneArray<T> _blocks = new(BlocksPerSecond);
    private readonly LaneArray<RideWeights<T>> _weights = new(1);
    private readonly LaneArray<WeightMemory<T>> _memory = new(1);
    private readonly LaneArray<RideSums<T>> _sums = new(1);
    private T _contact, _clear;
    private int _samples, _inBlock, _nextBlock;

    public RideStatistics(double step_s)
    {
        _step_s = step_s;
        _perBlock = Math.Max(1, (int)Math.Round(1 / (BlocksPerSecond * step_s)));
        _weights.Items[0] = RideWeights<T>.Of(RideWeighting.Vertical(1 / step_s));
    }

    /// <summary>Begins anew.</summary>
    public void Load(ReadOnlySpan<Corner> corners)
    {
        _contact = Lanes.Of<T>(corners, c => c.BumpStop?.X[0] ?? double.MaxValue);
        _clear = Lanes.Of<T>(corners, c => (c.BumpStop?.X[0] ?? double.MaxValue) - Clearance_m / c.DamperRatio.At(0));
        _sums.Items[0] = RideSums<T>.None;
        _memory.Items.Clear();
        Settle();
    }

    /// <summary>Forgets what was taken so far, but for the filter's and the stop's past: the corner has settled.</summary>
    public void Settle()
    {
        _sums.Items[0] = RideSums<T>.None with { SinceContact = _sums.Items[0].SinceContact };
        _blocks.Items.Clear();
        (_samples, _inBlock, _nextBlock) = (0, 0, 0);
    }

    /// <summary>Takes the samples of the next steps, any number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Take(ReadOnlySpan<CornerSample<T>> samples)
    {
        ref RideSums<T> sums = ref _sums.Items[0];
        TakeWheel(samples, ref sums);
        for (int length; !samples.IsEmpty; samples = samples[length..])
        {
            length = Math.Min(samples.Length, _perBlock - _inBlock);
            TakeComfort(samples[..length], ref sums);
            _samples += length;
            _inBlock += length;
            if (_inBlock == _perBlock) CloseBlock(ref sums);
        }
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

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void TakeComfort(ReadOnlySpan<CornerSample<T>> samples, ref RideSums<T> sums)
    {
        ref readonly RideWeights<T> weights = ref _weights.Items[0];
        ref WeightMemory<T> memory = ref _memory.Items[0];
        (T first, T firstBefore, T second, T secondBefore) = (memory.First, memory.FirstBefore, memory.Second, memory.SecondBefore);
        (T third, T thirdBefore, T fourth, T fourthBefore) = (memory.Third, memory.ThirdBefore, memory.Fourth, memory.FourthBefore);
        (T raw, T block, T dose, T peak) = (sums.Square, sums.Block, sums.WeightedFourth, sums.PeakSquare);
        foreach (ref readonly CornerSample<T> sample in samples)
        {
            T weighted = weights.First.Filter(sample.Acceleration * weights.Gain, ref first, ref firstBefore);
            weighted = weights.Second.Filter(weighted, ref second, ref secondBefore);
            weighted = weights.Third.Filter(weighted, ref third, ref thirdBefore);
            weighted = weights.Fourth.Filter(weighted, ref fourth, ref fourthBefore);
            T square = weighted * weighted;
            raw = T.MultiplyAdd(sample.Acceleration, sample.Acceleration, raw);
            block += square;
            dose = T.MultiplyAdd(square, square, dose);
            peak = T.Max(square, peak);
        }

        (memory.First, memory.FirstBefore, memory.Second, memory.SecondBefore) = (first, firstBefore, second, secondBefore);
        (memory.Third, memory.ThirdBefore, memory.Fourth, memory.FourthBefore) = (third, thirdBefore, fourth, fourthBefore);
        (sums.Square, sums.Block, sums.WeightedFourth, sums.PeakSquare) = (raw, block, dose, peak);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void TakeWheel(ReadOnlySpan<CornerSample<T>> samples, ref RideSums<T> sums)
    {
        (T travel, T travelSquare, T tyre, T tyreSquare) = (sums.Travel, sums.TravelSquare, sums.Tyre, sums.TyreSquare);
        (T leastTravel, T greatestTravel, T leastVelocity, T greatestVelocity) = (sums.LeastTravel, sums.GreatestTravel, sums.LeastVelocity, sums.GreatestVelocity);
        (T stop, T clearance, T contact, T nothing) = (sums.PeakStop, sums.SinceContact, _contact, T.All(double.Epsilon));
        (T contacts, T lifted) = (sums.Contacts, sums.Lifted);
        foreach (ref readonly CornerSample<T> sample in samples)
        {
            travel += sample.Travel;
            travelSquare = T.MultiplyAdd(sample.Travel, sample.Travel, travelSquare);
            tyre += sample.TyreForce;
            tyreSquare = T.MultiplyAdd(sample.TyreForce, sample.TyreForce, tyreSquare);
            (leastTravel, greatestTravel) = (T.Min(sample.Travel, leastTravel), T.Max(sample.Travel, greatestTravel));
            (leastVelocity, greatestVelocity) = (T.Min(sample.DamperVelocity, leastVelocity), T.Max(sample.DamperVelocity, greatestVelocity));
            stop = T.Max(sample.StopForce, stop);
            clearance = T.Min(sample.Travel, clearance);
            if (T.AnyAbove(sample.Travel, contact))
            {
                T touching = T.Positive(sample.Travel - contact);
                contacts = T.MultiplyAdd(touching, T.Positive(_clear - clearance), contacts);
                clearance = RideSums<T>.Forget(touching, clearance);
            }

            if (T.AnyAbove(nothing, sample.TyreForce)) lifted += T.All(1) - T.Positive(sample.TyreForce);
        }

        (sums.Travel, sums.TravelSquare, sums.Tyre, sums.TyreSquare) = (travel, travelSquare, tyre, tyreSquare);
        (sums.LeastTravel, sums.GreatestTravel, sums.LeastVelocity, sums.GreatestVelocity) = (leastTravel, greatestTravel, leastVelocity, greatestVelocity);
        (sums.PeakStop, sums.SinceContact, sums.Contacts, sums.Lifted) = (stop, clearance, contacts, lifted);
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
