namespace Bellowsmith.Kits;

/// <summary>Input a person gave cannot be used; carries every fault of every file at once.</summary>
public sealed class FaultsException(IReadOnlyList<Fault> faults)
    : Exception(string.Join(Environment.NewLine, faults))
{
    public IReadOnlyList<Fault> Faults { get; } = faults;
}
