using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>What camber buys at the arch and costs at strut and tower; null where the car's points are not known.</summary>
public sealed class WheelCharts(WheelFitResult result, DisplayUnits units)
{
    private const double Degree = Math.PI / 180;

    /// <summary>The least gaps over the bump against the change of camber; dashed where the adjuster does not reach.</summary>
    public Chart? Camber()
    {
        WheelGaps[] rows = [.. result.TradeOff];
        if (rows.Length == 0) return null;
        double[] camber = [.. rows.Select(row => row.Camber_rad / Degree)];
        (string Label, Func<WheelGaps, double?> Gap_m)[] all = [("arch", row => row.Arch?.Gap_m), ("strut", row => row.Strut?.Gap_m), ("bellows to tower", row => row.Tower?.Gap_m)];
        ChartCurve[] curves = [.. all.Where(one => rows.Any(row => one.Gap_m(row) is not null))
            .Select(one => Axes.Curve(one.Label, camber, Shown(rows, one.Gap_m), [.. rows.Select(row => row.WithinAdjuster)]))];
        if (curves.Length == 0) return null;
        return new Chart
        {
            Id = "wheelCamber",
            Title = $"What camber buys and costs, {Names.Of(result.Corner.End)}",
            Summary = new WheelWords(result, units).Answer(),
            X = ChartAxis.Around("change of camber, top out +", "°", camber) with { Low = camber[0], High = camber[^1], Decimals = 2 },
            Y = Axes.Around("least gap", Dimension.Length, units, [0, .. rows.SelectMany(row => all.Select(one => one.Gap_m(row)).OfType<double>())]),
            Limits = [Asked("arch", result.Question.ArchMargin_m), Asked("strut", result.Question.StrutMargin_m), Asked("tower", result.Question.TowerMargin_m)],
            Curves = curves,
            Marks = [.. Marks()],
        };

        ChartCurve Asked(string where, double margin_m) => ChartCurve.Level($"asked, {where}", camber[0], camber[^1], units.Value(Dimension.Length, margin_m));
    }

    private IEnumerable<ChartMark> Marks()
    {
        if (result.New is { Arch: { } arch } now)
            yield return new(MarkKind.Setting, now.Camber_rad / Degree, units.Value(Dimension.Length, arch.Gap_m), $"this camber · {units.Text(Dimension.Length, arch.Gap_m)}");
        if (result.Verdict == WheelVerdict.FitsWithCamber && result.LeastCamber is { Arch: { } met } least)
            yield return new(MarkKind.Recommended, least.Camber_rad / Degree, units.Value(Dimension.Length, met.Gap_m), $"enough · {LinkageWords.Angle(least.Camber_rad)}");
    }

    private double[] Shown(WheelGaps[] rows, Func<WheelGaps, double?> gap_m) => [.. rows.Select(row => units.Value(Dimension.Length, gap_m(row) ?? double.NaN))];
}
