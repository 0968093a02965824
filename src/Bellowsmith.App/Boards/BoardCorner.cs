using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>
/// One corner of the car on the board: what its linkage does, how it is aligned, which wheel fits. The linkage is put together once; an answer
/// is made again only where it is due.
/// </summary>
public sealed class BoardCorner
{
    private const double UsualTravel_m = 0.060, UsualRack_m = 0.060;

    private readonly Axle _axle;
    private readonly Linkage? _linkage;
    private readonly Kept<(StrutCase Strut, double Height_m), CornerBodies> _bodies;

    /// <param name="kit">One strut alone, its drive height known.</param>
    /// <param name="end">Its axle.</param>
    public BoardCorner(Kit kit, AxleEnd end)
    {
        _axle = kit.Car.At(end)!;
        _linkage = Part?.Linkage();
        _bodies = new(key => new CornerBodies(key.Strut, key.Height_m));
    }

    private SuspensionPart? Part => _axle.Suspension;

    /// <param name="strut">The strut with its drive height at the setting.</param>
    /// <param name="travel">How far it goes; null where the kit says too little.</param>
    /// <param name="asked">What is asked of the corner.</param>
    /// <param name="isDue">Whether a question is answered anew; else it keeps the answer it has.</param>
    public BoardCornerView At(StrutCase strut, TravelResult? travel, CornerAsked asked, Func<string, bool> isDue)
    {
        double height = strut.Design.DriveHeight_m!.Value;
        return new BoardCornerView
        {
            Asked = asked,
            Part = Part,
            Linkage = _linkage,
            OwnWheel = _axle.Wheel is { } wheel ? WheelText.Of(wheel) : "",
            Own = _axle.Wheel,
            FullBump_m = travel?.FullBump.WheelTravel_m ?? UsualTravel_m,
            FullDroop_m = travel?.FullDroop.WheelTravel_m ?? -UsualTravel_m,
            RackTravel_m = Part?.RackTravel_m ?? UsualRack_m,
            Bodies = _bodies.Of((strut, height)),
        };
    }
}

/// <summary>Everything the studies say of one corner.</summary>
public sealed record BoardCornerView
{
    public required CornerAsked Asked { get; init; }

    /// <summary>Null where the car names no points.</summary>
    public required SuspensionPart? Part { get; init; }

    public required Linkage? Linkage { get; init; }

    /// <summary>The wheel the car was measured with; null, and empty as written, where it names none.</summary>
    public required RoadWheel? Own { get; init; }

    public required string OwnWheel { get; init; }

    public required double FullBump_m { get; init; }

    public required double FullDroop_m { get; init; }

    public required double RackTravel_m { get; init; }

    public required CornerBodies Bodies { get; init; }

    public double StaticCamber_rad => Part?.StaticCamber_rad ?? 0;

    public double StaticToe_rad => Part?.StaticToe_rad ?? 0;

    public double LookedAt_m => Asked.LookedAt_m ?? 0;

    /// <summary>Where the wheel stands as asked; null where it cannot, or there are no points.</summary>
    public LinkageState? Here => _here ??= Linkage?.At(Asked.Travel_m, Asked.Rack_m).State;

    private LinkageState? _here;

    /// <summary>At the old drive height, straight ahead.</summary>
    public LinkageState? Before => Part?.LoweredBy_m is { } lowered ? Linkage?.At(-lowered).State : null;

    /// <summary>The three views of the geometry; empty without points.</summary>
    public IEnumerable<(string Id, CarView View)> Views(DisplayUnits units, double text_mm)
    {
        if (Here is not { } here) yield break;
        CornerViews views = new(
            new CornerScene { Part = Part!, Here = here, Before = Before, Wheel = Own is { } own ? (own, 0) : null, Bodies = Bodies }, units, text_mm);
        yield return ("front", views.Front());
        yield return ("side", views.Side());
        yield return ("plan", views.Plan());
    }
}
