using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>
/// One strut ready to be driven: its damper's data, the masses and tyre about it and, where the spring holds air, the case it
/// stands in. A spring given by its rate alone has no stops and its static position is the origin.
/// </summary>
public sealed record RideStrut
{
    /// <summary>Friction is spread over this speed either way, so that a strut at rest does not chatter; common practice, no source.</summary>
    private const double FrictionSpeed_m_per_s = 5e-3;

    private const double LinearReach_m = 1;

    public required AxleEnd End { get; init; }
    public required string Load { get; init; }
    public required double SprungMass_kg { get; init; }
    public required double UnsprungMass_kg { get; init; }
    public required double TyreRate_N_per_m { get; init; }
    public required MotionRatio SpringRatio { get; init; }
    public required MotionRatio DamperRatio { get; init; }
    public required double ParasiticRate_N_per_m { get; init; }
    public required Damper Damper { get; init; }

    /// <summary>What its forces were brought to; null: as they were measured.</summary>
    public double? DamperTemperature_K { get; init; }

    /// <summary>The click the kit drives with; the middle of those measured where it names none.</summary>
    public required double Click { get; init; }

    /// <summary>Null for a spring given by its rate alone.</summary>
    public StrutCase? Case { get; init; }

    /// <summary>Whether bump stop and top-out exist: a damper given by its coefficient alone has no ends.</summary>
    public bool HasEnds { get; init; }

    /// <summary>The rate of a spring given by its rate alone.</summary>
    public double? LinearRate_N_per_m { get; init; }

    /// <summary>Friction of strut and seals, N at the strut.</summary>
    public double Friction_N { get; init; }

    /// <summary>The same strut at another load case; null where that leaves no sprung mass on a corner.</summary>
    public RideStrut? At(LoadCase load, Car car)
    {
        Axle axle = car.At(End)!;
        (double left, double right) = load.At(End);
        double sprung = load.Sprung_kg(End, axle);
        if (Math.Min(left, right) <= axle.UnsprungMass_kg) return null;
        return this with
        {
            Load = load.Name,
            SprungMass_kg = sprung,
            Case = Case is { } air ? air with { Load = load.Name, Sprung = (left - axle.UnsprungMass_kg, right - axle.UnsprungMass_kg) } : null,
        };
    }

    /// <summary>Spring height at drive: the kit's, else the recommended; null where there is none.</summary>
    public double? DriveHeight_m() =>
        Case is not { } strut ? null
        : strut.Design.DriveHeight_m ?? (strut.Design.Target is null ? null : InstalledHeightStudy.Answer(strut).Recommended?.Height_m);

    /// <summary>Why nothing can be said at a click; null where it was measured or lies between those that were.</summary>
    internal string? Unmeasured(double click) => click >= Damper.Clicks[0] && click <= Damper.Clicks[^1] ? null
        : FormattableString.Invariant($"click {click} was not measured; the damper's data go from click {Damper.Clicks[0]} to {Damper.Clicks[^1]}");

    /// <summary>The damper's force with friction at a click; clicks are held to those measured.</summary>
    internal MonotoneCurve DamperForce(double click)
    {
        MonotoneCurve damper = Damper.Curve(click);
        if (Friction_N <= 0) return damper;
        double[] speeds = [.. damper.X.Append(-FrictionSpeed_m_per_s).Append(FrictionSpeed_m_per_s).Distinct().Order()];
        double[] forces = [.. speeds.Select(v => damper.At(v).Value + Friction_N * Math.Clamp(v / FrictionSpeed_m_per_s, -1, 1))];
        return MonotoneCurve.Through(speeds, forces, damper.At(speeds[0] - 1).Slope, damper.At(speeds[^1] + 1).Slope);
    }

    /// <summary>The corner of a spring given by its rate alone: Fspring = W/i + k·(strut travel).</summary>
    internal Corner LinearCorner(double click)
    {
        double strut = SprungMass_kg * StandardGravity.Value_m_per_s2 / SpringRatio.At(0), rate = LinearRate_N_per_m!.Value;
        return WithoutHeat(click, new(-LinearReach_m, LinearReach_m),
            w => SpringRatio.At(w) * (strut + rate * SpringRatio.StrutTravel_m(w)) + ParasiticRate_N_per_m * w);
    }

    /// <summary>A corner without stops whose force at the wheel, N over wheel travel, knows no heat.</summary>
    internal Corner WithoutHeat(double click, TravelRange range, Func<double, double> force)
    {
        TravelPolynomial none = TravelPolynomial.Of(_ => 0, range, 1);
        return new Corner
        {
            SprungMass_kg = SprungMass_kg,
            UnsprungMass_kg = UnsprungMass_kg,
            TyreRate_N_per_m = TyreRate_N_per_m,
            Range = range,
            Force = TravelPolynomial.Of(force, range, 1e-6 * SprungMass_kg * StandardGravity.Value_m_per_s2),
            ForceByEntropy = none,
            ForceByEntropySquare = none,
            Cooling = none,
            CoolingByEntropy = none,
            TimeConstant_s = double.PositiveInfinity,
            DamperRatio = TravelPolynomial.Of(DamperRatio.At, range, 1e-6),
            DamperForce = DamperForce(click),
        };
    }
}
