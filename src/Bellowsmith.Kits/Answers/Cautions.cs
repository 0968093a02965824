namespace Bellowsmith.Kits.Answers;

/// <summary>Short words where the hazard is. They defer to local codes, the part makers' limits and licensed practice.</summary>
public static class Cautions
{
    public const string CompressedAir =
        "Compressed air stores energy: keep to the spring maker's greatest gauge pressure, never inflate a spring whose length nothing holds, stand clear of fittings.";

    public const string LeakTest =
        "A part under test can burst: test behind a guard that would hold it, with water where that is possible, raise the gauge pressure slowly, and let it down before anyone comes near.";

    public const string RaisedCar =
        "A car on air can drop: support it on stands at its jacking points, air let out, before anything is reached under it.";

    public const string ChassisParts =
        "Joints, arms and tie rods hold the wheel on: parts made for the car alone, threads engaged as their maker says, tightened at drive height, and the alignment measured before it is driven.";

    public const string AiredOut = "Do not drive aired out or fully lifted: stops, shafts and tyres are then at their ends.";

    public const string BurstTest =
        "Burst and endurance tests throw parts: fill with water, not air, stand behind a guard, and let local codes and licensed practice set the test pressure.";

    public const string DamperGas =
        "A gas damper holds 20 to 30 bar even when it lies loose on the bench: never drill, cut, heat or open one.";

    public const string Dyno =
        "A dyno crushes: guards shut and hands away before it turns, and its whole stroke within the damper's shortest and longest length.";

    public const string DriveTest =
        "Drive tests belong off public roads, with the strut's clearances checked first; a corner on paper has no roll, pitch, brakes or kerbs.";

    public const string Wheels =
        "Before another wheel is driven, measure its gaps at full bump and at both locks, the car on stands; fit only wheels, tyres and spacers that are approved for it.";

    public const string Local = "Local codes, the part makers' limits and licensed practice come first; what stands here is a calculation, not an approval.";
}
