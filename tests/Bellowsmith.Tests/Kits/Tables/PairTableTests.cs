using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Pairs;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class PairTableTests
{
    [Fact]
    public void Read_AnyOrderOfRows_PutsUnitsInTheOrderOfTheirNames()
    {
        PairTable table = Read("unit,hand,characteristic,value,tolerance\nR10,right,rebound,5,2\nR9,Left,bump,1,\nR9,left,rebound,4,2\nR10,right,bump,3,\n");

        Assert.Equal(["R9", "R10"], table.Units);
        Assert.Equal(["rebound", "bump"], table.Characteristics);
        Assert.Equal(new double[,] { { 4, 1 }, { 5, 3 } }, table.Values);
        Assert.Equal([2, 1], table.Tolerances);
        Assert.Equal([true, false], table.ToleranceIsGiven);
        Assert.Equal([Hand.Left, Hand.Right], table.Hands!);
    }

    [Fact]
    public void Read_WithoutHandAndTolerance_TakesOne()
    {
        PairTable table = Read("unit;characteristic;value\n1;a;2,5\n");

        Assert.Null(table.Hands);
        Assert.Equal([1], table.Tolerances);
    }

    [Theory]
    [InlineData("unit,characteristic,value\nA,x,1\nA,x,2\n", "row 3, column unit")]
    [InlineData("unit,characteristic,value\nA,x,1\nA,y,1\nB,x,2\n", "unit B")]
    [InlineData("unit,characteristic,value,tolerance\nA,x,1,2\nB,x,2,3\n", "row 3, column tolerance")]
    [InlineData("unit,characteristic,value,tolerance\nA,x,1,0\n", "row 2, column tolerance")]
    [InlineData("unit,characteristic,value [N],tolerance [kN]\nA,x,1,1\n", "header, column tolerance")]
    [InlineData("unit,hand,characteristic,value\nA,up,x,1\n", "row 2, column hand")]
    [InlineData("unit,hand,characteristic,value\nA,left,x,1\nB,,x,1\n", "row 3, column hand")]
    [InlineData("unit,hand,characteristic,value\nA,left,x,1\nA,right,y,1\n", "row 3, column hand")]
    [InlineData("unit,value\nA,1\n", "header")]
    public void Read_Broken_NamesThePlace(string text, string where) =>
        Assert.Contains(Assert.Throws<FaultsException>(() => Read(text)).Faults, fault => fault.Where == where);

    private static PairTable Read(string text)
    {
        string path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, text);
            return PairTable.Read(path);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
