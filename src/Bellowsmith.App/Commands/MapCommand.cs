using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Papers;

namespace Bellowsmith.App.Commands;

internal static class MapCommand
{
    public const string Example =
        """
        bellowsmith map examples/fenwright/kits/ostrane-street.json --x click --y height --show weightedRms --road C --speed "80 km/h"
        drives every click at every height and says where the present setting stands and where the least is; -o map.svg draws
        the map, -o map.csv and -o map.json write all cells.
        """;

    private const int UsualCells = 24, MostCells = 128;

    private static readonly Dictionary<string, MapVariable> _variables = new()
    {
        ["click"] = MapVariable.Click,
        ["height"] = MapVariable.Height,
        ["gauge-pressure"] = MapVariable.GaugePressure,
        ["stop"] = MapVariable.Stop,
        ["speed"] = MapVariable.Speed,
        ["road"] = MapVariable.Road,
        ["load"] = MapVariable.Load,
    };

    public static Command Create()
    {
        Command command = new("map", "Which setting is best? Every setting of two kinds driven, and any answer of a ride shown over them.");
        Argument<string> kit = DocumentArgument.Create("KIT.json", "A kit document.");
        Option<string> x = Axis("--x", "What runs along"), y = Axis("--y", "What runs up");
        Option<RideQuantity> show = new("--show")
        {
            Description = $"What shades it: {string.Join(", ", RideQuantity.All.Select(q => q.Name.Split('_')[0]))}.",
            DefaultValueFactory = _ => RideQuantity.WeightedRms,
            CustomParser = Show,
            HelpName = "answer",
        };
        Option<(int Columns, int Rows)> grid = new("--grid")
        {
            Description = $"Columns and rows, for example 32x32; {MostCells}x{MostCells} at most. Road and load have as many as there are.",
            DefaultValueFactory = _ => (UsualCells, UsualCells),
            CustomParser = Grid,
            HelpName = "CxR",
        };
        Option<string?> output = new("--output", "-o") { Description = "Draw the map or write all cells: a name that ends in .svg, .csv or .json; a file there is replaced.", HelpName = "FILE" };
        output.Validators.Add(result =>
        {
            string given = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (Path.GetExtension(given).ToLowerInvariant() is not (".svg" or ".csv" or ".json")) result.AddError($"--output \"{given}\" must end in .svg, .csv or .json.");
        });
        command.Add(kit);
        foreach (Option option in new Option[] { x, y, show, grid, output }) command.Add(option);
        RoadOptions road = new(command, usualSeconds: 30);
        SettingOptions setting = new(command);
        StrutOption strut = new(command, "Which strut is driven");
        StudyOptions options = new(command, withLoadCase: true);
        command.Validators.Add(result => Check(result, x, y));
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            RoadQuestion question = road.Question(parsed);
            Kit read = KitReader.Read(parsed.GetRequiredValue(kit));
            RideStrut driven = RideStruts.Of(strut.Only(parsed, read), options.Conditions(parsed))[0];
            (int columns, int rows) = parsed.GetValue(grid);
            List<Fault> faults = [];
            MapAxis? along = Axis(x, columns), up = Axis(y, rows);
            if (faults.Count > 0) throw new FaultsException(faults);
            MapRun map = new(new MapQuestion(
                driven, [.. read.Car.Loads.Select(load => driven.At(load, read.Car))], along!, up!, parsed.GetValue(show)!, question, setting.Setting(parsed)));
            Progress.Drive(map);
            Answer(map);
            return new MapWords(map, options.Units(parsed, read.WrittenUnits)).Least() is null ? Study.NoSolution : Study.Answered;

            MapAxis? Axis(Option<string> option, int count)
            {
                string name = parsed.GetRequiredValue(option);
                MapAxis? axis = MapAxis.Usual(_variables[name], driven, read.Car, count);
                if (axis is null) faults.Add(new(read.File, $"struts.{Names.Of(driven.End)}", $"nothing that gives {option.Name} {name} a range", "a strut that has it", "Choose another axis, or complete the kit's spring, damper and drive height."));
                return axis;
            }

            void Answer(MapRun done)
            {
                var units = options.Units(parsed, read.WrittenUnits);
                string json = AnswerJson.Write(MapAnswer.Of(done, units));
                if (parsed.GetValue(output) is { } file)
                    OutputFile.Write(new FileBytes(file, Path.GetExtension(file).ToLowerInvariant() switch
                    {
                        ".svg" => Svg(SettingMap.Of(done, units)),
                        ".csv" => MapAnswer.Csv(done),
                        _ => Encoding.UTF8.GetBytes(json + "\n"),
                    }));
                if (options.Json(parsed)) Console.WriteLine(json);
                else MapView.Show(Screen.Output(), read, done, units, parsed.GetValue(output));
            }
        }));
        return command;
    }

    // Apart, so that the runtime meets Papers only on the way here.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static byte[] Svg(SettingMap map) => MapSvg.Write(map);

    private static Option<string> Axis(string name, string words)
    {
        Option<string> option = new(name) { Description = $"{words}: {string.Join(", ", _variables.Keys)}.", Required = true, HelpName = "variable" };
        option.AcceptOnlyFromAmong([.. _variables.Keys]);
        return option;
    }

    private static void Check(CommandResult result, Option<string> x, Option<string> y)
    {
        (string? along, string? up) = (result.GetValue(x), result.GetValue(y));
        if (along is not null && along == up) result.AddError($"--x and --y are both {along}: choose two.");
        foreach (string? axis in new[] { along, up })
            if (axis is not ("load" or "speed" or "road") && result.Children.OfType<OptionResult>().Any(o => !o.Implicit && o.Option.Name == $"--{axis}"))
                result.AddError($"--{axis} is an axis of the map: leave its value away.");
        if (new[] { along, up }.Contains("road") && result.Children.OfType<OptionResult>().Any(o => !o.Implicit && o.Option.Name is "--velocity-psd" or "--bump" or "--profile"))
            result.AddError("Where road classes are an axis, --road is the only kind of road.");
    }

    private static RideQuantity? Show(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        if (RideQuantity.Find(text) is { } quantity) return quantity;
        result.AddError($"--show \"{text}\" is no answer of a ride: write one of {string.Join(", ", RideQuantity.All.Select(q => q.Name.Split('_')[0]))}.");
        return null;
    }

    private static (int, int) Grid(ArgumentResult result)
    {
        string[] parts = string.Concat(result.Tokens.Select(t => t.Value)).Split('x', '×');
        if (parts.Length == 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int columns)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int rows)
            && columns is >= 2 and <= MostCells && rows is >= 2 and <= MostCells) return (columns, rows);
        result.AddError($"--grid must be columns x rows, each from 2 to {MostCells}, for example 32x32.");
        return default;
    }
}
