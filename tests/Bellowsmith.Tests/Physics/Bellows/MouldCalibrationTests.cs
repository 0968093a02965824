using System.Diagnostics;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics.Bellows;

public sealed class MouldCalibrationTests
{
    private const double Degree = Math.PI / 180;
    private static readonly CordBellows _made = new(1, 0.050, 36 * Degree, 0.168);

    [Fact]
    public void Of_DataOfAnotherCord_FindsThatCord()
    {
        CordBellows mould = new(1, 0.050, 33 * Degree, 0.160);

        MouldCalibration calibrated = MouldCalibration.Of(mould, Measured(1), 5e5);

        Assert.Equal(36, calibrated.After.CordAngleAtBead_rad / Degree, 0.01);
        Assert.Equal(168, calibrated.After.CordLength_m * 1e3, 0.05);
        Assert.InRange(calibrated.DifferenceBefore, 0.05, 0.5);
        Assert.InRange(calibrated.DifferenceAfter, 0, 1e-5);
        Assert.Same(mould, calibrated.Before);
    }

    [Fact] // A wall that stretches: 3 % more area at every height, which is not the shape of any other cord.
    public void Of_DataNoCordReaches_KeepsWhatCannotBeExplained()
    {
        MouldCalibration calibrated = MouldCalibration.Of(_made, Measured(1.03), 5e5);

        Assert.Equal(0.03, calibrated.DifferenceBefore, 0.005);
        Assert.InRange(calibrated.DifferenceAfter, 1e-5, 0.02);
    }

    [Fact]
    public void Of_MouldThatCannotStandAtSomeHeights_StillFindsTheCord()
    {
        MouldCalibration calibrated = MouldCalibration.Of(new(1, 0.050, 38 * Degree, 0.110), Measured(1), 5e5);

        Assert.Equal(36, calibrated.After.CordAngleAtBead_rad / Degree, 0.01);
        Assert.Equal(168, calibrated.After.CordLength_m * 1e3, 0.05);
    }

    [Fact] // a wall whose cords turn by 0.1° and lengthen by 0.5 mm a bar, measured at 3, 5 and 7 bar gauge
    public void Of_WallThatStretches_SwellsAsItWasMade()
    {
        MouldCalibration calibrated = MouldCalibration.Of(_made, Stretching(), 5e5);

        Assert.Equal(35.9, calibrated.Swollen.CordAngleAtBead_rad / Degree, 0.02);
        Assert.Equal(168.5, calibrated.Swollen.CordLength_m * 1e3, 0.05);
        foreach (double height in (double[])[0.052, 0.065, 0.080])
            Assert.Equal(Made(6e5).At(height)!.Value.OuterDiameter_m, calibrated.Swollen.At(height)!.Value.OuterDiameter_m, 5e-5);
    }

    [Fact]
    public void Of_AreaTheSameAtEveryGaugePressure_DoesNotSwell()
    {
        MouldCalibration calibrated = MouldCalibration.Of(_made, Measured(1), 5e5);

        Assert.Same(calibrated.After, calibrated.Swollen);
    }

    private static CordBellows Made(double gaugePressure_Pa) => new(1, 0.050, (36 - 0.1 * (gaugePressure_Pa - 5e5) / 1e5) * Degree, 0.168 + 0.0005 * (gaugePressure_Pa - 5e5) / 1e5);

    private static AirSpring Stretching()
    {
        return AirSpringFit.Of(new MeasuredSpring([.. new[] { 3e5, 5e5, 7e5 }.SelectMany(gauge => Enumerable.Range(0, 31).Select(i => Row(0.050 + i * 0.0016, gauge)))])).Spring;

        static SpringRow Row(double height, double gauge) => Made(gauge).At(height)!.Value is var shape
            ? new(height, gauge, gauge * shape.EffectiveArea_m2, shape.Volume_m3) : throw new UnreachableException();
    }

    private static AirSpring Measured(double factor) => AirSpring.FromCharacteristic(
        [.. Enumerable.Range(0, 31).Select(i => 0.050 + i * 0.0016).Select(height =>
        {
            CordShape shape = _made.At(height)!.Value;
            return new CharacteristicRow(height, factor * shape.EffectiveArea_m2, factor * shape.Volume_m3);
        })]);
}
