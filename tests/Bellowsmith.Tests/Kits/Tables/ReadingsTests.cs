using System.Globalization;
using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class ReadingsTests
{
    [Fact]
    public void Read_MessyFile_HasNumbersLabelsUnitsAndLines()
    {
        var readings = Read("\uFEFF# crimps\r\nPart ; value [mm];note\r\n\r\nA;12,40;x\r\n\"B; \"\"b\"\"\"; 12,45 ;\r\n;;\r\nA;-1;\"two\r\nlines\"\r\nA;1e1;\r\n",
            ReadingColumn.Label("part"), ReadingColumn.Number("value"));

        Assert.Equal(4, readings.Count);
        Assert.Equal([12.40, 12.45, -1, 10], readings.Numbers("value"));
        Assert.Equal(["A", "B; \"b\""], readings.Labels("part").Names);
        Assert.Equal([0, 1, 0, 0], readings.Labels("part").Codes);
        Assert.Equal("mm", readings.Unit("value"));
        Assert.Equal([4, 5, 7, 9], Enumerable.Range(0, 4).Select(readings.Line));
    }

    [Fact]
    public void Read_Quantity_IsInSi() => Assert.Equal(
        [60, 90], Read("time [min]\n1\n1.5\n", ReadingColumn.Quantity("time", Dimension.Time, "0 s", "100 h")).Numbers("time"));

    [Fact]
    public void Read_EmptyOptionalCells_AreNaNAndMinusOne()
    {
        var readings = Read("value;size;phase\n1;;\n2;3;b\n", ReadingColumn.Number("value"),
            ReadingColumn.Number("size", optional: true), ReadingColumn.Label("phase", optional: true), ReadingColumn.Label("subgroup", optional: true));

        Assert.Equal([double.NaN, 3], readings.Numbers("size"));
        Assert.Equal([-1, 0], readings.Labels("phase").Codes);
        Assert.False(readings.Has("subgroup"));
    }

    [Theory]
    [InlineData("part;value\nA;\n", "row 2, column value", "nothing")]
    [InlineData("part;value\n;1\n", "row 2, column part", "nothing")]
    [InlineData("part;value\nA;1 234\n", "row 2, column value", "1 234")]
    [InlineData("part;value\nA;NaN\n", "row 2, column value", "NaN")]
    [InlineData("part;value\nA;1;2\n", "row 2", "3 fields")]
    [InlineData("part;value\nA;1.5\nA;1,5\n", "row 3, column value", "1,5")]
    [InlineData("part;value\nA;2e12\n", "row 2, column value", "2e12")]
    [InlineData("part,value\nA,\"1,500\"\n", "row 2, column value", "1,500")]
    [InlineData("part;valeu\nA;1\n", "header, column valeu", "valeu")]
    [InlineData("part\nA\n", "header", "part")]
    [InlineData("", "header", "no lines")]
    [InlineData("part;value\nA;\"1\n", "row 2", "a quote that is never closed")]
    public void Read_Broken_NamesThePlace(string text, string where, string found)
    {
        var faults = Assert.Throws<FaultsException>(() => Read(text, ReadingColumn.Label("part"), ReadingColumn.Number("value"))).Faults;

        Assert.Contains(faults, fault => fault.Where == where && fault.Found == found);
    }

    [Fact]
    public void Read_AThousandFaults_TellsAHundredAndTheRest()
    {
        var text = "value\n" + string.Concat(Enumerable.Repeat("x\n", 1000));

        var faults = Assert.Throws<FaultsException>(() => Read(text, ReadingColumn.Number("value"))).Faults;

        Assert.Equal(101, faults.Count);
        Assert.Equal("900 more faults", faults[^1].Found);
    }

    [Theory]
    [InlineData("\n", false)]
    [InlineData("\r\n", false)]
    [InlineData("\r", false)]
    [InlineData("\n", true)]
    public void Read_FileOfManyBlocks_LosesNoRow(string lineEnd, bool quoted)
    {
        const int count = 100_000;
        StringBuilder text = new("run;value" + lineEnd);
        for (int i = 0; i < count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"r{i % 7};");
            text.Append(quoted && i % 3 == 0 ? $"\"{i}.25\"" : $"{i}.25").Append(lineEnd);
        }

        var readings = Read(text.ToString(), ReadingColumn.Label("run"), ReadingColumn.Number("value"));

        Assert.Equal(Enumerable.Range(0, count).Select(i => i + 0.25), readings.Numbers("value"));
        Assert.Equal(Enumerable.Range(0, count).Select(i => i % 7), readings.Labels("run").Codes);
        Assert.Equal(count + 1, readings.Line(count - 1));
    }

    [Fact]
    [Trait("Kind", "Fuzz")]
    public void Read_AnyText_AgreesWithTable() => Gen.Char["ab1.,;\"\n\r #-e"].Array[0, 60].Select(letters => "b;a\n" + new string(letters)).Sample(text =>
    {
        List<Fault> faults = [];
        var table = Table.Parse(Encoding.UTF8.GetBytes(text), "t.csv", faults);
        Readings? readings = null;
        try
        {
            readings = Read(text, ReadingColumn.Label("b", optional: true), ReadingColumn.Label("a", optional: true));
        }
        catch (FaultsException)
        {
            Assert.NotEmpty(faults);
        }

        if (readings is null) return;
        Assert.Equal(table!.Rows.Select(row => row.Line), Enumerable.Range(0, readings.Count).Select(readings.Line));
        Assert.Equal(table.Rows.Select(row => row.Cells[1].Text), readings.Labels("a").Codes.Select(code => code < 0 ? "" : readings.Labels("a").Names[code]));
    });

    private static Readings Read(string text, params ReadOnlySpan<ReadingColumn> columns)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        File.WriteAllText(path, text);
        try
        {
            return Readings.Read(path, columns);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
