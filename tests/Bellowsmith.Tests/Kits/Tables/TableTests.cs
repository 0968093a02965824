using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Tests.Kits.Schemas;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class TableTests
{
    private const string Messy = "\uFEFF# a remark, with; marks\r\n\r\n\" Height  [mm] \" ;note\r\n \"80,5\" ; \"a \"\"b\"\"; c\"\r\n;;\r\n  # more\r\n81;\r\n";

    [Fact]
    public void Parse_MessyFile_ReadsHeaderRowsAndLines()
    {
        var table = Parse(Messy);

        Assert.Equal(';', table.Separator);
        Assert.Equal([new Column(0, "Height  [mm]", "height", "mm"), new Column(1, "note", "note", null)], table.Columns);
        Assert.Equal([4, 7], table.Rows.Select(row => row.Line));
        Assert.Equal(["80,5", "a \"b\"; c"], table.Rows[0].Cells.Select(cell => cell.Text));
        Assert.Equal(["81", ""], table.Rows[1].Cells.Select(cell => cell.Text));
    }

    [Theory]
    [InlineData("a\tb\n1\t2", '\t', 2)]
    [InlineData("a,b\n1,2", ',', 2)]
    [InlineData("a;b\r1;2", ';', 2)]
    [InlineData("value\n1,5\n2,5", ';', 1)]
    [InlineData("a\tb\n\t2", '\t', 2)]
    public void Parse_AnySeparator_FindsIt(string text, char separator, int fields)
    {
        var table = Parse(text);
        Assert.Equal((separator, fields), (table.Separator, table.Rows[0].Cells.Count));
    }

    [Fact]
    public void WithCell_EveryCell_ChangesOnlyItsBytes()
    {
        var table = Parse(Messy);
        var changed = Encoding.UTF8.GetString(table.WithCell(table.Rows[0], table.Columns[0], "79,25"));
        Assert.Equal(Messy.Replace("\"80,5\"", "79,25", StringComparison.Ordinal), changed);
        changed = Encoding.UTF8.GetString(table.WithCell(table.Rows[0], table.Columns[1], "x;\"y\""));
        Assert.Equal(Messy.Replace("\"a \"\"b\"\"; c\"", "\"x;\"\"y\"\"\"", StringComparison.Ordinal), changed);
        changed = Encoding.UTF8.GetString(table.WithCell(table.Rows[1], table.Columns[1], "ok"));
        Assert.Equal(Messy.Replace("81;", "81;ok", StringComparison.Ordinal), changed);
    }

    [Theory]
    [InlineData("", "header", "Write the column names")]
    [InlineData("# only a remark\n\n", "header", "Write the column names")]
    [InlineData("a;b,c\n1;2,3", "row 1", "Separate all columns with the same mark")]
    [InlineData("a;b\n1;2\n1;2;3", "row 3", "as many fields")]
    [InlineData("a,b\n1,5,2", "row 2", "separate the columns with semicolons")]
    [InlineData("a;b\n1", "row 2", "as many fields")]
    [InlineData("a;b\n1;\"2\n3;4", "row 2", "Close the quote")]
    [InlineData("a;b\n1;\"2\"x\n", "row 2", "whole field in quotes")]
    public void Parse_BrokenShape_NamesThePlace(string text, string where, string fix)
    {
        var faults = new List<Fault>();
        Assert.Null(Table.Parse(Encoding.UTF8.GetBytes(text), "t.csv", faults));
        var fault = Assert.Single(faults);
        Assert.Equal(where, fault.Where);
        Assert.Contains(fix, fault.Fix, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 65, 0 }, "file")]
    [InlineData(new byte[] { 0xFE, 0xFF, 0, 65 }, "file")]
    [InlineData(new byte[] { 65, 10, 66, 10, 0xE4, 10 }, "line 3")]
    [InlineData(new byte[] { 65, 0, 66 }, "file")]
    public void Parse_NotUtf8_IsAFault(byte[] bytes, string where)
    {
        var faults = new List<Fault>();
        Assert.Null(Table.Parse(bytes, "t.csv", faults));
        Assert.Equal(where, Assert.Single(faults).Where);
    }

    [Fact]
    public void Read_NoSuchFileOrADirectory_IsAFault()
    {
        using var folder = new SampleFolder();
        Assert.Contains("does not exist", Assert.Throws<FaultsException>(() => Table.Read(folder.PathOf("no.csv"))).Faults[0].Found, StringComparison.Ordinal);
        Assert.Contains("is a directory", Assert.Throws<FaultsException>(() => Table.Read(folder.Root)).Faults[0].Found, StringComparison.Ordinal);
        Assert.Equal(8, Table.Read(folder.PathOf("springs/double.csv")).Rows.Count);
    }

    private static Table Parse(string text) => Table.Parse(Encoding.UTF8.GetBytes(text), "t.csv", [])!;
}
