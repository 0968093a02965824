using System.CommandLine;
using System.CommandLine.Parsing;
using System.Runtime.CompilerServices;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Papers;

namespace Bellowsmith.App.Commands;

/// <summary>The option <c>--output FILE.svg</c> of commands that can draw their answer. Where it is not given nothing of Bellowsmith.Papers loads.</summary>
internal sealed class FigureOutput
{
    private readonly Option<string?> _output = new("--output", "-o")
    {
        Description = "Write the figure as SVG; a file there is replaced.",
        HelpName = "FILE.svg",
    };

    public FigureOutput(Command command)
    {
        _output.Validators.Add(result =>
        {
            if (result.Tokens.Count == 0) return;
            string given = result.Tokens[0].Value;
            if (!given.EndsWith(".svg", StringComparison.OrdinalIgnoreCase) || Path.GetFileNameWithoutExtension(given).Length == 0)
                result.AddError($"--output \"{given}\" is not the name of a figure: write a name that ends in .svg.");
        });
        command.Add(_output);
    }

    public bool IsAsked(CommandResult result) => result.GetValue(_output) is { Length: > 0 };

    /// <summary>Draws and writes the figure where one is asked for, and returns the file written; null where none is asked for.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <param name="figure">Makes the figure; null where the answer has none, such as too few values.</param>
    /// <exception cref="FaultsException">The file cannot be written.</exception>
    public string? Write(ParseResult parsed, Func<Chart?> figure)
    {
        if (parsed.GetValue(_output) is not { Length: > 0 } file || figure() is not { } chart) return null;
        OutputFile.Write(new FileBytes(file, Svg(chart)));
        return file;
    }

    // Apart, so that the runtime meets Papers only on the way here.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static byte[] Svg(Chart chart) => ChartSvg.Write(chart);
}
