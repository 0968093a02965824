using System.Globalization;
using System.Text;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A long table of readings, read once from the file into one flat array for each wanted column: a file of ten million rows
/// takes eight bytes a number and a block to read it in. Shape, decimal marks and faults are those of <see cref="Table"/>.
/// </summary>
public sealed class Readings
{
    private readonly Dictionary<string, MatchedColumn> _columns = [];
    private readonly Dictionary<string, double[]> _numbers = [];
    private readonly Dictionary<string, LabelColumn> _labels = [];
    private readonly List<(int Row, int Line)> _jumps = [];
    private readonly CappedFaults _faults;
    private readonly DecimalMarks _marks = new();
    private ReadingStore?[] _stores = [];
    private char _separator;

    private Readings(string file) => (File, _faults) = (file, new(file));

    /// <summary>The file's path as the caller would write it.</summary>
    public string File { get; }

    /// <summary>How many rows there are.</summary>
    public int Count { get; private set; }

    /// <summary>Reads a file's wanted columns.</summary>
    /// <exception cref="FaultsException">Every fault of the file, the first hundred in full.</exception>
    public static Readings Read(string path, params ReadOnlySpan<ReadingColumn> columns)
    {
        Readings readings = new(InputFile.Readable(Path.GetFullPath(path)));
        using FileStream? stream = InputFile.Open(path, out string trouble);
        if (stream is null) throw new FaultsException([new(readings.File, "file", $"a path that {trouble}", "a CSV file", "Check the path.")]);
        readings.Read(stream, [.. columns]);
        return readings;
    }

    public bool Has(string name) => _columns.ContainsKey(name);

    /// <summary>A column's numbers, as written or, for a quantity, in SI; NaN where an optional cell is empty.</summary>
    public double[] Numbers(string name) => _numbers[name];

    public LabelColumn Labels(string name) => _labels[name];

    /// <summary>The unit in the column's header as it is spelled there; null where there is none.</summary>
    public string? Unit(string name) => _columns[name].Column.UnitSpelling;

    /// <summary>The line of the file a row starts on, from 1.</summary>
    public int Line(int row)
    {
        int found = _jumps.BinarySearch((row, int.MaxValue));
        (int jumpRow, int line) = _jumps[(found < 0 ? ~found : found) - 1];
        return line + row - jumpRow;
    }

    /// <summary>A fault at a row's cell.</summary>
    public Fault Fault(int row, string name, string found, string allowed, string fix) =>
        new(File, string.Create(CultureInfo.InvariantCulture, $"row {Line(row)}, column {_columns[name].Column.Header}"), found, allowed, fix);

    private void Read(Stream stream, ReadingColumn[] wanted)
    {
        RecordBlocks blocks = new(stream, File, _faults);
        int line = 1;
        bool headed = false;
        while (blocks.Next())
        {
            ReadOnlyMemory<byte> block = blocks.Block;
            if (!headed)
            {
                if (!TryReadHeader(block, wanted, ref line, out int start)) break;
                (headed, block) = (true, block[start..]);
            }

            if (block.Span.Contains((byte)'"')) TakeQuoted(block.ToArray(), ref line);
            else TakePlain(block.Span, ref line);
        }

        if (!headed && _faults.Count == 0) TryReadHeader(default, wanted, ref line, out _);
        _marks.Check(File, _separator, _faults);
        _faults.ThrowIfAny();
        foreach (ReadingStore store in _stores.OfType<ReadingStore>()) Keep(store);
        _stores = [];
    }

    private void Keep(ReadingStore store)
    {
        _columns[store.Name] = store.Matched;
        if (store.Matched.Rule.IsText) _labels[store.Name] = store.Labels();
        else _numbers[store.Name] = store.Numbers();
    }

    private bool TryReadHeader(ReadOnlyMemory<byte> block, ReadingColumn[] wanted, ref int line, out int end)
    {
        RecordScanner scanner = new(block.ToArray(), 0, File, _faults);
        Row? header = scanner.ReadHeader();
        (line, end, _separator) = (scanner.Line, scanner.At, scanner.Separator);
        if (header is null) return false;
        Column[] columns = [.. header.Cells.Select((cell, index) => Column.Of(cell.Text, index))];
        HeaderMatch match = new(File, columns, [.. wanted.Select(column => column.Rule)], _faults);
        match.Require([.. wanted.Where(column => !column.Optional).Select(column => column.Rule)]);
        _stores = new ReadingStore?[columns.Length];
        foreach (ReadingColumn column in wanted)
        {
            if (match.Find(column.Rule.Name) is not { } found) continue;
            _stores[found.Column.Index] = new(found, column.Optional, _marks, _faults, File);
        }

        return true;
    }

    // Without quotes a record is a line and a field ends at the separator.
    private void TakePlain(ReadOnlySpan<byte> block, ref int line)
    {
        for (; !block.IsEmpty; line++)
        {
            int length = block.IndexOfAny((byte)'\n', (byte)'\r');
            ReadOnlySpan<byte> record = length < 0 ? block : block[..length];
            int skip = length < 0 ? 0 : block[length] == '\r' && length + 1 < block.Length && block[length + 1] == '\n' ? 2 : 1;
            block = block[(record.Length + skip)..];
            if (HoldsAnything(record)) TakeFields(record, line);
        }
    }

    private void TakeFields(ReadOnlySpan<byte> record, int line)
    {
        int fields = record.Count((byte)_separator) + 1;
        if (!Expect(line, fields)) return;
        for (int field = 0; field < fields; field++)
        {
            int end = record.IndexOf((byte)_separator);
            _stores[field]?.Take(line, (end < 0 ? record : record[..end]).Trim(" \t"u8));
            record = record[(end + 1)..];
        }
    }

    private void TakeQuoted(byte[] block, ref int line)
    {
        RecordScanner scanner = new(block, 0, File, _faults, line, _separator);
        while (scanner.ReadRecord() is { } row)
        {
            if (!Expect(row.Line, row.Cells.Count)) continue;
            for (int field = 0; field < row.Cells.Count; field++) _stores[field]?.Take(row.Line, Encoding.UTF8.GetBytes(row.Cells[field].Text));
        }

        line = scanner.Line;
    }

    private bool Expect(int line, int fields)
    {
        if (fields != _stores.Length)
        {
            _faults.Add(Table.WrongCount(File, line, fields, _stores.Length, _separator));
            return false;
        }

        if (_jumps.Count == 0 || line - _jumps[^1].Line != Count - _jumps[^1].Row) _jumps.Add((Count, line));
        Count++;
        return true;
    }

    private bool HoldsAnything(ReadOnlySpan<byte> record)
    {
        ReadOnlySpan<byte> text = record.TrimStart(" \t"u8);
        return !text.IsEmpty && text[0] != '#' && text.ContainsAnyExcept((byte)' ', (byte)'\t', (byte)_separator);
    }
}
