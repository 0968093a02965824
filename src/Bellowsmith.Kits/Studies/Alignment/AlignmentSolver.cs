using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Alignment;

/// <summary>Settings of camber's adjuster and the tie rod, m or rad.</summary>
internal readonly record struct Settings(double Camber, double TieRod);

/// <summary>How fast camber and toe follow each adjuster.</summary>
internal readonly record struct Effects(double CamberByCamber, double ToeByCamber, double CamberByTieRod, double ToeByTieRod);

/// <summary>Newton through the real linkage: every place it asks for is walked to from where the points were measured.</summary>
internal sealed class AlignmentSolver(AlignmentCase corner, Suspension measured, double wantedCamber_rad, double wantedToe_rad)
{
    private const double Difference = 1e-5, Met_rad = 1e-12;
    private const int MostTries = 30, MostHalvings = 12;

    public Adjustment Adjustment(Settings at) =>
        corner.Moved(corner.Moved(Physics.Adjustment.None, corner.Camber, at.Camber), corner.Toe, at.TieRod);

    /// <summary>Null where the parts cannot be put together so.</summary>
    public Suspension? Put(Settings at) => measured.Adjusted(Adjustment(at)).Suspension;

    /// <summary>From where it starts to where what is free meets what is wanted; null where that is nowhere.</summary>
    public Settings? Settle(Settings at, bool camberFree, bool tieRodFree)
    {
        for (int tries = 0; tries < MostTries && Missed(at) is { } missed; tries++)
        {
            (double camber, double toe) = (camberFree ? missed.Camber : 0, tieRodFree ? missed.Toe : 0);
            if (Math.Abs(camber) <= Met_rad && Math.Abs(toe) <= Met_rad) return at;
            if (EffectsAt(at) is not { } e || Mend(e, camber, toe, camberFree, tieRodFree) is not { } mend || Reached(at, mend) is not { } next) return null;
            at = next;
        }

        return null;
    }

    public (double Camber, double Toe)? Missed(Settings at) =>
        Put(at) is { } put ? (put.Wheel.Camber_rad - wantedCamber_rad, put.Wheel.Toe_rad - wantedToe_rad) : null;

    public Effects? EffectsAt(Settings at) =>
        By(at with { Camber = at.Camber + Difference }, at with { Camber = at.Camber - Difference }) is { } camber
        && By(at with { TieRod = at.TieRod + Difference }, at with { TieRod = at.TieRod - Difference }) is { } tieRod
            ? new(camber.Camber, camber.Toe, tieRod.Camber, tieRod.Toe) : null;

    private (double Camber, double Toe)? By(Settings there, Settings back) => Missed(there) is { } one && Missed(back) is { } other
        ? ((one.Camber - other.Camber) / (2 * Difference), (one.Toe - other.Toe) / (2 * Difference)) : null;

    // What is not free stays where it is: its row says so.
    private static Settings? Mend(Effects e, double camber, double toe, bool camberFree, bool tieRodFree)
    {
        (double a, double b, double c, double d) = (e.CamberByCamber, e.CamberByTieRod, e.ToeByCamber, e.ToeByTieRod);
        if (!camberFree) (a, b) = (1, 0);
        if (!tieRodFree) (c, d) = (0, 1);
        double determinant = a * d - b * c;
        return determinant == 0 ? null : new((b * toe - d * camber) / determinant, (c * camber - a * toe) / determinant);
    }

    private Settings? Reached(Settings at, Settings mend)
    {
        double share = 1;
        for (int k = 0; k < MostHalvings; k++, share /= 2)
        {
            Settings next = new(at.Camber + share * mend.Camber, at.TieRod + share * mend.TieRod);
            if (Put(next) is not null) return next;
        }

        return null;
    }
}
