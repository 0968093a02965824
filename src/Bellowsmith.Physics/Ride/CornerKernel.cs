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
    private readonly LanePolynomial<T> _force, _forceByEntropy, _forceBySquare, _cooling, _coolingByEntropy, _damperRatio;
    private readonly CellSum<T> _damper, _bumpStop, _topOut;
    private readonly T _perBody, _perWheel, _tyreRate, _tyreStatic, _static, _centre, _perHalf, _perTime;
    private readonly T _step, _halfStep, _halfSquare;

    public CornerKernel(ReadOnlySpan<Corner> corners, double step_s)
    {
        (_force, _forceByEntropy, _forceBySquare) = (new(corners, c => c.Force), new(corners, c => c.ForceByEntropy), new(corners, c => c.ForceByEntropySquare));
        (_cooling, _coolingByEntropy) = (new(corners, c => c.Cooling), new(corners, c => c.CoolingByEntropy));
        _damperRatio = new(corners, c => c.DamperRatio);
        _damper = new(Curves(corners, c => c.DamperForce));
        _bumpStop = new(Curves(corners, c => c.BumpStop));
        _topOut = new(Curves(corners, c => c.TopOut));
        _perBody = Lanes.Of<T>(corners, c => 1 / c.SprungMass_kg);
        _perWheel = Lanes.Of<T>(corners, c => 1 / c.UnsprungMass_kg);
        _tyreRate = Lanes.Of<T>(corners, c => c.TyreRate_N_per_m);
        _static = Lanes.Of<T>(corners, c => c.StaticForce_N);
        _tyreStatic = Lanes.Of<T>(corners, c => c.StaticForce_N + c.UnsprungMass_kg * StandardGravity.Value_m_per_s2);
        _centre = Lanes.Of<T>(corners, c => c.Range.Centre_m);
        _perHalf = Lanes.Of<T>(corners, c => 1 / c.Range.Half_m);
        _perTime = Lanes.Of<T>(corners, c => step_s / c.TimeConstant_s);
        (_step, _halfStep, _halfSquare) = (T.All(step_s), T.All(step_s / 2), T.All(step_s * step_s / 2));
    }

    /// <summary>Moves through a block of the road, one height a step, and lets out one sample a step.</summary>
    public void Advance(ref CornerState<T> state, ReadOnlySpan<T> road_m, Span<CornerSample<T>> samples)
    {
        T one = T.All(1), zero = T.All(0), less = T.All(-1);
        (T body, T bodyVelocity, T bodyAcceleration) = (state.Body, state.BodyVelocity, state.BodyAcceleration);
        (T wheel, T wheelVelocity, T wheelAcceleration, T entropy) = (state.Wheel, state.WheelVelocity, state.WheelAcceleration, state.Entropy);
        for (int k = 0; k < samples.Length; k++)
        {
            body = T.MultiplyAdd(_halfSquare, bodyAcceleration, T.MultiplyAdd(_step, bodyVelocity, body));
            wheel = T.MultiplyAdd(_halfSquare, wheelAcceleration, T.MultiplyAdd(_step, wheelVelocity, wheel));
            T bodyPredicted = T.MultiplyAdd(_step, bodyAcceleration, bodyVelocity);
            T wheelPredicted = T.MultiplyAdd(_step, wheelAcceleration, wheelVelocity);

            T travel = wheel - body;
            T t = T.Max(less, T.Min(one, (travel - _centre) * _perHalf));
            entropy = T.MultiplyAdd(_perTime, T.MultiplyAdd(entropy, _coolingByEntropy.At(t), _cooling.At(t)), entropy);
            T ratio = _damperRatio.At(t), velocity = ratio * (bodyPredicted - wheelPredicted);
            T air = T.MultiplyAdd(entropy, T.MultiplyAdd(entropy, _forceBySquare.At(t), _forceByEntropy.At(t)), _force.At(t));
            T stop = _bumpStop.At(travel);
            T strut = stop + _topOut.At(travel) - _damper.At(velocity);
            T force = T.MultiplyAdd(ratio, strut, air - _static);
            T tyre = T.Max(zero, T.MultiplyAdd(_tyreRate, road_m[k] - wheel, _tyreStatic));

            T bodyNext = force * _perBody, wheelNext = (tyre - _tyreStatic - force) * _perWheel;
            bodyVelocity = T.MultiplyAdd(_halfStep, bodyAcceleration + bodyNext, bodyVelocity);
            wheelVelocity = T.MultiplyAdd(_halfStep, wheelAcceleration + wheelNext, wheelVelocity);
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

    private static MonotoneCurve?[] Curves(ReadOnlySpan<Corner> corners, Func<Corner, MonotoneCurve?> curve)
    {
        MonotoneCurve?[] curves = new MonotoneCurve?[corners.Length];
        for (int lane = 0; lane < curves.Length; lane++) curves[lane] = curve(corners[lane]);
        return curves;
    }
}
