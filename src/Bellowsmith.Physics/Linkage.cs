using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>
/// Where a linkage's way ends: its parts come into line so that it goes no further, and turns back. What holds it is the part whose being
/// a little longer or shorter would move that end most.
/// </summary>
/// <param name="Travel_m">The last wheel travel reached, bump +.</param>
/// <param name="Rack_m">The last rack travel reached, to the left +.</param>
/// <param name="Part">What holds it.</param>
public sealed record LinkageLimit(double Travel_m, double Rack_m, LinkagePart Part);

/// <summary>A place asked for: the state there, or the limit short of it.</summary>
public readonly record struct LinkagePoint(double Travel_m, double Rack_m, LinkageState? State, LinkageLimit? Limit);

/// <summary>
/// A suspension followed over wheel travel (of the wheel centre, bump +) and rack travel (to the left +), both 0 at rest. The rack goes
/// first, at rest height, then the wheel. Every constraint holds to rounding; the walk never leaves the branch it starts on. Equations:
/// docs/theory/linkages.md.
/// </summary>
public sealed class Linkage
{
    private readonly Walk _walk;
    private readonly Place _start;

    /// <exception cref="ArgumentException">At rest the wheel cannot move up, or can move in more than one way.</exception>
    public Linkage(Suspension suspension)
    {
        (Suspension, Mechanism) = (suspension, suspension.Mechanism());
        _walk = new(Mechanism.Constraints, suspension.Wheel.Centre);
        _start = _walk.Rest ?? throw new ArgumentException("These points leave the wheel no travel, or more than one way to go.", nameof(suspension));
        Rest = new(this, _start);
    }

    public Suspension Suspension { get; }

    /// <summary>At travel and rack 0.</summary>
    public LinkageState Rest { get; }

    public bool HasRack => Mechanism.HasRack;

    internal Mechanism Mechanism { get; }

    public LinkagePoint At(double travel_m, double rack_m = 0)
    {
        Span<LinkagePoint> one = new LinkagePoint[1];
        Sweep([travel_m], rack_m, one);
        return one[0];
    }

    /// <summary>Many travels at one rack travel, in any order; quickest where each is near one before it.</summary>
    /// <exception cref="ArgumentException">Fewer points than travels.</exception>
    public void Sweep(ReadOnlySpan<double> travels_m, double rack_m, Span<LinkagePoint> points)
    {
        if (points.Length < travels_m.Length) throw new ArgumentException("There is no room for every point.", nameof(points));
        Place middle = _start;
        if (rack_m != 0 && HasRack && !_walk.To(0, rack_m, ref middle))
        {
            // The rack moves nothing but the tie rod: it and its lever have come into line.
            LinkageLimit limit = new(middle.Travel_m, middle.Rack_m, LinkagePart.TieRod);
            for (int i = 0; i < travels_m.Length; i++) points[i] = new(travels_m[i], rack_m, null, limit);
            return;
        }

        Branch(travels_m, rack_m, points, middle, upward: false);
        Branch(travels_m, rack_m, points, middle, upward: true);
    }

    // From rest height outward, so that every stride is short and what lies past a limit is not asked again.
    private void Branch(ReadOnlySpan<double> travels_m, double rack_m, Span<LinkagePoint> points, Place place, bool upward)
    {
        Span<int> order = travels_m.Length <= 256 ? stackalloc int[travels_m.Length] : new int[travels_m.Length];
        int count = 0;
        for (int i = 0; i < travels_m.Length; i++)
            if (travels_m[i] > 0 == upward) order[count++] = i;
        order = order[..count];
        Sort(order, travels_m);
        LinkageLimit? limit = null;
        foreach (int i in order)
        {
            if (limit is null && !_walk.To(travels_m[i], place.Rack_m, ref place)) limit = new(place.Travel_m, place.Rack_m, _walk.MostLoaded(place));
            points[i] = new(travels_m[i], rack_m, limit is null ? new LinkageState(this, place) : null, limit);
        }
    }

    private static void Sort(Span<int> order, ReadOnlySpan<double> travels_m)
    {
        for (int k = 1; k < order.Length; k++)
            for (int j = k; j > 0 && Math.Abs(travels_m[order[j]]) < Math.Abs(travels_m[order[j - 1]]); j--)
                (order[j], order[j - 1]) = (order[j - 1], order[j]);
    }
}
