using System.Globalization;
using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Tables;

[Trait("Kind", "Fuzz")]
public sealed class TableFuzz
{
    private static readonly Gen<(double Value, string Text)> _number =
        from whole in Gen.Int[1000, 9999]
        from fraction in Gen.Char["0123456789"].Array[0, 4]
        let text = fraction.Length == 0 ? $"{whole}" : $"{whole}.{new string(fraction)}"
        select (double.Parse(text, CultureInfo.InvariantCulture), text);

    private sealed record Dress(char Separator, char Mark, bool Quoted, string LineEnd, bool ByteOrderMark, string Padding);

    private static readonly Gen<Dress> _dress = Gen.Select(
        Gen.Char[",;\t"], Gen.Char[".,"], Gen.Bool, Gen.OneOf("\n", "\r\n"), Gen.Bool, Gen.OneOf("", " "),
        (separator, mark, quoted, lineEnd, byteOrderMark, padding) => new Dress(separator, mark, quoted, lineEnd, byteOrderMark, padding));

    [Fact]
    public void Read_NumbersInAnyDress_AreTheNumbersOrAFault() =>
        Gen.Select(_number.Array[8, 12], _dress).Sample((numbers, dress) =>
        {
            var faults = new List<Fault>();
            var spring = TableSamples.Spring(Write(numbers, dress), faults) as MeasuredSpring;
            if (dress.Separator != dress.Mark) Assert.Empty(faults);
            Assert.Equal(faults.Count == 0, spring is not null);
            if (spring is not null) Assert.Equal(numbers.Select(number => number.Value), spring.Rows.Select(row => row.Force_N));
        }, iter: 5_000);

    [Fact]
    public void Read_SomeDecimalMarksFlipped_IsTheSameOrAFault() => SameOrFault(",.");

    [Fact]
    public void Read_SomeSeparatorsFlipped_IsTheSameOrAFault() => SameOrFault(";\t");

    [Fact]
    public void Read_SomeSeparatorsMadeCommas_IsTheSameOrAFault() =>
        Gen.Double[0, 1].Array[1, 3].Select(shares => shares.Aggregate(TableSamples.Measured, PutComma)).Sample(CheckSame, iter: 2_000);

    [Fact]
    public void Read_EditedTable_IsWholeOrAFault() =>
        Gen.Select(Gen.OneOf(TableSamples.Measured, TableSamples.Characteristic), Mutation.Edits).Sample((text, edits) =>
        {
            var faults = new List<Fault>();
            var data = TableSamples.Spring(Encoding.UTF8.GetBytes(edits(text)), faults);
            Assert.Equal(faults.Count == 0, data is not null);
            if (data is not null) AssertFinite(data);
        }, iter: 5_000);

    [Fact]
    public void Read_EditedDyno_IsADamperOrSaysWhy() =>
        Gen.Select(Gen.OneOf(TableSamples.Dyno, TableSamples.WideDyno, TableSamples.RawDyno), Mutation.Edits, Gen.Bool).Sample((text, edits, gasIn) =>
        {
            var faults = new List<Fault>();
            if (Table.Parse(Encoding.UTF8.GetBytes(edits(text)), "d.csv", faults) is not { } table) return;
            var data = DynoTable.Read(table, new(GasIn: gasIn), faults);
            Assert.Equal(faults.Count == 0, data is not null);
            if (data is null) return;
            var fit = DamperFit.Of(data);
            if (fit.Damper is not { } damper) return;
            foreach (var click in damper.Clicks)
                foreach (var velocity in (double[])[-0.2, -0.01, 0, 0.01, 0.2])
                    Assert.True(double.IsFinite(damper.Curve(click).At(velocity).Value));
        }, iter: 3_000);

    [Fact]
    public void Parse_AnyBytes_NeverCrashes() =>
        Gen.OneOf(Gen.Byte.Array[0, 200], Gen.Char[" ,;\t\"\r\n#[]1.5ahm"].Array[0, 60].Select(letters => Encoding.ASCII.GetBytes(letters)))
            .Sample(bytes =>
            {
                var faults = new List<Fault>();
                var table = Table.Parse(bytes, "t.csv", faults);
                Assert.Equal(faults.Count == 0, table is not null);
                if (table is null) return;
                TableSamples.Spring(bytes, faults);
                RatioTable.Read(table, faults);
                DynoTable.Read(table, new(), faults);
                StopTable.Read(table, faults);
            }, iter: 20_000);

    [Fact]
    public void WithCell_EditedTable_KeepsEveryOtherCell() =>
        Gen.Select(Mutation.Edits, Gen.Double[0, 1], Gen.OneOf("", "7", "7,5", "a;b", "say \"x\"", "#")).Sample((edits, share, text) =>
        {
            var faults = new List<Fault>();
            if (Table.Parse(Encoding.UTF8.GetBytes(edits(TableSamples.Measured)), "t.csv", faults) is not { Rows.Count: > 1 } table) return;
            var (row, column) = ((int)(share * (table.Rows.Count - 1)), table.Columns[(int)(share * (table.Columns.Count - 1))]);
            var again = Table.Parse(table.WithCell(table.Rows[row], column, text), "t.csv", faults)!;
            if (again.Rows.Count < table.Rows.Count) return; // the row's only text was emptied
            var expected = table.Rows.Select((old, i) => old.Cells.Select((cell, j) => i == row && j == column.Index ? text : cell.Text).ToArray());
            Assert.Equal(expected.ToList(), again.Rows.Select(now => now.Cells.Select(cell => cell.Text).ToArray()).ToList());
        }, iter: 3_000);

    private static void SameOrFault(string marks) => Mutation.Flips(TableSamples.Measured, marks).Sample(CheckSame, iter: 2_000);

    private static void CheckSame(string text)
    {
        var faults = new List<Fault>();
        var original = (MeasuredSpring)TableSamples.Spring(TableSamples.Measured, [])!;
        if (TableSamples.Spring(text, faults) is MeasuredSpring spring) Assert.Equal(original.Rows, spring.Rows);
        else Assert.NotEmpty(faults);
    }

    private static string PutComma(string text, double share)
    {
        var places = text.Select((letter, place) => (letter, place)).Where(found => found.letter == ';').Select(found => found.place).ToArray();
        var at = places[(int)(share * (places.Length - 1))];
        return text.Remove(at, 1).Insert(at, ",");
    }

    private static byte[] Write((double Value, string Text)[] numbers, Dress dress)
    {
        string Cell(string text)
        {
            var marked = text.Replace('.', dress.Mark);
            return dress.Padding + (dress.Quoted ? $"\"{marked}\"" : marked) + dress.Padding;
        }

        var lines = numbers.Select(number => string.Join(dress.Separator, Cell("80"), Cell("5.5"), Cell(number.Text)));
        var text = string.Join(dress.LineEnd, lines.Prepend(string.Join(dress.Separator, "height [mm]", "gauge pressure [bar]", "force [N]")));
        return [.. dress.ByteOrderMark ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(text)];
    }

    private static void AssertFinite(SpringData data)
    {
        if (data is MeasuredSpring measured)
            Assert.All(measured.Rows, row => Assert.True(double.IsFinite(row.Height_m + row.GaugePressure_Pa + row.Force_N + (row.Volume_m3 ?? 0))));
        else
            Assert.All(((CharacteristicSpring)data).Rows, row => Assert.True(double.IsFinite(row.Height_m + row.EffectiveArea_m2 + row.Volume_m3)));
    }
}
