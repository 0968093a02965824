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
    private readonly T[] _weights;
    private readonly T[] _memory;
    private readonly T[] _blocks = new T[BlocksPerSecond];
    private readonly T _contact, _clear;
    private readonly int _perBlock;
    private T _square, _weightedSquare, _weightedFourth, _peakWeighted, _travel, _travelSquare, _tyre, _tyreSquare, _onRoad;
    private T _armed, _contacts, _peakStop, _leastTravel, _greatestTravel, _leastVelocity, _greatestVelocity, _block, _window, _greatestWindow;
    private int _samples, _inBlock, _nextBlock;

    public RideStatistics(ReadOnlySpan<Corner> corners, double step_s, ReadOnlySpan<Biquad> weighting)
    {
        _step_s = step_s;
        _weights = new T[weighting.Length * 5];
        _memory = new T[weighting.Length * 2];
        for (int k = 0; k < weighting.Length; k++)
        {
            (double b0, double b1, double b2, double a1, double a2) = weighting[k];
            double[] numbers = [b0, b1, b2, -a1, -a2];
            for (int i = 0; i < 5; i++) _weights[5 * k + i] = T.All(numbers[i]);
        }

        _perBlock = Math.Max(1, (int)Math.Round(1 / (BlocksPerSecond * step_s)));
        _contact = Lanes.Of<T>(corners, c => c.BumpStop?.X[0] ?? double.MaxValue);
        _clear = Lanes.Of<T>(corners, c => (c.BumpStop?.X[0] ?? double.MaxValue) - Clearance_m / c.DamperRatio.At(0));
        (_leastTravel, _greatestTravel) = (T.All(double.MaxValue), T.All(-double.MaxValue));
        (_leastVelocity, _greatestVelocity) = (_leastTravel, _greatestTravel);
    }

    /// <summary>Takes a block; while settling only the weighting filter and the stop's readiness move on.</summary>
    public void Take(ReadOnlySpan<CornerSample<T>> samples, bool settling)
    {
        foreach (ref readonly CornerSample<T> sample in samples)
        {
            T weighted = Weighted(sample.Acceleration);
            T ready = T.Max(_armed, T.Positive(_clear - sample.Travel)), hit = ready * T.Positive(sample.Travel - _contact);
            _armed = ready - hit;
            if (!settling) Count(sample, weighted, hit);
        }

        if (!settling) _samples += samples.Length;
    }

    /// <summary>What one lane has seen; contacts are counts, to be set against the way driven.</summary>
    public RideFigures Of(int lane)
    {
        double n = _samples;
        double Mean(T sum) => Lane(sum, lane) / n;
        double Deviation(T sum, T squares) => Math.Sqrt(Math.Max(0, Mean(squares) - Mean(sum) * Mean(sum)));
        double weightedRms = Math.Sqrt(Mean(_weightedSquare));
        return new RideFigures
        {
            Rms_m_per_s2 = Math.Sqrt(Mean(_square)),
            WeightedRms_m_per_s2 = weightedRms,
            CrestFactor = weightedRms > 0 ? Lane(_peakWeighted, lane) / weightedRms : 0,
            VibrationDose_m_per_s175 = Math.Sqrt(Math.Sqrt(Lane(_weightedFourth, lane) * _step_s)),
            GreatestRunningRms_m_per_s2 = Math.Sqrt(Math.Max(0, Lane(_greatestWindow, lane)) / (_perBlock * BlocksPerSecond)),
            TravelRms_m = Deviation(_travel, _travelSquare),
            TyreLoadRms_N = Deviation(_tyre, _tyreSquare),
            LiftOffShare = 1 - Mean(_onRoad),
            StopContacts = (int)Math.Round(Lane(_contacts, lane)),
            PeakStopForce_N = Lane(_peakStop, lane),
            LeastTravel_m = Lane(_leastTravel, lane),
            GreatestTravel_m = Lane(_greatestTravel, lane),
            GreatestCompression_m_per_s = Math.Max(0, -Lane(_leastVelocity, lane)),
            GreatestRebound_m_per_s = Math.Max(0, Lane(_greatestVelocity, lane)),
            Time_s = n * _step_s,
        };
    }

    // Transposed direct form, one second-order section after the other.
    private T Weighted(T value)
    {
        for (int k = 0; k < _memory.Length; k += 2)
        {
            ReadOnlySpan<T> w = _weights.AsSpan(k / 2 * 5, 5);
            T output = T.MultiplyAdd(w[0], value, _memory[k]);
            _memory[k] = T.MultiplyAdd(w[1], value, T.MultiplyAdd(w[3], output, _memory[k + 1]));
            _memory[k + 1] = T.MultiplyAdd(w[2], value, w[4] * output);
            value = output;
        }

        return value;
    }

    private void Count(in CornerSample<T> sample, T weighted, T hit)
    {
        T square = weighted * weighted;
        _square = T.MultiplyAdd(sample.Acceleration, sample.Acceleration, _square);
        _weightedSquare += square;
        _weightedFourth = T.MultiplyAdd(square, square, _weightedFourth);
        _peakWeighted = T.Max(_peakWeighted, T.Max(weighted, T.All(0) - weighted));
        _travel += sample.Travel;
        _travelSquare = T.MultiplyAdd(sample.Travel, sample.Travel, _travelSquare);
        _tyre += sample.TyreForce;
        _tyreSquare = T.MultiplyAdd(sample.TyreForce, sample.TyreForce, _tyreSquare);
        _onRoad += T.Positive(sample.TyreForce);
        _contacts += hit;
        _peakStop = T.Max(_peakStop, sample.StopForce);
        (_leastTravel, _greatestTravel) = (T.Min(_leastTravel, sample.Travel), T.Max(_greatestTravel, sample.Travel));
        (_leastVelocity, _greatestVelocity) = (T.Min(_leastVelocity, sample.DamperVelocity), T.Max(_greatestVelocity, sample.DamperVelocity));
        _block += square;
        if (++_inBlock == _perBlock) CloseBlock();
    }

    private void CloseBlock()
    {
        _window += _block - _blocks[_nextBlock];
        _blocks[_nextBlock] = _block;
        _greatestWindow = T.Max(_greatestWindow, _window);
        (_block, _inBlock, _nextBlock) = (T.All(0), 0, (_nextBlock + 1) % BlocksPerSecond);
    }

    private static double Lane(T value, int lane)
    {
        Span<double> side = stackalloc double[T.Count];
        value.Store(side);
        return side[lane];
    }
}
