using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>Where the masses are and how they move, against drive on a flat road; κ of the air.</summary>
internal struct CornerState<T>
    where T : struct, ILane<T>
{
    public T Body, BodyVelocity, BodyAcceleration, Wheel, WheelVelocity, WheelAcceleration, Entropy;
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
    private readonly LanePolynomial<T> _force = new(), _forceByEntropy = new(), _forceBySquare = new(), _cooling = new(), _coolingByEntropy = new(), _damperRatio = new();
    private readonly KnotCurves<T> _damper = new(), _bumpStop = new(), _topOut = new();
    private readonly LaneArray<CornerNumbers<T>> _numbers = new(1);

    public CornerKernel()
    {
    }

    public CornerKernel(ReadOnlySpan<Corner> corners, double step_s) => Load(corners, step_s);

    /// <summary>Takes other corners, no more than there are lanes.</summary>
    public void Load(ReadOnlySpan<Corner> corners, double step_s)
    {
        _force.Load(corners, c => c.Force);
        _forceByEntropy.Load(corners, c => c.ForceByEntropy);
        _forceBySquare.Load(corners, c => c.ForceByEntropySquare);
        _cooling.Load(corners, c => c.Cooling);
        _coolingByEntropy.Load(corners, c => c.CoolingByEntropy);
        _damperRatio.Load(corners, c => c.DamperRatio);
        _damper.Load(corners, c => c.DamperForce);
        _bumpStop.Load(corners, c => c.BumpStop);
        _topOut.Load(corners, c => c.TopOut);
        _numbers.Items[0] = CornerNumbers<T>.Of(corners, step_s);
    }

    /// <summary>Moves through a block of the road, one height a step, and lets out one sample a step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Advance(ref CornerState<T> state, ReadOnlySpan<T> road_m, Span<CornerSample<T>> samples)
    {
        ref readonly CornerNumbers<T> c = ref _numbers.Items[0];
        ReadOnlySpan<T> force0 = _force.Powers, force1 = _forceByEntropy.Powers, force2 = _forceBySquare.Powers;
        ReadOnlySpan<T> cooling0 = _cooling.Powers, cooling1 = _coolingByEntropy.Powers, damperRatio = _damperRatio.Powers;
        KnotSum<T> damper = _damper.Sum, bumpStop = _bumpStop.Sum, topOut = _topOut.Sum;
        T one = T.All(1), zero = T.All(0), less = T.All(-1);
        (T body, T bodyVelocity, T bodyAcceleration) = (state.Body, state.BodyVelocity, state.BodyAcceleration);
        (T wheel, T wheelVelocity, T wheelAcceleration, T entropy) = (state.Wheel, state.WheelVelocity, state.WheelAcceleration, state.Entropy);
        for (int k = 0; k < samples.Length; k++)
        {
            body = T.MultiplyAdd(c.HalfSquare, bodyAcceleration, T.MultiplyAdd(c.Step, bodyVelocity, body));
            wheel = T.MultiplyAdd(c.HalfSquare, wheelAcceleration, T.MultiplyAdd(c.Step, wheelVelocity, wheel));
            T bodyPredicted = T.MultiplyAdd(c.Step, bodyAcceleration, bodyVelocity);
            T wheelPredicted = T.MultiplyAdd(c.Step, wheelAcceleration, wheelVelocity);

            T travel = wheel - body;
            T t = T.Max(less, T.Min(one, (travel - c.Centre) * c.PerHalf));
            T ratio = LanePolynomial<T>.At(damperRatio, t), velocity = ratio * (bodyPredicted - wheelPredicted);
            T stop = zero, stops = zero;
            if (T.AnyAbove(travel, c.Contact) || T.AnyAbove(c.Topped, travel))
            {
                stop = bumpStop.At(travel);
                stops = stop + topOut.At(travel);
            }

            entropy = T.MultiplyAdd(c.PerTime, T.MultiplyAdd(entropy, LanePolynomial<T>.At(cooling1, t), LanePolynomial<T>.At(cooling0, t)), entropy);
            T air = T.MultiplyAdd(entropy, T.MultiplyAdd(entropy, LanePolynomial<T>.At(force2, t), LanePolynomial<T>.At(force1, t)), LanePolynomial<T>.At(force0, t));
            T force = T.MultiplyAdd(ratio, stops - damper.At(velocity), air - c.Static);
            T tyre = T.Max(zero, T.MultiplyAdd(c.TyreRate, road_m[k] - wheel, c.TyreStatic));

            T bodyNext = force * c.PerBody, wheelNext = (tyre - c.TyreStatic - force) * c.PerWheel;
            bodyVelocity = T.MultiplyAdd(c.HalfStep, bodyAcceleration + bodyNext, bodyVelocity);
            wheelVelocity = T.MultiplyAdd(c.HalfStep, wheelAcceleration + wheelNext, wheelVelocity);
            (bodyAcceleration, wheelAcceleration) = (bodyNext, wheelNext);
            samples[k] = new() { Acceleration = bodyNext, Travel = travel, DamperVelocity = velocity, TyreForce = tyre, StopForce = stop, Entropy = entropy };
        }

        state = new()
        {
            Body = body,
            BodyVelocity = bodyVelocity,
            BodyAcceleration = bodyAcceleration,
            Wheel = wheel,
            WheelVelocity = wheelVelocity,
            WheelAcceleration = wheelAcceleration,
            Entropy = entropy,
        };
    }
}
