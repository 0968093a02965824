using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>A corner from drive height to full bump at one change of camber, straight ahead: the same for every wheel tried there.</summary>
internal sealed class CornerTravel
{
    // Some 4 mm apart: between two of them a gap beside a shoulder or bulge of 30 mm dips by less than 0.1 mm.
    private const int Count = 13;

    private CornerTravel(CamberSet set, IReadOnlyList<CornerPlace> places) => (Set, Places) = (set, places);

    public CamberSet Set { get; }

    /// <summary>Drive height first; empty where the car's points are not known.</summary>
    public IReadOnlyList<CornerPlace> Places { get; }

    /// <summary>Null where the adjuster cannot make this camber at all.</summary>
    public static CornerTravel? Of(WheelCorner corner, double camber_rad)
    {
        if (corner.Adjuster.At(camber_rad) is not { } set) return null;
        if (set.Linkage is not { } linkage) return new(set, []);
        double[] travels = [.. Enumerable.Range(0, Count).Select(k => corner.FullBump_m * k / (Count - 1))];
        LinkagePoint[] points = new LinkagePoint[Count];
        linkage.Sweep(travels, 0, points);
        return new(set, [.. points.Select(point => point.State).OfType<LinkageState>().Select(state => new CornerPlace(state, corner.Bodies))]);
    }

    /// <summary>Where the bellows comes nearest to the tower; null where either is not known.</summary>
    public static TowerGap? Tower(CornerPlace place, IReadOnlyList<Point> tower)
    {
        if (place.Bellows is not { } bellows || tower.Count == 0) return null;
        (double gap, Point nearest) = tower.Select(point => (Gap_m: bellows.Outside_m(point), point)).MinBy(one => one.Gap_m);
        return new(gap, place.State.Travel_m, nearest);
    }
}

/// <summary>One place of the travel, and where the strut's bodies are there.</summary>
internal sealed class CornerPlace(LinkageState state, CornerBodies? bodies)
{
    private readonly Lazy<RevolvedBody?> _bellows = new(() => bodies?.Bellows(state)), _strut = new(() => bodies?.Strut(state));

    public LinkageState State { get; } = state;

    public RevolvedBody? Bellows => _bellows.Value;

    public RevolvedBody? Strut => _strut.Value;
}
