using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Search;

/// <summary>What surrounds a setting: a click, 2 psi with the thread left alone, 10 kg levelled out again, a millimetre of height.</summary>
internal static class SearchNeighbours
{
    /// <summary>As many as a setting can have.</summary>
    public const int Most = 8;

    private const double Mass_kg = 10, Height_m = 1e-3;

    public static IEnumerable<(string Change, Trial Trial)> Of(SearchPoint point, RoadQuestion road)
    {
        (RideStrut strut, RideSetting setting) = (point.Pair.Strut, point.Setting with { GaugePressure_Pa = null });
        double height = setting.Height_m!.Value;
        foreach ((string change, RideSetting aside) in RideStudy.Aside(strut, setting, point.Setting.GaugePressure_Pa)) yield return (change, new(strut, road, aside));
        yield return ("10 kg less", new(Heavier(strut, -Mass_kg), road, setting));
        yield return ("10 kg more", new(Heavier(strut, Mass_kg), road, setting));
        (string, double)[] heights = [("1 mm lower", height - Height_m), ("1 mm higher", height + Height_m)];
        foreach ((string change, double aside) in heights)
            if (InstalledHeightStudy.Reaches(strut.Case!, aside)) yield return (change, new(strut, road, setting with { Height_m = aside }));
    }

    public static SearchNeighbour Beside(SearchPoint point, string change, TrialResult result, SearchQuestion question) => result.Figures is { } figures
        ? new(change, figures, null, Worsening(point.Figures, figures, question.Road), question.Excess(figures))
        : new(change, null, result.Reason, double.PositiveInfinity, double.PositiveInfinity);

    private static double Worsening(RideFigures own, RideFigures other, RoadQuestion road) => SearchPoint.Objectives.Max(q =>
        (q.Of(other, road) - q.Of(own, road)) / SearchLimit.Size(q, q.Of(own, road)));

    private static RideStrut? Heavier(RideStrut strut, double mass_kg)
    {
        (double left, double right) = strut.Case!.Sprung;
        if (Math.Min(left, right) + mass_kg <= 0) return null;
        return strut with { SprungMass_kg = strut.SprungMass_kg + mass_kg, Case = strut.Case with { Sprung = (left + mass_kg, right + mass_kg) } };
    }
}
