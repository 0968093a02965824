using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>
/// One corner of the car on the board: what its linkage does, how it is aligned, which wheel fits. Spring and linkage are settled once; an
/// answer is made again only where it is due.
/// </summary>
public sealed class BoardCorner
{
    private const double UsualTravel_m = 0.060, UsualRack_m = 0.060;

    private readonly Axle _axle;
    private readonly Kept<string, WheelCorner> _settled;
    private readonly Kept<(string Load, double Height_m), WheelCorner> _corner;
    private readonly Kept<(WheelCorner Corner, RoadWheel Wheel, double Spacer_m), WheelFitResult> _fit;
    private readonly Kept<(WheelFitResult Fit, double Camber_rad), WheelFitResult> _tilted;
    private readonly Kept<AlignmentQuestion, AlignmentResult> _aligned;

    /// <param name="kit">One strut alone, its drive height known.</param>
    /// <param name="end">Its axle.</param>
    /// <param name="standing">The kit with its strut at another drive height.</param>
    public BoardCorner(Kit kit, AxleEnd end, Func<double, Kit> standing)
    {
        _axle = kit.Car.At(end)!;
        (Lowering, GeometryFaults) = Faulty.Of(() => Lowered(kit, end));
        (AlignmentCase? aligned, AlignmentFaults) = Faulty.Of(() => AlignmentCase.Of(kit, end, new AlignmentQuestion()));
        _aligned = new(question => AlignmentStudy.Answer(aligned!, question));
        _settled = new(load => WheelCorner.Of(kit, new StudyConditions(Load: load)));
        _corner = new(key => _settled.Of(key.Load).At(key.Height_m));
        _fit = new(key => WheelFitStudy.Answer(key.Corner, new WheelFitQuestion(_axle.Wheel!, key.Wheel, key.Spacer_m).With(kit.Margins)));
        _tilted = new(key => WheelFitStudy.Again(key.Fit, key.Camber_rad));
        Touch = new(kit, standing);
    }

    /// <summary>What the questions lack; empty where they can be answered.</summary>
    public IReadOnlyList<Fault> GeometryFaults { get; }

    public IReadOnlyList<Fault> AlignmentFaults { get; }

    /// <summary>What touches what.</summary>
    public BoardTouch Touch { get; }

    /// <summary>Null where nothing says how far the car was lowered.</summary>
    private LoweringResult? Lowering { get; }

    private SuspensionPart? Part => _axle.Suspension;

    /// <param name="strut">The strut with its drive height at the setting.</param>
    /// <param name="travel">How far it goes; null where the kit says too little.</param>
    /// <param name="asked">What is asked of the corner.</param>
    /// <param name="due">Which questions are answered anew; the others keep the answer they have.</param>
    public BoardCornerView At(StrutCase strut, TravelResult? travel, CornerAsked asked, Due due)
    {
        // Under a hand elsewhere nobody sees the corner: it keeps its place until the hand lets go.
        bool seen = due.Of(Questions.Geometry) || due.Of(Questions.Wheel) || due.Of(Questions.Touch);
        WheelCorner corner = !seen && _corner.Last is { } last ? last : _corner.Of((strut.Load, strut.Design.DriveHeight_m!.Value));
        return new BoardCornerView
        {
            Asked = asked,
            Part = Part,
            Corner = corner,
            Own = _axle.Wheel,
            FullBump_m = travel?.FullBump.WheelTravel_m ?? UsualTravel_m,
            FullDroop_m = travel?.FullDroop.WheelTravel_m ?? -UsualTravel_m,
            RackTravel_m = Part?.RackTravel_m ?? UsualRack_m,
            Lowering = Lowering,
            Aligned = AlignmentFaults.Count == 0 ? _aligned.Of(new AlignmentQuestion(asked.Camber_rad, asked.Toe_rad)) : null,
            Fit = due.Of(Questions.Wheel) ? Fit(corner, asked) : _tilted.Last,
            Swept = Touch.At(corner, Tried(asked), asked, due),
        };
    }

    private static LoweringResult Lowered(Kit kit, AxleEnd end)
    {
        (SuspensionPart part, LoweringQuestion question) = LoweringQuestion.Of(kit, end);
        return LoweringStudy.Answer(part, question);
    }

    private WheelFitResult? Fit(WheelCorner corner, CornerAsked asked) => Tried(asked) is { } tried
        ? _tilted.Of((_fit.Of((corner, tried, asked.Spacer_m)), asked.CamberChange_rad)) : null;

    // The car's own may know its section from a catalogue; what is typed does not.
    private RoadWheel? Tried(CornerAsked asked) =>
        WheelText.Wheel(asked.Wheel) is { } other && (_axle.Wheel is not { } own || asked.Wheel != WheelText.Of(own)) ? other : _axle.Wheel;
}
