using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>A corner on waves: how much of the road the body follows, over the logarithm of frequency, at three amplitudes.</summary>
public sealed class ResponseFigures(RideResponse response, DisplayUnits units)
{
    private static readonly double[] _ticks_Hz = [0.5, 1, 2, 5, 10, 20];

    private readonly ResponseWords _words = new(response, units);

    /// <summary>Dashed where the damper moves faster than it was measured; crosses where the stop is touched, rings where the tyre leaves the road.</summary>
    public Chart Transmissibility() => new()
    {
        Id = "transmissibility",
        Title = "Body over road, on waves",
        Summary = $"{_words.Answer()} {_words.Beside()}",
        X = new ChartAxis("frequency", units.Symbol(Dimension.Frequency), Math.Log(ResponseStudy.Lowest_Hz), Math.Log(ResponseStudy.Highest_Hz), 2)
        {
            OwnTicks = [.. _ticks_Hz.Select(f => new ChartTick(Math.Log(f), PlainNumbers.Chosen(f)))],
        },
        Y = ChartAxis.Around("body over road", "", [0, .. response.All.SelectMany(w => w.Points).Select(p => p.BodyTransmissibility)]) with { Decimals = 2 },
        Curves = [Curve(response.Half), Curve(response.Twice), Curve(response.Asked)],
        Measured = [.. Where("stop touched", PointShape.Cross, p => p.StopTouched), .. Where("tyre off the road", PointShape.Ring, p => p.LeavesRoad)],
        Marks = [new ChartMark(MarkKind.Setting, Math.Log(response.Asked.Body.Frequency_Hz), response.Asked.Body.BodyTransmissibility,
            $"{_words.Amplitude(response.Asked)} · {_words.Frequency(response.Asked.Body)}")],
    };

    // Labelled at its peak, where the curves lie apart; the one asked for by its mark.
    private ChartCurve Curve(WaveResponse waves)
    {
        double[] x = [.. waves.Points.Select(X)];
        ChartCurve curve = Axes.Curve(_words.Amplitude(waves), x, [.. waves.Points.Select(p => p.BodyTransmissibility)], [.. waves.Points.Select(p => !p.OutsideMeasuredSpeed)]);
        return curve with { LabelAt = waves == response.Asked ? -1 : waves.Points.ToList().IndexOf(waves.Body) };
    }

    private IEnumerable<ChartPoints> Where(string label, PointShape shape, Func<WavePoint, bool> holds)
    {
        WavePoint[] points = [.. response.All.SelectMany(waves => waves.Points).Where(holds)];
        if (points.Length > 0) yield return new ChartPoints(label, [.. points.Select(X)], [.. points.Select(p => p.BodyTransmissibility)]) { Shape = shape };
    }

    private static double X(WavePoint point) => Math.Log(point.Frequency_Hz);
}
