using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Benchmarks;

/// <summary>The scalar twin that counts: every sum, difference and product is one operation, a multiply-add two; comparisons are none.</summary>
internal readonly struct CountedLane(Lane1 value) : ILane<CountedLane>
{
    private readonly Lane1 _value = value;

    public static long Operations { get; private set; }

    public static int Count => 1;

    /// <summary>Operations of a step of the middle corner, everything counted.</summary>
    public static double PerStep()
    {
        double[] road = RideDrive.Road();
        long before = Operations;
        new RideGroup<CountedLane>(Physics.RideRun.Step_s).Drive([RideDrive.Of(RideDrive.Corners / 2)], new(road), new Physics.RideFigures[1]);
        return (Operations - before) / (double)road.Length;
    }

    public static CountedLane All(double value) => new(Lane1.All(value));

    public static CountedLane Load(ReadOnlySpan<double> values) => new(Lane1.Load(values));

    public void Store(Span<double> values) => _value.Store(values);

    public static CountedLane operator +(CountedLane a, CountedLane b) => Counted(a._value + b._value, 1);

    public static CountedLane operator -(CountedLane a, CountedLane b) => Counted(a._value - b._value, 1);

    public static CountedLane operator *(CountedLane a, CountedLane b) => Counted(a._value * b._value, 1);

    public static CountedLane MultiplyAdd(CountedLane a, CountedLane b, CountedLane c) => Counted(Lane1.MultiplyAdd(a._value, b._value, c._value), 2);

    public static CountedLane Min(CountedLane a, CountedLane b) => new(Lane1.Min(a._value, b._value));

    public static CountedLane Max(CountedLane a, CountedLane b) => new(Lane1.Max(a._value, b._value));

    public static CountedLane Absolute(CountedLane a) => new(Lane1.Absolute(a._value));

    public static CountedLane Positive(CountedLane a) => new(Lane1.Positive(a._value));

    public static bool AnyAbove(CountedLane a, CountedLane b) => Lane1.AnyAbove(a._value, b._value);

    private static CountedLane Counted(Lane1 value, int operations)
    {
        Operations += operations;
        return new(value);
    }
}
