using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>The tried wheel at one place of its travel, straight ahead, and where it comes nearest to what it must not touch.</summary>
public sealed record WheelLook(LinkageState State, double Outward_m, IReadOnlyList<(WheelPlace Place, Gap Gap, double Margin_m)> Gaps)
{
    /// <summary>At a travel; null where the linkage or the adjuster does not go there, or the car names no points.</summary>
    public static WheelLook? Of(WheelFitResult result, double travel_m)
    {
        (WheelCorner corner, WheelFitQuestion question) = (result.Corner, result.Question);
        if (corner.Adjuster.At(question.Camber_rad)?.Linkage?.At(travel_m).State is not { } state) return null;
        double outward = question.Change.Shift_m;
        RevolvedBody[] wheel = [CornerBodies.Tyre(question.New, state, outward), CornerBodies.Rim(question.New, state, outward)];
        List<(WheelPlace, Gap, double)> gaps = [];
        Add(WheelPlace.Arch, question.ArchMargin_m, wheel.SelectMany(body => corner.ArchEdge.Select(body.GapTo)));
        if (corner.Bodies is not { } bodies) return new(state, outward, gaps);
        RevolvedBody bellows = bodies.Bellows(state), strut = bodies.Strut(state);
        Add(WheelPlace.Strut, question.StrutMargin_m, wheel.SelectMany(body => (Gap[])[body.GapTo(strut), body.GapTo(bellows)]));
        Add(WheelPlace.Tower, question.TowerMargin_m, corner.Tower.Select(bellows.GapTo));
        return new(state, outward, gaps);

        void Add(WheelPlace place, double margin_m, IEnumerable<Gap> all)
        {
            if (all.ToArray() is { Length: > 0 } known) gaps.Add((place, known.MinBy(gap => gap.Distance_m), margin_m));
        }
    }
}
