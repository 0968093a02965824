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
            SpringCommand.Create(),
            BellowsCommand.Create(),
            RideCommand.Create(),
            SheetCommand.Create(),
            ServeCommand.Create(),
            CompletionCommand.Create(),
        };
        WorkedExamples.AddTo(root, new Dictionary<string, string>
        {
            [root.Name] = HeightCommand.Example,
            ["height"] = HeightCommand.Example,
            ["travel"] = TravelCommand.Example,
            ["spring"] = SpringCommand.Example,
            ["bellows"] = BellowsCommand.Example,
            ["ride"] = RideCommand.Example,
            ["sheet"] = SheetCommand.Example,
            ["serve"] = ServeCommand.Example,
            ["completion"] = CompletionCommand.Example,
        });
        return root;
    }
}
