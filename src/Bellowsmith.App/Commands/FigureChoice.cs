using System.CommandLine;
using Bellowsmith.Kits.Figures;

namespace Bellowsmith.App.Commands;

/// <summary>The options <c>--output FILE.svg</c> and <c>--figure NAME</c> of a command whose answer has several figures; the first is the usual one.</summary>
/// <typeparam name="T">What draws them.</typeparam>
internal sealed class FigureChoice<T>
{
    private readonly Dictionary<string, Func<T, Chart?>> _figures;
    private readonly Option<string> _figure;
    private readonly FigureOutput _output;

    public FigureChoice(Command command, params (string Name, Func<T, Chart?> Draw)[] figures)
    {
        _figures = figures.ToDictionary(f => f.Name, f => f.Draw);
        _output = new FigureOutput(command);
        _figure = new("--figure") { Description = "Which figure --output writes.", DefaultValueFactory = _ => figures[0].Name, HelpName = string.Join('|', _figures.Keys) };
        _figure.AcceptOnlyFromAmong([.. _figures.Keys]);
        command.Add(_figure);
        command.Validators.Add(result =>
        {
            if (result.GetResult(_figure) is { Implicit: false } && !_output.IsAsked(result)) result.AddError("--figure goes with --output.");
        });
    }

    /// <summary>Writes the figure where one is asked for and says so, or that there is none; null where none is asked for.</summary>
    public string? Write(ParseResult parsed, Func<T> of)
    {
        if (!_output.IsAsked(parsed.CommandResult)) return null;
        string name = parsed.GetValue(_figure)!;
        return _output.Write(parsed, () => _figures[name](of())) is { } file ? $"Figure: {file}" : $"No figure \"{name}\": the answer holds nothing to draw it from.";
    }
}
