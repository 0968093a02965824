namespace Bellowsmith.Kits.Schemas;

/// <summary>One key of an object: what may stand there, whether it must, and what it means.</summary>
internal sealed record Field(string Name, bool Required, Shape Shape, string Meaning = "");
