using Bellowsmith.Kits.Studies.BellowsShape;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Bodies;

/// <summary>
/// The meridian of a bellows' wall. Where the spring names its mould: the wall its cords make, calibrated to
/// the load frame, as wide as its gauge pressure makes it: in proportion, also beyond the gauge pressures tested. Where not: equal arcs of constant length between rings of one
/// radius. Rings are set so that the wall has the part's greatest diameter at its least height, else so that the effective
/// radius lies midway between ring and crown in the middle of the range (from memory, no source). Where a convolution is lower
/// than its arc is long, neighbours and plates press it flat: it shows the shape to several millimetres, at any gauge pressure. Diameters
/// and gaps taken from it are marked as estimated.
/// </summary>
internal sealed class BellowsWall
{
    /// <summary>Rubber and cord of a bellows of this size. Common practice, no source.</summary>
    private const double UsualThickness_mm = 4;

    // Length of an arc over its height in the middle of the range and at its end; it hardly moves the diameter. No source.
    private const double Slack = 1.35, SlackAtGreatest = 1.06;
    private const double SamePoint_mm = 1e-3;
    private const int HalvingSteps = 40, PointsPerArc = 28;

    private readonly double _arc_mm, _plates_mm;
    private readonly MouldCalibration? _cords;

    /// <param name="strut">The strut whose spring it is.</param>
    /// <param name="plates_mm">What the two end plates take of the spring height.</param>
    public BellowsWall(StrutCase strut, double plates_mm)
    {
        _plates_mm = plates_mm;
        Mould? mould = strut.Part.Mould;
        if (mould is not null)
            _cords = MouldCalibration.Of(
                mould.Bellows(), strut.Fit.Spring, BellowsShapeStudy.MiddleGaugePressure_Pa(strut.Fit), plates_mm / 1000);
        Thickness_mm = mould is { WallThickness_m: > 0 } ? mould.WallThickness_m * 1000 : UsualThickness_mm;
        Convolutions = mould?.Convolutions ?? ConvolutionsOf(strut.Part.Shape);
        double middle = (strut.LeastHeight_m + strut.GreatestHeight_m) / 2;
        _arc_mm = Math.Max(Slack * One_mm(middle * 1000), SlackAtGreatest * One_mm(strut.GreatestHeight_m * 1000));
        RingRadius_mm = mould is not null ? mould.BeadRadius_m * 1000
            : strut.Part.MaxDiameter_m is { } widest
            ? widest * 500 - Thickness_mm / 2 - Bulge_mm(strut.Part.LeastHeight_m * 1000)
            : EffectiveRadius_mm(strut, middle) - Bulge_mm(middle * 1000) / 2;
    }

    public int Convolutions { get; }

    /// <summary>Of rubber and cord: the mould's, else as usual.</summary>
    public double Thickness_mm { get; }

    /// <summary>Radius of the rings at plates and girdles, to the middle of the wall.</summary>
    public double RingRadius_mm { get; }

    /// <param name="springHeight_mm"></param>
    /// <param name="gaugePressure_Pa">Where it is not known, NaN: as calibrated.</param>
    public double OuterDiameter_mm(double springHeight_mm, double gaugePressure_Pa) => Cords(springHeight_mm) is { } shape
        ? 1000 * (shape.OuterDiameter_m + Swelling(gaugePressure_Pa) * (Swollen(springHeight_mm, shape).OuterDiameter_m - shape.OuterDiameter_m))
        : 2 * (RingRadius_mm + Bulge_mm(springHeight_mm)) + Thickness_mm;

    /// <summary>What another bar of gauge pressure adds to the outer diameter; null where no mould says.</summary>
    public double? SwellingPerBar_mm(double springHeight_mm) =>
        Cords(springHeight_mm) is { } shape ? 1000 * (Swollen(springHeight_mm, shape).OuterDiameter_m - shape.OuterDiameter_m) : null;

    /// <summary>Points of the wall's middle, top to bottom, as radius and height over the lower ring, mm.</summary>
    public IReadOnlyList<(double Radius_mm, double Height_mm)> Meridian(double springHeight_mm, double gaugePressure_Pa)
    {
        if (Cords(springHeight_mm) is { } shape)
            return Wall(shape, Swollen(springHeight_mm, shape), Swelling(gaugePressure_Pa));
        double one = One_mm(springHeight_mm);
        (double angle, double radius, double flat) = Arc(one);
        List<(double Radius_mm, double Height_mm)> points = [];
        for (int c = Convolutions - 1; c >= 0; c--)
        {
            if (flat > 0) points.Add((RingRadius_mm, one * (c + 1)));
            for (int k = 0; k <= PointsPerArc; k++)
            {
                double at = angle * (1 - 2.0 * k / PointsPerArc);
                points.Add((RingRadius_mm + flat + radius * (Math.Cos(at) - Math.Cos(angle)), one * (c + 0.5) + radius * Math.Sin(at)));
            }

            if (flat > 0) points.Add((RingRadius_mm, one * c));
        }

        return points;
    }

    // Without the plates, and without places where two points are one.
    private static List<(double Radius_mm, double Height_mm)> Wall(CordShape shape, CordShape swollen, double swelling)
    {
        List<(double Radius_mm, double Height_mm)> points = [];
        IReadOnlyList<(double Z_m, double Radius_m)> one = shape.Wall(2 * PointsPerArc), wider = swollen.Wall(2 * PointsPerArc);
        for (int k = one.Count - 2; k > 0; k--)
        {
            (double Radius_mm, double Height_mm) point = (1000 * Between(one[k].Radius_m, wider[k].Radius_m), 1000 * Between(one[k].Z_m, wider[k].Z_m));
            if (points.Count == 0 || Math.Abs(point.Radius_mm - points[^1].Radius_mm) + Math.Abs(point.Height_mm - points[^1].Height_mm) > SamePoint_mm) points.Add(point);
        }

        return points;

        double Between(double from, double to) => from + swelling * (to - from);
    }

    // Steps of gauge pressure above the calibration's.
    private double Swelling(double gaugePressure_Pa) =>
        double.IsNaN(gaugePressure_Pa) ? 0 : (gaugePressure_Pa - _cords!.GaugePressure_Pa) / MouldCalibration.Swelling_Pa;

    // Taut cords that would reach no shape when swollen stay as they are.
    private CordShape Swollen(double springHeight_mm, CordShape shape) => _cords!.Swollen.At((springHeight_mm - _plates_mm) / 1000) ?? shape;

    /// <summary>1 to 3 by the word in the part's shape; what names none is drawn as one.</summary>
    internal static int ConvolutionsOf(string shape) =>
        shape.Contains("double", StringComparison.OrdinalIgnoreCase) ? 2
        : shape.Contains("triple", StringComparison.OrdinalIgnoreCase) ? 3 : 1;

    private static double EffectiveRadius_mm(StrutCase strut, double height_m)
    {
        double gauge = strut.GaugePressure_Pa(height_m);
        double area = strut.Fit.Spring.At(height_m, double.IsNaN(gauge) ? 0 : gauge).EffectiveArea_m2;
        return 1000 * Math.Sqrt(area / Math.PI);
    }

    private CordShape? Cords(double springHeight_mm) => _cords?.After.At((springHeight_mm - _plates_mm) / 1000);

    private double One_mm(double springHeight_mm) => Math.Max(springHeight_mm - _plates_mm, 1) / Convolutions;

    private double Bulge_mm(double springHeight_mm)
    {
        (double angle, double radius, double flat) = Arc(One_mm(springHeight_mm));
        return flat + radius * (1 - Math.Cos(angle));
    }

    // Up to a semicircle sinφ/φ = H/ℓ; lower than that a semicircle between two flats.
    private (double Angle, double Radius_mm, double Flat_mm) Arc(double one_mm)
    {
        double flat = (_arc_mm - Math.PI / 2 * one_mm) / 2;
        if (flat > 0) return (Math.PI / 2, one_mm / 2, flat);
        double low = 1e-3, high = Math.PI / 2;
        for (int step = 0; step < HalvingSteps; step++)
        {
            double angle = (low + high) / 2;
            (low, high) = Math.Sin(angle) / angle > one_mm / _arc_mm ? (angle, high) : (low, angle);
        }

        return (low, _arc_mm / (2 * low), 0);
    }
}
