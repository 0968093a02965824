using System.Text.Unicode;

namespace Bellowsmith.Kits;

/// <summary>The bytes of a file a person named, UTF-8 with or without byte-order mark.</summary>
internal static class InputFile
{
    /// <summary>Far above any measured table; stops a device or a wrong file from filling the memory.</summary>
    private const int GreatestSize = 64 << 20;

    private static readonly byte[] _utf8Mark = [0xEF, 0xBB, 0xBF];

    /// <summary>The file's bytes; null, with the trouble in words, where it cannot be read.</summary>
    public static byte[]? Read(string path, out string trouble)
    {
        using FileStream? stream = Open(path, out trouble);
        try
        {
            return stream is null ? null : ReadAll(stream, out trouble);
        }
        catch (IOException)
        {
            trouble = "cannot be opened";
            return null;
        }
    }

    /// <summary>The file from its start; null, with the trouble in words, where it cannot be opened.</summary>
    public static FileStream? Open(string path, out string trouble)
    {
        trouble = Directory.Exists(path) ? "is a directory" : File.Exists(path) ? "" : "does not exist";
        if (trouble.Length > 0) return null;
        try
        {
            return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            trouble = "cannot be opened";
            return null;
        }
    }

    /// <summary>Where the text starts (after the byte-order mark); null, with a fault, where it is not UTF-8.</summary>
    public static int? TextStart(byte[] bytes, string file, ICollection<Fault> faults)
    {
        var start = bytes.AsSpan().StartsWith(_utf8Mark) ? _utf8Mark.Length : 0;
        if (NotText(bytes, file, () => $"line {FirstBadLine(bytes)}") is not { } fault) return start;
        faults.Add(fault);
        return null;
    }

    /// <summary>The fault of bytes that are no UTF-8 text; null where they are. They begin where the file or a character does.</summary>
    public static Fault? NotText(ReadOnlySpan<byte> bytes, string file, Func<string> badPlace) =>
        bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] ? new(file, "file", "UTF-16 text", "UTF-8 text", "Save the file as UTF-8.")
        : !Utf8.IsValid(bytes) ? new(file, badPlace(), "bytes that are not UTF-8", "UTF-8 text", "Save the file as UTF-8.")
        : bytes.Contains((byte)0) ? new(file, "file", "a zero byte", "UTF-8 text", "Save the file as UTF-8 text.")
        : null;

    /// <summary>The path as the caller would write it: relative where the file lies below the current directory.</summary>
    public static string Readable(string fullPath)
    {
        var relative = Path.GetRelativePath(Directory.GetCurrentDirectory(), fullPath);
        return relative == ".." || relative.StartsWith(".." + Path.DirectorySeparatorChar, StringComparison.Ordinal) ? fullPath : relative;
    }

    private static byte[]? ReadAll(FileStream stream, out string trouble)
    {
        trouble = "";
        using var memory = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (int count; (count = stream.Read(buffer)) > 0 && memory.Length <= GreatestSize;) memory.Write(buffer, 0, count);
        if (memory.Length <= GreatestSize) return memory.ToArray();
        trouble = "is larger than 64 MB";
        return null;
    }

    private static int FirstBadLine(byte[] bytes)
    {
        var line = 1;
        for (var start = 0; start < bytes.Length; line++)
        {
            var length = bytes.AsSpan(start).IndexOf((byte)'\n');
            var end = length < 0 ? bytes.Length : start + length + 1;
            if (!Utf8.IsValid(bytes.AsSpan(start, end - start))) return line;
            start = end;
        }
        return line;
    }
}
