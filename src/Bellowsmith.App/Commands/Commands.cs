using System.CommandLine;
using System.Text;

namespace Bellowsmith.App.Commands;

/// <summary>Everything that can be asked at the prompt. Exit codes: 0 answered, 1 wrong usage, 2 faults in the input, 3 no solution.</summary>
public static class Commands
{
    public static int Run(string[] args)
    {
        Console.OutputEncoding = Encoding.UTF8;
        return Root().Parse(args).Invoke();
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
            ClearanceCommand.Create(),
            MountCommand.Create(),
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
            ["clearance"] = ClearanceCommand.Example,
            ["mount"] = MountCommand.Example,
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
