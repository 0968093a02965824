using System.CommandLine;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;

namespace Bellowsmith.App.Commands;

/// <summary>The option <c>--strut front|rear</c>: which of a kit's struts is meant; its first where it is not given.</summary>
internal sealed class StrutOption
{
    private readonly Option<string?> _strut;

    /// <param name="command">Whose option.</param>
    /// <param name="whose">What is wanted of the strut, "Whose figure".</param>
    /// <param name="otherwise">Which is meant where none is asked for.</param>
    public StrutOption(Command command, string whose, string otherwise = "the kit's first")
    {
        _strut = new("--strut") { Description = $"{whose}: front or rear; {otherwise} where not given.", HelpName = "front|rear" };
        _strut.AcceptOnlyFromAmong(Names.Of(AxleEnd.Front), Names.Of(AxleEnd.Rear));
        command.Add(_strut);
    }

    /// <summary>The result of the strut asked for.</summary>
    /// <exception cref="FaultsException">The kit has no such strut.</exception>
    public T Of<T>(ParseResult parsed, Kit kit, IReadOnlyList<T> results, Func<T, AxleEnd> end)
    {
        AxleEnd asked = End(parsed, kit);
        return results.First(result => end(result) == asked);
    }

    /// <summary>The kit with the strut asked for alone.</summary>
    /// <exception cref="FaultsException">The kit has no such strut.</exception>
    public Kit Only(ParseResult parsed, Kit kit) => kit.Only(End(parsed, kit));

    /// <summary>The same, and the whole kit where none is asked for.</summary>
    /// <exception cref="FaultsException">The kit has no such strut.</exception>
    public Kit OnlyIfAsked(ParseResult parsed, Kit kit) => parsed.GetValue(_strut) is null ? kit : Only(parsed, kit);

    /// <summary>Which of the kit's struts is asked for.</summary>
    /// <exception cref="FaultsException">The kit has no such strut.</exception>
    public AxleEnd End(ParseResult parsed, Kit kit)
    {
        AxleEnd[] there = [.. kit.Struts().Select(s => s.End)];
        if (parsed.GetValue(_strut) is not { } name) return there[0];
        AxleEnd asked = name == Names.Of(AxleEnd.Front) ? AxleEnd.Front : AxleEnd.Rear;
        return there.Contains(asked) ? asked
            : throw new FaultsException([new Fault(kit.File, $"struts.{name}", "nothing", "the strut asked for", $"Give the kit a {name} strut, or leave out --strut.")]);
    }
}
