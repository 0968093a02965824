namespace Bellowsmith.App.Boards;

/// <summary>The last value made, made again only when what it is made of has changed.</summary>
public sealed class Kept<TKey, TValue>(Func<TKey, TValue> make)
    where TKey : notnull
{
    private (TKey Key, TValue Value)? _last;

    /// <summary>What was made last, whatever it was asked for; nothing before.</summary>
    public TValue? Last => _last is { } last ? last.Value : default;

    public bool Has(TKey key) => _last is { } last && last.Key.Equals(key);

    public TValue Of(TKey key)
    {
        if (_last is { } last && last.Key.Equals(key)) return last.Value;
        TValue value = make(key);
        _last = (key, value);
        return value;
    }
}
