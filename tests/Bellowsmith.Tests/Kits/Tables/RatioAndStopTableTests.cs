using Bellowsmith.Kits;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class RatioAndStopTableTests
{
    private const string Travel = "wheel travel [mm];strut travel [mm]\n40;36\n-40;-38\n0;0\n20;18,5\n";
    private const string Ratio = "wheel travel [mm];motion ratio\n-40;1,0\n-20;0,9\n20;0,7\n40;0,6\n";
    private const string Stop = "compression [mm];force [N]\n0;0\n10;150,5\n20;480\n";

    [Fact]
    public void Read_StrutTravel_SortsByWheelTravel()
    {
        var table = TableSamples.Ratio(Travel, [])!;
        Assert.Equal([-0.04, 0, 0.02, 0.04], table.WheelTravel_m);
        Assert.Equal([-0.038, 0, 0.0185, 0.036], table.StrutTravel_m);
    }

    /// <summary>The ratio falls by 0.005 per mm from 0.8 at drive: strut travel is 0.8 z − 0.0025 z² in mm, by hand.</summary>
    [Fact]
    public void Read_MotionRatio_IntegratesFromDriveHeight()
    {
        var strut = TableSamples.Ratio(Ratio, [])!.StrutTravel_m;
        Assert.Equal([-36, -17, 15, 28], strut.Select(value => Math.Round(value * 1e3, 9)));
    }

    [Theory]
    [InlineData("motion ratio", "motion ratio [mm]", "header, column motion ratio [mm]")]
    [InlineData("motion ratio", "ratio", "header")]
    [InlineData("0,9", "90", "row 3, column motion ratio")]
    [InlineData("0,9", "0.9", "row 3, column motion ratio")]
    [InlineData("20;0,7\n", "", "rows")]
    [InlineData("20;0,7\n", "40;0,7\n", "rows")]
    [InlineData("-40;1,0\n-20;0,9\n", "50;0,9\n60;0,9\n", "column wheel travel")]
    public void Read_RatioWithOneFault_NamesThePlace(string from, string to, string where)
    {
        var faults = new List<Fault>();
        Assert.Null(TableSamples.Ratio(ReplaceFirst(Ratio, from, to), faults));
        Assert.Contains(where, faults.Select(fault => fault.Where));
    }

    [Fact]
    public void Read_Stop_GivesPoints() =>
        Assert.Equal([new(0, 0), new(0.01, 150.5), new StopForce(0.02, 480)], TableSamples.Stop(Stop, [])!);

    [Theory]
    [InlineData("0;0", "1;0", "row 2, column compression [mm]")]
    [InlineData("20;480", "10;480", "row 4, column compression [mm]")]
    [InlineData("20;480", "20;140", "row 4, column force [N]")]
    [InlineData("20;480", "20;-1", "row 4, column force [N]")]
    [InlineData("\n10;150,5\n20;480", "", "rows")]
    [InlineData("force [N]", "load [N]", "header")]
    public void Read_StopWithOneFault_NamesThePlace(string from, string to, string where)
    {
        var faults = new List<Fault>();
        Assert.Null(TableSamples.Stop(ReplaceFirst(Stop, from, to), faults));
        Assert.Equal(where, Assert.Single(faults).Where);
    }

    private static string ReplaceFirst(string text, string from, string to)
    {
        var at = text.IndexOf(from, StringComparison.Ordinal);
        return text.Remove(at, from.Length).Insert(at, to);
    }
}
