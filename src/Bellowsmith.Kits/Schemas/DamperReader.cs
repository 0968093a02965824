using Bellowsmith.Kits.Tables;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads a <c>damper/1</c> document.</summary>
public static class DamperReader
{
    /// <exception cref="FaultsException">Anything in it or in the files it names cannot be used.</exception>
    public static DamperPart Read(string path) => Reading.Run(path, DamperFields.Kind, (damper, _) => Build(damper));

    internal static DamperPart Build(Place damper)
    {
        if (damper.Optional("coefficient") is { } coefficient) return new LinearDamperPart(coefficient);
        if (damper.Optional("shortest") >= damper.Optional("longest"))
            damper.Member("shortest")!.Report("less than longest", "Write the shortest and the longest length between outer faces.");
        CheckGasVolume(damper);
        return new TelescopicDamperPart(
            damper.Text("name"), damper.Needed("rodDiameter"), damper.Needed("shortest"), damper.Needed("longest"),
            damper.Optional("gasGaugePressure"), damper.Optional("gasVolume"), Stop(damper.Member("bumpStop")), damper.FileAt("dyno"))
        {
            DynoConvention = Convention(damper),
            Beyond_N_s_per_m = damper.Member("dynoBeyond") is { } beyond ? (beyond.Needed("compression"), beyond.Needed("rebound")) : null,
        };
    }

    private static DynoConvention Convention(Place damper)
    {
        bool fromOpen = damper.OptionalText("dynoClicks") == DamperFields.FromOpen;
        if (fromOpen && damper.Member("clickCount") is null)
            damper.ReportMissing("clickCount", "a whole number", "Say which click, counted from fully closed, is fully open: the dyno file counts from there.");
        return new(
            damper.OptionalText("dynoSign") == DamperFields.CompressionPositive,
            fromOpen ? (int?)damper.Optional("clickCount") : null,
            damper.OptionalText("dynoGas") is { } gas ? gas == DamperFields.GasIn : null);
    }

    private static void CheckGasVolume(Place damper)
    {
        double? stroke = damper.Optional("longest") - damper.Optional("shortest"), rod = damper.Optional("rodDiameter");
        if (damper.Optional("gasVolume") <= Math.PI / 4 * rod * rod * stroke)
            damper.Member("gasVolume")!.Report("more than the rod takes up over the whole stroke", "Give the gas volume at the longest length.");
    }

    private static BumpStopPart? Stop(Place? stop)
    {
        if (stop is null) return null;
        var curve = stop.Table("curve", StopTable.Read) ?? [];
        if (stop.Optional("solidLength") >= stop.Optional("freeLength"))
            stop.Member("solidLength")!.Report("less than freeLength", "Give the length squeezed solid and the free length.");
        if (curve.Count > 0 && curve[^1].Compression_m > stop.Optional("freeLength"))
            stop.Member("curve")!.Report("a curve that ends within freeLength", "Check the curve's unit and the free length.");
        return new(stop.Needed("freeLength"), stop.Needed("solidLength"), stop.Optional("rodAtShortest") ?? 0, curve);
    }
}
