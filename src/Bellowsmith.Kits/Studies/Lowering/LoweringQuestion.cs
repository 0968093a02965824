using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

/// <summary>How much lower the car stands than it did, m: what is now drive height was so much bump.</summary>
public sealed record LoweringQuestion(double Lowered_m)
{
    /// <summary>How far a wheel usually works either way (common practice, no source).</summary>
    public double Working_m { get; init; } = 0.030;

    /// <summary>Wheel travel looked at, bump +.</summary>
    public double From_m { get; init; } = -0.080;

    public double To_m { get; init; } = 0.060;

    /// <summary>How the strut was measured to follow the wheel; null where it was not.</summary>
    public MotionRatio? Measured { get; init; }

    /// <summary>The points of a kit's axle, and how far it was lowered: as asked, else as the suspension's document says.</summary>
    /// <exception cref="FaultsException">There are no points, or nothing says how far.</exception>
    public static (SuspensionPart Part, LoweringQuestion Question) Of(Kit kit, AxleEnd end, double? lowered_m = null)
    {
        List<Fault> faults = [];
        SuspensionPart? part = SuspensionNeeds.Points(kit, end, faults);
        double? lowered = lowered_m ?? part?.LoweredBy_m;
        if (part is not null && lowered is null)
            faults.Add(new(part.File, "loweredBy", "nothing", "how much lower the car stands now",
                "Add \"loweredBy\": \"45 mm\" to the suspension document, or ask with --lowered."));
        return faults.Count > 0 ? throw new FaultsException(faults)
            : (part!, new LoweringQuestion(lowered!.Value) { Measured = kit.Car.At(end)!.MeasuredRatio });
    }
}
