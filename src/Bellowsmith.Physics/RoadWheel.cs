namespace Bellowsmith.Physics;

/// <summary>A tyre on a rim. Outlines run along the spin axis from the wheel's middle plane, outward +.</summary>
public sealed record RoadWheel(Rim Rim, Tyre Tyre)
{
    // Shape of a street tyre's shoulder: common practice, no source. Sections and radii are not touched by it.
    private const double TreadShare = 0.85, ShoulderDrop_m = 0.008, WidestShare = 0.5, Barrel_m = 0.012;
    private const int SidewallPoints = 6;

    public double Section_m => Tyre.Section_m(Rim.Width_m);

    public double SectionSpread_m => Tyre.SectionSpread_m(Rim.Width_m);

    public double FreeRadius_m => Tyre.FreeRadius_m;

    /// <summary>Under a load, on a tyre of a known rate: as a spring.</summary>
    public double LoadedRadius_m(double load_N, double tyreRate_N_per_m) => FreeRadius_m - load_N / tyreRate_N_per_m;

    /// <summary>The rim's edge stands further out than the tyre: stretched.</summary>
    public bool RimLeads => RimLead_m > 0;

    /// <summary>How far the rim's edge stands out past the tyre, either side; − where the tyre stands further out.</summary>
    public double RimLead_m => (Rim.OverallWidth_m - Section_m) / 2;

    public double WidestWidth_m => Math.Max(Section_m, Rim.OverallWidth_m);

    /// <summary>The tyre alone: from the bead over its widest place to the shoulder and the flat tread, hollow where the rim is.</summary>
    public RevolvedProfile TyreOutline()
    {
        double bead = Rim.Width_m / 2, seat = Rim.Diameter_m / 2, widest = Section_m / 2, tread = TreadShare * widest;
        double high = seat + WidestShare * (FreeRadius_m - seat), shoulder = FreeRadius_m - ShoulderDrop_m;
        List<(double Along, double Radius)> half = [(bead, seat)];
        // Two quarter ellipses: bead to widest place, widest place to shoulder.
        for (int k = 1; k <= SidewallPoints; k++) half.Add(Quarter(k, bead, widest, seat, high));
        for (int k = SidewallPoints - 1; k >= 0; k--) half.Add(Quarter(k, tread, widest, shoulder, high));
        half.Add((tread - 2 * ShoulderDrop_m, FreeRadius_m));
        return new([.. half, .. half.Select(p => (-p.Along, p.Radius)).Reverse()]);
    }

    /// <summary>The rim's barrel and flanges alone, from edge to edge; hollow inside, where hub and brake are.</summary>
    public RevolvedProfile RimOutline()
    {
        double edge = Rim.OverallWidth_m / 2, inside = Rim.Width_m / 2, seat = Rim.Diameter_m / 2, lip = Rim.EdgeRadius_m, barrel = seat - Barrel_m;
        return new((-edge, lip), (-inside, lip), (-inside, seat), (inside, seat), (inside, lip), (edge, lip), (edge, barrel), (-edge, barrel));
    }

    private static (double Along, double Radius) Quarter(int k, double fromAlong, double toAlong, double fromRadius, double toRadius)
    {
        double turn = Math.PI / 2 * k / SidewallPoints;
        return (fromAlong + (toAlong - fromAlong) * Math.Sin(turn), toRadius + (fromRadius - toRadius) * Math.Cos(turn));
    }
}
