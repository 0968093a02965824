using System.Numerics;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Charts;

/// <summary>
/// The average run length of rules that see zones only, exact for independent points about known limits: a Markov chain
/// over everything such rules can remember [Champ Woodall 1987]. The lines of the rules cut the axis into zones, and each line is
/// a zone of its own, on which only points that are whole numbers stand; a state the hits each rule still needs of its last points, found by walking from an empty memory. Nothing is listed by hand.
/// </summary>
internal sealed class ZoneChain
{
    private const int MostStates = 60_000, MostSteps = 200_000;
    private const double Settled = 1e-13;

    private readonly double[] _cuts;
    private readonly int[] _next; // state by zone; −1 where a rule signals
    private readonly int _zones, _longest;

    private ZoneChain(double[] cuts, int[] next, int longest) => (_cuts, _next, _zones, _longest) = (cuts, next, 2 * cuts.Length + 1, longest);

    public int States => _next.Length / _zones;

    /// <summary>The chain, or null where a rule sees order or the memory is too large to walk.</summary>
    public static ZoneChain? Of(IReadOnlyList<RunRule> rules)
    {
        if (rules.Any(r => r.SeesOrder)) return null;
        RunRule[] zoned = [.. rules.Select(r => r.Kind == RuleKind.BeyondLimit ? RunRule.BeyondThreeSigma : r)];
        double[] cuts = [.. zoned.SelectMany(r => (double[])[-r.Distance_sigma, r.Distance_sigma]).Select(c => c + 0.0).Distinct().Order()];
        Track[] tracks = [.. zoned.SelectMany(r => TracksOf(r, cuts))];
        int bits = 0;
        for (int t = 0; t < tracks.Length; bits += tracks[t].Bits, t++) tracks[t] = tracks[t] with { Offset = bits };
        return bits <= 128 && Walk(tracks, 2 * cuts.Length + 1) is { } next ? new(cuts, next, zoned.Max(r => r.Window)) : null;
    }

    /// <summary>Mean number of normal points to the first signal with the mean moved by <paramref name="shift_sigma"/>.</summary>
    public double RunLength(double shift_sigma) => RunLength(NormalChances(shift_sigma));

    /// <summary>The same of whole numbers: the chance that a point lies up to a number, whose place is in σ from the centre.</summary>
    public double RunLength(Func<double, double> upTo, double centre, double sigma) => RunLength(WholeChances(upTo, centre, sigma));

    /// <summary>
    /// The chance of being without a signal is carried forward until the share lost at each step has settled (to 1e-13 over two
    /// windows); from there on it is a geometric series. Infinite where no signal is possible.
    /// </summary>
    private double RunLength(double[] chance)
    {
        double[] now = new double[States], then = new double[States];
        now[0] = 1;
        double length = 0, left = 1, hazard = 0;
        for (int step = 0, still = 0; step < MostSteps && left > 0; step++)
        {
            double lost = Step(now, then, chance), share = lost / left;
            length += left;
            left = then.Sum();
            still = Math.Abs(share - hazard) <= Settled * share ? still + 1 : 0;
            hazard = share;
            (now, then) = (then, now);
            if (still > 2 * _longest && step > 4 * _longest) return length + left / hazard;
        }

        return left < 1e-15 ? length : double.PositiveInfinity;
    }

    private double Step(double[] now, double[] then, double[] chance)
    {
        Array.Clear(then);
        double lost = 0;
        for (int state = 0, at = 0; state < now.Length; state++)
        {
            double here = now[state];
            for (int zone = 0; zone < _zones; zone++, at++)
            {
                if (_next[at] < 0) lost += here * chance[zone];
                else then[_next[at]] += here * chance[zone];
            }
        }

        return lost;
    }

    // Each tail from its own side, so that far zones keep their digits; no point stands on a line.
    private double[] NormalChances(double shift)
    {
        double[] chances = new double[_zones];
        for (int z = 0; z < _zones; z += 2)
        {
            double low = z == 0 ? double.NegativeInfinity : _cuts[z / 2 - 1] - shift, high = z == _zones - 1 ? double.PositiveInfinity : _cuts[z / 2] - shift;
            chances[z] = low > 0 ? Below(-low) - Below(-high) : Below(high) - Below(low);
        }

        return chances;
    }

    private double[] WholeChances(Func<double, double> upTo, double centre, double sigma)
    {
        double[] chances = new double[_zones];
        double before = 0;
        for (int k = 0; k < _cuts.Length; k++)
        {
            double line = centre + _cuts[k] * sigma, slack = ControlLimits.Around(centre, sigma).Slack(Math.Abs(_cuts[k]));
            double below = upTo(Math.Ceiling(line - slack) - 1), on = upTo(Math.Floor(line + slack));
            (chances[2 * k], chances[2 * k + 1], before) = (Math.Max(0, below - before), on - below, on);
        }

        chances[^1] = 1 - before;
        return chances;
    }

    private static double Below(double z) =>
        double.IsNegativeInfinity(z) ? 0 : double.IsPositiveInfinity(z) ? 1 : Normal.CDF(0, 1, z);

    private static IEnumerable<Track> TracksOf(RunRule rule, double[] cuts)
    {
        double[] inside = [.. Enumerable.Range(0, 2 * cuts.Length + 1).Select(z =>
            z % 2 == 1 ? cuts[z / 2] : z == 0 ? cuts[0] - 1 : z / 2 == cuts.Length ? cuts[^1] + 1 : (cuts[z / 2 - 1] + cuts[z / 2]) / 2)];
        Func<double, bool>[] sides = rule.Kind switch
        {
            RuleKind.BeyondOnOneSide => [z => z > rule.Distance_sigma, z => z < -rule.Distance_sigma],
            RuleKind.Within => [z => Math.Abs(z) <= rule.Distance_sigma],
            _ => [z => Math.Abs(z) > rule.Distance_sigma],
        };
        return sides.Select(hit => new Track(rule.Count, rule.Window, [.. inside.Select(hit)], 0));
    }

    private static int[]? Walk(Track[] tracks, int zones)
    {
        Dictionary<UInt128, int> known = new() { [0] = 0 };
        List<UInt128> states = [0];
        List<int> next = [];
        for (int s = 0; s < states.Count; s++)
        {
            if (states.Count > MostStates) return null;
            for (int zone = 0; zone < zones; zone++)
            {
                if (After(states[s], zone, tracks) is not { } memory) next.Add(-1);
                else
                {
                    if (known.TryAdd(memory, states.Count)) states.Add(memory);
                    next.Add(known[memory]);
                }
            }
        }

        return [.. next];
    }

    private static UInt128? After(UInt128 memory, int zone, Track[] tracks)
    {
        UInt128 after = 0;
        foreach (Track track in tracks)
        {
            if (track.After((ulong)(memory >> track.Offset) & track.Mask, zone) is not { } history) return null;
            after |= (UInt128)history << track.Offset;
        }

        return after;
    }

    // One side of one rule: which zones hit, and where its last Window − 1 points lie in the memory.
    private sealed record Track(int Count, int Window, bool[] Hits, int Offset)
    {
        public int Bits => Window - 1;

        public ulong Mask => Bits == 0 ? 0 : ulong.MaxValue >> (64 - Bits);

        public ulong? After(ulong history, int zone)
        {
            ulong window = history << 1 | (Hits[zone] ? 1ul : 0);
            return Hits[zone] && BitOperations.PopCount(window) >= Count ? null : Useful(window & Mask);
        }

        // A hit that leaves the window before the count can be full is as good as none, and so is every older one.
        private ulong Useful(ulong history)
        {
            int hits = 0;
            for (int age = 1; age <= Bits; age++)
            {
                if ((history >> (age - 1) & 1) == 0) continue;
                if (Count - ++hits > Window - age) return history & ((1ul << (age - 1)) - 1);
            }

            return history;
        }
    }
}
