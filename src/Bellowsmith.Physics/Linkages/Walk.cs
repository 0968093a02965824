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
    private const double MendShare = 0.05, Shrink = 0.2, Closed_m = 1e-7, Rounding_m = 1e-10;

    private readonly Constraint[] _constraints;
    private readonly int _sign;

    public Walk(Constraint[] constraints, Point centre)
    {
        _constraints = constraints;
        Place rest = new(0, 0, new(centre, Turn.None), default, default, default);
        Span<double> matrix = stackalloc double[Size * Size], value = stackalloc double[Size];
        Span<int> order = stackalloc int[Size];
        _sign = Factor(rest.Pose, 0, 0, matrix, order, value);
        if (_sign != 0) Rest = Derived(rest, matrix, order);
    }

    /// <summary>The rest position; null where the wheel cannot move there, or in more than one way.</summary>
    public Place? Rest { get; }

    /// <summary>Straight there; false where the way ends before, at the place then reached.</summary>
    public bool To(double travel_m, double rack_m, ref Place place)
    {
        Place from = place;
        double way_m = Math.Max(Math.Abs(travel_m - from.Travel_m), Math.Abs(rack_m - from.Rack_m));
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
        Span<double> matrix = stackalloc double[Size * Size], row = stackalloc double[Size], force = stackalloc double[Size];
        Span<int> order = stackalloc int[Size];
        for (int i = 0; i < Size; i++)
        {
            _constraints[i].Value(place.Pose, place.Travel_m, place.Rack_m, row);
            for (int j = 0; j < Size; j++) matrix[j * Size + i] = row[j];
            force[i] = 0;
        }

        force[2] = 1;
        SixBySix.Factor(matrix, order);
        SixBySix.Solve(matrix, order, force);
        var forces = new Dictionary<LinkagePart, double>();
        for (int i = 0; i < Size; i++)
            if (_constraints[i].Part != LinkagePart.Wheel)
                forces[_constraints[i].Part] = forces.GetValueOrDefault(_constraints[i].Part) + force[i] * force[i];
        return forces.MaxBy(known => known.Value).Key;
    }

    private bool Stride(double travel_m, double rack_m, ref Place place)
    {
        double travel = travel_m - place.Travel_m, rack = rack_m - place.Rack_m;
        Twist foretold = travel * place.PerTravel + rack * place.PerRack + 0.5 * travel * travel * place.Bend;
        double most_m = MendShare * foretold.Size_m + Rounding_m;
        if (!(foretold.Size_m < FarthestMove_m)) return false;
        Pose pose = place.Pose.Moved(foretold);
        Span<double> matrix = stackalloc double[Size * Size], value = stackalloc double[Size];
        Span<int> order = stackalloc int[Size];
        for (int mends = 0; mends < MostMends; mends++)
        {
            if (Factor(pose, travel_m, rack_m, matrix, order, value) != _sign) return false;
            SixBySix.Solve(matrix, order, value);
            Twist mend = -1.0 * Twist.From(value);
            if (!(mend.Size_m <= most_m)) return false;
            pose = pose.Moved(mend);
            if (mend.Size_m < Closed_m)
            {
                Place closed = new(travel_m, rack_m, pose, default, default, default);
                if (mend.Size_m > Rounding_m)
                {
                    if (Factor(pose, travel_m, rack_m, matrix, order, value) != _sign) return false;
                    SixBySix.Solve(matrix, order, value);
                    closed = closed with { Pose = pose.Moved(-1.0 * Twist.From(value)) };
                }

                place = Derived(closed, matrix, order);
                return true;
            }

            most_m = Shrink * mend.Size_m;
        }

        return false;
    }

    private int Factor(in Pose pose, double travel_m, double rack_m, Span<double> matrix, Span<int> order, Span<double> value)
    {
        for (int i = 0; i < Size; i++) value[i] = _constraints[i].Value(pose, travel_m, rack_m, matrix.Slice(i * Size, Size));
        return SixBySix.Factor(matrix, order);
    }

    private Place Derived(in Place place, ReadOnlySpan<double> matrix, ReadOnlySpan<int> order)
    {
        Span<double> b = stackalloc double[Size];
        for (int i = 0; i < Size; i++) b[i] = _constraints[i].PerTravel;
        SixBySix.Solve(matrix, order, b);
        Twist perTravel = Twist.From(b);
        for (int i = 0; i < Size; i++) b[i] = _constraints[i].PerRack(place.Pose, place.Rack_m);
        SixBySix.Solve(matrix, order, b);
        Twist perRack = Twist.From(b);
        for (int i = 0; i < Size; i++) b[i] = _constraints[i].Bend(place.Pose, place.Rack_m, perTravel);
        SixBySix.Solve(matrix, order, b);
        return place with { PerTravel = perTravel, PerRack = perRack, Bend = Twist.From(b) };
    }
}
