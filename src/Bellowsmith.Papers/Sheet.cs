using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;

namespace Bellowsmith.Papers;

/// <summary>
/// What a printed sheet says: one page for each strut of a kit, and one for each corner whose suspension and wheel the car names. The caller
/// brings date and version.
/// </summary>
public sealed record Sheet(Kit Kit, IReadOnlyList<StrutAnswers> Struts, IReadOnlyList<CornerAnswers> Corners, DisplayUnits Units, DateTimeOffset Date, string Version);

/// <summary>One strut with what was asked of it; null where the kit lacks what that question needs.</summary>
public sealed record StrutAnswers(StrutCase Case, InstalledHeightResult? Height, TravelResult? Travel)
{
    /// <summary>The height drawn: the kit's own, else the recommended one, else the nearest that exists.</summary>
    public double Setting_m => Case.Design.DriveHeight_m ?? Height?.ReferenceHeight_m ?? (Case.LeastHeight_m + Case.GreatestHeight_m) / 2;

    /// <summary>Asks every question the kit says enough for.</summary>
    public static StrutAnswers Of(StrutCase strut)
    {
        bool settled = strut.Design.Target is not null || strut.Design.DriveHeight_m is not null;
        return new StrutAnswers(
            strut,
            strut.Design.Target is null ? null : InstalledHeightStudy.Answer(strut),
            settled && strut.Damper is not null && strut.Design.SpringToDamper_m is not null ? TravelStudy.Answer(strut) : null);
    }
}

/// <summary>Paper in points of 1/72 in.</summary>
public sealed record Paper(string Name, float Width, float Height)
{
    public static Paper A4 { get; } = new("a4", 595.276f, 841.89f);

    public static Paper Letter { get; } = new("letter", 612, 792);
}
