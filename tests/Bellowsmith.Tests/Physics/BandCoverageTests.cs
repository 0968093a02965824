using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

/// <summary>
/// Does a 95 % band cover the truth in 95 of 100 data sets? A thousand repeats of each known spring on the load frame of
/// <see cref="LoadFrame"/>, seeds 1 to 1000, at 21 heights over the middle 80 % of the range, 3300 N, n = 1.38.
/// </summary>
public sealed class BandCoverageTests(ITestOutputHelper output)
{
    private const int Repeats = 1000, Places = 21;
    private const double Load_N = 3300, Exponent = 1.38;

    [Theory]
    [InlineData("single", true)]
    [InlineData("double", true)]
    [InlineData("elastic", true)]
    [InlineData("single", false)] // sweeps not named: the two repeats of a level and direction count as one
    public void Band_ThousandRepeats_CoversTheTruth(string name, bool named)
    {
        var known = KnownSpring.All.Single(s => s.Name == name);
        var truth = Enumerable.Range(0, Places).Select(k => Truth(known, known.At(0.1 + 0.8 * k / (Places - 1)))).ToArray();
        Tally rate = new(), area = new(), slope = new();

        Parallel.For(1, Repeats + 1, seed =>
        {
            var fit = AirSpringFit.Of(new MeasuredSpring(LoadFrame.Rows(known, seed, named)));
            for (var k = 0; k < Places; k++)
            {
                var (h, pg, trueArea, trueSlope, trueRate) = truth[k];
                rate.Count(k, fit.Band(s => Rate(s, h)), trueRate);
                area.Count(k, fit.Band(s => s.At(h, pg).EffectiveArea_m2), trueArea);
                slope.Count(k, fit.Band(s => s.At(h, pg).AreaSlope_m), trueSlope);
            }
        });

        output.WriteLine($"{name}, sweeps {(named ? "named" : "not named")}: share of repeats covered, mean (least over heights)");
        output.WriteLine($"rate {rate}; half width {rate.HalfWidth / 1e3:0.00} of {truth[Places / 2].Rate / 1e3:0.0} N/mm");
        output.WriteLine($"area {area}; half width {area.HalfWidth * 1e4:0.00} of {truth[Places / 2].Area * 1e4:0.0} cm²");
        output.WriteLine($"area slope {slope}");
        Assert.InRange(rate.Mean, 0.92, 0.98);
        Assert.InRange(rate.Least, 0.85, 1);
        Assert.InRange(area.Mean, 0.90, 0.99);
        Assert.InRange(slope.Mean, 0.90, 0.99);
    }

    private static (double Height, double GaugePressure, double Area, double Slope, double Rate) Truth(KnownSpring known, double h)
    {
        var pg = known.GaugePressureFor_Pa(Load_N, h);
        return (h, pg, known.Area_m2(h, pg), known.AreaSlope_m(h, pg), known.Rate_N_per_m(h, pg, Exponent));
    }

    private static double Rate(AirSpring spring, double h)
    {
        StrutSpring strut = new(spring);
        return strut.SealedRate_N_per_m(h, strut.GaugePressureFor_Pa(Load_N, h), Exponent);
    }

    private sealed class Tally
    {
        private readonly int[] _covered = new int[Places];
        private double _width;

        public double Mean => _covered.Average() / Repeats;

        public double Least => (double)_covered.Min() / Repeats;

        public double HalfWidth => _width / Places / Repeats;

        public void Count(int place, (double Low, double High)? band, double truth)
        {
            var (low, high) = band!.Value;
            if (low <= truth && truth <= high) Interlocked.Increment(ref _covered[place]);
            lock (_covered) _width += (high - low) / 2;
        }

        public override string ToString() => $"{Mean:0.0%} ({Least:0.0%})";
    }
}
