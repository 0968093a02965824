using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.BellowsShape;

/// <summary>What a bellows looks like at one height, or why it cannot stand there.</summary>
public sealed record BellowsShapeResult
{
    public required Mould Mould { get; init; }

    public required CordBellows Bellows { get; init; }

    public required double Height_m { get; init; }

    /// <summary>Null where there is none; <see cref="Limit"/> says why.</summary>
    public required CordShape? Shape { get; init; }

    public required CordLimit Limit { get; init; }

    /// <summary>Against a measured spring, where one was given: the shape is then that of the calibrated cords.</summary>
    public MouldCalibration? Calibration { get; init; }
}

/// <summary>One height of a bellows known by its mould alone: diameter, effective area, volume and how its wall lies.</summary>
public static class BellowsShapeStudy
{
    /// <param name="mould">The bellows' mould and cords.</param>
    /// <param name="height_m">Bead to bead.</param>
    /// <param name="measured">A spring made in this mould, whose load-frame data win; its heights also count the mould's two plates.</param>
    public static BellowsShapeResult Answer(Mould mould, double height_m, AirSpringFit? measured = null)
    {
        MouldCalibration? calibration = measured is null ? null
            : MouldCalibration.Of(mould.Bellows(), measured.Spring, MiddleGaugePressure_Pa(measured), 2 * mould.PlateThickness_m ?? 0);
        CordBellows bellows = calibration?.After ?? mould.Bellows();
        return new BellowsShapeResult
        {
            Mould = mould,
            Bellows = bellows,
            Height_m = height_m,
            Shape = bellows.At(height_m),
            Limit = bellows.LimitAt(height_m),
            Calibration = calibration,
        };
    }

    /// <summary>Where a mould is compared with a spring: the middle of the gauge pressures tested.</summary>
    internal static double MiddleGaugePressure_Pa(AirSpringFit fit) =>
        fit.RegulatedRows == 0 ? 0 : (fit.LeastGaugePressure_Pa + fit.GreatestGaugePressure_Pa) / 2;
}
