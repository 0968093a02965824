using System.Diagnostics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.App;

/// <summary>The program run as a person runs it, from the root of the working tree, its output caught.</summary>
internal static class Prompt
{
    public static Task<(int ExitCode, string Output, string Error)> Run(params string[] arguments) =>
        Run(Path.Combine(AppContext.BaseDirectory, "bellowsmith.dll"), arguments);

    /// <summary>The same where it draws.</summary>
    public static Task<(int ExitCode, string Output, string Error)> Draw(params string[] arguments) => Run(WithNativeLibraries(), arguments);

    /// <summary>Beside these tests lies a copy without its native libraries; its own folder has them.</summary>
    public static string WithNativeLibraries()
    {
        DirectoryInfo own = new(AppContext.BaseDirectory);
        return own.Parent!.Parent!.EnumerateFiles("bellowsmith.dll", SearchOption.AllDirectories)
            .First(f => f.FullName.Contains("Bellowsmith.App", StringComparison.Ordinal) && f.Directory!.Name.StartsWith(own.Name, StringComparison.Ordinal)).FullName;
    }

    private static async Task<(int ExitCode, string Output, string Error)> Run(string program, string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = ExampleFolder.Repository,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(program);
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, (await output).ReplaceLineEndings("\n"), (await error).ReplaceLineEndings("\n"));
    }
}
