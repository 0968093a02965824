using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Boards;

/// <summary>Which two variables a map runs over, and what shades it.</summary>
public sealed record MapAsked(MapVariable X, MapVariable Y, RideQuantity Show)
{
    public static MapAsked First { get; } = new(MapVariable.Click, MapVariable.Height, RideQuantity.WeightedRms);

    /// <summary>The same for a strut that has only some of them.</summary>
    public MapAsked Within(IReadOnlyList<MapVariable> variables)
    {
        MapVariable x = variables.Contains(X) ? X : variables.First(v => v != Y);
        return this with { X = x, Y = variables.Contains(Y) && Y != x ? Y : variables.First(v => v != x) };
    }

    /// <summary>After a choice; null where it is none of this. A variable that is taken changes places.</summary>
    public MapAsked? Chosen(string field, string choice) => field switch
    {
        "mapX" when Enum.TryParse(choice, out MapVariable x) => this with { X = x, Y = x == Y ? X : Y },
        "mapY" when Enum.TryParse(choice, out MapVariable y) => this with { Y = y, X = y == X ? Y : X },
        "mapShow" when RideQuantity.Find(choice) is { } show => this with { Show = show },
        _ => null,
    };
}
