using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Physics.Clearances;

namespace Bellowsmith.Tests.Kits.Studies.Clearance;

/// <summary>Every kind of pair against surfaces sampled here, at the ends and in the middle of the sweep.</summary>
public sealed class PairGapTests
{
    private const double Search_m = RevolvedBody.Tolerance_m, Sampling_m = 3e-5;

    private static readonly CornerShapes _shapes = CornerShapes.Of(Corners.Front, Corners.Gaps, Corners.Front.Corner.Adjuster.Linkage!);

    public static TheoryData<double, double> Places => new() { { 0, 0 }, { 37.9, -62 }, { -38.4, 62 } };

    [Theory]
    [MemberData(nameof(Places))]
    public void Sweep_EveryPair_IsWhatSampledSurfacesShow(double travel_mm, double rack_mm)
    {
        ClearanceSweep sweep = ClearanceSweep.Of(_shapes, [travel_mm / 1000], [rack_mm / 1000]);
        LinkageState state = sweep.States[0]!;

        for (int pair = 0; pair < _shapes.Pairs.Count; pair++)
        {
            (PassingBody one, PassingBody other) = (_shapes.Pairs[pair].One, _shapes.Pairs[pair].Other);
            double sampled = Sampled(one, other, state);
            Assert.InRange(sweep[pair, 0]!.Value.Distance_m, sampled - Sampling_m, sampled + Search_m);
        }
    }

    [Fact]
    public void Pairs_OfAStrut_AreOfEveryKind() => Assert.Equal(
        Enum.GetValues<MarginKind>().Order(), _shapes.Pairs.Select(pair => pair.Margin).Distinct().Order());

    private static double Sampled(PassingBody one, PassingBody other, LinkageState state)
    {
        if (Round(one, state) is not { } first) return Lines(one, state).Min(a => Lines(other, state).Min(b => Apart(a, b)));
        SampledBody body = new(first);
        if (Round(other, state) is { } second) return Math.Min(body.Least_m(new SampledBody(second).Outside_m), new SampledBody(second).Least_m(body.Outside_m));
        Point[] points = other.Kind switch { BodyKind.ArchEdge => [.. Corners.Front.Part.ArchEdge], BodyKind.Liner => [.. Corners.Front.Part.Liner], BodyKind.Tower => [.. Corners.Front.Part.Tower], _ => [] };
        return points.Length > 0 ? points.Min(body.Outside_m) : Lines(other, state).Min(bar => Along(bar, 8000).Min(body.Outside_m) - bar.Radius_m);
    }

    private static double Apart(RoundBar a, RoundBar b) => Along(a, 1500).Min(p => Along(b, 1500).Min(q => (p - q).Length)) - a.Radius_m - b.Radius_m;

    private static IEnumerable<Point> Along(RoundBar bar, int steps) => Enumerable.Range(0, steps + 1).Select(k => bar.Start + k / (double)steps * (bar.End - bar.Start));

    private static RevolvedBody? Round(PassingBody body, LinkageState state) => body.Kind switch
    {
        BodyKind.Tyre => CornerBodies.Tyre(Corners.Front.Corner.MeasuredWheel, state),
        BodyKind.Rim => CornerBodies.Rim(Corners.Front.Corner.MeasuredWheel, state),
        BodyKind.Bellows => Corners.Front.Corner.Bodies!.Bellows(state),
        BodyKind.Strut => Corners.Front.Corner.Bodies!.Strut(state),
        _ => null,
    };

    // Diameters and points as examples/fenwright/cars/ostrane-front.suspension.json has them; the halfshaft runs to the wheel centre.
    private static RoundBar[] Lines(PassingBody body, LinkageState state)
    {
        Point ball = state.Knuckle.At(Of("lowerBallJoint")), rack = new(0, state.Rack_m, 0);
        return body switch
        {
            { Kind: BodyKind.Halfshaft } => [new(Of("halfshaftInner"), state.WheelCentre, 0.0135)],
            { Part: LinkagePart.TieRod } => [new(Of("tieRodInner") + rack, state.Knuckle.At(Of("tieRodOuter")), 0.0075)],
            _ => [new(Of("lowerArmFront"), ball, 0.011), new(Of("lowerArmRear"), ball, 0.011)],
        };
    }

    private static Point Of(string name) => Corners.Front.Part.Points[name];
}
