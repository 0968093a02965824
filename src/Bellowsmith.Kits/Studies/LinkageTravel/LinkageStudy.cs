using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.LinkageTravel;

/// <summary>Wheel travels and rack travels to go through, m; with a tape, what so much of error in every coordinate makes of it.</summary>
public sealed record LinkageQuestion(IReadOnlyList<double> Travels_m, IReadOnlyList<double> Racks_m, double? Tape_m = null)
{
    /// <summary>From one end to the other, both included.</summary>
    public static IReadOnlyList<double> Range(double from, double to, double step)
    {
        int whole = (int)Math.Floor(Math.Abs(to - from) / step + 1e-9);
        double sign = Math.Sign(to - from);
        List<double> values = [.. Enumerable.Range(0, whole + 1).Select(k => from + sign * k * step)];
        if (Math.Abs(values[^1] - to) <= 1e-9 * step) values[^1] = to;
        else values.Add(to);
        return values;
    }
}

/// <summary>How the wheel goes: a point for each travel of each rack travel, in that order.</summary>
public sealed record LinkageResult
{
    public required SuspensionPart Part { get; init; }

    public required LinkageQuestion Question { get; init; }

    public required Linkage Linkage { get; init; }

    public required IReadOnlyList<LinkagePoint> Points { get; init; }

    /// <summary>One for each point where a tape's error was asked for and the point is reached.</summary>
    public IReadOnlyList<TapeSpread?>? Spreads { get; init; }

    public bool Reached => Points.All(point => point.State is not null);
}

/// <summary>How a suspension leads its wheel over travel and rack.</summary>
public static class LinkageStudy
{
    /// <exception cref="FaultsException">Rack travel is asked of a suspension that has no rack.</exception>
    public static LinkageResult Answer(SuspensionPart part, LinkageQuestion question)
    {
        Linkage linkage = part.Linkage();
        if (!linkage.HasRack && question.Racks_m.Any(rack => rack != 0))
            throw new FaultsException([new(part.File, "document", "a suspension without a tie rod", "one that steers", "Ask for no rack travel.")]);
        LinkagePoint[] points = Sweep(linkage, question);
        return new LinkageResult
        {
            Part = part,
            Question = question,
            Linkage = linkage,
            Points = points,
            Spreads = question.Tape_m is { } tape_m ? TapeSpread.Of(part, question, points, tape_m) : null,
        };
    }

    private const int FewRacks = 4;

    internal static LinkagePoint[] Sweep(Linkage linkage, LinkageQuestion question)
    {
        double[] travels = [.. question.Travels_m];
        LinkagePoint[] points = new LinkagePoint[travels.Length * question.Racks_m.Count];
        // One rack travel knows nothing of another: all cores, the same bits.
        if (question.Racks_m.Count < FewRacks)
            for (int r = 0; r < question.Racks_m.Count; r++) Along(r);
        else Parallel.For(0, question.Racks_m.Count, Along);
        return points;

        void Along(int r) => linkage.Sweep(travels, question.Racks_m[r], points.AsSpan(r * travels.Length, travels.Length));
    }
}
