using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>Where the wheel is, how far it has travelled against the body, and how both move, against drive on a flat road; κ of the air.</summary>
internal struct CornerState<T>
    where T : struct, ILane<T>
{
    public T Travel, TravelVelocity, TravelAcceleration, Wheel, WheelVelocity, WheelAcceleration, Entropy;

    public readonly T Body => Wheel - Travel;
}

/// <summary>What a step lets out: body acceleration, wheel travel, damper extension velocity, tyre force, bump-stop force, κ.</summary>
internal struct CornerSample<T>
    where T : struct, ILane<T>
{
    public T Acceleration, Travel, DamperVelocity, TyreForce, StopForce, Entropy;
}

/// <summary>
/// The equations of <see cref="Corner"/>, stepped with one evaluation a step: positions by their own acceleration, the force at
/// the new positions and predicted velocities, velocities by the mean of both accelerations. Second order; stable where
/// ω·step &lt; 2 and the damping rate times the step stays well below 1.
/// </summary>
internal sealed class CornerKernel<T>
    where T : struct, ILane<T>
{
    private readonly LanePowers<T, AirPower<T>> _air = new();
    private readonly LanePowers<T, CoolingPower<T>> _cooling = new();
    private readonly LanePowers<T, T> _lever = new();
    private readonly KnotCurves<T> _damper = new(), _stops = new();
    private readonly LaneArray<CornerNumbers<T>> _numbers = new(1);

    public CornerKernel()
    {
    }

    public CornerKernel(ReadOnlySpan<Corner> corners, double step_s) => Load(corners, step_s);

    /// <summary>Takes other corners, no more than there are lanes.</summary>
    public void Load(ReadOnlySpan<Corner> corners, double step_s)
    {
        _air.Load(corners, c => c.Force, c => c.ForceByEntropy, c => c.ForceByEntropySquare);
        _cooling.Load(corners, c => c.Cooling, c => c.CoolingByEntropy);
        _lever.Load(corners, c => c.DamperRatio);
        foreach (ref T power in _lever.Powers) power = T.All(0) - power;
        _damper.Load(corners, c => c.DamperForce);
        _stops.LoadStops(corners);
        _numbers.Items[0] = CornerNumbers<T>.Of(corners, step_s);
    }

    /// <summary>Moves through a block of the road, one height a step, and lets out one sample a step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Advance(ref CornerState<T> state, ReadOnlySpan<T> road_m, Span<CornerSample<T>> samples)
    {
        ref readonly CornerNumbers<T> c = ref _numbers.Items[0];
        ReadOnlySpan<AirPower<T>> airPowers = _air.Powers;
        ReadOnlySpan<CoolingPower<T>> coolingPowers = _cooling.Powers;
        ReadOnlySpan<T> leverPowers = _lever.Powers;
        KnotSum<T> damper = _damper.Sum, stops = _stops.Sum;
        (T step, T halfStep, T halfSquare) = (c.Step, c.HalfStep, c.HalfSquare);
        T one = T.All(1), zero = T.All(0), less = T.All(-1);
        (T travel, T travelVelocity, T travelAcceleration) = (state.Travel, state.TravelVelocity, state.TravelAcceleration);
        (T wheel, T wheelVelocity, T wheelAcceleration, T entropy) = (state.Wheel, state.WheelVelocity, state.WheelAcceleration, state.Entropy);
        for (int k = 0; k < samples.Length; k++)
        {
            travel = T.MultiplyAdd(step, travelVelocity, T.MultiplyAdd(halfSquare, travelAcceleration, travel));
            wheel = T.MultiplyAdd(step, wheelVelocity, T.MultiplyAdd(halfSquare, wheelAcceleration, wheel));
            T predicted = T.MultiplyAdd(step, travelAcceleration, travelVelocity);

            T t = T.Max(less, T.Min(one, T.MultiplyAdd(travel, c.PerHalf, c.Offset)));
            T lever = Lever(leverPowers, t), velocity = lever * predicted;
            entropy = T.MultiplyAdd(c.PerTime, Cooling(coolingPowers, t, entropy), entropy);
            T air = Air(airPowers, t, entropy);
            (T rebound, T compression) = damper.At(velocity);
            T stop = zero, strut = rebound + compression;
            if (T.AnyAbove(travel, c.Contact) || T.AnyAbove(c.Topped, travel))
            {
                (stop, T topOut) = stops.At(travel);
                strut -= stop + topOut;
            }

            T force = T.MultiplyAdd(lever, strut, air - c.Static);
            T tyre = T.Max(zero, T.MultiplyAdd(c.TyreRate, road_m[k] - wheel, c.TyreStatic));

            T lift = (tyre - c.TyreStatic) * c.PerWheel;
            T wheelNext = T.MultiplyAdd(force, c.MinusPerWheel, lift), travelNext = T.MultiplyAdd(force, c.MinusPerBoth, lift);
            travelVelocity = T.MultiplyAdd(halfStep, travelNext, T.MultiplyAdd(halfStep, travelAcceleration, travelVelocity));
            wheelVelocity = T.MultiplyAdd(halfStep, wheelNext, T.MultiplyAdd(halfStep, wheelAcceleration, wheelVelocity));
            (travelAcceleration, wheelAcceleration) = (travelNext, wheelNext);
            samples[k] = new() { Acceleration = force * c.PerBody, Travel = travel, DamperVelocity = velocity, TyreForce = tyre, StopForce = stop, Entropy = entropy };
        }

        state = new()
        {
            Travel = travel,
            TravelVelocity = travelVelocity,
            TravelAcceleration = travelAcceleration,
            Wheel = wheel,
            WheelVelocity = wheelVelocity,
            WheelAcceleration = wheelAcceleration,
            Entropy = entropy,
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Air(ReadOnlySpan<AirPower<T>> powers, T t, T entropy)
    {
        (T force, T first, T second) = (powers[0].Force, powers[0].ByEntropy, powers[0].BySquare);
        foreach (ref readonly AirPower<T> power in powers[1..])
        {
            force = T.MultiplyAdd(force, t, power.Force);
            first = T.MultiplyAdd(first, t, power.ByEntropy);
            second = T.MultiplyAdd(second, t, power.BySquare);
        }

        return T.MultiplyAdd(entropy, T.MultiplyAdd(entropy, second, first), force);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Cooling(ReadOnlySpan<CoolingPower<T>> powers, T t, T entropy)
    {
        (T cooling, T first) = (powers[0].Cooling, powers[0].ByEntropy);
        foreach (ref readonly CoolingPower<T> power in powers[1..])
        {
            cooling = T.MultiplyAdd(cooling, t, power.Cooling);
            first = T.MultiplyAdd(first, t, power.ByEntropy);
        }

        return T.MultiplyAdd(entropy, first, cooling);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Lever(ReadOnlySpan<T> powers, T t)
    {
        T lever = powers[0];
        foreach (ref readonly T power in powers[1..]) lever = T.MultiplyAdd(lever, t, power);
        return lever;
    }
}
