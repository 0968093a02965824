using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Alignment;

public enum AdjusterKind { CamberSlide, KnuckleSlot, EccentricBolt, TieRod }

/// <summary>Camber and toe wanted of each wheel, rad; null: camber's adjuster is left alone, toe is put back to what it is.</summary>
public sealed record AlignmentQuestion(double? Camber_rad = null, double? Toe_rad = null);

/// <summary>One axle's wheel with what aligns it.</summary>
public sealed record AlignmentCase(AxleEnd End, SuspensionPart Part, Adjusters Adjusters)
{
    private static readonly AdjusterKind[] _forCamber = [AdjusterKind.CamberSlide, AdjusterKind.KnuckleSlot, AdjusterKind.EccentricBolt];

    /// <summary>The strut's height thread; null where the kit has none.</summary>
    public ThreadDesign? Thread { get; init; }

    /// <summary>The wheel toe is measured at; null where the car names none.</summary>
    public RoadWheel? Wheel { get; init; }

    /// <summary>What does camber: the first the kit has that leads this wheel.</summary>
    public AdjusterKind? Camber => _forCamber.Cast<AdjusterKind?>().FirstOrDefault(kind => Leads(kind!.Value));

    /// <summary>What does toe; null where the kit has none.</summary>
    public AdjusterKind? Toe => Leads(AdjusterKind.TieRod) ? AdjusterKind.TieRod : null;

    /// <summary>A kit's strut with its axle's points.</summary>
    /// <exception cref="FaultsException">The points or the adjusters a question takes are not there.</exception>
    public static AlignmentCase Of(Kit kit, AxleEnd end, AlignmentQuestion question)
    {
        List<Fault> faults = [];
        (AxleEnd _, StrutDesign design) = kit.Struts().First(strut => strut.End == end);
        SuspensionPart? part = SuspensionNeeds.Points(kit, end, faults);
        string where = $"struts.{(end == AxleEnd.Front ? "front" : "rear")}.adjusters";
        if (design.Adjusters is null)
            faults.Add(new(kit.File, where, "nothing", "camberSlide, knuckleSlot or eccentricBolt, and tieRod", "Say what can be moved and how far: \"adjusters\": { \"tieRod\": { \"least\": \"-6 mm\", \"greatest\": \"10 mm\" } }."));
        if (faults.Count > 0) throw new FaultsException(faults);
        AlignmentCase corner = new(end, part!, design.Adjusters!) { Thread = design.Thread, Wheel = kit.Car.At(end)!.Wheel };
        if (question.Camber_rad is not null && corner.Camber is null)
            faults.Add(new(kit.File, where, "no adjuster that leads this wheel's camber", "camberSlide, knuckleSlot or eccentricBolt", "Add what sets camber, or ask for toe alone."));
        if (question.Toe_rad is not null && corner.Toe is null)
            faults.Add(new(kit.File, where, "no adjuster that leads this wheel's toe", "tieRod", "Add \"tieRod\", or ask for camber alone."));
        return faults.Count > 0 ? throw new FaultsException(faults) : corner;
    }

    public AdjusterRange Range(AdjusterKind kind) => Known(kind) ?? default;

    /// <summary>What an adjuster at a setting, m or rad, moves.</summary>
    public Adjustment Moved(Adjustment by, AdjusterKind? kind, double setting) => kind switch
    {
        AdjusterKind.CamberSlide => by with { StrutTopOutward_m = setting },
        AdjusterKind.KnuckleSlot => by with { KnuckleTurned_rad = setting, KnucklePivot = Adjusters.KnucklePivot },
        AdjusterKind.EccentricBolt => by with { EccentricOutward_m = setting, EccentricPoint = Point() },
        AdjusterKind.TieRod => by with { TieRodLonger_m = setting },
        _ => by,
    };

    private bool Leads(AdjusterKind kind) =>
        Known(kind) is not null && Part.Linkage().Suspension.Takes(Moved(Adjustment.None, kind, 1e-3));

    private AdjusterRange? Known(AdjusterKind kind) => kind switch
    {
        AdjusterKind.CamberSlide => Adjusters.CamberSlide,
        AdjusterKind.KnuckleSlot => Adjusters.KnuckleSlot,
        AdjusterKind.EccentricBolt => Adjusters.EccentricBolt,
        _ => Adjusters.TieRod,
    };

    private InnerPoint? Point() => Enum.TryParse(Adjusters.EccentricPoint, ignoreCase: true, out InnerPoint point) ? point : null;
}
