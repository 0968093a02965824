using System.Collections.ObjectModel;

namespace Bellowsmith.Kits.Tables;

/// <summary>The first hundred faults of a file and how many followed: a million-row table with one wrong column has a million.</summary>
internal sealed class CappedFaults(string file) : Collection<Fault>
{
    private const int Most = 100;

    private int _more;

    /// <exception cref="FaultsException">There is a fault.</exception>
    public void ThrowIfAny()
    {
        if (Count == 0) return;
        Fault[] faults = _more == 0 ? [.. this]
            : [.. this, new(file, "file", $"{_more} more faults", "a table without faults", "Mend the ones above first; many may have one cause.")];
        throw new FaultsException(faults);
    }

    protected override void InsertItem(int index, Fault item)
    {
        if (Count < Most) base.InsertItem(index, item);
        else _more++;
    }
}
