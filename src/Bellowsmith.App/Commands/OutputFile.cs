using Bellowsmith.Kits;

namespace Bellowsmith.App.Commands;

/// <summary>Writes what a command makes; a path that cannot be written is a fault of the input.</summary>
internal static class OutputFile
{
    public static void Write(FileBytes made)
    {
        try
        {
            File.WriteAllBytes(made.File, made.Bytes.Span);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new FaultsException([new Fault(made.File, "file", "a path that cannot be written", "a file in a folder that exists", "Check the path and who may write there.")]);
        }
    }
}
