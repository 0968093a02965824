using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class DynoTableTests
{
    private const string Long = "click;velocity [m/s];force [N];temperature [degC];run\n3;0,13;412,5;24;a\n3;-0,13;-208;24;a\n";
    private const string ByStroke = "click,direction,velocity [in/s],force [lbf]\n3,rebound,10,100\n3,Compression,10,50\n";
    private const string Wide = "velocity [mm/s],click 0 [N],click 4 [kN]\n-130,-300,-0.2\n130,900,0.6\n260,1200,\n";

    private static readonly DynoConvention _plain = new();

    [Fact]
    public void Read_LongRows_AreReboundPositiveFromClosedWithoutGas()
    {
        var data = Points(Long, _plain);

        Assert.False(data.GasIn);
        Assert.Equal([new(3, 0.13, 412.5, "a", 297.15, 2), new DynoPoint(3, -0.13, -208, "a", 297.15, 3)], data.Points);
    }

    [Fact]
    public void Read_CompressionPositive_TurnsForceAndVelocity()
    {
        var data = Points(Long, new(CompressionPositive: true));

        Assert.Equal([(-0.13, -412.5), (0.13, 208)], data.Points.Select(p => (p.Velocity_m_per_s, p.Force_N)));
    }

    /// <summary>10 in/s are 0.254 m/s and 100 lbf 444.822 N. Without a negative force all are magnitudes, whatever the sign declared.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Read_DirectionAndMagnitudes_TakeTheStrokesSign(bool compressionPositive)
    {
        var data = Points(ByStroke, new(compressionPositive));

        Assert.Equal([0.254, -0.254], data.Points.Select(p => p.Velocity_m_per_s));
        Assert.Equal(444.822, data.Points[0].Force_N, 1e-3);
        Assert.Equal(-222.411, data.Points[1].Force_N, 1e-3);
    }

    [Fact]
    public void Read_DirectionAndSignedForces_TakeTheDeclaredSign()
    {
        var data = Points("click,direction,velocity [m/s],force [N]\n0,rebound,0.1,-100\n0,compression,0.1,60\n", new(CompressionPositive: true));

        Assert.Equal([(0.1, 100), (-0.1, -60)], data.Points.Select(p => (p.Velocity_m_per_s, p.Force_N)));
    }

    [Fact]
    public void Read_WideTable_IsOnePointForEachFilledCell()
    {
        var data = Points(Wide, _plain);

        Assert.Equal([(0, -0.13, -300, 2), (4, -0.13, -200, 2), (0, 0.13, 900, 3), (4, 0.13, 600, 3), (0, 0.26, 1200, 4)],
            data.Points.Select(p => (p.Click, p.Velocity_m_per_s, p.Force_N, p.Line)));
    }

    [Fact]
    public void Read_ClicksFromOpen_AreTurnedRound()
    {
        Assert.Equal([12, 12], Points(Long, new(OpenClick: 15)).Points.Select(p => p.Click));
        Assert.Equal([15, 11], Points(Wide, new(OpenClick: 15)).Points.Take(2).Select(p => p.Click));
    }

    [Fact]
    public void Read_RawSweeps_ArePartedByClickRunAndTimeThatFallsBack()
    {
        const string raw = "time [s],position [mm],force [N],click,run\n0,0,10,2,a\n0.1,5,12,2,a\n0,0,11,2,a\n0.1,5,12,2,a\n0.2,5,12,2,b\n0.3,5,12,3,b\n";
        var data = Assert.IsType<DynoSweeps>(Read(raw, new(CompressionPositive: true), []));

        Assert.True(data.GasIn);
        Assert.Equal([(2, "a", 2), (2, "a", 2), (2, "b", 1), (3, "b", 1)], data.Sweeps.Select(s => (s.Click, s.Run!, s.Samples.Count)));
        Assert.Equal(new DynoSample(0.1, 0.005, -12, 3), data.Sweeps[0].Samples[1]);
    }

    [Theory]
    [InlineData(Long, "click;", "knob;", "header")]
    [InlineData(Long, "velocity [m/s]", "velocity", "header, column velocity")]
    [InlineData(Long, "3;-0,13", "3,5;-0,13", "row 3, column click")]
    [InlineData(Long, "-0,13", "0,13", "column velocity")]
    [InlineData(Long, "412,5", "4.125", "row 2, column force [N]")]
    [InlineData(Long, "412,5", "nan", "row 2, column force [N]")]
    [InlineData(Long, "3;0,13;412,5;24;a\n3;-0,13;-208;24;a\n", "", "rows")]
    [InlineData(ByStroke, "rebound", "up", "row 2, column direction")]
    [InlineData(ByStroke, "rebound", "", "row 2, column direction")]
    [InlineData(ByStroke, "rebound,10", "rebound,-10", "row 2, column velocity [in/s]")]
    [InlineData(Wide, "click 4 [kN]", "click 0 [kN]", "header, column click 0 [kN]")]
    [InlineData(Wide, "click 4 [kN]", "click 4", "header, column click 4")]
    public void Read_OneFault_NamesThePlace(string text, string from, string to, string where)
    {
        var faults = new List<Fault>();

        Assert.Null(Read(text.Replace(from, to, StringComparison.Ordinal), _plain, faults));
        Assert.Contains(where, faults.Select(fault => fault.Where));
    }

    [Fact]
    public void Read_MagnitudesWithGasIn_AreRefused()
    {
        var faults = new List<Fault>();

        Assert.Null(Read(ByStroke, new(GasIn: true), faults));
        Assert.Equal("column force", Assert.Single(faults).Where);
    }

    [Fact]
    public void Read_ClickBeyondTheCount_IsAFault()
    {
        var faults = new List<Fault>();

        Assert.Null(Read(Long, new(OpenClick: 2), faults));
        Assert.Equal(["row 2, column click", "row 3, column click"], faults.Select(fault => fault.Where));
    }

    private static DynoPoints Points(string text, DynoConvention convention)
    {
        var faults = new List<Fault>();
        var data = Read(text, convention, faults);
        Assert.Empty(faults);
        return Assert.IsType<DynoPoints>(data);
    }

    private static DynoData? Read(string text, DynoConvention convention, List<Fault> faults) =>
        Table.Parse(Encoding.UTF8.GetBytes(text), "d.csv", faults) is { } table ? DynoTable.Read(table, convention, faults) : null;
}
