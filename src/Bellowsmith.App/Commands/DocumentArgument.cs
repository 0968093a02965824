using System.CommandLine;

namespace Bellowsmith.App.Commands;

/// <summary>The path of the document a command reads; a mistyped option is not taken for one.</summary>
internal static class DocumentArgument
{
    public static Argument<string> Create(string name, string description)
    {
        Argument<string> argument = new(name) { Description = description };
        argument.Validators.Add(result =>
        {
            string given = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (given.StartsWith('-')) result.AddError($"There is no option {given}.");
        });
        return argument;
    }
}
