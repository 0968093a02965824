using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>One wheel at a corner: what it leaves free at any change of camber.</summary>
/// <param name="corner">Where it is tried.</param>
/// <param name="wheel">The wheel.</param>
/// <param name="outward_m">How much further out than the measured wheel its middle plane stands.</param>
public sealed class WheelTrial(WheelCorner corner, RoadWheel wheel, double outward_m)
{
    // Between two of them a gap dips by less than 0.02 mm.
    private const int Places = 25;

    private readonly RevolvedProfile _tyre = wheel.TyreOutline(), _rim = wheel.RimOutline();
    private readonly double[] _travels = [.. Enumerable.Range(0, Places).Select(k => corner.FullBump_m * k / (Places - 1))];

    /// <summary>Null where the adjuster cannot make this camber at all.</summary>
    public WheelGaps? At(double camber_rad)
    {
        if (corner.Adjuster.At(camber_rad) is not { } set) return null;
        WheelGaps gaps = new() { Camber_rad = camber_rad, Setting = set.Setting, WithinAdjuster = set.Within };
        if (set.Linkage is not { } linkage) return gaps;
        LinkageState[] states = States(linkage);
        return gaps with
        {
            Arch = states.Select(Arch).OfType<ArchGap>().MinBy(gap => gap.Gap_m),
            ArchAtDrive = Arch(states[0]),
            Strut = states.Select(Strut).OfType<StrutGap>().MinBy(gap => gap.Gap_m),
            StrutAtDrive = Strut(states[0]),
            Tower = states.Select(Tower).OfType<TowerGap>().MinBy(gap => gap.Gap_m),
            TowerAtDrive = Tower(states[0]),
        };
    }

    private LinkageState[] States(Linkage linkage)
    {
        LinkagePoint[] points = new LinkagePoint[Places];
        linkage.Sweep(_travels, 0, points);
        return [.. points.Select(point => point.State).OfType<LinkageState>()];
    }

    private ArchGap? Arch(LinkageState state)
    {
        ArchGap? least = null;
        foreach ((WheelBody of, RevolvedBody body) in Wheel(state))
            foreach (Point at in corner.Axle.Suspension!.ArchEdge)
                if (body.Outside_m(at) is var gap && (least is null || gap < least.Gap_m)) least = new(gap, state.Travel_m, of, at);
        return least;
    }

    private StrutGap? Strut(LinkageState state) => null;

    private TowerGap? Tower(LinkageState state)
    {
        if (corner.Bodies is not { } bodies || corner.Axle.Suspension!.Tower is not { Count: > 0 } tower) return null;
        RevolvedBody bellows = bodies.Bellows(state);
        Point nearest = tower.MinBy(bellows.Outside_m);
        return new(bellows.Outside_m(nearest), state.Travel_m, nearest);
    }

    private (WheelBody Of, RevolvedBody Body)[] Wheel(LinkageState state)
    {
        Point middle = CornerBodies.Middle(state, outward_m);
        return [(WheelBody.Tyre, new(_tyre, middle, state.WheelAxis)), (WheelBody.Rim, new(_rim, middle, state.WheelAxis))];
    }
}
