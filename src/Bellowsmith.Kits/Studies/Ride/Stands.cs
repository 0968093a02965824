using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>
/// Many settings of few struts: what several of them share, the air at a height and the damper at a click, is worked out once.
/// A setting stands here as it would alone. For one thread.
/// </summary>
internal sealed class Stands
{
    private readonly Dictionary<(RideStrut Strut, RideSetting Setting), (Stand? Stand, string Reason)> _stands = [];
    private readonly Dictionary<(Damper Damper, double Friction_N, double Click), MonotoneCurve> _dampers = [];

    /// <summary>Works out on all cores what these settings do not share with earlier ones.</summary>
    public void Prepare(IEnumerable<(RideStrut Strut, RideSetting Setting)> wanted)
    {
        (RideStrut Strut, RideSetting Setting)[] missing =
            [.. wanted.Select(w => Air(w.Strut, w.Setting)).Distinct().Where(air => !_stands.ContainsKey(air))];
        (Stand? Stand, string Reason)[] made = new (Stand?, string)[missing.Length];
        Parallel.For(0, missing.Length, k => made[k] = (Stand.Of(missing[k].Strut, missing[k].Setting, out string why), why));
        for (int k = 0; k < missing.Length; k++) _stands[missing[k]] = made[k];
    }

    /// <summary>Null, with the reason, where the strut cannot stand there. The click must be given.</summary>
    public Stand? Of(RideStrut strut, RideSetting setting, out string reason)
    {
        if (strut.Unmeasured(setting.Click!.Value) is { } unmeasured) return None(unmeasured, out reason);
        (RideStrut, RideSetting) air = Air(strut, setting);
        if (!_stands.TryGetValue(air, out (Stand? Stand, string Reason) kept))
            _stands[air] = kept = (Stand.Of(strut, air.Item2, out string why), why);
        reason = kept.Reason;
        return kept.Stand is { } stand ? At(stand, setting.Click.Value) : null;
    }

    // All clicks share their air.
    private static (RideStrut Strut, RideSetting Setting) Air(RideStrut strut, RideSetting setting) => (strut, setting with { Click = strut.Damper.Clicks[0] });

    private Stand At(Stand stand, double click)
    {
        var key = (stand.Strut.Damper, stand.Strut.Friction_N, click);
        if (!_dampers.TryGetValue(key, out MonotoneCurve? curve)) _dampers[key] = curve = stand.Strut.DamperForce(click);
        return stand with { Setting = stand.Setting with { Click = click }, Corner = stand.Corner with { DamperForce = curve } };
    }

    private static Stand? None(string why, out string reason)
    {
        reason = why;
        return null;
    }
}
