using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>A swept corner at one place of its travel and steering: how near every pair is there, the one with the least room first.</summary>
public sealed record ClearanceLook(LinkageState State, IReadOnlyList<PairGap> Pairs)
{
    /// <summary>Null where the linkage does not go there, or nothing was swept.</summary>
    public static ClearanceLook? Of(ClearanceResult result, double travel_m, double rack_m)
    {
        if (result.Set?.Linkage is not { } linkage || linkage.At(travel_m, rack_m).State is not { } state) return null;
        CornerShapes corner = CornerShapes.Of(result.Case, result.Question, linkage);
        PassingShape[] shapes = corner.At(state);
        return new(state,
        [
            .. corner.Pairs.Zip(corner.Indices, (pair, at) =>
                new PairGap(pair, shapes[at.One].GapTo(shapes[at.Other]), result.Question.Margins.Of_m(pair.Margin), travel_m, rack_m)).OrderBy(pair => pair.Room_m),
        ]);
    }
}
