namespace Bellowsmith.Kits.Schemas;

/// <summary>What stands at a place in a JSON file; Other is true, false or null.</summary>
public enum NodeKind { Map, List, Text, Number, Other }

/// <summary>A key of an object and what stands behind it, in file order; a key may be there twice.</summary>
/// <param name="Name">The key.</param>
/// <param name="Value">What stands behind it.</param>
/// <param name="Start">Where the key's quote stands in the file.</param>
public readonly record struct Member(string Name, Node Value, int Start);

/// <summary>One JSON value with the bytes it takes in its file.</summary>
public sealed class Node(NodeKind kind, int start)
{
    public NodeKind Kind { get; } = kind;

    public int Start { get; } = start;

    public int Length { get; internal set; }

    /// <summary>The text of a text, without quotes and escapes.</summary>
    public string Text { get; internal set; } = "";

    /// <summary>The value of a number; infinite where it is too large.</summary>
    public double Number { get; internal set; } = double.NaN;

    public IList<Member> Members { get; } = kind == NodeKind.Map ? new List<Member>() : [];

    public IList<Node> Items { get; } = kind == NodeKind.List ? new List<Node>() : [];
}
