using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>The letters of a sheet (Inter, OFL), from this assembly rather than from the machine, so that every machine prints alike.</summary>
/// <param name="tabular">Whether every digit takes the room of a zero.</param>
internal sealed class Letters(bool tabular) : IDisposable
{
    private readonly Dictionary<(bool Bold, float Size), SKFont> _fonts = [];
    private readonly SKTypeface _regular = Load("Inter-Regular.ttf"), _bold = Load("Inter-SemiBold.ttf");

    public SKFont Font(float size, bool bold)
    {
        if (_fonts.TryGetValue((bold, size), out SKFont? known)) return known;
        return _fonts[(bold, size)] = new SKFont(bold ? _bold : _regular, size) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };
    }

    public float Width(string text, float size, bool bold) =>
        Font(size, bold).MeasureText(tabular ? string.Concat(text.Select(c => char.IsAsciiDigit(c) ? '0' : c)) : text);

    /// <summary>Lines no wider than so much, broken between words; a word longer than a line is broken inside.</summary>
    public IReadOnlyList<string> Lines(string text, float size, bool bold, float width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (Width(longer, size, bold) <= width) line = longer;
            else
            {
                if (line.Length > 0) lines.Add(line);
                line = word;
                while (Width(line, size, bold) > width && line.Length > 1)
                {
                    int fits = Enumerable.Range(1, line.Length).Last(n => n == 1 || Width(line[..n], size, bold) <= width);
                    lines.Add(line[..fits]);
                    line = line[fits..];
                }
            }
        }

        if (line.Length > 0) lines.Add(line);
        return lines;
    }

    public void Dispose()
    {
        foreach (SKFont font in _fonts.Values) font.Dispose();
        _regular.Dispose();
        _bold.Dispose();
    }

    private static SKTypeface Load(string name)
    {
        using Stream stream = typeof(Letters).Assembly.GetManifestResourceStream(name)!;
        using SKData data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
