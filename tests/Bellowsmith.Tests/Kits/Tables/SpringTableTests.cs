using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class SpringTableTests
{
    [Fact]
    public void Read_AbsolutePressure_TakesTheAmbientOff()
    {
        var text = TableSamples.Measured.Replace("gauge pressure [bar]", "Absolute  Pressure [psi]", StringComparison.Ordinal)
            .Replace(";5,0;", ";87,0;", StringComparison.Ordinal).Replace(";5,5;", ";94,0;", StringComparison.Ordinal);
        var rows = ((MeasuredSpring)TableSamples.Spring(text, [], 98_000)!).Rows;
        Assert.Equal(501_843.8845, rows[0].GaugePressure_Pa, 1e-3);
    }

    [Fact]
    public void Read_Characteristic_GivesRowsInSi()
    {
        var rows = ((CharacteristicSpring)TableSamples.Spring(TableSamples.Characteristic, [])!).Rows;
        Assert.Equal(new CharacteristicRow(0.06, 88.5e-4, 610e-6), rows[0]);
        Assert.Equal(3, rows.Count);
    }

    [Fact]
    public void Read_EveryOptionalColumn_IsTaken()
    {
        var text = TableSamples.Characteristic.Replace("cm3", "in3", StringComparison.Ordinal);
        var header = "sweep\tdirection\tmode\ttemperature [°C]\tamplitude [mm]\theight [in]\tgauge pressure [psi]\tforce [lbf]\tvolume [in³]\tremarks";
        var row = "a 1\tExtending\tSealed  Fast\t20\t5\t3\t75\t800\t40\twhatever";
        var rows = ((MeasuredSpring)TableSamples.Spring(header + string.Concat(Enumerable.Repeat("\r\n" + row, 8)), [])!).Rows;
        Assert.Equal(new SpringRow(
            0.0762, 517_106.7969876, 3558.5772922084, 0.000655482560, 293.15, AirMode.SealedFast, SweepDirection.Extending, 0.005, "a 1", 9),
            rows[7] with { GaugePressure_Pa = Math.Round(rows[7].GaugePressure_Pa, 7), Force_N = Math.Round(rows[7].Force_N, 10) });
        Assert.NotNull(TableSamples.Spring(text.Replace("610", "37", StringComparison.Ordinal), []));
    }

    [Theory]
    [InlineData("gauge pressure [bar]", "pressure [bar]", "header, column pressure [bar]", "Say gauge pressure or absolute pressure")]
    [InlineData("gauge pressure [bar]", "gauge presure [bar]", "header, column gauge presure [bar]", "Did you mean \"gauge pressure\"?")]
    [InlineData("gauge pressure [bar]", "colour", "header", "Add the column \"gauge pressure [bar]\"")]
    [InlineData("height [mm]", "hieght [mm]", "header, column hieght [mm]", "Did you mean \"height\"?")]
    [InlineData("height [mm]", "height", "header, column height", "height [mm]")]
    [InlineData("height [mm]", "height [bar]", "header, column height [bar]", "height [mm]")]
    [InlineData("height [mm]", "height (mm)", "header", "height [mm]")]
    [InlineData("volume [L]", "force [N]", "header, column force [N]", "Take one of the two out")]
    [InlineData("volume [L]", "absolute pressure [bar]", "header", "Take one of the two columns out")]
    [InlineData("volume [L]", "mode", "row 2, column mode", "leave the cell empty")]
    [InlineData("4012,25", "4012.25", "row 3, column force [N]", "same decimal mark")]
    [InlineData("4012,25", "4.012,25", "row 3, column force [N]", "no thousands separator")]
    [InlineData("4012,25", "4 012,25", "row 3, column force [N]", "no thousands separator")]
    [InlineData("4012,25", "4012,25 N", "row 3, column force [N]", "unit stands in the header")]
    [InlineData("4012,25", "4012,25,1", "row 3, column force [N]", "one decimal mark")]
    [InlineData("4012,25", "", "row 3, column force [N]", "Write the value")]
    [InlineData("4012,25", "1e9", "row 3, column force [N]", "Check the value")]
    [InlineData("4012,25", "1e999", "row 3, column force [N]", "Write the number alone")]
    [InlineData("4012,25", "NaN", "row 3, column force [N]", "Write the number alone")]
    [InlineData("70;5,0", "7000;5,0", "row 3, column height [mm]", "Check the value")]
    [InlineData("70;5,0", "0,07;5,0", "row 3, column height [mm]", "Check the value")]
    [InlineData("70;5,0", "70;50", "row 3, column gauge pressure [bar]", "Check the value")]
    [InlineData("0,70", "700", "row 3, column volume [L]", "Check the value")]
    public void Read_OneFault_NamesPlaceAndFix(string from, string to, string where, string fix)
    {
        var faults = new List<Fault>();
        var at = TableSamples.Measured.IndexOf(from, StringComparison.Ordinal);
        var text = TableSamples.Measured.Remove(at, from.Length).Insert(at, to);
        Assert.Null(TableSamples.Spring(text, faults));
        Assert.Contains(faults, fault => fault.Where == where && fault.Fix.Contains(fix, StringComparison.Ordinal) && fault.File == "s.csv");
    }

    [Theory]
    [InlineData("70,81", "60,81", "row 3, column height [mm]", "Keep one row")]
    [InlineData("81.25", "0.81", "row 3, column effective area [cm2]", "Check the value")]
    [InlineData("volume [cm3]", "content [cm3]", "header", "Add the column \"volume [cm3]\"")]
    [InlineData("\n70,81.25,700\n80,74,780", "", "rows", "Measure more")]
    public void Read_CharacteristicWithOneFault_NamesPlaceAndFix(string from, string to, string where, string fix)
    {
        var faults = new List<Fault>();
        Assert.Null(TableSamples.Spring(TableSamples.Characteristic.Replace(from, to, StringComparison.Ordinal), faults));
        var fault = Assert.Single(faults);
        Assert.Equal(where, fault.Where);
        Assert.Contains(fix, fault.Fix, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SevenMeasuredRows_IsAFault()
    {
        var faults = new List<Fault>();
        Assert.Null(TableSamples.Spring(TableSamples.Measured[..TableSamples.Measured.LastIndexOf('\n')], faults));
        Assert.Equal(("rows", "7 rows"), (Assert.Single(faults).Where, faults[0].Found));
    }

    [Fact]
    public void Read_CommaThatMayGroupThousands_IsAFault()
    {
        var faults = new List<Fault>();
        var text = "height [mm],gauge pressure [bar],force [N]\n" + string.Concat(Enumerable.Range(0, 8).Select(i => $"{60 + i},5,\"3,{900 - i}\"\n"));
        Assert.Null(TableSamples.Spring(Encoding.UTF8.GetBytes(text), faults));
        Assert.Contains("leave it out if it groups thousands", Assert.Single(faults).Fix, StringComparison.Ordinal);
    }
}
