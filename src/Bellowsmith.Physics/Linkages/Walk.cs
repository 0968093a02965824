namespace Bellowsmith.Physics.Linkages;

/// <summary>
/// Follows a mechanism from one place to another: each stride is foretold by the derivatives and mended by Newton. A stride whose
/// first mend is not small against it, whose later mends do not shrink, or which would turn the sign of the Jacobian's determinant,
/// is halved: so the walk stays on its branch and ends where the branch folds.
/// </summary>
internal sealed class Walk
{
    private const int Size = SixBySix.Size, MostMends = 6;
    private const double LongestStride_m = 0.03, ShortestStride_m = 1e-8, FarthestMove_m = 0.12;
    private const double MendShare = 0.05, Shrink = 0.2, Closed_m = 1e-9;

    private readonly Constraint[] _constraints;
    private readonly int _sign;

    public Walk(Constraint[] constraints, Point centre)
    {
        _constraints = constraints;
        Place rest = new(0, 0, new(centre, Turn.None), default, default, default);
        Span<double> inverse = stackalloc double[SixBySix.Length], value = stackalloc double[Size];
        _sign = Invert(rest.Pose, 0, 0, inverse, value);
        if (_sign != 0) Rest = Derived(rest, inverse);
    }

    /// <summary>The rest position; null where the wheel cannot move there, or in more than one way.</summary>
    public Place? Rest { get; }

    /// <summary>Straight there; false where the way ends before, at the place then reached.</summary>
    public bool To(double travel_m, double rack_m, ref Place place)
    {
        Place from = place;
        double way_m = Math.Max(Math.Abs(travel_m - from.Travel_m), Math.Abs(rack_m - from.Rack_m));
        if (!double.IsFinite(way_m)) return false;
        double done = 0, stride = Math.Min(1, LongestStride_m / way_m);
        while (done < 1 && way_m > 0)
        {
            double next = Math.Min(1, done + stride);
            bool arrives = next == 1;
            double travel = arrives ? travel_m : from.Travel_m + next * (travel_m - from.Travel_m);
            double rack = arrives ? rack_m : from.Rack_m + next * (rack_m - from.Rack_m);
            if (Stride(travel, rack, ref place)) (done, stride) = (next, Math.Min(2 * stride, LongestStride_m / way_m));
            else if ((stride /= 2) * way_m < ShortestStride_m) return false;
        }

        return true;
    }

    /// <summary>
    /// The part that takes most force where the wheel is pushed along its travel. Where the way ends, forces are to each other as the
    /// end's derivatives by the parts' lengths.
    /// </summary>
    public LinkagePart MostLoaded(in Place place)
    {
        Span<double> inverse = stackalloc double[SixBySix.Length], value = stackalloc double[Size];
        Invert(place.Pose, place.Travel_m, place.Rack_m, inverse, value);
        Dictionary<LinkagePart, double> forces = [];
        for (int i = 0; i < Size; i++)
        {
            double force = inverse[i * SixBySix.Stride + 2];
            LinkagePart part = _constraints[i].Part;
            if (part != LinkagePart.Wheel) forces[part] = forces.GetValueOrDefault(part) + force * force;
        }

        return forces.MaxBy(known => known.Value).Key;
    }

    private bool Stride(double travel_m, double rack_m, ref Place place)
    {
        double travel = travel_m - place.Travel_m, rack = rack_m - place.Rack_m;
        Twist foretold = travel * place.PerTravel + rack * place.PerRack + 0.5 * travel * travel * place.Bend;
        double most_m = MendShare * foretold.Size_m + Closed_m;
        if (!(foretold.Size_m < FarthestMove_m)) return false;
        Pose pose = place.Pose.Moved(foretold);
        Span<double> inverse = stackalloc double[SixBySix.Length];
        if (!Closes(_constraints, _sign, travel_m, rack_m, most_m, ref pose, inverse)) return false;
        place = Derived(new(travel_m, rack_m, pose, default, default, default), inverse);
        return true;
    }

    /// <summary>
    /// Newton to where every constraint holds, and the transposed inverse Jacobian there; false where the first mend is farther than it may
    /// be, a later one does not shrink, or the determinant's sign turns.
    /// </summary>
    internal static bool Closes(Constraint[] constraints, int sign, double travel_m, double rack_m, double most_m, ref Pose pose, Span<double> inverse)
    {
        Span<double> value = stackalloc double[Size];
        for (int mends = 0; mends < MostMends; mends++)
        {
            if (Invert(constraints, pose, travel_m, rack_m, inverse, value) != sign) return false;
            Twist mend = -1.0 * Times(inverse, value);
            if (!(mend.Size_m <= most_m)) return false;
            pose = pose.Moved(mend);
            // The mend after so small a one is rounding; the derivatives are taken where it began.
            if (mend.Size_m < Closed_m) return true;
            most_m = Math.Max(Shrink * mend.Size_m, Closed_m);
        }

        return false;
    }

    private int Invert(in Pose pose, double travel_m, double rack_m, Span<double> inverse, Span<double> value) =>
        Invert(_constraints, pose, travel_m, rack_m, inverse, value);

    /// <summary>The values and the transposed inverse Jacobian; the sign of its determinant.</summary>
    internal static int Invert(Constraint[] constraints, in Pose pose, double travel_m, double rack_m, Span<double> inverse, Span<double> value)
    {
        for (int i = 0; i < Size; i++) value[i] = constraints[i].Value(pose, travel_m, rack_m, inverse[i..]);
        return SixBySix.Invert(inverse);
    }

    private static Twist Times(Span<double> inverse, ReadOnlySpan<double> value)
    {
        Span<double> sum = stackalloc double[SixBySix.Stride];
        SixBySix.Combine(inverse, value, sum);
        return Twist.From(sum);
    }

    private Place Derived(in Place place, Span<double> inverse)
    {
        Span<double> b = stackalloc double[Size];
        for (int i = 0; i < Size; i++) b[i] = _constraints[i].PerTravel;
        Twist perTravel = Times(inverse, b);
        for (int i = 0; i < Size; i++) b[i] = _constraints[i].PerRack(place.Pose, place.Rack_m);
        Twist perRack = Times(inverse, b);
        for (int i = 0; i < Size; i++) b[i] = _constraints[i].Bend(place.Pose, place.Rack_m, perTravel);
        return place with { PerTravel = perTravel, PerRack = perRack, Bend = Times(inverse, b) };
    }
}
