using System.CommandLine;
using System.Runtime.CompilerServices;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Papers;

namespace Bellowsmith.App.Commands;

/// <summary>The option <c>--output FILE.pdf|.svg|.dxf</c> of commands that draw a part to scale. Where it is not given nothing of Bellowsmith.Papers loads.</summary>
internal sealed class DrawingOutput
{
    // Letters of a drawing 1 : 1 (ISO 3098).
    private const double DxfLetters_mm = 3.5;

    private readonly Option<string?> _output = new("--output", "-o")
    {
        Description = "Write the drawing: a name that ends in .pdf, .svg or .dxf; a file there is replaced.",
        HelpName = "FILE.pdf",
    };

    public DrawingOutput(Command command)
    {
        _output.Validators.Add(result =>
        {
            if (result.Tokens.Count == 0) return;
            string given = result.Tokens[0].Value;
            if (Ending(given) is not (".pdf" or ".svg" or ".dxf") || Path.GetFileNameWithoutExtension(given).Length == 0)
                result.AddError($"--output \"{given}\" must end in .pdf, .svg or .dxf.");
        });
        command.Add(_output);
    }

    /// <summary>Draws and writes where a drawing is asked for, and returns the file written; null where none is.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <param name="title">Of the drawing.</param>
    /// <param name="draw">The part drawn with letters of so many mm of the part.</param>
    /// <exception cref="FaultsException">The file cannot be written.</exception>
    public string? Write(ParseResult parsed, string title, Func<double, SheetDrawing> draw)
    {
        if (parsed.GetValue(_output) is not { Length: > 0 } file) return null;
        OutputFile.Write(new FileBytes(file, Bytes(Ending(file), title, draw)));
        return file;
    }

    private static string Ending(string file) => Path.GetExtension(file).ToLowerInvariant();

    // Apart, so that the runtime meets Papers only on the way here.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static byte[] Bytes(string ending, string title, Func<double, SheetDrawing> draw) => ending switch
    {
        ".pdf" => DrawingPdf.Write(title, draw, Paper.A4),
        ".svg" => DrawingSheetSvg.Write(title, draw),
        _ => DrawingDxf.Write(draw(DxfLetters_mm)),
    };
}
