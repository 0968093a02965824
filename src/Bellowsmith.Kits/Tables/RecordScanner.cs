using System.Text;

namespace Bellowsmith.Kits.Tables;

/// <summary>Walks a CSV file's bytes record by record. The separator is the one mark that stands in the header.</summary>
internal sealed class RecordScanner(byte[] bytes, int start, string file, ICollection<Fault> faults, int line = 1, char separator = '\0')
{
    private int _at = start;
    private int _line = line;

    public char Separator { get; private set; } = separator;

    /// <summary>The line the next record is looked for, from 1.</summary>
    public int Line => _line;

    /// <summary>Where the next record is looked for.</summary>
    public int At => _at;

    /// <summary>The header, which settles the separator; null, with a fault, where there is none or it is ambiguous.</summary>
    public Row? ReadHeader()
    {
        SkipEmptyLines();
        var found = SeparatorsInHeader();
        if (found.Count > 1)
        {
            faults.Add(new(file, $"row {_line}", $"both {string.Join(" and ", found.Select(InWords))} between column names",
                "one of comma, semicolon and tab", "Separate all columns with the same mark, or put names that contain one in quotes."));
            return null;
        }
        Separator = found.Count > 0 ? found[0] : ';';
        var header = ReadRecord();
        if (header is null)
            faults.Add(new(file, "header", "no lines", "a header line such as height [mm];force [N]", "Write the column names in the first line."));
        return header;
    }

    /// <summary>The next record that holds anything; null at the end of the file.</summary>
    public Row? ReadRecord()
    {
        while (true)
        {
            SkipEmptyLines();
            if (_at == bytes.Length) return null;
            var line = _line;
            var cells = ReadCells();
            if (cells.Exists(cell => cell.Length > 0)) return new(line, cells);
        }
    }

    private List<Cell> ReadCells()
    {
        var cells = new List<Cell>();
        while (true)
        {
            SkipBlanks();
            cells.Add(_at < bytes.Length && bytes[_at] == '"' ? QuotedCell() : PlainCell());
            if (_at == bytes.Length) return cells;
            if (bytes[_at] != Separator)
            {
                SkipLineEnd();
                return cells;
            }
            _at++;
        }
    }

    private Cell PlainCell()
    {
        var first = _at;
        while (!AtFieldEnd()) _at++;
        var end = _at;
        while (end > first && IsBlank(bytes[end - 1])) end--;
        return new(Encoding.UTF8.GetString(bytes, first, end - first).Trim(), first, end - first);
    }

    private Cell QuotedCell()
    {
        var (first, line) = (_at++, _line);
        while (_at < bytes.Length && (bytes[_at] != '"' || Next == '"'))
        {
            if (bytes[_at] == '\n') _line++;
            _at += bytes[_at] == '"' ? 2 : 1;
        }
        if (_at >= bytes.Length)
        {
            _at = bytes.Length;
            faults.Add(new(file, $"row {line}", "a quote that is never closed", "text between two quotes", "Close the quote, or write \"\" for a quote inside the text."));
            return new("", first, bytes.Length - first);
        }
        var text = Encoding.UTF8.GetString(bytes, first + 1, _at - first - 1).Replace("\"\"", "\"", StringComparison.Ordinal);
        var length = ++_at - first;
        SkipBlanks();
        if (!AtFieldEnd())
        {
            faults.Add(new(file, $"row {_line}", "text after a closing quote", "a separator or the end of the line", "Put the whole field in quotes."));
            while (!AtFieldEnd()) _at++;
        }
        return new(text.Trim(), first, length);
    }

    private List<char> SeparatorsInHeader()
    {
        var found = new SortedSet<char>();
        var quoted = false;
        for (var at = _at; at < bytes.Length && (quoted || bytes[at] is not ((byte)'\n' or (byte)'\r')); at++)
        {
            if (bytes[at] == '"') quoted = !quoted;
            else if (!quoted && bytes[at] is (byte)',' or (byte)';' or (byte)'\t') found.Add((char)bytes[at]);
        }
        return [.. found];
    }

    private void SkipEmptyLines()
    {
        while (_at < bytes.Length)
        {
            var first = _at;
            while (_at < bytes.Length && bytes[_at] is (byte)' ' or (byte)'\t') _at++;
            if (_at < bytes.Length && bytes[_at] == '#') _at = LineEnd();
            if (_at < bytes.Length && !AtLineEnd)
            {
                _at = first;
                return;
            }
            SkipLineEnd();
        }
    }

    private void SkipLineEnd()
    {
        if (_at == bytes.Length) return;
        _at += bytes[_at] == '\r' && Next == '\n' ? 2 : 1;
        _line++;
    }

    private void SkipBlanks()
    {
        while (_at < bytes.Length && IsBlank(bytes[_at])) _at++;
    }

    private int LineEnd()
    {
        var length = bytes.AsSpan(_at).IndexOfAny((byte)'\n', (byte)'\r');
        return length < 0 ? bytes.Length : _at + length;
    }

    private int Next => _at + 1 < bytes.Length ? bytes[_at + 1] : -1;

    private bool AtLineEnd => bytes[_at] is (byte)'\n' or (byte)'\r';

    private bool AtFieldEnd() => _at == bytes.Length || AtLineEnd || bytes[_at] == Separator;

    private bool IsBlank(byte value) => value == ' ' || (value == '\t' && Separator != '\t');

    private static string InWords(char separator) => separator switch { ',' => "comma", ';' => "semicolon", _ => "tab" };
}
