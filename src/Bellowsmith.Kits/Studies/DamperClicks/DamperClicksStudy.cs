using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.Kits.Studies.DamperClicks;

/// <summary>Is each click of this damper a real change? Forces in N.</summary>
public sealed record DamperClicksResult(string Name, ClickReadings Readings, ClickResult Judged);

/// <summary>Reads repeated runs from a table or from the one a damper document names, and judges the clicks in them.</summary>
public static class DamperClicksStudy
{
    /// <summary>The speed usual for comparing dampers on a crank dyno; common practice, no source.</summary>
    public const double UsualVelocity_m_per_s = 0.13;

    /// <param name="path">A <c>damper/1</c> document (<c>.json</c>), or a table.</param>
    /// <param name="velocity_m_per_s">Where forces are read off sweeps, + in rebound.</param>
    /// <param name="wanted">The least step worth having, of either sign.</param>
    /// <exception cref="FaultsException">Anything in the files cannot be used.</exception>
    public static DamperClicksResult Answer(string path, double velocity_m_per_s, WrittenValue? wanted = null)
    {
        bool isDocument = Path.GetExtension(path).Equals(".json", StringComparison.OrdinalIgnoreCase);
        (string name, ClickReadings readings) = isDocument ? OfDocument(path, velocity_m_per_s)
            : (Path.GetFileNameWithoutExtension(path), ClickReadings.Read(path, velocity_m_per_s));
        double? least_N = wanted is { } w
            ? Math.Abs(readings.ForceUnit.ToSi(w.In(readings.ForceUnit.Name, readings.File, "--wanted"))) : null;
        return new(name, readings, ClickStudy.Answer(readings.Table, least_N));
    }

    // The dyno's own conventions hold; a file of values alone has none and is read as one.
    private static (string Name, ClickReadings Readings) OfDocument(string path, double velocity_m_per_s)
    {
        DamperPart part = DamperReader.Read(path);
        if (part is not TelescopicDamperPart { DynoFile: { } file } damper) throw Lacks(path, part is LinearDamperPart ? "a linear damper" : "nothing");
        List<Fault> faults = [];
        if (damper.Fit(faults) is { } fit) return (damper.Name, ClickReadings.Of(file, fit, velocity_m_per_s));
        try
        {
            return (damper.Name, ClickReadings.Read(file, velocity_m_per_s));
        }
        catch (FaultsException)
        {
            throw new FaultsException(faults);
        }
    }

    private static FaultsException Lacks(string path, string found) => new([new(
        InputFile.Readable(Path.GetFullPath(path)), "dyno", found, "the damper's dyno file: every click in several runs",
        "Add \"dyno\": \"file.csv\" with columns click, run and value, or velocity and force.")]);
}
