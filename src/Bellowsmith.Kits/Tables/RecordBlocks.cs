namespace Bellowsmith.Kits.Tables;

/// <summary>
/// Cuts a stream into blocks that end where a record ends, so that a file of any length is read in the memory of one block.
/// A line end inside quotes ends no record: a block is cut only where its quotes are even.
/// </summary>
internal sealed class RecordBlocks(Stream stream, string file, ICollection<Fault> faults)
{
    private const int BlockSize = 1 << 18, GreatestBlock = 64 << 20;

    private byte[] _buffer = new byte[BlockSize];
    private int _filled, _start, _end;
    private bool _ended;

    /// <summary>The records of the block at hand.</summary>
    public ReadOnlyMemory<byte> Block => _buffer.AsMemory(_start, _end - _start);

    /// <summary>Moves to the next block; false at the end of the file or, with a fault, at bytes that are not UTF-8 text.</summary>
    public bool Next()
    {
        bool first = _end == 0;
        _buffer.AsSpan(_end, _filled - _end).CopyTo(_buffer);
        (_filled, _start, _end) = (_filled - _end, 0, 0);
        do
        {
            Fill();
            _end = _ended ? _filled : LastRecordEnd();
        }
        while (_end == 0 && !_ended);
        if (_end == 0) return false;
        if (first && _buffer.AsSpan(0, _end).StartsWith("\uFEFF"u8)) _start = 3;
        return IsText();
    }

    private void Fill()
    {
        if (_filled == _buffer.Length) Array.Resize(ref _buffer, _buffer.Length * 2);
        while (_filled < _buffer.Length)
        {
            int count = stream.Read(_buffer, _filled, _buffer.Length - _filled);
            if (count == 0) _ended = true;
            if (count == 0) return;
            _filled += count;
        }
    }

    // A quote that is never closed would swallow the file: past the greatest block it is cut anyway, and the scanner names it.
    private int LastRecordEnd()
    {
        ReadOnlySpan<byte> bytes = _buffer.AsSpan(0, _filled);
        bool odd = bytes.Count((byte)'"') % 2 != 0;
        for (int end = bytes.Length; end > 0;)
        {
            int line = bytes[..end].LastIndexOfAny((byte)'\n', (byte)'\r');
            if (line < 0) break;
            odd ^= bytes[(line + 1)..end].Count((byte)'"') % 2 != 0;
            // A carriage return at the very end may have its line feed still to come.
            if (!odd && !(bytes[line] == '\r' && line + 1 == bytes.Length)) return line + 1;
            end = line;
        }

        return bytes.Length >= GreatestBlock ? bytes.Length : 0;
    }

    private bool IsText()
    {
        Fault? fault = InputFile.NotText(_buffer.AsSpan(0, _end), file, () => "file");
        if (fault is not null) faults.Add(fault);
        return fault is null;
    }
}
