using System.CommandLine;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;

namespace Bellowsmith.App.Commands;

/// <summary>The option <c>--strut front|rear</c>: which of a kit's struts is meant.</summary>
internal sealed class StrutOption
{
    private readonly Option<string?> _strut;

    /// <param name="command">Whose option.</param>
    /// <param name="whose">What is wanted of the strut, "Whose figure".</param>
    public StrutOption(Command command, string whose)
    {
        _strut = new("--strut") { Description = $"{whose}: front or rear; the kit's first where not given.", HelpName = "front|rear" };
        _strut.AcceptOnlyFromAmong("front", "rear");
        command.Add(_strut);
    }

    /// <exception cref="FaultsException">The kit has no such strut.</exception>
    public T Of<T>(ParseResult parsed, Kit kit, IReadOnlyList<T> results, Func<T, AxleEnd> end) =>
        parsed.GetValue(_strut) is not { } asked ? results[0]
            : results.FirstOrDefault(r => Names.Of(end(r)) == asked)
            ?? throw new FaultsException([new Fault(kit.File, $"struts.{asked}", "nothing", "the strut asked for", $"Give the kit a {asked} strut, or leave out --strut.")]);
}
