using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Boards;

/// <summary>Writes what was set into the kit's document: only the changed values' bytes, and only over what was read.</summary>
public sealed class KitEdit(string file)
{
    private static readonly JsonSerializerOptions _plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private byte[] _read = File.ReadAllBytes(file);

    /// <summary>Whether the last save wrote the document.</summary>
    public bool Saved { get; private set; }

    /// <summary>Writes the changes; says in a sentence what came of it.</summary>
    public string Save(DisplayUnits units, IEnumerable<(AxleEnd End, StrutSetting From, StrutSetting To)> changes)
    {
        Saved = false;
        try
        {
            if (!File.ReadAllBytes(file).AsSpan().SequenceEqual(_read))
                return "Not saved: the document has been changed elsewhere since it was opened. Open it again to see what it says now.";
            byte[] bytes = _read;
            foreach ((AxleEnd end, StrutSetting from, StrutSetting to) in changes) bytes = With(bytes, units, $"struts.{Names.Of(end)}", from, to);
            Put(bytes);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return "Not saved: the document cannot be written.";
        }

        Saved = true;
        return $"Saved to {Path.GetFileName(file)}.";
    }

    private byte[] With(byte[] bytes, DisplayUnits units, string strut, StrutSetting from, StrutSetting to)
    {
        if (from.DriveHeight != to.DriveHeight) bytes = Set(bytes, $"{strut}.driveHeight", to.DriveHeight is { } h ? Text(bytes, units, Dimension.Length, h) : null);
        if (from.Wanted != to.Wanted && to.Wanted is { } wanted) bytes = SetWanted(bytes, units, $"{strut}.target", from.Wanted?.Kind, wanted);
        if (from.Load != to.Load) bytes = Set(bytes, $"{strut}.load", JsonValue.Create(to.Load).ToJsonString(_plain));
        if (from.Click != to.Click) bytes = Set(bytes, $"{strut}.click", to.Click?.ToString(CultureInfo.InvariantCulture));
        return bytes;
    }

    private byte[] SetWanted(byte[] bytes, DisplayUnits units, string target, TargetKind? from, Wanted wanted)
    {
        string key = wanted.Kind switch { TargetKind.RideFrequency => "rideFrequency", TargetKind.WheelRate => "wheelRate", _ => "springRate" };
        string text = Text(bytes, units, Hands.DimensionOf(wanted.Kind), wanted.Value);
        return from == wanted.Kind ? Set(bytes, $"{target}.{key}", text) : Set(bytes, target, $"{{ \"{key}\": {text} }}");
    }

    private byte[] Set(byte[] bytes, string path, string? json)
    {
        JsonSource source = Source(bytes);
        return json is not null ? source.WithKey(path, json) : source.Has(path) ? source.WithoutValue(path) : bytes;
    }

    // As it was typed; what the document said before it was changed is written in the unit shown. The document keeps its decimal mark.
    private string Text(byte[] bytes, DisplayUnits units, Dimension dimension, Written value)
    {
        string text = value.Text.Length > 0 ? value.Text : units.UnitOf(dimension).Write(value.Si, 6);
        return $"\"{(Source(bytes).DecimalMark() == ',' ? text.Replace('.', ',') : text)}\"";
    }

    private JsonSource Source(byte[] bytes) => JsonSource.Parse(bytes, file, []) ?? throw new System.Diagnostics.UnreachableException();

    // Beside the document first, then in its place, so that it is never half written.
    private void Put(byte[] bytes)
    {
        string real = File.ResolveLinkTarget(file, returnFinalTarget: true)?.FullName ?? file, beside = real + ".saving";
        File.WriteAllBytes(beside, bytes);
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(beside, File.GetUnixFileMode(real));
        File.Move(beside, real, overwrite: true);
        _read = bytes;
    }
}
