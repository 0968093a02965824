namespace Bellowsmith.Physics.Ride;

/// <summary>What a step multiplies with, corner by corner.</summary>
internal struct CornerNumbers<T>
    where T : struct, ILane<T>
{
    public T PerBody, PerWheel, TyreRate, TyreStatic, Static, Centre, PerHalf, PerTime, Step, HalfStep, HalfSquare;

    /// <summary>No lane's travel above Contact or below Topped: no stop pushes.</summary>
    public T Contact, Topped;

    public static CornerNumbers<T> Of(ReadOnlySpan<Corner> corners, double step_s) => new()
    {
        PerBody = Lanes.Of<T>(corners, c => 1 / c.SprungMass_kg),
        PerWheel = Lanes.Of<T>(corners, c => 1 / c.UnsprungMass_kg),
        TyreRate = Lanes.Of<T>(corners, c => c.TyreRate_N_per_m),
        TyreStatic = Lanes.Of<T>(corners, c => c.StaticForce_N + c.UnsprungMass_kg * StandardGravity.Value_m_per_s2),
        Static = Lanes.Of<T>(corners, c => c.StaticForce_N),
        Centre = Lanes.Of<T>(corners, c => c.Range.Centre_m),
        PerHalf = Lanes.Of<T>(corners, c => 1 / c.Range.Half_m),
        PerTime = Lanes.Of<T>(corners, c => step_s / c.TimeConstant_s),
        Step = T.All(step_s),
        HalfStep = T.All(step_s / 2),
        HalfSquare = T.All(step_s * step_s / 2),
        Contact = Lanes.Of<T>(corners, c => PushesAbove(c.BumpStop)),
        Topped = Lanes.Of<T>(corners, c => PullsBelow(c.TopOut)),
    };

    private static double PushesAbove(MonotoneCurve? stop) => stop is null ? double.MaxValue
        : stop.Y[0] == 0 && stop.At(stop.X[0] - 1).Value == 0 ? stop.X[0] : double.MinValue;

    private static double PullsBelow(MonotoneCurve? stop) => stop is null ? double.MinValue
        : stop.Y[^1] == 0 && stop.At(stop.X[^1] + 1).Value == 0 ? stop.X[^1] : double.MaxValue;
}
