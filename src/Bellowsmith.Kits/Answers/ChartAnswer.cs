using System.Text.Encodings.Web;
using System.Text.Json;
using Bellowsmith.Kits.Studies.Charting;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Kits.Answers;

/// <summary>
/// The machine answer of <c>chart</c>, unrounded and in the file's unit, points from 1. It is written as it goes: a million points
/// pass through one small buffer. Centre and limits stand at the top where all points share them; else they are null there and
/// stand with each point.
/// </summary>
public static class ChartAnswer
{
    private const int FlushAt = 1 << 16;

    private static readonly JsonWriterOptions _options = new() { Indented = false, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static void Write(Stream stream, ChartResult result)
    {
        using Utf8JsonWriter json = new(stream, _options);
        ChartWords words = new(result);
        ControlChart chart = result.Chart;
        json.WriteStartObject();
        json.WriteString("file", result.Table.File);
        json.WriteString("kind", chart.Kind.ToString().ToLowerInvariant());
        json.WriteString("unit", result.Table.Unit);
        json.WriteString("answer", words.Answer());
        json.WriteString("reason", words.Reason());
        WriteLine(json, chart.Statistic, chart.Line, chart.Signals, chart.Rules, result, chart.Sums);
        WriteSpread(json, chart, result);
        WritePhases(json, result, words);
        WriteRules(json, result);
        WriteQuestion(json, result.Question);
        json.WriteStartArray("notes");
        foreach (Note note in words.Notes())
        {
            json.WriteStartObject();
            json.WriteString("about", note.About);
            json.WriteString("text", note.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteLine(
        Utf8JsonWriter json, ChartStatistic statistic, ChartLine line, Signal[] signals, IReadOnlyList<RunRule> rules, ChartResult result, CusumSums? sums)
    {
        json.WriteString("statistic", ChartWords.Statistic(statistic));
        WriteLimits(json, line.Steady ? line.At(0) : ControlLimits.None);
        WritePoints(json, line, result, sums);
        string[] sentences = [.. rules.Select(RuleSentence.Of)];
        json.WriteStartArray("signals");
        foreach (Signal signal in signals)
        {
            json.WriteStartObject();
            json.WriteNumber("point", signal.Point + 1);
            json.WriteString("rule", sentences[signal.Rule]);
            json.WriteNumber("line", result.Table.Line(signal.Point));
            if (result.Table.Note(signal.Point) is { } note) json.WriteString("note", note);
            json.WriteEndObject();
            Pass(json);
        }

        json.WriteEndArray();
    }

    private static void WritePoints(Utf8JsonWriter json, ChartLine line, ChartResult result, CusumSums? sums)
    {
        json.WriteStartArray("points");
        bool steady = line.Steady;
        for (int step = 0; step < line.Steps.Length; step++)
        {
            for (int i = line.Steps[step].First; i < line.StepEnd(step); i++)
            {
                json.WriteStartObject();
                json.WriteNumber("point", i + 1);
                Write(json, "statistic", line.Points[i]);
                if (sums is not null) Write(json, "high", sums.High[i]);
                if (sums is not null) Write(json, "low", sums.Low[i]);
                if (!steady) WriteLimits(json, line.Steps[step].Limits);
                if (result.Table.Subgroup(i) is { } subgroup) json.WriteString("subgroup", subgroup);
                json.WriteEndObject();
                Pass(json);
            }
        }

        json.WriteEndArray();
    }

    private static void WriteSpread(Utf8JsonWriter json, ControlChart chart, ChartResult result)
    {
        if (chart.Spread is not { } spread)
        {
            json.WriteNull("spread");
            return;
        }

        json.WriteStartObject("spread");
        WriteLine(json, spread.Statistic, spread.Line, spread.Signals, [RunRule.BeyondLimit], result, null);
        json.WriteEndObject();
    }

    private static void WritePhases(Utf8JsonWriter json, ChartResult result, ChartWords words)
    {
        json.WriteStartArray("phases");
        foreach (ChartPhase phase in result.Chart.Phases)
        {
            json.WriteStartObject();
            json.WriteString("phase", phase.First < phase.End ? result.Table.Phase(phase.First) : null);
            json.WriteNumber("firstPoint", phase.First + 1);
            json.WriteNumber("lastPoint", phase.End);
            json.WriteNumber("basePoints", phase.BasePoints);
            Write(json, "centre", phase.Centre);
            Write(json, "sd", phase.Sd);
            Write(json, "sdRelativeStandardError", phase.SdError);
            json.WriteString("limits", words.Basis(phase));
            json.WriteString("reason", words.Reason(phase));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteRules(Utf8JsonWriter json, ChartResult result)
    {
        json.WriteStartArray("rules");
        foreach ((RunRule rule, RulePrice alone) in result.Chart.Rules.Zip(result.Alone))
        {
            json.WriteStartObject();
            json.WriteString("rule", RuleSentence.Of(rule));
            WritePrice(json, "runLengthAlone", alone);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WritePrice(json, "runLength", result.Together);
    }

    private static void WritePrice(Utf8JsonWriter json, string name, RulePrice price)
    {
        json.WriteStartObject(name);
        Write(json, "unchanged", price.Unchanged);
        Write(json, "shiftedHalfSigma", price.HalfSigma);
        Write(json, "shiftedOneSigma", price.OneSigma);
        Write(json, "shiftedTwoSigma", price.TwoSigma);
        json.WriteEndObject();
    }

    private static void WriteQuestion(Utf8JsonWriter json, ChartQuestion question)
    {
        json.WriteStartObject("settings");
        if (question.Base is { } first) json.WriteNumber("base", first);
        else json.WriteNull("base");
        if (question.Kind == ChartKind.Averages) json.WriteString("spread", question.Measure == SpreadMeasure.Ranges ? "ranges" : "deviations");
        if (question.Kind == ChartKind.Ewma)
        {
            json.WriteNumber("weight", question.Weight);
            json.WriteNumber("width", question.Width);
            json.WriteBoolean("start", question.FromStart);
        }

        if (question.Kind == ChartKind.Cusum)
        {
            json.WriteNumber("allowance_sd", question.Allowance_sd);
            json.WriteNumber("decision_sd", question.Decision_sd);
        }

        json.WriteNumber("seed", question.Seed);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, RunLength length)
    {
        Write(json, name, length.Points);
        if (length.Simulated) json.WriteNumber(name + "StandardError", length.StandardError);
    }

    private static void WriteLimits(Utf8JsonWriter json, ControlLimits limits)
    {
        Write(json, "centre", limits.Centre);
        Write(json, "lower", limits.Lower);
        Write(json, "upper", limits.Upper);
    }

    private static void Write(Utf8JsonWriter json, string name, double value)
    {
        if (double.IsFinite(value)) json.WriteNumber(name, value);
        else json.WriteNull(name);
    }

    private static void Pass(Utf8JsonWriter json)
    {
        if (json.BytesPending > FlushAt) json.Flush();
    }
}
