namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>What of camber or offset a wheel needs to keep its margins.</summary>
internal static class WheelSearch
{
    private const double Degree = Math.PI / 180, TradeOffLeast_deg = -3, TradeOffGreatest_deg = 1, TradeOffStep_deg = 0.25, MostTilt_rad = 6 * Degree;
    private const double MostShift_m = 0.1, Close_m = 2e-5, CloseCamber_rad = 1e-5, CloseOffsets_rad = 1e-4;
    private const int MostSteps = 25;

    /// <summary>From −3° to +1°, as far as the adjuster's parts go together; empty without points.</summary>
    public static WheelGaps[] TradeOff(WheelCorner corner, WheelTrial trial)
    {
        if (corner.Adjuster.Linkage is null) return [];
        int count = (int)Math.Round((TradeOffGreatest_deg - TradeOffLeast_deg) / TradeOffStep_deg) + 1;
        return [.. Enumerable.Range(0, count).Select(k => trial.Gaps((TradeOffLeast_deg + k * TradeOffStep_deg) * Degree)).OfType<WheelGaps>()];
    }

    /// <summary>The least change that gives the arch its margin: the arch gap falls as the top goes out.</summary>
    public static WheelGaps? LeastCamber(WheelCorner corner, WheelTrial trial, WheelFitQuestion question)
    {
        if (corner.ArchEdge.Count == 0) return null;
        double most = corner.Adjuster.Reach()?.Least_rad ?? -MostTilt_rad;
        if (Holds(0)) return trial.Gaps(0);
        if (!Holds(most)) return null;
        (double enough, double tooLittle) = (most, 0);
        while (tooLittle - enough > CloseCamber_rad)
        {
            double middle = (enough + tooLittle) / 2;
            (enough, tooLittle) = Holds(middle) ? (middle, tooLittle) : (enough, middle);
        }

        return trial.Gaps(enough);

        bool Holds(double camber) => CornerTravel.Of(corner, camber) is { } travel && trial.Arch(travel) is { } arch && Met.AtLeast(arch.Gap_m, question.ArchMargin_m);
    }

    /// <summary>Camber as measured, the least with which some offset fits where only camber makes one fit, and the most the adjuster makes.</summary>
    public static WheelOffsets[] Offsets(WheelCorner corner, WheelTrial trial, WheelFitQuestion question)
    {
        WheelOffsets? measured = At(0), most = corner.Adjuster.Reach() is { Least_rad: < 0 } reach ? At(reach.Least_rad) : null;
        WheelOffsets? least = measured is { Any: false } && most is { Any: true } ? Least(measured, most) : null;
        return [.. ((WheelOffsets?[])[measured, least, most]).OfType<WheelOffsets>()];

        WheelOffsets? At(double camber) => CornerTravel.Of(corner, camber) is { } travel ? OffsetsAt(trial, travel, question) : null;

        WheelOffsets Least(WheelOffsets none, WheelOffsets some)
        {
            while (none.Camber_rad - some.Camber_rad > CloseOffsets_rad && At((none.Camber_rad + some.Camber_rad) / 2) is { } middle)
                (none, some) = middle.Any ? (none, middle) : (middle, some);
            return some;
        }
    }

    // Further out takes from the arch what it gives the strut.
    private static WheelOffsets? OffsetsAt(WheelTrial trial, CornerTravel travel, WheelFitQuestion question)
    {
        if (trial.Arch(travel) is null || Nearest_m(trial, travel, question) is not { } nearest) return null;
        return new(travel.Set.Camber_rad, question.Old.Rim.Offset_m - Farthest_m(trial, travel, question), question.Old.Rim.Offset_m - nearest);
    }

    private static double Farthest_m(WheelTrial trial, CornerTravel travel, WheelFitQuestion question)
    {
        (double holds, double not) = (-MostShift_m, MostShift_m);
        while (not - holds > Close_m)
        {
            double middle = (holds + not) / 2;
            (holds, not) = Met.AtLeast(trial.At(middle).Arch(travel)!.Gap_m, question.ArchMargin_m) ? (middle, not) : (holds, middle);
        }

        return holds;
    }

    // The strut stands beside the wheel: a millimetre outward is nearly a millimetre of gap, so what is lacking is the next shift.
    private static double? Nearest_m(WheelTrial trial, CornerTravel travel, WheelFitQuestion question)
    {
        double outward = question.Change.Shift_m;
        for (int step = 0; step < MostSteps && Math.Abs(outward) < MostShift_m; step++)
        {
            if (trial.At(outward).Strut(travel) is not { } strut) return null;
            if (Math.Abs(strut.Gap_m - question.StrutMargin_m) < Close_m) return outward;
            outward += question.StrutMargin_m - strut.Gap_m;
        }

        return null;
    }
}
