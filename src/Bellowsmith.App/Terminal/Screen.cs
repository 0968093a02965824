using Spectre.Console;
using Spectre.Console.Rendering;

namespace Bellowsmith.App.Terminal;

/// <summary>The terminal a person reads. Colour only where it is a terminal; a pipe gets plain text of a steady width.</summary>
internal sealed class Screen
{
    private const int PipeWidth = 112, WidestText = 112;

    private readonly IAnsiConsole _console;
    private readonly TextWriter _writer;
    private readonly StringWriter? _piped;

    private Screen(TextWriter writer, bool piped)
    {
        _writer = writer;
        _piped = piped ? new StringWriter() : null;
        _console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(_piped ?? writer),
            Ansi = piped ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = piped ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Interactive = InteractionSupport.No,
        });
        if (piped) _console.Profile.Width = PipeWidth;
    }

    public static Screen Output() => new(Console.Out, Console.IsOutputRedirected);

    public static Screen Error() => new(Console.Error, Console.IsErrorRedirected);

    /// <summary>A screen without colour on any writer.</summary>
    public static Screen On(TextWriter writer) => new(writer, piped: true);

    public void Blank() => _writer.WriteLine();

    public void Title(string text) => Write(new Markup($"[bold]{Markup.Escape(text)}[/]"), 0);

    public void Answer(string text) => Write(new Markup($"[bold blue]{Markup.Escape(text)}[/]"), 2);

    public void Say(string text) => Write(new Text(text), 2);

    public void Quiet(string text) => Write(new Markup($"[grey]{Markup.Escape(text)}[/]"), 2);

    public void Warn(string text) => Write(new Markup($"[yellow]{Markup.Escape(text)}[/]"), 2);

    /// <summary>A heading and what hangs under it, indented.</summary>
    public void Point(string about, string text)
    {
        Grid grid = new();
        grid.AddColumn(new GridColumn { NoWrap = true, Padding = new Padding(2, 0, 2, 0), Width = 16 });
        grid.AddColumn(new GridColumn { Padding = new Padding(0, 0, 0, 0) });
        grid.AddRow(new Markup($"[grey]{Markup.Escape(about)}[/]"), new Text(text));
        Put(grid);
    }

    /// <summary>Columns of text; the first to the left, the others to the right.</summary>
    public void Table(IReadOnlyList<string> headings, IEnumerable<(IReadOnlyList<string> Cells, bool Marked)> rows)
    {
        (IReadOnlyList<string> Cells, bool Marked)[] all = [.. rows];
        Table table = new Table().Border(TableBorder.Simple).BorderStyle(new Style(Color.Grey));
        for (int i = 0; i < headings.Count; i++)
        {
            TableColumn column = new(new Markup($"[grey]{Markup.Escape(headings[i])}[/]")) { NoWrap = i > 0 && Whole(headings[i], all.Select(row => row.Cells[i])) };
            table.AddColumn(i == 0 ? column.LeftAligned() : column.RightAligned());
        }

        foreach ((IReadOnlyList<string> cells, bool marked) in all)
            table.AddRow(cells.Select(c => (IRenderable)new Markup(marked ? $"[bold blue]{Markup.Escape(c)}[/]" : Markup.Escape(c))));
        Put(new Padder(table, new Padding(1, 0, 0, 0)));
    }

    // A heading of several words makes room by standing on several lines; a number cannot.
    private static bool Whole(string heading, IEnumerable<string> cells) =>
        heading.Length == 0 || (!heading.Contains(' ') && !cells.Any(cell => cell.Contains(' ')));

    private void Write(IRenderable text, int indent) => Put(new Padder(text, new Padding(indent, 0, 0, 0)));

    private void Put(IRenderable content)
    {
        int width = _console.Profile.Width;
        _console.Profile.Width = Math.Min(width, WidestText);
        _console.Write(content);
        _console.Profile.Width = width;
        if (_piped is not null) PassOn(_piped);
    }

    // Boxes are filled up with blanks, which nobody wants in a file.
    private void PassOn(StringWriter box)
    {
        foreach (string line in box.ToString().TrimEnd('\n').Split('\n')) _writer.WriteLine(line.TrimEnd());
        box.GetStringBuilder().Clear();
    }
}
