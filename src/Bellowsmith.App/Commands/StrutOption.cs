using System.CommandLine;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;

namespace Bellowsmith.App.Commands;

/// <summary>The option <c>--strut front|rear</c> of commands that look at one strut; the kit's first where it is not given.</summary>
internal sealed class StrutOption
{
    private readonly Option<string?> _strut = new("--strut") { Description = "Which strut, where the kit has two: front or rear; else the first." };

    public StrutOption(Command command)
    {
        _strut.AcceptOnlyFromAmong(Names.Of(AxleEnd.Front), Names.Of(AxleEnd.Rear));
        command.Add(_strut);
    }

    /// <exception cref="FaultsException">The kit has no such strut, or it lacks what a ride needs.</exception>
    public RideStrut Strut(ParseResult parsed, Kit kit, StudyConditions conditions)
    {
        AxleEnd end = parsed.GetValue(_strut) is { } name ? name == Names.Of(AxleEnd.Front) ? AxleEnd.Front : AxleEnd.Rear : kit.Struts().First().End;
        if (kit.Struts().All(s => s.End != end))
            throw new FaultsException([new Fault(kit.File, $"struts.{Names.Of(end)}", "nothing", "a strut", $"The kit has no {Names.Of(end)} strut; leave --strut away.")]);
        return RideStruts.Of(end == AxleEnd.Front ? kit with { Rear = null } : kit with { Front = null }, conditions)[0];
    }
}
