using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Bellowsmith.Quality.Charts;

/// <summary>What one rule remembers while points go by: the bits of its window on either side, or the length of a run.</summary>
internal struct RuleWatch(RunRule rule)
{
    private const int Block = 2048;

    private readonly RuleKind _kind = rule.Kind;
    private readonly int _count = rule.Count;
    private readonly double _distance = rule.Distance_sigma;
    private readonly ulong _window = ulong.MaxValue >> (64 - rule.Window);

    private double _above, _below, _slack, _last = double.NaN;
    private ulong _high, _low;
    private int _direction, _run;

    /// <summary>Every signal of the rules on a line, in order of points. Each phase begins with nothing remembered.</summary>
    public static Signal[] Over(ChartLine line, IReadOnlyList<RunRule> rules)
    {
        List<Signal> signals = [];
        RuleWatch[] watches = [.. rules.Select(r => new RuleWatch(r))];
        for (int s = 0; s < line.Steps.Length; s++)
        {
            LimitStep step = line.Steps[s];
            for (int r = 0; r < watches.Length; r++)
            {
                if (step.NewPhase) watches[r].Forget();
                watches[r].Take(step.Limits);
            }

            if (step.Limits.Known) Over(line.Points.AsSpan(step.First, line.StepEnd(s) - step.First), step.First, watches, signals);
        }

        return [.. signals];
    }

    // Block by block, so that the points stay near while each rule goes over them with its memory in registers.
    private static void Over(ReadOnlySpan<double> points, int first, RuleWatch[] watches, List<Signal> signals)
    {
        for (int from = 0; from < points.Length; from += Block)
        {
            int known = signals.Count;
            ReadOnlySpan<double> block = points.Slice(from, Math.Min(Block, points.Length - from));
            for (int r = 0; r < watches.Length; r++)
            {
                RuleWatch watch = watches[r];
                for (int i = 0; i < block.Length; i++)
                    if (watch.Sees(block[i])) signals.Add(new(first + from + i, r));
                watches[r] = watch;
            }

            CollectionsMarshal.AsSpan(signals)[known..].Sort((a, b) => a.Point != b.Point ? a.Point.CompareTo(b.Point) : a.Rule.CompareTo(b.Rule));
        }
    }

    public void Forget() => (_high, _low, _direction, _run, _last) = (0, 0, 0, 0, double.NaN);

    public void Take(in ControlLimits limits)
    {
        double reach = _distance * limits.Sigma;
        _slack = limits.Slack(Math.Max(_distance, 1));
        (_below, _above) = _kind == RuleKind.BeyondLimit ? (limits.Lower, limits.Upper) : (limits.Centre - reach, limits.Centre + reach);
        (_below, _above) = (_below - _slack, _above + _slack);
    }

    /// <summary>Whether this point completes the rule.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool Sees(double point)
    {
        bool above = point > _above, below = point < _below;
        return _kind switch
        {
            RuleKind.BeyondLimit => above | below,
            RuleKind.BeyondOnOneSide => Remember(ref _high, above) | Remember(ref _low, below),
            RuleKind.BeyondOnEitherSide => Remember(ref _high, above | below),
            RuleKind.Within => Remember(ref _high, !(above | below)),
            RuleKind.RisingOrFalling => Follow(point, 1),
            _ => Follow(point, -1),
        };
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly bool Remember(ref ulong history, bool hit)
    {
        history = (history << 1 | (hit ? 1ul : 0)) & _window;
        return hit && BitOperations.PopCount(history) >= _count;
    }

    // A run goes on where the step has the direction of the one before times the sign, and begins anew with two points.
    private bool Follow(double point, int sign)
    {
        int direction = point > _last + _slack ? 1 : point < _last - _slack ? -1 : 0;
        _run = direction == 0 ? 1 : direction == sign * _direction ? _run + 1 : 2;
        (_direction, _last) = (direction, point);
        return _run >= _count;
    }
}
