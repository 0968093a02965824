using System.CommandLine;
using System.CommandLine.Parsing;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

/// <summary>What every study command understands beside its own words.</summary>
internal sealed class StudyOptions
{
    private const double LeastAmbient_Pa = 20e3, GreatestAmbient_Pa = 120e3;
    private const string Metric = "metric", Imperial = "imperial", Written = "written";

    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON object and nothing else." };
    private readonly Option<string> _units = new("--units")
    {
        Description = "Units to read the answer in: metric, imperial, or written (as in your documents).",
        DefaultValueFactory = _ => Written,
    };

    private readonly Option<Quantity?> _ambient = QuantityOption.Create(
        "--ambient", "Absolute pressure outside", "84 kPa", Dimension.AbsolutePressure,
        ambient_Pa => ambient_Pa is < LeastAmbient_Pa or > GreatestAmbient_Pa ? "must lie between 20 and 120 kPa." : null);

    private readonly Option<Quantity?> _altitude = QuantityOption.Create(
        "--altitude", "Altitude that sets the pressure outside (standard atmosphere)", "1600 m", Dimension.Length,
        altitude_m => altitude_m is < StandardAtmosphere.LeastAltitude_m or > StandardAtmosphere.GreatestAltitude_m
            ? $"must lie between {StandardAtmosphere.LeastAltitude_m:0} and {StandardAtmosphere.GreatestAltitude_m:0} m." : null);

    private readonly Option<string?> _load = new("--load") { Description = "Load case of the car, by name.", HelpName = "case" };

    private readonly Option<Quantity?> _damperTemperature = QuantityOption.Create(
        "--damper-temperature", "Temperature the dampers' forces are brought to, within what their dyno runs cover", "60 degC", Dimension.Temperature);

    public StudyOptions(Command command, bool withLoadCase, bool withAmbient = true, bool withDamperTemperature = false)
    {
        _units.AcceptOnlyFromAmong(Metric, Imperial, Written);
        command.Add(_json);
        command.Add(_units);
        if (withLoadCase) command.Add(_load);
        if (withDamperTemperature) command.Add(_damperTemperature);
        if (!withAmbient) return;
        command.Add(_ambient);
        command.Add(_altitude);
        command.Validators.Add(Check);
    }

    public bool Json(ParseResult parsed) => parsed.GetValue(_json);

    public StudyConditions Conditions(ParseResult parsed) => new(Ambient_Pa(parsed), parsed.GetValue(_load), parsed.GetValue(_damperTemperature)?.Si);

    public double? Ambient_Pa(ParseResult parsed) => parsed.GetValue(_ambient)?.Si
        ?? (parsed.GetValue(_altitude) is { } altitude ? StandardAtmosphere.AbsolutePressure_Pa(altitude.Si) : null);

    /// <summary>The ambient pressure as it was typed, for its digits; null where it was not.</summary>
    public Quantity? WrittenAmbient(ParseResult parsed) => parsed.GetValue(_ambient);

    public DisplayUnits Units(ParseResult parsed, IReadOnlyDictionary<Dimension, string> written) => parsed.GetValue(_units) switch
    {
        Metric => DisplayUnits.Metric,
        Imperial => DisplayUnits.Imperial,
        _ => DisplayUnits.Written(written),
    };

    private void Check(CommandResult result)
    {
        if (result.GetResult(_ambient) is not null && result.GetResult(_altitude) is not null)
            result.AddError("Give --ambient or --altitude, not both.");
    }
}
