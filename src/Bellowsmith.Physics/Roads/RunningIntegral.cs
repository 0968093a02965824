namespace Bellowsmith.Physics.Roads;

/// <summary>The integral of straight lines between values at 0, 1, 2, …, level beyond both ends.</summary>
internal readonly struct RunningIntegral
{
    private readonly double[] _values, _sums;

    public RunningIntegral(ReadOnlySpan<double> values)
    {
        _values = values.ToArray();
        _sums = new double[values.Length];
        for (int i = 1; i < values.Length; i++) _sums[i] = _sums[i - 1] + (values[i - 1] + values[i]) / 2;
    }

    public double To(double place)
    {
        int last = _values.Length - 1;
        if (place <= 0) return place * _values[0];
        if (place >= last) return _sums[last] + (place - last) * _values[last];
        int i = (int)place;
        double u = place - i;
        return _sums[i] + u * (_values[i] + u / 2 * (_values[i + 1] - _values[i]));
    }
}
