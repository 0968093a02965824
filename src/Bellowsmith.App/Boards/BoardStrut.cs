using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Travel;

namespace Bellowsmith.App.Boards;

/// <summary>
/// One strut on the board: asks the studies, and keeps of their answers what a moving hand leaves as it is. The spring is
/// fitted once per load case, the curves belong to load and target, only the rest to the height.
/// </summary>
public sealed class BoardStrut
{
    private readonly Kit _kit, _standing;
    private readonly Dictionary<string, StrutCase> _cases = [];
    private readonly Kept<(string Load, Target? Target), StrutCase> _case;
    private readonly Kept<StrutCase, InstalledHeightResult?> _result;
    private readonly Kept<StrutCase, HeightSweep> _sweep;
    private readonly Kept<(string Load, DisplayUnits Units), RateMap> _map;
    private readonly Kept<(string Load, DisplayUnits Units, double TextHeight_mm), StrutDrawing> _drawing;

    /// <exception cref="FaultsException">The strut lacks what the first question needs.</exception>
    public BoardStrut(Kit kit, AxleEnd end)
    {
        End = end;
        _kit = kit.Only(end);
        _case = new(key => CaseAt(key.Load) is var strut ? strut with { Design = strut.Design with { Target = key.Target } } : strut);
        _result = new(strut => strut.Design.Target is null ? null : InstalledHeightStudy.Answer(strut));
        _sweep = new(HeightSweep.Of);
        _map = new(key => RateMap.Of(CaseAt(key.Load), CaseAt(key.Load).LeastHeight_m, key.Units));
        _drawing = new(key => new StrutDrawing(CaseAt(key.Load), kit.Name, key.Units, key.TextHeight_mm));
        string load = Design.Load ?? kit.Car.Loads[0].Name;
        double height = CaseAt(load).LeastHeight_m;
        Start = new StrutSetting(
            Design.DriveHeight_m is { } h ? new Written(h, "") : null,
            Design.Target is { } t ? new Wanted(t.Kind, new Written(t.Value, "")) : null, load, Design.Click);
        _standing = Standing(height);
        TravelFaults = Lacks(_standing);
    }

    public AxleEnd End { get; }

    /// <summary>What the document says.</summary>
    public StrutSetting Start { get; }

    /// <summary>What the second question lacks; empty where it can be answered.</summary>
    public IReadOnlyList<Fault> TravelFaults { get; }

    /// <summary>Its dyno file is read when the strut is first shown.</summary>
    public BoardDamper Damper => field ??= new BoardDamper(_standing, Start.Load);

    /// <summary>Its linkage is put together when the strut is first shown.</summary>
    public BoardCorner Corner => field ??= new BoardCorner(_standing, End, Standing);

    private StrutDesign Design => (End == AxleEnd.Front ? _kit.Front : _kit.Rear)!;

    /// <summary>The strut as set, a drive height only where a hand or the document fixed one.</summary>
    public StrutCase Settled(StrutSetting setting)
    {
        StrutCase strut = _case.Of((setting.Load, setting.Wanted is { } w ? new Target(w.Kind, w.Value.Si) : null));
        return strut with { Design = strut.Design with { DriveHeight_m = setting.DriveHeight?.Si } };
    }

    /// <param name="setting">What is set.</param>
    /// <param name="asked">What is asked beside it.</param>
    /// <param name="units">Units shown.</param>
    /// <param name="textHeight_mm">Height of the drawing's letters in mm of the strut.</param>
    /// <param name="due">Which questions are answered anew; the others keep the answer they have.</param>
    public BoardView At(StrutSetting setting, Asked asked, DisplayUnits units, double textHeight_mm, Due due)
    {
        StrutCase strut = _case.Of((setting.Load, setting.Wanted is { } w ? new Target(w.Kind, w.Value.Si) : null));
        InstalledHeightResult? result = _result.Of(strut);
        double height = Math.Clamp(
            setting.DriveHeight?.Si ?? result?.ReferenceHeight_m ?? (strut.LeastHeight_m + strut.GreatestHeight_m) / 2,
            strut.LeastHeight_m, strut.GreatestHeight_m);
        StrutCase fixedHere = strut with { Design = strut.Design with { DriveHeight_m = height } };
        RideSetting stands = new(Height_m: height, Click: setting.Click);
        TravelResult? travel = TravelFaults.Count == 0 ? TravelStudy.Answer(fixedHere) : null;
        return new BoardView
        {
            Setting = setting,
            Units = units,
            Case = fixedHere,
            Result = result,
            Here = InstalledHeightStudy.At(strut, height),
            Travel = travel,
            Corner = Corner.At(fixedHere, travel, asked.Corner, due),
            Asked = asked,
            Clicks = Damper.Clicks,
            Click = setting.Click ?? Damper.MiddleClick,
            Damping = Damper.Damping(setting.Load, height, asked.Ratio, due.Of(Questions.Damping)),
            Ride = Damper.Ride(setting.Load, stands, asked.Drive, due.Of(Questions.Ride)),
            Bump = Damper.Bump(setting.Load, stands, Bump.Usual(asked.Bump), asked.BumpSpeed_m_per_s, due.Of(Questions.Ride)),
            Sweep = _sweep.Of(strut),
            Map = _map.Of((setting.Load, units)),
            Section = _drawing.Of((setting.Load, units, textHeight_mm)).At(height),
        };
    }

    private StrutCase CaseAt(string load)
    {
        if (!_cases.TryGetValue(load, out StrutCase? strut))
            _cases[load] = strut = StrutCases.Of(_kit, new StudyConditions(Load: load), _ => { })[0];
        return strut;
    }

    // A board always has a drive height, whatever the document says.
    private Kit Standing(double driveHeight_m) => _kit.With(End, Design with { DriveHeight_m = driveHeight_m });

    private IReadOnlyList<Fault> Lacks(Kit standing) =>
        Faulty.Of(() => StrutCases.Of(standing, new StudyConditions(Load: Start.Load), TravelStudy.Needs)).Faults;
}

/// <summary>Everything the studies say of one strut at one setting.</summary>
public sealed record BoardView
{
    public required StrutSetting Setting { get; init; }
    public required DisplayUnits Units { get; init; }

    /// <summary>The strut with its drive height at the setting.</summary>
    public required StrutCase Case { get; init; }

    /// <summary>Null while nothing is wanted.</summary>
    public required InstalledHeightResult? Result { get; init; }

    /// <summary>The report at the height shown.</summary>
    public required HeightSolution Here { get; init; }

    /// <summary>Null where the kit says too little to answer.</summary>
    public required TravelResult? Travel { get; init; }

    public required Asked Asked { get; init; }

    /// <summary>The clicks measured, from closed; empty for a damper without any.</summary>
    public required IReadOnlyList<double> Clicks { get; init; }

    /// <summary>The click set, else the middle of those measured; null for a damper without any.</summary>
    public required double? Click { get; init; }

    /// <summary>Null where the kit says too little to answer, as are the ride and the bump.</summary>
    public required DampingResult? Damping { get; init; }

    public required RideResult? Ride { get; init; }
    public required BumpRide? Bump { get; init; }

    public required BoardCornerView Corner { get; init; }

    public required HeightSweep Sweep { get; init; }
    public required RateMap Map { get; init; }
    public required StrutSection Section { get; init; }

    /// <summary>Whether the setting is the recommended one, chosen or followed.</summary>
    public bool IsRecommended => Result?.Recommended is { } chosen && Math.Abs(chosen.Height_m - Here.Height_m) < 5e-5;
}
