using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>Where each load case of the car stands on the air that is in it at drive height, and what misses its margin there at any rack travel.</summary>
internal static class LoadStances
{
    /// <summary>Empty where the kit does not say how high the spring stands.</summary>
    public static LoadStance[] Of(ClearanceCase corner, CornerShapes shapes, double[] racks_m, ClearanceMargins margins)
    {
        if (corner.Corner is not { Travel.Case: { } strut, Bodies: { } bodies }) return [];
        return [.. corner.Loads.Select(Of)];

        LoadStance Of(LoadCase load)
        {
            double wheelLoad = load.Sprung_kg(corner.End, corner.Corner.Axle) * StandardGravity.Value_m_per_s2;
            if (TravelStudy.OnTheSameAir(strut, bodies.DriveHeight_m, wheelLoad) is not { } rest) return new(load.Name, null, null, null, []);
            PairGap[] there = WorstPlaces.Of(ClearanceSweep.Of(shapes, [rest.WheelTravel_m], racks_m), margins);
            return new(load.Name, rest.WheelTravel_m, rest.GaugePressure_Pa, rest.End, [.. there.Where(pair => !pair.Holds)]);
        }
    }
}
