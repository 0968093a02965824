using System.Globalization;

namespace Bellowsmith.Quality.Serials;

/// <summary>
/// A week of the week-year [ISO 8601 2019]: weeks begin on Monday and belong to the year their Thursday lies in, so that the first
/// days of January may stand in the year before. Week-years from 2000 to 2099, for serials write two digits of them.
/// </summary>
public readonly record struct SerialWeek(int WeekYear, int Week)
{
    public const int LeastYear = 2000, GreatestYear = 2099;

    public static SerialWeek Of(DateOnly date)
    {
        DateTime day = date.ToDateTime(TimeOnly.MinValue);
        return new(ISOWeek.GetYear(day), ISOWeek.GetWeekOfYear(day));
    }

    /// <summary>Whether the week-year has a week of this number: 52 of them, or 53.</summary>
    public bool Exists => WeekYear is >= LeastYear and <= GreatestYear && Week >= 1 && Week <= ISOWeek.GetWeeksInYear(WeekYear);

    /// <summary><c>2026-W53</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{WeekYear:0000}-W{Week:00}");
}
