using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class ChartTableTests
{
    [Fact]
    public void Read_Averages_GroupsSuccessiveRows()
    {
        ChartTable table = Read(ChartKind.Averages, "phase;subgroup;value [mm];note\nold;A;1;\nold;A;2;die cleaned\nold;B;3;\nnew;C;4;\nnew;C;5;late\n");

        Assert.Equal([1, 2, 3, 4, 5], table.Values);
        Assert.Equal([0, 2, 3], table.SubgroupStarts!);
        Assert.Equal([0, 2], table.PhaseStarts!);
        Assert.Equal("mm", table.Unit);
        Assert.Equal(["die cleaned", null, "late"], Enumerable.Range(0, 3).Select(table.Note));
        Assert.Equal(["old", "old", "new"], Enumerable.Range(0, 3).Select(table.Phase));
        Assert.Equal("C", table.Subgroup(2));
        Assert.Equal(5, table.Line(2));
    }

    [Theory]
    [InlineData(ChartKind.Averages, "subgroup;value\nA;1\nB;2\nA;3\n", "row 4, column subgroup", "A")]
    [InlineData(ChartKind.Averages, "subgroup;value\nA;1\n;2\n", "row 3, column subgroup", "nothing")]
    [InlineData(ChartKind.Averages, "value\n1\n", "header", "value")]
    [InlineData(ChartKind.Averages, "phase;subgroup;value\np;A;1\nq;A;2\n", "row 3, column phase", "q")]
    [InlineData(ChartKind.Individuals, "phase;value\np;1\nq;2\np;3\n", "row 4, column phase", "p")]
    [InlineData(ChartKind.Individuals, "phase;value\np;1\n;2\n", "row 3, column phase", "nothing")]
    [InlineData(ChartKind.Individuals, "value\n", "rows", "no rows")]
    [InlineData(ChartKind.Counts, "count\n2.5\n", "row 2, column count", "2.5")]
    [InlineData(ChartKind.Counts, "count\n-1\n", "row 2, column count", "-1")]
    [InlineData(ChartKind.Counts, "count;size\n1;0\n", "row 2, column size", "0")]
    [InlineData(ChartKind.Counts, "count;size\n1;\n", "row 2, column size", "nothing")]
    [InlineData(ChartKind.Shares, "count\n1\n", "header", "count")]
    [InlineData(ChartKind.Shares, "count;size\n5;4\n", "row 2, column count", "5")]
    [InlineData(ChartKind.Shares, "count;size\n1;4.5\n", "row 2, column size", "4.5")]
    public void Read_WhatCannotBeCharted_IsAFaultAtItsPlace(ChartKind kind, string text, string where, string found)
    {
        FaultsException faulty = Assert.Throws<FaultsException>(() => Read(kind, text));

        Fault fault = Assert.Single(faulty.Faults);
        Assert.Equal((where, found), (fault.Where, fault.Found));
    }

    internal static ChartTable Read(ChartKind kind, string text)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        File.WriteAllText(path, text);
        try
        {
            return ChartTable.Read(path, kind);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
