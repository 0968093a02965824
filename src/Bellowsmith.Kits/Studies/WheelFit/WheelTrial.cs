using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>One wheel at a corner: what it leaves free.</summary>
/// <param name="corner">Where it is tried.</param>
/// <param name="wheel">The wheel.</param>
/// <param name="outward_m">How much further out than the measured wheel its middle plane stands.</param>
internal sealed class WheelTrial(WheelCorner corner, RoadWheel wheel, double outward_m)
{
    private readonly RevolvedProfile _tyre = wheel.TyreOutline(), _rim = wheel.RimOutline();

    /// <summary>The same wheel elsewhere on its axis.</summary>
    public WheelTrial At(double outward_m) => new(corner, wheel, outward_m);

    /// <summary>Null where the adjuster cannot make this camber at all.</summary>
    public WheelGaps? Gaps(double camber_rad) => CornerTravel.Of(corner, camber_rad) is { } travel ? Gaps(travel) : null;

    public WheelGaps Gaps(CornerTravel travel)
    {
        CornerPlace? drive = travel.Places.Count > 0 ? travel.Places[0] : null;
        TowerGap?[] tower = [.. travel.Places.Select(place => CornerTravel.Tower(place, corner.Tower))];
        return new()
        {
            Camber_rad = travel.Set.Camber_rad,
            Setting = travel.Set.Setting,
            WithinAdjuster = travel.Set.Within,
            Arch = Arch(travel),
            ArchAtDrive = drive is null ? null : Arch(drive),
            Strut = Strut(travel),
            StrutAtDrive = drive is null ? null : Strut(drive),
            Tower = PassingGap.Least(tower),
            TowerAtDrive = tower.FirstOrDefault(),
        };
    }

    public ArchGap? Arch(CornerTravel travel) => PassingGap.Least(travel.Places.Select(Arch));

    public StrutGap? Strut(CornerTravel travel) => Strut(travel.Places);

    private ArchGap? Arch(CornerPlace place)
    {
        ArchGap? least = null;
        foreach ((WheelBody of, RevolvedBody body) in Bodies(place.State))
            foreach (Point at in corner.ArchEdge)
                if (body.Outside_m(at) is var gap && (least is null || gap < least.Gap_m)) least = new(gap, place.State.Travel_m, of, at);
        return least;
    }

    // A search each: what surely lies further off than the nearest found is not searched.
    private StrutGap? Strut(params IReadOnlyList<CornerPlace> places)
    {
        List<StrutGap> found = [];
        foreach (StrutPair pair in places.SelectMany(Pairs).OrderBy(pair => pair.AtLeast_m))
        {
            if (found.Count > 0 && PassingGap.IsBeyond(pair.AtLeast_m, found)) break;
            found.Add(new(pair.Wheel.GapTo(pair.Part).Distance_m, pair.Travel_m, pair.Of, pair.To));
        }

        return PassingGap.Least(found.OrderBy(gap => gap.Travel_m).ThenBy(gap => gap.Gap_m));
    }

    private IEnumerable<StrutPair> Pairs(CornerPlace place)
    {
        foreach ((WheelBody of, RevolvedBody body) in Bodies(place.State))
            foreach ((StrutBody to, RevolvedBody? part) in ((StrutBody, RevolvedBody?)[])[(StrutBody.Bellows, place.Bellows), (StrutBody.Strut, place.Strut)])
                if (part is { } other) yield return new(place.State.Travel_m, of, body, to, other, body.GapAtLeast_m(other));
    }

    private (WheelBody Of, RevolvedBody Body)[] Bodies(LinkageState state)
    {
        Point middle = CornerBodies.Middle(state, outward_m);
        return [(WheelBody.Tyre, new(_tyre, middle, state.WheelAxis)), (WheelBody.Rim, new(_rim, middle, state.WheelAxis))];
    }

    private readonly record struct StrutPair(double Travel_m, WheelBody Of, RevolvedBody Wheel, StrutBody To, RevolvedBody Part, double AtLeast_m);
}
