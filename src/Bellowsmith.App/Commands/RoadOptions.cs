using System.CommandLine;
using System.CommandLine.Parsing;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

/// <summary>What is driven over: exactly one of a class, a white velocity, a bump and a profile; how fast and how long.</summary>
internal sealed class RoadOptions
{
    private const double Shortest_m = 0.01, Longest_m = 200, Lowest_m = 1e-3, Highest_m = 1;

    private static readonly Dictionary<string, BumpShape> _shapes = new()
    {
        ["round"] = BumpShape.Round,
        ["wave"] = BumpShape.Wave,
        ["flat-top"] = BumpShape.FlatTop,
        ["pothole"] = BumpShape.Pothole,
        ["kerb"] = BumpShape.Kerb,
    };

    private readonly Option<RoadClass?> _class = new("--road") { Description = "ISO 8608 class, A (smooth) to H.", HelpName = "class" };
    private readonly Option<double?> _density = NumberOption.Between(
        "--velocity-psd", "Instead of a class: one-sided density of the road's vertical velocity in time, (m/s)²/Hz.", "number", 0, 1e3);

    private readonly Option<string?> _bump = new("--bump") { Description = "Instead of a class: one bump on a level road, met after 5 s.", HelpName = "shape" };
    private readonly Option<string?> _profile = new("--profile") { Description = "Instead of a class: a measured profile, columns distance and height.", HelpName = "FILE.csv" };
    private readonly Option<Quantity?> _length = QuantityOption.Create(
        "--bump-length", "The bump's length over all", "4 m", Dimension.Length, QuantityOption.Within(Shortest_m, Longest_m, "between 10 mm and 200 m"));

    private readonly Option<Quantity?> _height = QuantityOption.Create(
        "--bump-height", "The bump's height, or how deep a pothole is", "75 mm", Dimension.Length, QuantityOption.Within(Lowest_m, Highest_m, "between 1 mm and 1 m"));

    private readonly Option<Quantity?> _ramp = QuantityOption.Create(
        "--bump-ramp", "Length of each ramp of a flat top, of each edge of a pothole", "0.8 m", Dimension.Length, QuantityOption.Within(0, Longest_m, "between 0 and 200 m"));

    private readonly Option<Quantity?> _speed = QuantityOption.Create(
        "--speed", "Driving speed", "80 km/h", Dimension.Speed, QuantityOption.Within(0.5, 100, "between 0.5 and 100 m/s"));

    private readonly Option<double> _seconds = new("--seconds")
    {
        Description = "Time driven; the first 5 s are not counted. A bump takes 10 s, a profile its own length, if nothing is said.",
        HelpName = "number",
    };

    private readonly Option<ulong> _seed = new("--seed") { Description = "Which of the many roads of this class.", DefaultValueFactory = _ => 1, HelpName = "number" };

    private readonly (RoadClass Class, double Speed_m_per_s)? _usual;

    /// <param name="command">Whose options.</param>
    /// <param name="usualSeconds">Time driven where none is given.</param>
    /// <param name="usual">The road where none is given, and the speed; null where both must be.</param>
    public RoadOptions(Command command, double usualSeconds = 60, (RoadClass Class, double Speed_m_per_s)? usual = null)
    {
        _usual = usual;
        _seconds.DefaultValueFactory = _ => usualSeconds;
        _bump.AcceptOnlyFromAmong([.. _shapes.Keys]);
        _speed.Required = usual is null;
        if (usual is { } unsaid)
        {
            _class.Description += $" {unsaid.Class} where no road is given.";
            _speed.Description += FormattableString.Invariant($" {unsaid.Speed_m_per_s * 3.6:0} km/h where not given.");
        }

        foreach (Option option in new Option[] { _class, _density, _bump, _length, _height, _ramp, _profile, _speed, _seconds, _seed }) command.Add(option);
        command.Validators.Add(Check);
    }

    /// <exception cref="Kits.FaultsException">The profile cannot be used.</exception>
    public RoadQuestion Question(ParseResult parsed)
    {
        RoadSurface surface = Surface(parsed);
        double speed = parsed.GetValue(_speed)?.Si ?? _usual!.Value.Speed_m_per_s;
        double? asked = parsed.GetResult(_seconds) is { Implicit: false } ? parsed.GetValue(_seconds) : null;
        double time = asked ?? surface switch
        {
            RoadWithBump => 2 * RideRun.Settling_s,
            RoadAsMeasured measured => Math.Clamp(RideRun.Settling_s + measured.Profile.Length_m / speed, RideRun.Settling_s + 1, 3600),
            _ => parsed.GetValue(_seconds),
        };
        return new RoadQuestion(surface, speed, time, parsed.GetValue(_seed));
    }

    private RoadSurface Surface(ParseResult parsed)
    {
        if (parsed.GetValue(_class) is { } rough) return new RoadOfClass(rough);
        if (parsed.GetValue(_density) is { } density) return new RoadOfVelocity(density);
        if (parsed.GetValue(_profile) is { } file) return new RoadAsMeasured(file, RoadTable.ReadFile(file));
        if (parsed.GetValue(_bump) is not { } bump) return new RoadOfClass(_usual!.Value.Class);
        return new RoadWithBump(Bump(bump, parsed.GetValue(_length)?.Si, parsed.GetValue(_height)?.Si, parsed.GetValue(_ramp)?.Si));
    }

    private static Bump Bump(string name, double? length_m, double? height_m, double? ramp_m)
    {
        Bump usual = Kits.Studies.Ride.Bump.Usual(_shapes[name]);
        return usual with { Length_m = length_m ?? usual.Length_m, Height_m = height_m ?? usual.Height_m, Ramp_m = ramp_m ?? usual.Ramp_m };
    }

    private void Check(CommandResult result)
    {
        Option[] kinds = [_class, _density, _bump, _profile];
        int given = kinds.Count(kind => result.GetResult(kind) is not null);
        if (given > 1 || (given == 0 && _usual is null))
            result.AddError("Give exactly one of --road, --velocity-psd, --bump and --profile.");
        else if (result.GetResult(_bump) is null && new Option[] { _length, _height, _ramp }.Any(size => result.GetResult(size) is not null))
            result.AddError("--bump-length, --bump-height and --bump-ramp belong to --bump.");
        else if (result.GetValue(_bump) is { } name && _shapes.ContainsKey(name) && Misshapen(Bump(name, result.GetValue(_length)?.Si, result.GetValue(_height)?.Si, result.GetValue(_ramp)?.Si)) is { } trouble)
            result.AddError(trouble);
        if (result.GetResult(_seconds) is { Implicit: false } && !(result.GetValue(_seconds) is > 6 and <= 3600)) result.AddError("--seconds must lie above 6 and be 3600 at most.");
    }

    private static string? Misshapen(Bump bump) => bump.Shape switch
    {
        BumpShape.Round when bump.Height_m > bump.Length_m / 2 => "--bump-height must be half of --bump-length at most: a round hump is part of a circle.",
        BumpShape.FlatTop or BumpShape.Pothole when bump.Ramp_m > bump.Length_m / 2 => "--bump-ramp must be half of --bump-length at most.",
        _ => null,
    };
}
