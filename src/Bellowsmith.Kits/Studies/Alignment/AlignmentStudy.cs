using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Alignment;

/// <summary>
/// Where the adjusters of a wheel are to stand so that camber and toe at drive height are what is wanted, through the real linkage: the
/// wheel keeps its height and turns about what holds it, not about the hub.
/// </summary>
public static class AlignmentStudy
{
    private static readonly Settings _measured = new(0, 0);

    public static AlignmentResult Answer(AlignmentCase corner, AlignmentQuestion question)
    {
        Linkage before = corner.Part.Linkage();
        (double camber, double toe) = (question.Camber_rad ?? before.Rest.Camber_rad, question.Toe_rad ?? before.Rest.Toe_rad);
        AlignmentSolver solver = new(corner, before.Suspension, camber, toe);
        bool camberFree = question.Camber_rad is not null, tieRodFree = corner.Toe is not null;
        Settings? needed = solver.Settle(_measured, camberFree, tieRodFree);
        Settings at = needed is { } met && Within(corner, met) ? met : Nearest(corner, solver, camberFree, tieRodFree);
        return new AlignmentResult
        {
            Case = corner,
            Question = question,
            Before = before,
            After = new Linkage(solver.Put(at)!),
            Adjustment = solver.Adjustment(at),
            Adjusters = [.. Adjusters(corner, at, needed, solver.EffectsAt(at) ?? default)],
            Shortfall = at == needed ? AlignmentShortfall.None : Shortfall(corner, needed),
        };
    }

    private static IEnumerable<AdjusterSetting> Adjusters(AlignmentCase corner, Settings at, Settings? needed, Effects e)
    {
        if (corner.Camber is { } camber) yield return new(camber, at.Camber, corner.Range(camber), needed?.Camber, e.CamberByCamber, e.ToeByCamber);
        if (corner.Toe is { } toe) yield return new(toe, at.TieRod, corner.Range(toe), needed?.TieRod, e.CamberByTieRod, e.ToeByTieRod);
    }

    // One adjuster at either end of its range and the other as well as it can: the best of those.
    private static Settings Nearest(AlignmentCase corner, AlignmentSolver solver, bool camberFree, bool tieRodFree)
    {
        List<Settings> ends = [_measured];
        if (camberFree && corner.Camber is { } camber)
            foreach (double end in Ends(corner.Range(camber)))
                ends.Add(Clamped(corner, solver.Settle(new(end, 0), false, tieRodFree) ?? new(end, 0)));
        if (tieRodFree && corner.Toe is { } toe)
            foreach (double end in Ends(corner.Range(toe)))
                ends.Add(Clamped(corner, solver.Settle(new(0, end), camberFree, false) ?? new(0, end)));
        return ends.MinBy(at => solver.Missed(at) is { } missed ? Math.Pow(camberFree ? missed.Camber : 0, 2) + Math.Pow(missed.Toe, 2) : double.MaxValue);
    }

    private static double[] Ends(AdjusterRange range) => [range.Least, range.Greatest];

    private static Settings Clamped(AlignmentCase corner, Settings at) => new(Held(corner, corner.Camber, at.Camber), Held(corner, corner.Toe, at.TieRod));

    private static double Held(AlignmentCase corner, AdjusterKind? kind, double setting) =>
        kind is { } known ? Math.Clamp(setting, corner.Range(known).Least, corner.Range(known).Greatest) : 0;

    private static bool Within(AlignmentCase corner, Settings at) => Clamped(corner, at) == at;

    private static AlignmentShortfall Shortfall(AlignmentCase corner, Settings? needed)
    {
        bool camber = needed is not { } at || Held(corner, corner.Camber, at.Camber) != at.Camber;
        bool tieRod = needed is { } there && Held(corner, corner.Toe, there.TieRod) != there.TieRod;
        return camber && tieRod ? AlignmentShortfall.BothEnd : camber ? AlignmentShortfall.CamberEnds : AlignmentShortfall.TieRodEnds;
    }
}
