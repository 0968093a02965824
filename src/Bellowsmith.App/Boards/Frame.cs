using System.Buffers;
using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Bellowsmith.App.Boards;

/// <summary>
/// What a page paints, in one piece: the length of a JSON text, the text, and behind it all arrays as 32-bit floats. The text
/// names an array by where it begins and how many numbers it has.
/// </summary>
public sealed class Frame
{
    private static readonly JsonWriterOptions _plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly List<float> _numbers = [];

    public JsonObject Json { get; } = [];

    public JsonArray Array(ReadOnlySpan<double> values)
    {
        JsonArray place = new(_numbers.Count, values.Length);
        foreach (double value in values) _numbers.Add((float)value);
        return place;
    }

    public JsonArray Array(ReadOnlySpan<float> values)
    {
        JsonArray place = new(_numbers.Count, values.Length);
        _numbers.AddRange(values);
        return place;
    }

    public byte[] ToBytes()
    {
        ArrayBufferWriter<byte> text = new();
        using (Utf8JsonWriter writer = new(text, _plain)) Json.WriteTo(writer);
        int padded = (text.WrittenCount + 3) & ~3;
        byte[] bytes = new byte[4 + padded + 4 * _numbers.Count];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, padded);
        text.WrittenSpan.CopyTo(bytes.AsSpan(4));
        bytes.AsSpan(4 + text.WrittenCount, padded - text.WrittenCount).Fill((byte)' ');
        MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(_numbers)).CopyTo(bytes.AsSpan(4 + padded));
        return bytes;
    }
}
