using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>The weighting filter in every lane: four second-order sections in transposed direct form, each divided by its B0.</summary>
internal struct RideWeights<T>
    where T : struct, ILane<T>
{
    public T Gain;
    public Section First, Second, Third, Fourth;

    public static RideWeights<T> Of(ReadOnlySpan<Biquad> sections)
    {
        double gain = 1;
        foreach (Biquad section in sections) gain *= section.B0;
        return new() { Gain = T.All(gain), First = Section.Of(sections[0]), Second = Section.Of(sections[1]), Third = Section.Of(sections[2]), Fourth = Section.Of(sections[3]) };
    }

    public struct Section
    {
        private T _b1, _b2, _a1, _a2;

        public static Section Of(Biquad section) => new()
        {
            _b1 = T.All(section.B1 / section.B0),
            _b2 = T.All(section.B2 / section.B0),
            _a1 = T.All(-section.A1),
            _a2 = T.All(-section.A2),
        };

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public readonly T Filter(T value, ref T last, ref T before)
        {
            T output = value + last;
            last = T.MultiplyAdd(_a1, output, T.MultiplyAdd(_b1, value, before));
            before = T.MultiplyAdd(_a2, output, _b2 * value);
            return output;
        }
    }
}

/// <summary>What the sections keep from one sample to the next.</summary>
internal struct WeightMemory<T>
    where T : struct, ILane<T>
{
    public T First, FirstBefore, Second, SecondBefore, Third, ThirdBefore, Fourth, FourthBefore;
}
