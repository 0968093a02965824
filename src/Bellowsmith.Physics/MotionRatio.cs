namespace Bellowsmith.Physics;

/// <summary>
/// How the strut follows the wheel. Wheel travel zw is bump +, strut travel is compression +, zero at drive height;
/// the motion ratio is i = d(strut travel)/d(wheel travel) [Barton Fieldhouse 2018, eqs 3.29–3.33].
/// </summary>
public sealed class MotionRatio
{
    private readonly double _ratio;

    private MotionRatio(double ratio) => _ratio = ratio;

    public static MotionRatio Constant(double strutPerWheel) => new(strutPerWheel);

    /// <summary>From a measured table of wheel travel and strut travel in m, any order, at least four rows.</summary>
    public static MotionRatio FromTable(ReadOnlySpan<double> wheelTravel_m, ReadOnlySpan<double> strutTravel_m) =>
        throw new NotSupportedException();

    public double At(double wheelTravel_m) => _ratio;
}
