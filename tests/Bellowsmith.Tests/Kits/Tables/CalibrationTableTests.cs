using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Calibration;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Tables;

/// <summary>A load cell of the example workshop, whose law examples/generate.cs knows: it bends, and later walks by 12 mN a day, which ten Mondays
/// are too few to show.</summary>
public sealed class CalibrationTableTests
{
    private static readonly CalibrationTable _calibration = CalibrationTable.Read(Example("load-cell-calibration.csv"));
    private static readonly CalibrationTable _checks = CalibrationTable.ReadChecks(Example("load-cell-checks.csv"), _calibration);

    [Fact]
    public void Read_OfTheExample_HasItsUnitsAndRows()
    {
        Assert.Equal(("N", "mV/V"), (_calibration.ReferenceUnit, _calibration.ReadingUnit));
        Assert.Equal(30, _calibration.Values.Length);
        Assert.Equal(30, _checks.Days!.Length);
    }

    [Fact]
    public void Curve_OfTheExample_BendsAsTheCellDoes()
    {
        CalibrationCurve curve = CalibrationCurve.Of(_calibration.References, _calibration.Values)!;

        Assert.Equal(CurveChoice.LineMissesRepeats, curve.Choice);
        Assert.Equal(2.0004e-4, curve.Fit.Coefficients[1], 1e-7);
        Assert.Equal(-1.2e-10, curve.Fit.Coefficients[2], 1e-11);
    }

    [Fact]
    public void Checks_OfTheExample_HoldTheWalkWithinTwoStandardErrors()
    {
        CalibrationCurve curve = CalibrationCurve.Of(_calibration.References, _calibration.Values)!;

        CalibrationControl control = CalibrationControl.Of(curve, _checks.Days!, _checks.References, _checks.Values);

        double error = control.DriftPerDay!.Value / control.DriftT!.Value;
        Assert.InRange(error, 0.002, 0.008);
        Assert.InRange(0.012, control.DriftPerDay.Value - 2 * error, control.DriftPerDay.Value + 2 * error);
    }

    [Fact]
    public void ReadChecks_InOtherUnits_AreRefused()
    {
        string path = Path.GetTempFileName();
        File.WriteAllText(path, "day,reference [kN],reading [mV/V]\n1,2,0.4\n");
        try
        {
            var fault = Assert.Single(Assert.Throws<FaultsException>(() => CalibrationTable.ReadChecks(path, _calibration)).Faults);
            Assert.Equal(("header, column reference", "kN"), (fault.Where, fault.Found));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static string Example(string file) => Path.Combine(ExampleFolder.Repository, "examples", "fenwright", "measured", file);
}
