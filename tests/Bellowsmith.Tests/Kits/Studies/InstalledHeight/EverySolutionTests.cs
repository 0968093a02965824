using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Physics;
using static Bellowsmith.Tests.Kits.Studies.SampleStrut;

namespace Bellowsmith.Tests.Kits.Studies.InstalledHeight;

/// <summary>
/// Random springs, some with several turns, against a scan of 20 000 heights with the law written out once more. Half of the
/// wanted rates lie just past a turn, so that two solutions stand close together.
/// </summary>
public sealed class EverySolutionTests
{
    private const int Scanned = 20_000;
    private const double Least_m = 0.05, Greatest_m = 0.11;

    [Fact]
    public void Answer_RandomSprings_FindsWhatAScanFinds()
    {
        Random random = new(20270101);
        int pairs = 0, many = 0, none = 0;
        for (var spring = 0; spring < 300; spring++)
        {
            var data = Random(random);
            var rates = Scan(AirSpring.FromCharacteristic(data.Rows));
            var wanted = Wanted(random, rates);
            var found = InstalledHeightStudy.Answer(Of(data, SpringRate(wanted), Least_m, Greatest_m, 4e5)).Solutions;
            var expected = Crossings(rates, wanted);

            Assert.Equal(expected.Count, found.Count);
            for (var k = 0; k < found.Count; k++) Assert.Equal(expected[k], found[k].Height_m, 4e-6);
            Assert.Equal(found.Any(s => s.WithinPressureLimit) ? 1 : 0, found.Count(s => s.Recommended));
            Assert.DoesNotContain(found, s => s.Recommended && !s.WithinPressureLimit);
            pairs += expected.Zip(expected.Skip(1)).Any(p => p.Second - p.First < (Greatest_m - Least_m) / 128) ? 1 : 0;
            many += expected.Count > 2 ? 1 : 0;
            none += expected.Count == 0 ? 1 : 0;
        }

        Assert.True(pairs > 30 && many > 10 && none > 10, $"{pairs} close pairs, {many} with three or more, {none} without");
    }

    // A falling area with a wave in it, through not-a-knot splines; the volume steeper than the area by a few per cent.
    private static CharacteristicSpring Random(Random random)
    {
        double fall = 0.02 + 0.1 * random.NextDouble(), bend = 2 * random.NextDouble() - 0.5, wave = 1.5e-4 * random.NextDouble() * random.NextDouble();
        double turns = 100 + 300 * random.NextDouble(), phase = 6 * random.NextDouble(), stretch = 0.95 + 0.1 * random.NextDouble();
        var volume = 0.0006 + 0.0008 * random.NextDouble();
        return new([.. Enumerable.Range(0, 25).Select(k => Least_m + (Greatest_m - Least_m) * k / 24).Select(h => new CharacteristicRow(
            h, 0.0115 - fall * (h - 0.08) - bend * (h - 0.08) * (h - 0.08) + wave * Math.Sin(turns * h + phase),
            volume + stretch * 0.0112 * (h - 0.08)))]);
    }

    private static double Wanted(Random random, double[] rates)
    {
        var turns = Enumerable.Range(1, rates.Length - 2).Where(k => (rates[k] - rates[k - 1]) * (rates[k + 1] - rates[k]) < 0).ToArray();
        if (turns.Length == 0 || random.Next(2) == 0) return rates.Min() + (rates.Max() - rates.Min()) * (1.2 * random.NextDouble() - 0.1);
        var turn = turns[random.Next(turns.Length)];
        var sign = rates[turn] < rates[turn - 1] ? 1 : -1;
        return rates[turn] + sign * (0.5 + 20 * random.NextDouble()) * Math.Abs(rates[turn + 1] - 2 * rates[turn] + rates[turn - 1]) * 50;
    }

    private static double[] Scan(AirSpring spring) => [.. Enumerable.Range(0, Scanned + 1).Select(k =>
    {
        var at = spring.At(HeightAt(k), 3e5);
        var pg = Load_N / at.EffectiveArea_m2;
        return Exponent * (pg + Ambient_Pa) * at.VolumeSlope_m2 * at.EffectiveArea_m2 / at.Volume_m3 - pg * at.AreaSlope_m;
    })];

    private static List<double> Crossings(double[] rates, double wanted)
    {
        List<double> found = [];
        for (var k = 0; k < Scanned; k++)
            if ((rates[k] - wanted) * (rates[k + 1] - wanted) < 0)
                found.Add(HeightAt(k) + (Greatest_m - Least_m) / Scanned * (wanted - rates[k]) / (rates[k + 1] - rates[k]));
        return found;
    }

    private static double HeightAt(int k) => Least_m + (Greatest_m - Least_m) * k / Scanned;
}
