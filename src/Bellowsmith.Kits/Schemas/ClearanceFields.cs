using Bellowsmith.Kits.Studies.Clearance;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>What a <c>kit/1</c> says of clearance: margins of its own.</summary>
internal static class ClearanceFields
{
    private static readonly Shape _margin = Length("0 mm", "100 mm", "8 mm");

    private static readonly IReadOnlyList<(string Key, MarginKind Kind)> _margins = [.. Enum.GetValues<MarginKind>().Select(kind => (ClearanceMargins.Name(kind), kind))];

    public static readonly Shape Clearance = new ObjectShape(
        [May("margins", new ObjectShape([.. _margins.Select(known => May(known.Key, _margin))]) { Refused = NeverWaived.Keys }, "Room asked instead of the usual.")])
    {
        Refused = NeverWaived.Keys,
    };

    public static ClearanceMargins Read(Place? clearance)
    {
        Place? margins = clearance?.Member("margins");
        return new(_margins.Where(known => margins?.Optional(known.Key) is not null).ToDictionary(known => known.Kind, known => margins!.Needed(known.Key)));
    }
}
