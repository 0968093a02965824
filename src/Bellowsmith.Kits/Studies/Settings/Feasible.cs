using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Ride;

namespace Bellowsmith.Kits.Studies.Settings;

/// <summary>Whether a setting that stands may be set: within the spring's greatest gauge pressure and the thread's reach.</summary>
internal static class Feasible
{
    /// <summary>Null where nothing speaks against it.</summary>
    public static string? WhyNot(Stand stand)
    {
        if (stand.Air is not { } air || stand.Strut.Case is not { } strut) return null;
        if (air.GaugePressure_Pa > strut.Part.MaxGaugePressure_Pa) return NotStanding.GaugeLimit;
        return InstalledHeightStudy.Reaches(strut, stand.Setting.Height_m!.Value) ? null : NotStanding.Thread;
    }
}
