using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>How does it ride: one corner driven over one road, with the settings beside it, so that no number stands alone.</summary>
public static class RideStudy
{
    /// <summary>2 psi: what a cab gauge can be read to.</summary>
    private const double GaugeStep_Pa = 2 * 6894.757293168361;

    /// <summary>Every strut of a kit, each with its neighbours at the car's other load cases.</summary>
    /// <exception cref="FaultsException">The kit lacks what a run needs.</exception>
    public static IEnumerable<RideResult> Answers(Kit kit, StudyConditions conditions, RoadQuestion road, RideSetting asked)
    {
        return RideStruts.Of(kit, conditions).Select(strut => Answer(strut, [.. Others(strut, kit.Car)], road, asked));

        static IEnumerable<RideStrut> Others(RideStrut strut, Car car) =>
            car.Loads.Where(load => load.Name != strut.Load).Select(load => strut.At(load, car)).OfType<RideStrut>();
    }

    /// <param name="strut">The strut at the load asked for.</param>
    /// <param name="otherLoads">The same strut at the car's other load cases, levelled to the same height.</param>
    /// <param name="road">What it is driven over.</param>
    /// <param name="asked">What is set otherwise than the kit says.</param>
    /// <param name="heights">The road's heights where they are known already.</param>
    public static RideResult Answer(RideStrut strut, IReadOnlyList<RideStrut> otherLoads, RoadQuestion road, RideSetting asked, double[]? heights = null)
    {
        double click = asked.Click ?? strut.Click;
        Stand? here = Stand.Of(strut, asked with { Click = click }, out string reason);
        RideSetting setting = here?.Setting ?? asked with { Click = click };
        if (here is null) return new RideResult { Strut = strut, Road = road, Setting = setting, Figures = null, Reason = reason };
        heights ??= RideRoads.Heights(road);
        (string Change, Stand? Stand)[] beside = [.. Beside(strut, otherLoads, asked, setting)];
        Corner[] corners = [here.Corner, .. beside.Select(b => b.Stand?.Corner).OfType<Corner>()];
        RideFigures[] figures = RideRun.Over(corners, heights);
        int next = 1;
        return new RideResult
        {
            Strut = strut,
            Road = road,
            Setting = setting,
            Figures = figures[0],
            Neighbours = [.. beside.Select(b => new RideNeighbour(b.Change, b.Stand is null ? null : figures[next++]))],
            Detail = RideDetails.Of(here, RideRun.Trace(here.Corner, heights)),
        };
    }

    /// <summary>Five seconds over one bump; null where the strut cannot stand at the setting.</summary>
    public static BumpRide? Over(RideStrut strut, Bump bump, double speed_m_per_s, RideSetting asked) =>
        Stand.Of(strut, asked with { Click = asked.Click ?? strut.Click }, out _) is { } here ? BumpRide.Of(here, bump, speed_m_per_s) : null;

    /// <summary>The figures alone, as a cell of a map wants them; null where the strut cannot stand there.</summary>
    public static RideFigures? Figures(RideStrut strut, RoadQuestion road, RideSetting asked) =>
        Stand.Of(strut, asked with { Click = asked.Click ?? strut.Click }, out _) is { } here ? RideRun.Over([here.Corner], RideRoads.Heights(road))[0] : null;

    /// <summary>A click and 2 psi either way, where the clicks were measured and there is air.</summary>
    /// <param name="strut">Whose damper.</param>
    /// <param name="setting">The click given; the gauge pressure only where a hand set it.</param>
    /// <param name="gaugePressure_Pa">What the strut stands on; null without air.</param>
    internal static IEnumerable<(string Change, RideSetting Setting)> Aside(RideStrut strut, RideSetting setting, double? gaugePressure_Pa)
    {
        (string, double)[] clicks = [("one click harder", setting.Click!.Value - 1), ("one click softer", setting.Click.Value + 1)];
        foreach ((string change, double click) in clicks)
            if (strut.Unmeasured(click) is null) yield return (change, setting with { Click = click });
        if (gaugePressure_Pa is not { } gauge) yield break;
        yield return ("2 psi less", setting with { GaugePressure_Pa = gauge - GaugeStep_Pa });
        yield return ("2 psi more", setting with { GaugePressure_Pa = gauge + GaugeStep_Pa });
    }

    private static IEnumerable<(string Change, Stand? Stand)> Beside(RideStrut strut, IReadOnlyList<RideStrut> otherLoads, RideSetting asked, RideSetting setting)
    {
        foreach ((string change, RideSetting aside) in Aside(strut, setting with { GaugePressure_Pa = asked.GaugePressure_Pa }, setting.GaugePressure_Pa))
            yield return (change, Stand.Of(strut, aside, out _));
        foreach (RideStrut other in otherLoads)
            yield return (other.Load, Stand.Of(other, setting with { GaugePressure_Pa = null }, out _));
    }
}
