namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>
/// What of camber or offset a wheel needs to keep its margins. None of it depends on the camber asked, and each takes its time: it is looked
/// for when somebody first asks.
/// </summary>
internal sealed class WheelSearch
{
    private const double Degree = Math.PI / 180, TradeOffLeast_deg = -3, TradeOffGreatest_deg = 1, TradeOffStep_deg = 0.25, MostTilt_rad = 6 * Degree;
    private const double MostShift_m = 0.1, Close_m = 2e-5, CloseCamber_rad = 1e-5, CloseOffsets_rad = 1e-4;
    private const int MostSteps = 25;

    private readonly WheelCorner _corner;
    private readonly WheelFitQuestion _question;
    private readonly WheelTrial _trial;
    private readonly Lazy<WheelGaps> _old;
    private readonly Lazy<WheelGaps?> _leastCamber;
    private readonly Lazy<WheelGaps[]> _tradeOff;
    private readonly Lazy<WheelOffsets[]> _offsets;

    public WheelSearch(WheelCorner corner, WheelFitQuestion question)
    {
        (_corner, _question, _trial) = (corner, question, new(corner, question.New, question.Change.Shift_m));
        _old = new(() => new WheelTrial(corner, question.Old, 0).Gaps(0)!);
        (_leastCamber, _tradeOff, _offsets) = (new(FindLeastCamber), new(FindTradeOff), new(FindOffsets));
    }

    public WheelGaps Old => _old.Value;

    public WheelGaps? LeastCamber => _leastCamber.Value;

    public IReadOnlyList<WheelGaps> TradeOff => _tradeOff.Value;

    public IReadOnlyList<WheelOffsets> Offsets => _offsets.Value;

    /// <summary>What the wheel leaves free over a travel.</summary>
    public WheelGaps Gaps(CornerTravel travel) => _trial.Gaps(travel);

    // From −3° to +1°, as far as the adjuster's parts go together.
    private WheelGaps[] FindTradeOff()
    {
        if (_corner.Adjuster.Linkage is null) return [];
        int count = (int)Math.Round((TradeOffGreatest_deg - TradeOffLeast_deg) / TradeOffStep_deg) + 1;
        return [.. Enumerable.Range(0, count).Select(k => _trial.Gaps((TradeOffLeast_deg + k * TradeOffStep_deg) * Degree)).OfType<WheelGaps>()];
    }

    // The arch gap falls as the top goes out.
    private WheelGaps? FindLeastCamber()
    {
        if (_corner.ArchEdge.Count == 0) return null;
        double most = _corner.Adjuster.Reach()?.Least_rad ?? -MostTilt_rad;
        if (Holds(0)) return _trial.Gaps(0);
        if (!Holds(most)) return null;
        (double enough, double tooLittle) = (most, 0);
        while (tooLittle - enough > CloseCamber_rad)
        {
            double middle = (enough + tooLittle) / 2;
            (enough, tooLittle) = Holds(middle) ? (middle, tooLittle) : (enough, middle);
        }

        return _trial.Gaps(enough);

        bool Holds(double camber) => CornerTravel.Of(_corner, camber) is { } travel && _trial.Arch(travel) is { } arch && Met.AtLeast(arch.Gap_m, _question.ArchMargin_m);
    }

    // Camber as measured, the least with which some offset fits where only camber makes one fit, and the most the adjuster makes.
    private WheelOffsets[] FindOffsets()
    {
        WheelOffsets? measured = At(0), most = _corner.Adjuster.Reach() is { Least_rad: < 0 } reach ? At(reach.Least_rad) : null;
        WheelOffsets? least = measured is { Any: false } && most is { Any: true } ? Least(measured, most) : null;
        return [.. ((WheelOffsets?[])[measured, least, most]).OfType<WheelOffsets>()];

        WheelOffsets? At(double camber) => CornerTravel.Of(_corner, camber) is { } travel ? OffsetsAt(travel) : null;

        WheelOffsets Least(WheelOffsets none, WheelOffsets some)
        {
            while (none.Camber_rad - some.Camber_rad > CloseOffsets_rad && At((none.Camber_rad + some.Camber_rad) / 2) is { } middle)
                (none, some) = middle.Any ? (none, middle) : (middle, some);
            return some;
        }
    }

    // Further out takes from the arch what it gives the strut.
    private WheelOffsets? OffsetsAt(CornerTravel travel)
    {
        if (_trial.Arch(travel) is null || Nearest_m(travel) is not { } nearest) return null;
        return new(travel.Set.Camber_rad, _question.Old.Rim.Offset_m - Farthest_m(travel), _question.Old.Rim.Offset_m - nearest);
    }

    private double Farthest_m(CornerTravel travel)
    {
        (double holds, double not) = (-MostShift_m, MostShift_m);
        while (not - holds > Close_m)
        {
            double middle = (holds + not) / 2;
            (holds, not) = Met.AtLeast(_trial.At(middle).Arch(travel)!.Gap_m, _question.ArchMargin_m) ? (middle, not) : (holds, middle);
        }

        return holds;
    }

    // The strut stands beside the wheel: a millimetre outward is nearly a millimetre of gap, so what is lacking is the next shift.
    private double? Nearest_m(CornerTravel travel)
    {
        double outward = _question.Change.Shift_m;
        for (int step = 0; step < MostSteps && Math.Abs(outward) < MostShift_m; step++)
        {
            if (_trial.At(outward).Strut(travel) is not { } strut) return null;
            if (Math.Abs(strut.Gap_m - _question.StrutMargin_m) < Close_m) return outward;
            outward += _question.StrutMargin_m - strut.Gap_m;
        }

        return null;
    }
}
