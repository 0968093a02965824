using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>Every body of a corner as one setting has it, at any place of its linkage.</summary>
internal sealed class CornerShapes
{
    private readonly SuspensionPart _part;
    private readonly CornerBodies? _bodies;
    private readonly double _outward_m;
    private readonly RevolvedProfile _tyre, _rim;
    private readonly Point[] _arch, _liner, _tower;

    private CornerShapes(SuspensionPart part, Linkage linkage, CornerBodies? bodies, RoadWheel wheel, double outward_m)
    {
        (_part, Linkage, _bodies, _outward_m) = (part, linkage, bodies, outward_m);
        (_tyre, _rim) = (wheel.TyreOutline(), wheel.RimOutline());
        (_arch, _liner, _tower) = ([.. part.ArchEdge], [.. part.Liner], [.. part.Tower]);
        Bodies = [.. Present()];
        Pairs = [.. PassingPair.Among(Bodies, StandsOn(part))];
        Indices = [.. Pairs.Select(pair => (IndexOf(pair.One), IndexOf(pair.Other)))];

        int IndexOf(PassingBody body) => Bodies.ToList().IndexOf(body);
    }

    public Linkage Linkage { get; }

    public IReadOnlyList<PassingBody> Bodies { get; }

    public IReadOnlyList<PassingPair> Pairs { get; }

    /// <summary>Of each pair, where its two stand among <see cref="Bodies"/>.</summary>
    public (int One, int Other)[] Indices { get; }

    public static CornerShapes Of(ClearanceCase corner, ClearanceQuestion question, Linkage linkage)
    {
        RoadWheel old = corner.Corner.MeasuredWheel, wheel = question.Wheel ?? old;
        CornerBodies? bodies = corner.Corner.Bodies is { } known && question.Thread_m != 0 ? known.At(known.DriveHeight_m - question.Thread_m) : corner.Corner.Bodies;
        return new(corner.Part, linkage, bodies, wheel, new WheelChange(old, wheel, question.Spacer_m).Shift_m);
    }

    /// <summary>In the order of <see cref="Bodies"/>.</summary>
    public PassingShape[] At(LinkageState state) => [.. Bodies.Select(body => At(body, state))];

    public PassingShape At(PassingBody body, LinkageState state) => body.Kind switch
    {
        BodyKind.Tyre => new(new RevolvedBody(_tyre, CornerBodies.Middle(state, _outward_m), state.WheelAxis)),
        BodyKind.Rim => new(new RevolvedBody(_rim, CornerBodies.Middle(state, _outward_m), state.WheelAxis)),
        BodyKind.Bellows => new(_bodies!.Bellows(state)),
        BodyKind.Strut => new(_bodies!.Strut(state)),
        BodyKind.Link => new([.. state.Links.Where(link => link.Part == body.Part).Select(link => new RoundBar(link.Inner, link.Outer, _part.Diameters.Of_m(body.Part!.Value) / 2))]),
        BodyKind.Halfshaft => new([new RoundBar(_part.Points["halfshaftInner"], state.Knuckle.At(Linkage.Suspension.HalfshaftOuter ?? Linkage.Suspension.Wheel.Centre), _part.Diameters.Halfshaft_m / 2)]),
        BodyKind.ArchEdge => new(_arch),
        BodyKind.Liner => new(_liner),
        _ => new(_tower),
    };

    private IEnumerable<PassingBody> Present()
    {
        yield return new(BodyKind.Tyre);
        yield return new(BodyKind.Rim);
        if (_bodies is not null) yield return new(BodyKind.Bellows);
        if (_bodies is not null) yield return new(BodyKind.Strut);
        if (Linkage.Suspension.HalfshaftInner is not null) yield return new(BodyKind.Halfshaft);
        foreach (LinkagePart part in Linkage.Rest.Links.Select(link => link.Part).Distinct()) yield return new(BodyKind.Link, part);
        if (_arch.Length > 0) yield return new(BodyKind.ArchEdge);
        if (_liner.Length > 0) yield return new(BodyKind.Liner);
        if (_tower.Length > 0) yield return new(BodyKind.Tower);
    }

    private static LinkagePart? StandsOn(SuspensionPart part) => part.Kind == SuspensionKind.TrailingArm ? LinkagePart.TrailingArm : part.StrutOn switch
    {
        StrutCarrier.LowerArm => LinkagePart.LowerArm,
        StrutCarrier.UpperArm => LinkagePart.UpperArm,
        StrutCarrier.TrailingArm => LinkagePart.TrailingArm,
        StrutCarrier.LowerRearLink => LinkagePart.LowerRearLink,
        _ => null,
    };
}

/// <summary>One body where it stands: of revolution, some bars, or measured points.</summary>
internal readonly struct PassingShape
{
    private readonly RevolvedBody? _round;
    private readonly RoundBar[]? _bars;
    private readonly Point[]? _points;

    public PassingShape(RevolvedBody round) => _round = round;

    public PassingShape(RoundBar[] bars) => _bars = bars;

    public PassingShape(Point[] points) => _points = points;

    /// <summary>The least gap from this to another; two sets of points are never asked.</summary>
    public Gap GapTo(in PassingShape other)
    {
        if (_round is { } round)
            return other._round is { } also ? round.GapTo(also) : other._bars is { } bars ? Least(bars, bar => round.GapTo(bar)) : round.GapTo(other._points!);
        if (other._round is not null) return other.GapTo(this).Turned();
        PassingShape far = other;
        return Least(_bars!, bar => far._bars is { } bars ? Least(bars, also => bar.GapTo(also)) : Least(far._points!, bar.GapTo));
    }

    private static Gap Least<T>(T[] all, Func<T, Gap> gap) => all.Select(gap).MinBy(found => found.Distance_m);
}
