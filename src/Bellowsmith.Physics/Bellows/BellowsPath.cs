using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Bellows;

/// <summary>
/// Every shape of one bellows, from taut to folded, along a single parameter: the meridian's angle where it leaves the plate.
/// Height falls and area rises along it, so no shape is met twice; height or area themselves would turn back near the
/// fold. A plate wider than the bead takes up the wall flat, from ψ = 90° on, until the wall hangs over its rim. Where two
/// convolutions would cross at a girdle they press on each other in a plane, lifting off at r² = q: a wall has no axial pull
/// there, so the plane is exact whichever two meet.
/// </summary>
internal readonly record struct BellowsPath
{
    public const double Start = 1e-4;
    private const double FromFold = 1e-4, Exact = 1e-13;

    private readonly CordWall _wall;
    private readonly int _convolutions;
    private readonly double _bead, _girdle, _plate, _cord;

    public BellowsPath(CordWall wall, int convolutions, double bead, double girdle, double plate, double cord)
    {
        (_wall, _convolutions, _bead, _girdle, _cord) = (wall, convolutions, bead, girdle, cord);
        _plate = Math.Min(plate, bead + cord);
    }

    /// <summary>A crown is a crown when its cord is met to this share.</summary>
    public double Loosest { get; init; } = 1e-9;

    public double End => Math.PI - FromFold + Rest;

    private double Rest => (_plate - _bead) / _bead;

    /// <summary>The shape at a place of the path; its height is NaN where the cords allow none.</summary>
    public Contour At(double place, ref Track track)
    {
        (double edge, double angle) = EdgeAt(place);
        if (edge >= _wall.WidestRadius_m) return Contour.None;
        EndConvolution end = new(in this, edge, angle);
        double crown = Crown(ref end, end.Narrowest, _wall.WidestRadius_m, place, ref track.End);
        if (double.IsNaN(crown)) return Contour.None;
        Contour contour = new(edge, angle, end.AreaTerm, crown, end.GirdleEdge, crown, 2 * end.Height, 2 * end.Volume);
        if (_convolutions <= 2) return contour;

        MiddleConvolution middle = new(in this, end.AreaTerm, end.GirdleEdge);
        double other = Crown(
            ref middle, end.GirdleEdge, _wall.NeutralRadius(end.AreaTerm), place, ref track.Middle);
        if (double.IsNaN(other)) return Contour.None;
        return contour with
        {
            MiddleCrown = other,
            Height = 2 * (end.Height + (_convolutions - 2) * middle.Arc.Height_m),
            Volume = 2 * (end.Volume + (_convolutions - 2) * middle.Arc.Volume_m3),
        };
    }

    private (double Edge, double Angle) EdgeAt(double place) => place switch
    {
        <= Math.PI / 2 => (_bead, place),
        _ when place <= Math.PI / 2 + Rest => (_bead * (1 + place - Math.PI / 2), Math.PI / 2),
        _ => (_plate, place - Rest),
    };

    private double Crown<T>(ref T cordLeft, double low, double high, double place, ref Trail trail)
        where T : struct, IFunction
    {
        high = Math.Min(high, low + _cord);
        // Along a path already under way the lower end needs no second look.
        if (!(low < high) || (trail.Guess.Slope == 0 && !(cordLeft.At(low) < 0))) return double.NaN;
        Guess guess = trail.Towards(place);
        double crown = Root.Find(ref cordLeft, low, high, ref guess, Exact * _cord, Loosest * _cord);
        trail = trail.Left(place, guess);
        return crown;
    }

    /// <summary>How much more cord the convolution next to a plate would take than it has, against its crown radius; with one
    /// convolution both of its arcs stand on plates.</summary>
    private struct EndConvolution(in BellowsPath path, double edge, double angle) : IFunction
    {
        private readonly BellowsPath _path = path;
        private readonly double _flat = path._wall.FlatCord(path._bead, edge);
        private CordArc _plateArc, _girdleArc;

        public readonly double Narrowest => _path._convolutions == 1 ? edge : Math.Max(edge, _path._girdle);

        public double AreaTerm { get; private set; }

        public double GirdleEdge { get; private set; }

        public readonly double Height => _path._convolutions == 1 ? _plateArc.Height_m : _plateArc.Height_m + _girdleArc.Height_m;

        public readonly double Volume => _path._convolutions == 1 ? _plateArc.Volume_m3 : _plateArc.Volume_m3 + _girdleArc.Volume_m3;

        public double At(double crown)
        {
            CordWall wall = _path._wall;
            AreaTerm = wall.AreaTerm(edge, angle, crown);
            _plateArc = wall.Arc(edge, crown, AreaTerm);
            double half = _flat + _plateArc.Cord_m;
            if (_path._convolutions == 1) return 2 * half - _path._cord;
            GirdleEdge = Math.Max(_path._girdle, Math.Sqrt(Math.Max(AreaTerm, 0)));
            _girdleArc = wall.Arc(GirdleEdge, crown, AreaTerm);
            return half + wall.FlatCord(_path._girdle, GirdleEdge) + _girdleArc.Cord_m - _path._cord;
        }
    }

    /// <summary>The same between two girdles, where q is settled by the convolutions at the plates.</summary>
    private struct MiddleConvolution(in BellowsPath path, double areaTerm, double edge) : IFunction
    {
        private readonly CordWall _wall = path._wall;
        private readonly double _left = path._cord - 2 * path._wall.FlatCord(path._girdle, edge);

        public CordArc Arc { get; private set; }

        public double At(double crown)
        {
            Arc = _wall.Arc(edge, crown, areaTerm);
            return 2 * Arc.Cord_m - _left;
        }
    }
}

/// <summary>Where the last searches ended, for the next height close by.</summary>
internal struct Track
{
    public Guess Place;
    public Trail End, Middle;
    public double Height_m;

    /// <summary>Moves the next search to where the last one's slope puts this height.</summary>
    public void Aim(double height_m)
    {
        if (Place.Slope > 0) Place.Place -= (height_m - Height_m) / Place.Slope;
    }
}

/// <summary>A crown's last guess, the place of the path it belongs to, and how fast it moves along the path.</summary>
internal readonly record struct Trail(Guess Guess, double Place, double Drift)
{
    public Guess Towards(double place) => Guess with { Place = Guess.Place + Drift * (place - Place) };

    public Trail Left(double place, Guess guess) => new(
        guess, place, Guess.Slope == 0 ? 0 : place == Place ? Drift : (guess.Place - Guess.Place) / (place - Place));
}

/// <summary>
/// One shape: the edge where the wall leaves the plate and the angle it leaves at, q = area/π, the crown radii next to the
/// plates and between girdles, and the edge where two convolutions part.
/// </summary>
internal readonly record struct Contour(
    double Edge, double Angle, double AreaTerm, double EndCrown, double GirdleEdge, double MiddleCrown, double Height, double Volume)
{
    public static Contour None => new(0, 0, 0, 0, 0, 0, double.NaN, double.NaN);

    public bool Exists => !double.IsNaN(Height);
}
