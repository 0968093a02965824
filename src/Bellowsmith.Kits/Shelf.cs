namespace Bellowsmith.Kits;

/// <summary>Air springs and dampers at hand, each with its data, and the documents that stood beside them but cannot be used.</summary>
public sealed record Shelf(IReadOnlyList<AirSpringPart> Springs, IReadOnlyList<TelescopicDamperPart> Dampers, IReadOnlyList<UnusedDocument> LeftOut);

/// <summary>A document that was left out, and why.</summary>
/// <param name="File">Its path as the caller would write it.</param>
/// <param name="Faults">All that is wrong with it.</param>
public sealed record UnusedDocument(string File, IReadOnlyList<Fault> Faults);
