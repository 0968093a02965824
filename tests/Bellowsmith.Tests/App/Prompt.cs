using System.Diagnostics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.App;

/// <summary>The program run as a person runs it, from the root of the working tree, its output caught.</summary>
internal static class Prompt
{
    public static async Task<(int ExitCode, string Output, string Error)> Run(params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = ExampleFolder.Repository,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "bellowsmith.dll"));
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, (await output).ReplaceLineEndings("\n"), (await error).ReplaceLineEndings("\n"));
    }
}
