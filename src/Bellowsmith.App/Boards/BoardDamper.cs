using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Boards;

/// <summary>
/// One strut's damper on the board: what it is damped to and how it rides. Its dyno file is read once; an answer is made again
/// only where it is due, so that a hand that moves something else does not wait for it.
/// </summary>
public sealed class BoardDamper
{
    private const int MapCells = 64, CellsBesideChoices = 16;

    private readonly Car _car;
    private readonly DampingCase? _corner;
    private readonly Dictionary<string, RideStrut> _struts = [];
    private readonly Kept<(string Load, double Height_m, double Ratio), DampingResult> _damping;
    private readonly Kept<RoadQuestion, double[]> _road;
    private readonly Kept<(string Load, RideSetting Setting, RoadQuestion Road), RideResult> _ride;
    private readonly Kept<(string Load, RideSetting Setting, Bump Bump, double Speed_m_per_s), BumpRide?> _bump;

    /// <param name="kit">One strut alone, its drive height known.</param>
    /// <param name="load">The load case to begin with.</param>
    public BoardDamper(Kit kit, string load)
    {
        _car = kit.Car;
        (_corner, DampingFaults) = Faulty.Of(() => DampingCases.Of(kit, new StudyConditions(Load: load))[0]);
        (RideStrut? strut, RideFaults) = Faulty.Of(() => RideStruts.Of(kit, new StudyConditions(Load: load))[0]);
        foreach (LoadCase at in _car.Loads)
            if (strut?.At(at, _car) is { } loaded) _struts[at.Name] = loaded;
        Clicks = (_corner?.Damper ?? strut?.Damper)?.Clicks is { Count: > 1 } clicks ? clicks : [];
        _damping = new(key => DampingStudy.Answer(_corner!.At(_car, _car.Loads.First(l => l.Name == key.Load), key.Height_m), key.Ratio));
        _road = new(RideRoads.Heights);
        _ride = new(key => RideStudy.Answer(
            _struts[key.Load], [.. _struts.Values.Where(s => s.Load != key.Load)], key.Road, key.Setting, _road.Of(key.Road)));
        _bump = new(key => RideStudy.Over(_struts[key.Load], key.Bump, key.Speed_m_per_s, key.Setting));
    }

    /// <summary>What the questions lack; empty where they can be answered.</summary>
    public IReadOnlyList<Fault> DampingFaults { get; }

    public IReadOnlyList<Fault> RideFaults { get; }

    /// <summary>The clicks measured, from closed; empty for a damper without any.</summary>
    public IReadOnlyList<double> Clicks { get; }

    /// <summary>The click driven with where nobody set one: the middle of those measured.</summary>
    public double? MiddleClick => Clicks.Count > 0 ? Clicks[Clicks.Count / 2] : null;

    /// <summary>Null where the kit says too little, and before the first due answer.</summary>
    public DampingResult? Damping(string load, double height_m, double ratio, bool due) =>
        _corner is null ? null : due ? _damping.Of((load, height_m, ratio)) : _damping.Last;

    public RideResult? Ride(string load, RideSetting setting, RoadQuestion road, bool due) =>
        !_struts.ContainsKey(load) ? null : due ? _ride.Of((load, setting, road)) : _ride.Last;

    public BumpRide? Bump(string load, RideSetting setting, Bump bump, double speed_m_per_s, bool due) =>
        !_struts.ContainsKey(load) ? null : due ? _bump.Of((load, setting, bump, speed_m_per_s)) : _bump.Last;

    /// <summary>What may run along a map of this strut; empty where the kit says too little.</summary>
    public IReadOnlyList<MapVariable> Variables(string load, double height_m) => !_struts.ContainsKey(load) ? []
        : [.. Enum.GetValues<MapVariable>().Where(v => MapAxis.Usual(v, At(load, height_m), _car, MapCells) is { Values.Count: > 1 })];

    /// <summary>The map asked for at a setting; null where the kit says too little.</summary>
    public MapQuestion? Map(string load, RideSetting setting, RoadQuestion road, MapAsked asked)
    {
        IReadOnlyList<MapVariable> variables = Variables(load, setting.Height_m!.Value);
        if (variables.Count < 2) return null;
        (MapAsked within, RideStrut strut) = (asked.Within(variables), At(load, setting.Height_m.Value));
        (MapAxis x, MapAxis y) = (Axis(within.X, MapCells), Axis(within.Y, MapCells));
        // Cells beside choices are read by their numbers, which need room.
        if (x.IsChoice || y.IsChoice) (x, y) = (Axis(within.X, CellsBesideChoices), Axis(within.Y, CellsBesideChoices));
        return new MapQuestion(_struts[load], [.. _car.Loads.Select(l => _struts.GetValueOrDefault(l.Name))], x, y, within.Show, road, setting);

        MapAxis Axis(MapVariable variable, int cells) => MapAxis.Usual(variable, strut, _car, cells)!;
    }

    private RideStrut At(string load, double height_m) => _struts[load] is { Case: { } air } strut
        ? strut with { Case = air with { Design = air.Design with { DriveHeight_m = height_m } } } : _struts[load];
}
