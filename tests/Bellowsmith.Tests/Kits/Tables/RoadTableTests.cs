using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class RoadTableTests
{
    private const string Road = "distance [m];height [mm]\n0;0\n0,5;12,5\n2;-3\n";

    [Fact]
    public void Read_Profile_GivesPointsInMetres()
    {
        var road = Read(Road, [])!;

        Assert.Equal([0, 0.5, 2], road.Distance_m);
        Assert.Equal([0, 0.0125, -0.003], road.Height_m);
    }

    [Theory]
    [InlineData("2;-3", "0,5;-3", "row 4, column distance [m]")]
    [InlineData("2;-3", "2;", "row 4, column height [mm]")]
    [InlineData("\n0,5;12,5\n2;-3", "", "rows")]
    [InlineData("height [mm]", "level [mm]", "header")]
    public void Read_WithOneFault_NamesThePlace(string from, string to, string where)
    {
        var faults = new List<Fault>();

        Assert.Null(Read(Road.Replace(from, to, StringComparison.Ordinal), faults));
        Assert.Equal(where, Assert.Single(faults).Where);
    }

    private static RoadTable? Read(string text, List<Fault> faults) =>
        Table.Parse(Encoding.UTF8.GetBytes(text), "road.csv", faults) is { } table ? RoadTable.Read(table, faults) : null;
}
