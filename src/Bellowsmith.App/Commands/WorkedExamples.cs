using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Bellowsmith.App.Commands;

/// <summary>The usual help, closed by one worked example of the command that was asked about.</summary>
internal sealed class WorkedExamples(HelpAction usual, IReadOnlyDictionary<string, string> examples) : SynchronousCommandLineAction
{
    public static void AddTo(RootCommand root, IReadOnlyDictionary<string, string> examples)
    {
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new WorkedExamples((HelpAction)help.Action!, examples);
    }

    public override int Invoke(ParseResult parseResult)
    {
        int code = usual.Invoke(parseResult);
        if (!examples.TryGetValue(parseResult.CommandResult.Command.Name, out string? example)) return code;
        TextWriter output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Example:");
        foreach (string line in example.Split('\n')) output.WriteLine("  " + line);
        output.WriteLine();
        return code;
    }
}
