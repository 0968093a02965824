using Bellowsmith.Physics.Bellows;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// A bellows of two crossed families of cords that do not stretch, in the shape gauge pressure gives it: convolutions of one
/// length of cord between bead, girdles and bead, with ψ the meridian's angle to the axis,
/// <c>cosψ(r) = [cosβ(r)/cosβ(R)]·(r² − q)/(R² − q)</c>, <c>sinβ = sinβbead·r/rbead</c>, crown radius R and
/// effective area π·q, the same for all convolutions [Rivlin 1959]. Derivation and limits: docs/theory/bellows-shape.md.
/// The wall is thin, bends freely and does not stretch, so the shape is the same at every gauge pressure and Ae = dV/dh
/// exactly. Height is bead to bead, extension +; SI throughout. Quadrature holds 1e-9 (docs/accuracy.md).
/// </summary>
public sealed class CordBellows
{
    private const double HeightTolerance = 1e-12, Touching_m = 1e-6;
    private const int Places = 64, Halvings = 30;

    private readonly CordWall _wall;
    private readonly BellowsPath _path;
    private readonly double _start, _end;

    /// <param name="convolutions">1 or more.</param>
    /// <param name="beadRadius_m"></param>
    /// <param name="cordAngleAtBead_rad">From the meridian, 0 to less than π/2; every other radius follows from it.</param>
    /// <param name="cordLength_m">Of one cord over one convolution, end to end.</param>
    /// <param name="girdleRadius_m">Of the hoops between convolutions; the bead's where not given.</param>
    /// <param name="wallThickness_m">Widens the outer diameter, nothing else.</param>
    /// <param name="plateRadius_m">Of flat end plates the wall may come to lie on; the bead's (no contact) where not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">No convolution, a length that is not positive, an angle out of range, a
    /// girdle so wide that cords would lie along it, or a plate narrower than the bead.</exception>
    public CordBellows(
        int convolutions, double beadRadius_m, double cordAngleAtBead_rad, double cordLength_m,
        double? girdleRadius_m = null, double wallThickness_m = 0, double? plateRadius_m = null)
    {
        double girdle = girdleRadius_m ?? beadRadius_m, plate = plateRadius_m ?? beadRadius_m;
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(convolutions);
        foreach (double length in (ReadOnlySpan<double>)[beadRadius_m, cordLength_m, girdle])
            if (!(length > 0 && double.IsFinite(length))) throw new ArgumentOutOfRangeException(null, length, "Lengths are positive.");
        if (!(cordAngleAtBead_rad is >= 0 and < Math.PI / 2)) throw new ArgumentOutOfRangeException(nameof(cordAngleAtBead_rad));
        if (!(girdle < WidestRadius_m(beadRadius_m, cordAngleAtBead_rad))) throw new ArgumentOutOfRangeException(nameof(girdleRadius_m));
        if (!(plate >= beadRadius_m)) throw new ArgumentOutOfRangeException(nameof(plateRadius_m));
        ArgumentOutOfRangeException.ThrowIfNegative(wallThickness_m);

        (Convolutions, BeadRadius_m, CordAngleAtBead_rad, CordLength_m) = (convolutions, beadRadius_m, cordAngleAtBead_rad, cordLength_m);
        (GirdleRadius_m, WallThickness_m, PlateRadius_m) = (girdle, wallThickness_m, plate);
        _wall = new(Math.Sin(cordAngleAtBead_rad) / beadRadius_m);
        _path = new(_wall, convolutions, beadRadius_m, girdle, plate, cordLength_m);
        (_start, GreatestHeight_m, _end, double least) = Ends();
        LeastHeight_m = Math.Max(least, 0);
    }

    public int Convolutions { get; }

    public double BeadRadius_m { get; }

    public double GirdleRadius_m { get; }

    public double PlateRadius_m { get; }

    public double CordAngleAtBead_rad { get; }

    public double CordLength_m { get; }

    public double WallThickness_m { get; }

    /// <summary>Where the plates meet (0) or the wall folds; NaN where no shape exists at all.</summary>
    public double LeastHeight_m { get; }

    /// <summary>Where the cords are taut and the wall is as straight as its rings let it be; NaN where no shape exists.</summary>
    public double GreatestHeight_m { get; }

    /// <summary>The radius at which cords of this angle at the bead lie along the circle: no wall is wider.</summary>
    public static double WidestRadius_m(double beadRadius_m, double cordAngleAtBead_rad) =>
        beadRadius_m / Math.Sin(cordAngleAtBead_rad);

    public CordLimit LimitAt(double height_m)
    {
        if (double.IsNaN(GreatestHeight_m)) return CordLimit.NoShape;
        if (!(height_m > 0)) return CordLimit.PlatesMeet;
        if (height_m < LeastHeight_m) return LeastHeight_m < Touching_m ? CordLimit.PlatesMeet : CordLimit.Folded;
        return height_m > GreatestHeight_m ? CordLimit.OverExtended : CordLimit.None;
    }

    /// <summary>The shape at a height, or null where there is none; <see cref="LimitAt"/> says why.</summary>
    public CordShape? At(double height_m)
    {
        Track track = default;
        return At(height_m, ref track);
    }

    /// <summary>The shapes at many heights, quickest where each is near the one before; no memory is taken.</summary>
    /// <exception cref="ArgumentException">Fewer shapes than heights fit.</exception>
    public void Sweep(ReadOnlySpan<double> heights_m, Span<CordShape?> shapes)
    {
        if (shapes.Length < heights_m.Length) throw new ArgumentException("There is no room for every shape.", nameof(shapes));
        Track track = default;
        for (int i = 0; i < heights_m.Length; i++) shapes[i] = At(heights_m[i], ref track);
    }

    /// <summary>The same on other cords.</summary>
    internal CordBellows With(double cordAngleAtBead_rad, double cordLength_m) =>
        new(Convolutions, BeadRadius_m, cordAngleAtBead_rad, cordLength_m, GirdleRadius_m, WallThickness_m, PlateRadius_m);

    internal IReadOnlyList<(double Z_m, double Radius_m)> Wall(in CordShape shape, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 8);
        return new MeridianTrace(_wall, shape.Contour).Points(Convolutions, BeadRadius_m, GirdleRadius_m, count);
    }

    private CordShape? At(double height_m, ref Track track)
    {
        if (LimitAt(height_m) != CordLimit.None) return null;
        track.Aim(height_m);
        HeightMissing missing = new(_path, height_m, track);
        double tolerance = HeightTolerance * CordLength_m;
        double place = Root.Find(ref missing, _start, _end, ref track.Place, tolerance, 1e3 * tolerance);
        if (double.IsNaN(place)) return null;
        track = missing.Track with { Place = track.Place, Height_m = height_m };
        return new CordShape(this, height_m, missing.Contour, Overhang_m(missing.Contour));
    }

    private double Overhang_m(in Contour c)
    {
        if (c.Angle <= Math.PI / 2) return 0;
        double level = Math.Sqrt(c.AreaTerm);
        return _wall.Arc(level, c.EndCrown, c.AreaTerm).Height_m - _wall.Arc(c.Edge, c.EndCrown, c.AreaTerm).Height_m;
    }

    // The two ends of the path's first unbroken stretch that the cords reach; where they come to lie along the circle, the
    // crown can no longer be told from the cylinder and the stretch ends.
    private (double Start, double Greatest, double End, double Least) Ends()
    {
        int first = 0;
        while (first <= Places && double.IsNaN(HeightAt(Place(first)))) first++;
        if (first > Places) return (double.NaN, double.NaN, double.NaN, double.NaN);
        int last = first;
        while (last < Places && !double.IsNaN(HeightAt(Place(last + 1)))) last++;
        double start = first == 0 ? Place(0) : LastShape(Place(first), Place(first - 1));
        double end = last == Places ? Place(Places) : LastShape(Place(last), Place(last + 1));
        return (start, HeightAt(start), end, HeightAt(end));
    }

    private double Place(int k) => BellowsPath.Start + (_path.End - BellowsPath.Start) * k / Places;

    private double LastShape(double inside, double outside)
    {
        for (int step = 0; step < Halvings; step++)
        {
            double middle = (inside + outside) / 2;
            if (double.IsNaN(HeightAt(middle))) outside = middle;
            else inside = middle;
        }

        return inside;
    }

    // Stricter than later, so that no place between the ends fails for rounding.
    private double HeightAt(double place)
    {
        Track track = default;
        return (_path with { Loosest = 1e-11 }).At(place, ref track).Height;
    }

    /// <summary>The height a place of the path lacks; rises along the path.</summary>
    private struct HeightMissing(BellowsPath path, double height_m, Track track) : IFunction
    {
        private Track _track = track;

        public readonly Track Track => _track;

        public Contour Contour { get; private set; }

        public double At(double place)
        {
            Contour = path.At(place, ref _track);
            return height_m - Contour.Height;
        }
    }
}
