namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A strut in section at one setting. Its frame holds everything drawn at every setting the spring allows, so that a view does not move
/// while a handle is dragged.
/// </summary>
public sealed record StrutSection : SheetDrawing
{
    public required IReadOnlyList<SectionHandle> Handles { get; init; }
}

/// <summary>
/// What a hand can drag up and down. Moving it up by a millimetre of the strut changes the value by
/// <paramref name="ValuePerMillimetreUp"/> in m.
/// </summary>
/// <param name="Id">height or thread.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Value_m">What it is set to.</param>
/// <param name="Least_m">Least it may be.</param>
/// <param name="Greatest_m">Greatest it may be.</param>
/// <param name="ValuePerMillimetreUp">m per mm, with sign.</param>
public sealed record SectionHandle(
    string Id, DrawingPoint At, double Value_m, double Least_m, double Greatest_m, double ValuePerMillimetreUp);
