using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text;

namespace Bellowsmith.App.Commands;

/// <summary>Everything that can be asked at the prompt. Exit codes: 0 answered, 1 wrong usage, 2 faults in the input, 3 no solution.</summary>
public static class Commands
{
    private const int Usage = 1;

    public static int Run(string[] args)
    {
        Console.OutputEncoding = Encoding.UTF8;
        ParseResult parsed = Root().Parse(args);
        return parsed.Errors.Count > 0 && args.Contains("--json") ? Refused(parsed) : parsed.Invoke();
    }

    // A program that asked for JSON reads stdout: no help there.
    private static int Refused(ParseResult parsed)
    {
        foreach (ParseError error in parsed.Errors) Console.Error.WriteLine(error.Message);
        return Usage;
    }

    internal static RootCommand Root()
    {
        RootCommand root = new(
            "Bellowsmith computes air-suspension struts for lowered road cars: from a measured spring to the height it is installed at.")
        {
            HeightCommand.Create(),
            TravelCommand.Create(),
            DampingCommand.Create(),
            SpringCommand.Create(),
            DamperCommand.Create(),
            BellowsCommand.Create(),
            LinkageCommand.Create(),
            GeometryCommand.Create(),
            AlignmentCommand.Create(),
            WheelCommand.Create(),
            MountCommand.Create(),
            ClearanceCommand.Create(),
            BracketCommand.Create(),
            ChartCommand.Create(),
            GaugeCommand.Create(),
            ClicksCommand.Create(),
            LeakCommand.Create(),
            PairsCommand.Create(),
            SerialCommand.Create(),
            RideCommand.Create(),
            MapCommand.Create(),
            SearchCommand.Create(TimeProvider.System),
            SheetCommand.Create(),
            CapabilityCommand.Create(),
            LifeCommand.Create(),
            ServeCommand.Create(),
            CompletionCommand.Create(),
        };
        WorkedExamples.AddTo(root, new Dictionary<string, string>
        {
            [root.Name] = HeightCommand.Example,
            ["height"] = HeightCommand.Example,
            ["travel"] = TravelCommand.Example,
            ["damping"] = DampingCommand.Example,
            ["spring"] = SpringCommand.Example,
            ["damper"] = DamperCommand.Example,
            ["bellows"] = BellowsCommand.Example,
            ["linkage"] = LinkageCommand.Example,
            ["geometry"] = GeometryCommand.Example,
            ["alignment"] = AlignmentCommand.Example,
            ["wheel"] = WheelCommand.Example,
            ["mount"] = MountCommand.Example,
            ["clearance"] = ClearanceCommand.Example,
            ["bracket"] = BracketCommand.Example,
            ["chart"] = ChartCommand.Example,
            ["gauge"] = GaugeCommand.Example,
            ["clicks"] = ClicksCommand.Example,
            ["leak"] = LeakCommand.Example,
            ["pairs"] = PairsCommand.Example,
            ["serial"] = SerialCommand.Example,
            ["new"] = SerialCommand.Example,
            ["check"] = SerialCommand.Example,
            ["ride"] = RideCommand.Example,
            ["map"] = MapCommand.Example,
            ["search"] = SearchCommand.Example,
            ["sheet"] = SheetCommand.Example,
            ["capability"] = CapabilityCommand.Example,
            ["life"] = LifeCommand.Example,
            ["plan"] = LifeCommand.PlanExample,
            ["fit"] = LifeCommand.FitExample,
            ["serve"] = ServeCommand.Example,
            ["completion"] = CompletionCommand.Example,
        });
        return root;
    }
}
