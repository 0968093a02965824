using System.CommandLine;
using Bellowsmith.App.Serving;

namespace Bellowsmith.App.Commands;

internal static class ServeCommand
{
    public const string Example =
        """
        bellowsmith serve --demo
        opens the drawing board in your browser on a copy of the example workshop. Only this machine can reach it.
        """;

    private const int UsualPort = 5080;

    public static Command Create()
    {
        Command command = new("serve", "The drawing board: every kit of a folder in your browser, on this machine alone. Ctrl-C stops it.");
        Argument<string> folder = DocumentArgument.Create("FOLDER", "Where the kits are; the current folder where not given.");
        folder.DefaultValueFactory = _ => ".";
        Option<bool> demo = new("--demo") { Description = "Work on a copy of the example workshop." };
        Option<int> port = new("--port") { Description = "Port on this machine; 0 takes any free one.", DefaultValueFactory = _ => UsualPort, HelpName = "number" };
        Option<bool> noOpen = new("--no-open") { Description = "Do not open the browser." };
        command.Add(folder);
        command.Add(demo);
        command.Add(port);
        command.Add(noOpen);
        command.Validators.Add(result =>
        {
            if (result.GetValue(port) is < 0 or > 65535) result.AddError("--port must lie between 0 and 65535.");
            if (result.GetValue(folder) is { } path && !Directory.Exists(path)) result.AddError($"There is no folder {path}.");
        });
        command.SetAction(parsed => Server.Run(
            parsed.GetRequiredValue(folder), parsed.GetValue(demo), parsed.GetValue(port), open: !parsed.GetValue(noOpen)));
        return command;
    }
}
