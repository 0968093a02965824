using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.LinkageTravel;

/// <summary>
/// What a tape leaves open: each coordinate of each point is moved by the tape's error both ways, alone, and half the differences are
/// added as squares, for errors that know nothing of each other. Static camber and toe are set on the car and carry none.
/// </summary>
/// <param name="Camber_rad">±.</param>
/// <param name="Toe_rad">±.</param>
/// <param name="RollCentre_m">±.</param>
/// <param name="MotionRatio">±.</param>
/// <param name="StrutTravel_m">±, of the strut's compression since drive height.</param>
/// <param name="WorstForCamber">The point that moves the camber most.</param>
/// <param name="WorstForToe">The point that moves the toe most.</param>
public sealed record TapeSpread(
    double Camber_rad, double Toe_rad, double RollCentre_m, double MotionRatio, double StrutTravel_m, string WorstForCamber, string WorstForToe)
{
    /// <summary>What a tape and plumb lines are good to (common practice, no source).</summary>
    public const double Usual_m = 0.002;

    internal static IReadOnlyList<TapeSpread?> Of(
        SuspensionPart part, LinkageQuestion question, IReadOnlyList<LinkagePoint> points, double tape_m)
    {
        var spreads = new Sum?[points.Count];
        for (int k = 0; k < spreads.Length; k++) spreads[k] = points[k].State is null ? null : new Sum();
        foreach ((string name, SuspensionPart there, SuspensionPart back) in BothWays(part, tape_m))
        {
            // A tape's error can leave the wheel no way to go: then nothing is known of how far it moves anything.
            if (there.LinkageIfAny() is not { } one || back.LinkageIfAny() is not { } other) return new TapeSpread?[points.Count];
            LinkagePoint[] thereAt = LinkageStudy.Sweep(one, question), backAt = LinkageStudy.Sweep(other, question);
            for (int k = 0; k < spreads.Length; k++)
            {
                if (thereAt[k].State is { } thereState && backAt[k].State is { } backState) spreads[k]?.Add(name, thereState, backState);
                else spreads[k] = null;
            }
        }

        return [.. spreads.Select(sum => sum?.Spread())];
    }

    /// <summary>Each coordinate of each point off by the tape's error, alone, one way and the other.</summary>
    internal static IEnumerable<(string Point, SuspensionPart There, SuspensionPart Back)> BothWays(SuspensionPart part, double tape_m)
    {
        foreach (string name in part.Points.Keys)
            foreach (Point along in (Point[])[new(tape_m, 0, 0), new(0, tape_m, 0), new(0, 0, tape_m)])
                yield return (name, part.Moved(name, along), part.Moved(name, -along));
    }

    private sealed class Sum
    {
        private readonly Dictionary<string, double> _camber = [], _toe = [];
        private double _rollCentre, _ratio, _strut;

        public void Add(string point, LinkageState one, LinkageState other)
        {
            Gather(_camber, point, Half(one.Camber_rad, other.Camber_rad));
            Gather(_toe, point, Half(one.Toe_rad, other.Toe_rad));
            _rollCentre += Half(one.RollCentreHeight_m, other.RollCentreHeight_m);
            _ratio += Half(one.Strut.MotionRatio, other.Strut.MotionRatio);
            _strut += Half(one.Strut.Compression_m, other.Strut.Compression_m);
        }

        public TapeSpread Spread() => new(
            Math.Sqrt(_camber.Values.Sum()), Math.Sqrt(_toe.Values.Sum()), Math.Sqrt(_rollCentre), Math.Sqrt(_ratio), Math.Sqrt(_strut),
            _camber.MaxBy(known => known.Value).Key, _toe.MaxBy(known => known.Value).Key);

        private static double Half(double one, double other) => (one - other) * (one - other) / 4;

        private static void Gather(Dictionary<string, double> by, string point, double square) =>
            by[point] = by.GetValueOrDefault(point) + square;
    }
}
