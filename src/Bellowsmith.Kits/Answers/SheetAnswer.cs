namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>sheet</c>: what was written, and the hash that tells one print from another.</summary>
public sealed record SheetAnswer(string File, int Pages, string Sha256);
