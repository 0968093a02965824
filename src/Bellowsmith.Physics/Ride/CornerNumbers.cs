namespace Bellowsmith.Physics.Ride;

/// <summary>What a step multiplies with, corner by corner.</summary>
internal struct CornerNumbers<T>
    where T : struct, ILane<T>
{
    public T PerBody, PerWheel, MinusPerWheel, MinusPerBoth, TyreRate, TyreStatic, Static, PerHalf, Offset, PerTime, Step, HalfStep, HalfSquare;

    /// <summary>No lane's travel above Contact or below Topped: no stop pushes.</summary>
    public T Contact, Topped;

    public static CornerNumbers<T> Of(ReadOnlySpan<Corner> corners, double step_s) => new()
    {
        PerBody = Lanes.Of<T>(corners, c => 1 / c.SprungMass_kg),
        PerWheel = Lanes.Of<T>(corners, c => 1 / c.UnsprungMass_kg),
        MinusPerWheel = Lanes.Of<T>(corners, c => -1 / c.UnsprungMass_kg),
        MinusPerBoth = Lanes.Of<T>(corners, c => -1 / c.SprungMass_kg - 1 / c.UnsprungMass_kg),
        TyreRate = Lanes.Of<T>(corners, c => c.TyreRate_N_per_m),
        TyreStatic = Lanes.Of<T>(corners, c => c.StaticForce_N + c.UnsprungMass_kg * StandardGravity.Value_m_per_s2),
        Static = Lanes.Of<T>(corners, c => c.StaticForce_N),
        PerHalf = Lanes.Of<T>(corners, c => 1 / c.Range.Half_m),
        Offset = Lanes.Of<T>(corners, c => -c.Range.Centre_m / c.Range.Half_m),
        PerTime = Lanes.Of<T>(corners, c => step_s / c.TimeConstant_s),
        Step = T.All(step_s),
        HalfStep = T.All(step_s / 2),
        HalfSquare = T.All(step_s * step_s / 2),
        Contact = Lanes.Of<T>(corners, c => c.BumpStop?.X[0] ?? double.MaxValue),
        Topped = Lanes.Of<T>(corners, c => c.TopOut?.X[^1] ?? double.MinValue),
    };
}

/// <summary>One coefficient each of <see cref="Corner.Force"/> and of how it depends on κ and κ².</summary>
internal struct AirPower<T>
    where T : struct, ILane<T>
{
    public T Force, ByEntropy, BySquare;
}

/// <summary>One coefficient each of <see cref="Corner.Cooling"/> and of how it depends on κ.</summary>
internal struct CoolingPower<T>
    where T : struct, ILane<T>
{
    public T Cooling, ByEntropy;
}
