using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a corner on waves.</summary>
public sealed class ResponseWords(RideResponse response, DisplayUnits units)
{
    /// <summary>"On waves of ± 5.0 mm the body answers most at 1.4 Hz, 1.9 times the road; the wheel hops at 11 Hz, tyre load ± 2300 N."</summary>
    public string Answer()
    {
        WaveResponse waves = response.Asked;
        string hop = waves.Hop is { } at ? $"the wheel hops at {Frequency(at)}, tyre load ± {units.Text(Dimension.Force, at.TyreLoadAmplitude_N)}"
            : $"the wheel's hop lies past {Frequency(waves.Points[^1])}, where tyre load is ± {units.Text(Dimension.Force, waves.Points[^1].TyreLoadAmplitude_N)}";
        return $"On waves of {Amplitude(waves)} the body answers most at {Frequency(waves.Body)}, {Times(waves.Body)} the road; {hop}.{Ends(waves)}";
    }

    /// <summary>What half and twice the amplitude make of it: the measure of how little one frequency response says of this corner.</summary>
    public string Beside() =>
        $"At {Amplitude(response.Half)} the body answers most at {Frequency(response.Half.Body)}, {Times(response.Half.Body)} the road, at {Amplitude(response.Twice)} at {Frequency(response.Twice.Body)}, {Times(response.Twice.Body)}.";

    /// <summary>Where the data end, and where no steady answer was found.</summary>
    public IEnumerable<Note> Notes()
    {
        if (Bands(response.Asked, p => p.OutsideMeasuredSpeed) is { Length: > 0 } outside)
            yield return new("data", $"On waves of {Amplitude(response.Asked)} the damper moves faster than its dyno data reach {outside}; there its force goes on straight.");
        if (Bands(response.Asked, p => !p.Steady) is { Length: > 0 } restless)
            yield return new("waves", $"No steady answer was found {restless}: what stands for it there is of one second that the next does not repeat.");
    }

    public string Amplitude(WaveResponse waves) => $"± {units.Text(Dimension.Length, waves.Amplitude_m)}";

    private string Ends(WaveResponse waves)
    {
        string stop = Bands(waves, p => p.StopTouched), air = Bands(waves, p => p.LeavesRoad);
        return (stop.Length, air.Length) switch
        {
            (0, 0) => " The stop is not touched and the tyre stays on the road.",
            (0, _) => $" The tyre leaves the road {air}.",
            (_, 0) => $" The stop is touched {stop}.",
            _ => $" The stop is touched {stop}, the tyre leaves the road {air}.",
        };
    }

    // "at 1.4 Hz", "from 8.1 Hz to 12 Hz", "from 8.1 Hz on", joined.
    private string Bands(WaveResponse waves, Func<WavePoint, bool> holds)
    {
        List<string> bands = [];
        IReadOnlyList<WavePoint> points = waves.Points;
        for (int k = 0; k < points.Count; k++)
        {
            if (!holds(points[k])) continue;
            int first = k;
            while (k + 1 < points.Count && holds(points[k + 1])) k++;
            bands.Add(k == first ? $"at {Frequency(points[k])}"
                : k == points.Count - 1 ? $"from {Frequency(points[first])} on"
                : $"from {Frequency(points[first])} to {Frequency(points[k])}");
        }

        return string.Join(" and ", bands);
    }

    // Two digits: neighbouring waves lie 9 % apart.
    internal string Frequency(WavePoint point) =>
        $"{PlainNumbers.Rounded(units.Value(Dimension.Frequency, point.Frequency_Hz), 2)} {units.Symbol(Dimension.Frequency)}";

    private static string Times(WavePoint point) => string.Create(CultureInfo.InvariantCulture, $"{point.BodyTransmissibility:0.0} times");
}
