using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>The tried wheel at one place of its travel, straight ahead, and where it comes nearest to what it must not touch.</summary>
public sealed record WheelLook(LinkageState State, double Outward_m, IReadOnlyList<WheelPassing> Gaps)
{
    /// <summary>At a travel; null where the linkage or the adjuster does not go there, or the car names no points.</summary>
    public static WheelLook? Of(WheelFitResult result, double travel_m)
    {
        (WheelCorner corner, WheelFitQuestion question) = (result.Corner, result.Question);
        if (corner.Adjuster.At(question.Camber_rad)?.Linkage?.At(travel_m).State is not { } state) return null;
        double outward = question.Change.Shift_m;
        RevolvedBody[] wheel = [CornerBodies.Tyre(question.New, state, outward), CornerBodies.Rim(question.New, state, outward)];
        List<WheelPassing> gaps = [];
        Add(WheelPlace.Arch, question.ArchMargin_m, wheel.SelectMany(body => corner.ArchEdge.Select(body.GapTo)));
        if (corner.Bodies is not { } bodies) return new(state, outward, gaps);
        RevolvedBody bellows = bodies.Bellows(state), strut = bodies.Strut(state);
        Add(WheelPlace.Strut, question.StrutMargin_m, wheel.SelectMany(body => (Gap[])[body.GapTo(strut), body.GapTo(bellows)]));
        Add(WheelPlace.Tower, question.TowerMargin_m, corner.Tower.Select(bellows.GapTo));
        return new(state, outward, gaps);

        void Add(WheelPlace place, double margin_m, IEnumerable<Gap> all)
        {
            if (all.ToArray() is { Length: > 0 } known) gaps.Add(new(place, known.MinBy(gap => gap.Distance_m), margin_m));
        }
    }
}

/// <summary>Where a tried wheel or its bellows comes nearest to what it must not touch, at one place of its travel.</summary>
/// <param name="Place">Which of them.</param>
/// <param name="Gap">Car axes.</param>
/// <param name="Margin_m">Room asked.</param>
public sealed record WheelPassing(WheelPlace Place, Gap Gap, double Margin_m)
{
    public bool Holds => Met.AtLeast(Gap.Distance_m, Margin_m);
}
