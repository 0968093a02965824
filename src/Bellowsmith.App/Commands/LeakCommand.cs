using System.CommandLine;
using System.CommandLine.Parsing;
using Bellowsmith.App.Terminal;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.LeakTest;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Commands;

/// <summary>The options of <c>leak</c> and what they are in the study.</summary>
internal sealed class LeakCommand
{
    public const string Example =
        """
        bellowsmith leak --volume "1.25 L" --start-gauge "150 psi" --start-temperature "21.5 degC" --end-gauge "147.1 psi"
            --end-temperature "17 degC" --time "24 h" --limit "2 psi" --fixture "a rigid frame at 80 mm"
        answers with the leak at 20 °C, its uncertainty, and whether it keeps the limit with 95 %.
        bellowsmith leak examples/fenwright/measured/leak-log.csv --volume "1.30 L" --limit "3 kPa" --settle "30 min"
        judges a log: columns time, gauge pressure or absolute pressure, temperature.
        "Not decidable" is a verdict too: it says why and what would decide.
        """;

    private const double LeastAmbient_Pa = 20e3;

    private readonly Argument<string?> _log = new("FILE.csv") { Description = "A log of the test, in place of two readings.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<Quantity?> _volume = Positive("--volume", "Volume of the air under test, line to the closed valve included", "1.25 L", Dimension.Volume);
    private readonly Option<Quantity?> _startGauge = Positive("--start-gauge", "Gauge pressure at the start", "150 psi", Dimension.GaugePressure);
    private readonly Option<Quantity?> _endGauge = QuantityOption.Create("--end-gauge", "Gauge pressure at the end", "147.1 psi", Dimension.GaugePressure,
        gauge_Pa => gauge_Pa > -LeastAmbient_Pa ? null : "must be above -20 kPa.");
    private readonly Option<Quantity?> _startTemperature = Temperature("--start-temperature", "Temperature of the part's air at the start", "21.5 degC");
    private readonly Option<Quantity?> _endTemperature = Temperature("--end-temperature", "Temperature of the part's air at the end", "17 degC");
    private readonly Option<Quantity?> _time = Positive("--time", "Time between the readings; with a log, the time the limit is for", "24 h", Dimension.Time);
    private readonly Option<Quantity?> _settle = QuantityOption.Create("--settle", "Leave out a log's first minutes, while part and air settle", "15 min", Dimension.Time);
    private readonly Option<Quantity?> _endAmbient = Positive("--end-ambient", "Absolute pressure outside at the end, where it was read again", "100.9 kPa", Dimension.AbsolutePressure);
    private readonly Option<Quantity?> _reference = Temperature("--reference-temperature", "Temperature the leak rate is stated at (20 degC unless given)", "20 degC");
    private readonly Option<Quantity?> _limit = Positive("--limit", "Greatest corrected loss over the time, at the start temperature", "2 psi", Dimension.GaugePressure);
    private readonly Option<Quantity?> _gaugeUncertainty = Uncertainty("--pressure-uncertainty", "a gauge reading", "60 Pa", Dimension.GaugePressure);
    private readonly Option<Quantity?> _temperatureUncertainty = Uncertainty("--temperature-uncertainty", "a temperature", "0.1 K", Dimension.Temperature);
    private readonly Option<Quantity?> _volumeUncertainty = Uncertainty("--volume-uncertainty", "the volume", "20 mL", Dimension.Volume);
    private readonly Option<Quantity?> _timeUncertainty = Uncertainty("--time-uncertainty", "the time", "1 s", Dimension.Time);
    private readonly Option<double> _creep = new("--creep")
    {
        Description = "Standard uncertainty of the volume's change during the test (the bellows creeps), as a share of it, for example \"0.02 %\".",
        HelpName = "share",
        CustomParser = ReadShare,
    };

    private readonly Option<string?> _fixture = new("--fixture", "--held") { Description = "What held the part's height, in your words.", HelpName = "text" };

    private LeakCommand() { }

    public static Command Create()
    {
        Command command = new("leak", "Does it leak more than it may? Pressure decay corrected for temperature, with its uncertainty; the raw drop is never the verdict.");
        new LeakCommand().AddTo(command);
        return command;
    }

    private void AddTo(Command command)
    {
        command.Add(_log);
        foreach (Option option in (Option[])[_volume, _startGauge, _startTemperature, _endGauge, _endTemperature, _time, _settle, _endAmbient, _reference,
            _limit, _gaugeUncertainty, _temperatureUncertainty, _volumeUncertainty, _timeUncertainty, _creep, _fixture]) command.Add(option);
        _volume.Required = true;
        StudyOptions options = new(command, withLoadCase: false);
        command.Validators.Add(Check);
        command.SetAction(parsed => Study.Run(options.Json(parsed), () =>
        {
            LeakTestInput input = Input(parsed, options);
            LeakTestResult result = LeakTestStudy.Answer(input);
            Dictionary<Dimension, string> written = new() { [Dimension.Volume] = input.Volume.Unit.Name };
            written[Dimension.GaugePressure] = input.StartGauge?.Unit.Name ?? input.Limit?.Unit.Name ?? input.Log!.GaugeUnit;
            if (options.Json(parsed)) Console.WriteLine(AnswerJson.Write(LeakAnswer.Of(result)));
            else LeakView.Show(Screen.Output(), result, options.Units(parsed, written));
            return Study.Answered;
        }));
    }

    private LeakTestInput Input(ParseResult parsed, StudyOptions options) => new()
    {
        Volume = parsed.GetValue(_volume)!.Value,
        Log = parsed.GetValue(_log) is { } path ? DecayTable.Read(path) : null,
        StartGauge = parsed.GetValue(_startGauge),
        EndGauge = parsed.GetValue(_endGauge),
        StartTemperature = parsed.GetValue(_startTemperature),
        EndTemperature = parsed.GetValue(_endTemperature),
        Time = parsed.GetValue(_time),
        Settle = parsed.GetValue(_settle),
        Ambient_Pa = options.Ambient_Pa(parsed) ?? StandardAtmosphere.SeaLevel_Pa,
        Ambient = options.WrittenAmbient(parsed),
        EndAmbient = parsed.GetValue(_endAmbient),
        ReferenceTemperature = parsed.GetValue(_reference),
        Limit = parsed.GetValue(_limit),
        GaugeUncertainty = parsed.GetValue(_gaugeUncertainty),
        TemperatureUncertainty = parsed.GetValue(_temperatureUncertainty),
        VolumeUncertainty = parsed.GetValue(_volumeUncertainty),
        TimeUncertainty = parsed.GetValue(_timeUncertainty),
        Creep = parsed.GetValue(_creep),
        Fixture = parsed.GetValue(_fixture),
    };

    private void Check(CommandResult result)
    {
        Option[] readings = [_startGauge, _endGauge];
        bool logged = result.GetResult(_log) is { Tokens.Count: > 0 } log;
        if (logged && readings.Concat([_startTemperature, _endTemperature, _endAmbient]).Any(o => result.GetResult(o) is not null))
            result.AddError("Give a log or two readings, not both.");
        if (!logged && (readings.Any(o => result.GetResult(o) is null) || result.GetResult(_time) is null))
            result.AddError("Give --start-gauge, --end-gauge and --time, or a log.");
        if (!logged && result.GetResult(_settle) is not null) result.AddError("--settle is for a log.");
        if (logged && result.GetResult(_log)!.Tokens[0].Value.StartsWith('-')) result.AddError($"There is no option {result.GetResult(_log)!.Tokens[0].Value}.");
    }

    private static Option<Quantity?> Positive(string name, string description, string example, Dimension dimension) =>
        QuantityOption.Create(name, description, example, dimension, si => si > 0 ? null : "must be more than nothing.");

    private static Option<Quantity?> Temperature(string name, string description, string example) =>
        QuantityOption.Create(name, description, example, Dimension.Temperature, kelvin => kelvin is > 200 and < 450 ? null : "must lie between -73 and 177 degC.");

    private static Option<Quantity?> Uncertainty(string name, string of, string example, Dimension dimension) => QuantityOption.Create(
        name, $"Standard uncertainty of {of}; unless given, half of the last written digit, rectangular", example, dimension,
        si => si >= 0 ? null : "must not be less than nothing.");

    private static double ReadShare(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        if (WrittenValue.Read(text) is { Unit: null or "%" } share && share.Number is >= 0 and < 100) return share.Unit is null ? share.Number : share.Number / 100;
        result.AddError($"--creep \"{text}\" is not a share: write for example \"0.02 %\".");
        return 0;
    }
}
