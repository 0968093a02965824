using System.CommandLine;

namespace Bellowsmith.App.Commands;

/// <summary>Prints a script that lets a shell complete commands and options by asking this program for what fits.</summary>
internal static class CompletionCommand
{
    private const string Bash =
        """
        _bellowsmith_complete() {
          local IFS=$'\n' word="${COMP_WORDS[COMP_CWORD]}"
          COMPREPLY=($(compgen -W "$("${COMP_WORDS[0]}" "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)" -- "$word"))
          [ ${#COMPREPLY[@]} -gt 0 ] || COMPREPLY=($(compgen -f -- "$word"))
        }
        complete -o filenames -F _bellowsmith_complete bellowsmith ./bellowsmith
        """;

    private const string Zsh =
        """
        _bellowsmith_complete() {
          local -a found
          found=("${(@f)$("${words[1]}" "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
          compadd -- ${found:#} || _files
          _files
        }
        compdef _bellowsmith_complete bellowsmith ./bellowsmith
        """;

    private const string Fish =
        """
        complete -c bellowsmith -a '(bellowsmith "[suggest:"(string length (commandline -cp))"]" (commandline -cp) 2>/dev/null)'
        """;

    public const string Example =
        """
        source <(./bellowsmith completion bash)
        """;

    public static Command Create()
    {
        Command command = new("completion", "Prints the script that completes commands and options in your shell.");
        Argument<string> shell = new("SHELL") { Description = "bash, zsh or fish" };
        shell.AcceptOnlyFromAmong("bash", "zsh", "fish");
        command.Add(shell);
        command.SetAction(parsed => Console.WriteLine(parsed.GetRequiredValue(shell) switch
        {
            "bash" => Bash,
            "zsh" => Zsh,
            _ => Fish,
        }));
        return command;
    }
}
