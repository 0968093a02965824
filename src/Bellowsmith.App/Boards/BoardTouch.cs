using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Studies.LowerMounting;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>
/// What touches what at one corner of the board. A whole sweep takes the better part of a second, so it runs where its question is open and the
/// hand has let go; under a hand fewer places are looked at, and closed it keeps the answer it has while nothing it rests on moves.
/// </summary>
public sealed class BoardTouch
{
    private readonly Kit _kit;
    private readonly Kept<WheelCorner, ClearanceCase> _corner;
    private readonly Kept<(string Load, double Height_m), MountResult> _mount;
    private readonly Kept<(string Load, double Height_m), LowerMountResult> _lower;
    private readonly Kept<(ClearanceCase Corner, ClearanceQuestion Question), ClearanceResult> _whole, _live;

    /// <param name="kit">One strut alone, its drive height known.</param>
    /// <param name="standing">The kit with its strut at another drive height.</param>
    public BoardTouch(Kit kit, Func<double, Kit> standing)
    {
        (_kit, Faults) = (kit, ClearanceCase.Lacks(kit));
        _mount = new(key => MountStudy.Answer(MountCase.Of(standing(key.Height_m), new StudyConditions(Load: key.Load)), new MountQuestion()));
        _lower = new(key => LowerMountStudy.Answer(new LowerMountQuestion(
            StrutCases.Of(standing(key.Height_m), new StudyConditions(Load: key.Load), LowerMountStudy.Needs)[0], kit.Car.At(kit.Struts().Single().End)?.Suspension)));
        _corner = new(corner => ClearanceCase.Around(kit, corner));
        _whole = new(key => ClearanceStudy.Answer(key.Corner, key.Question));
        _live = new(key => ClearanceStudy.Answer(key.Corner, key.Question));
    }

    /// <summary>What the question lacks; empty where it can be answered.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>Asked for where the question is open, as what stands below it.</summary>
    public IReadOnlyList<Fault> MountFaults => field ??= Faulty.Of(() => MountCase.Of(_kit, new StudyConditions())).Faults;

    public IReadOnlyList<Fault> LowerMountFaults => field ??= Faulty.Of(() => StrutCases.Of(_kit, new StudyConditions(), LowerMountStudy.Needs)).Faults;

    /// <summary>Null where the kit says too little.</summary>
    public MountResult? Mount(string load, double height_m) => MountFaults.Count > 0 ? null : _mount.Of((load, height_m));

    public LowerMountResult? LowerMount(string load, double height_m) => LowerMountFaults.Count > 0 ? null : _lower.Of((load, height_m));

    /// <summary>Null where the kit says too little, and before it was first open at this setting.</summary>
    public ClearanceResult? At(WheelCorner settled, RoadWheel? wheel, CornerAsked asked, Due due)
    {
        if (Faults.Count > 0 || (_whole.Last is null && !due.IsOpen(Questions.Touch))) return null;
        ClearanceCase corner = _corner.Of(settled);
        ClearanceQuestion question = new()
        {
            Wheel = wheel,
            Spacer_m = asked.Spacer_m,
            Camber_rad = asked.CamberChange_rad,
            Margins = corner.Margins,
            Rules = GroundRuleTable.Usual,
        };
        if (due.IsOpen(Questions.Touch) && due.IsHeld) return _live.Of((corner, question with { Density = Density.Live, WithChanges = false }));
        return due.IsOpen(Questions.Touch) || _whole.Has((corner, question)) ? _whole.Of((corner, question)) : null;
    }
}
