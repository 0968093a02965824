using System.Text;

namespace Bellowsmith.Kits.Tables;

/// <summary>A cell's text without quotes, and the bytes it takes in the file with them.</summary>
public readonly record struct Cell(string Text, int Start, int Length);

/// <summary>One record of the file; <paramref name="Line"/> is the line it starts on, from 1.</summary>
public sealed record Row(int Line, IReadOnlyList<Cell> Cells);

/// <summary>A column: its header as written, the name in lower case, and the unit from its brackets, if any.</summary>
public sealed record Column(int Index, string Header, string Name, string? UnitSpelling)
{
    internal static Column Of(string header, int index)
    {
        var bracket = header.EndsWith(']') ? header.IndexOf('[', StringComparison.Ordinal) : -1;
        var name = bracket < 0 ? header : header[..bracket];
        var words = name.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries);
        return new(index, header, string.Join(' ', words).ToLowerInvariant(), bracket < 0 ? null : header[(bracket + 1)..^1].Trim());
    }
}

/// <summary>
/// A CSV file as it stands: a header line, then rows of as many fields. Comma, semicolon or tab between fields; quotes;
/// blank lines, lines of separators only and lines that begin with # are passed over. Numbers are read by
/// <see cref="ColumnReading"/>, which holds the whole file to one decimal mark.
/// </summary>
public sealed class Table
{
    private readonly byte[] _bytes;

    private Table(byte[] bytes, string file, char separator, IReadOnlyList<Column> columns, IReadOnlyList<Row> rows)
    {
        (_bytes, File, Separator, Columns, Rows) = (bytes, file, separator, columns, rows);
    }

    /// <summary>The file's path as the caller would write it.</summary>
    public string File { get; }

    public char Separator { get; }

    public IReadOnlyList<Column> Columns { get; }

    public IReadOnlyList<Row> Rows { get; }

    /// <summary>Reads a file's bytes; null where the table's shape is broken, with every such fault added.</summary>
    public static Table? Parse(byte[] bytes, string file, ICollection<Fault> faults)
    {
        if (InputFile.TextStart(bytes, file, faults) is not { } start) return null;
        var before = faults.Count;
        var scanner = new RecordScanner(bytes, start, file, faults);
        if (scanner.ReadHeader() is not { } header) return null;
        var columns = header.Cells.Select((cell, index) => Column.Of(cell.Text, index)).ToList();
        var rows = new List<Row>();
        while (scanner.ReadRecord() is { } row)
        {
            if (row.Cells.Count != columns.Count) faults.Add(WrongCount(file, row.Line, row.Cells.Count, columns.Count, scanner.Separator));
            rows.Add(row);
        }
        return faults.Count > before ? null : new(bytes, file, scanner.Separator, columns, rows);
    }

    /// <summary>Reads a table by itself.</summary>
    /// <exception cref="FaultsException">The file cannot be read or its shape is broken.</exception>
    public static Table Read(string path)
    {
        var file = InputFile.Readable(Path.GetFullPath(path));
        if (InputFile.Read(path, out var trouble) is not { } bytes)
            throw new FaultsException([new(file, "file", $"a path that {trouble}", "a CSV file", "Check the path.")]);
        var faults = new List<Fault>();
        return Parse(bytes, file, faults) ?? throw new FaultsException(faults);
    }

    /// <summary>The file's bytes with one cell's text replaced; every other byte stays.</summary>
    public byte[] WithCell(Row row, Column column, string text)
    {
        var cell = row.Cells[column.Index];
        return [.. _bytes.AsSpan(0, cell.Start), .. Encoding.UTF8.GetBytes(Quoted(text)), .. _bytes.AsSpan(cell.Start + cell.Length)];
    }

    private string Quoted(string text) =>
        text.AsSpan().ContainsAny([Separator, '"', '\n', '\r', '#']) || text != text.Trim()
            ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : text;

    internal static Fault WrongCount(string file, int line, int found, int wanted, char separator) => new(
        file,
        $"row {line}",
        $"{found} fields",
        $"{wanted} fields, as in the header",
        separator == ',' && found > wanted
            ? "Where commas are decimal marks, separate the columns with semicolons."
            : "Give the row as many fields as the header has; leave a field empty where there is no value.");
}
