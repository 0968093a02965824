using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>The title block of a bracket's drawing: what its machinist asks, the kit's own or marked as common practice, and what is written by hand.</summary>
internal sealed class BracketTitle(Kit kit, AxleEnd end, LowerMount mount, DisplayUnits units)
{
    // What a machinist breaks edges to where nobody says (common practice, no source).
    private const double LeastEdge_m = 0.3e-3, GreatestEdge_m = 0.5e-3;

    public IEnumerable<TitleRow> Rows()
    {
        BracketPlate plate = mount.Bracket;
        yield return new("part", $"lower mount, {Names.Of(end)}: plate, {mount.Bolts.ShearPlanes} off each strut");
        yield return new("kit", kit.Name);
        yield return new("car", kit.Car.Name);
        yield return new("plate", $"{Number(plate.Thickness_m)} thick{(plate is { Width_m: null } or { Height_m: null } ? "; outline drawn round the holes, not given" : "")}");
        yield return new("material", plate.Material ?? "not stated");
        yield return new("holes", $"within {Number(plate.Position_m)} of their places, any way; for {mount.Bolts.Bolt.Size}");
        if (mount.Clamp is { } clamp) yield return new("clamp", $"{clamp.Bolts} × {clamp.Bolt.Size} {clamp.Bolt.StrengthClass} across its slot");
        yield return new("general", "ISO 2768-m (common practice)");
        yield return new("edges", $"broken {Number(LeastEdge_m)} to {Number(GreatestEdge_m)}, ISO 13715 (common practice)");
        yield return new("state", "not released: a calculation's drawing, not an approval");
        yield return new("lengths", units.Symbol(Dimension.Length), Beside: true);
        foreach (string byHand in (string[])["drawn", "date", "revision"]) yield return new(byHand, "", Beside: true);
    }

    private string Number(double si) => units.Number(Dimension.Length, si, 1);
}
