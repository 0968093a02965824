using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Physics;
using BenchmarkDotNet.Attributes;

namespace Bellowsmith.Benchmarks;

/// <summary>A corner over 41 wheel travels of 21 rack travels, ±80 mm by ±40 mm, every number of every place taken.</summary>
public class LinkageRegimes
{
    private static readonly LinkageQuestion _question = new(LinkageQuestion.Range(-0.08, 0.08, 0.004), LinkageQuestion.Range(-0.04, 0.04, 0.004));

    private static readonly SuspensionPart _strut = new("Bench strut", "", SuspensionKind.MacPherson, 0.31, -0.01, 0.001, new Dictionary<string, Point>
    {
        ["lowerArmFront"] = At(10, 370, 215),
        ["lowerArmRear"] = At(-300, 380, 220),
        ["lowerBallJoint"] = At(-2, 715, 200),
        ["strutTop"] = At(-25, 580, 880),
        ["strutAxisPoint"] = At(-8, 650, 430),
        ["tieRodInner"] = At(-120, 360, 262),
        ["tieRodOuter"] = At(-135, 690, 250),
        ["wheelCentre"] = At(0, 760, 310),
    });

    private static readonly SuspensionPart _fiveLink = new("Bench five links", "", SuspensionKind.FiveLink, 0.31, -0.01, 0.001, new Dictionary<string, Point>
    {
        ["lowerFrontInner"] = At(150, 400, 195),
        ["lowerFrontOuter"] = At(40, 705, 180),
        ["lowerRearInner"] = At(-150, 380, 200),
        ["lowerRearOuter"] = At(-45, 710, 190),
        ["upperFrontInner"] = At(110, 450, 455),
        ["upperFrontOuter"] = At(35, 685, 470),
        ["upperRearInner"] = At(-120, 445, 450),
        ["upperRearOuter"] = At(-40, 680, 480),
        ["tieRodInner"] = At(-210, 400, 255),
        ["tieRodOuter"] = At(-150, 700, 260),
        ["strutTop"] = At(-60, 540, 740),
        ["strutBottom"] = At(-90, 590, 210),
        ["wheelCentre"] = At(0, 760, 310),
    });

    [Benchmark]
    public double StrutSweep() => Taken(_strut);

    [Benchmark]
    public double FiveLinkSweep() => Taken(_fiveLink);

    // Sums what a row shows, so that nothing stays unasked.
    private static double Taken(SuspensionPart part)
    {
        double sum = 0;
        foreach (LinkagePoint point in LinkageStudy.Answer(part, _question).Points)
        {
            LinkageState s = point.State!;
            StrutState strut = s.Strut;
            SteeringAxis steering = s.Steering!;
            sum += s.Camber_rad + s.Toe_rad + s.CamberSlope_rad_per_m + s.ToeSlope_rad_per_m + s.TrackChange_m + s.WheelForward_m + s.RollCentreHeight_m
                + s.FrontInstantCentre.Z + s.SideInstantCentre.Z + strut.Length_m + strut.MotionRatio + strut.MotionRatioSlope_per_m + strut.Tilt_rad
                + steering.Caster_rad + steering.KingpinInclination_rad + steering.ScrubRadius_m + steering.MechanicalTrail_m;
            foreach (JointAngles joint in s.Joints) sum += joint.Inner_rad + joint.Outer_rad;
        }

        return sum;
    }

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);
}
