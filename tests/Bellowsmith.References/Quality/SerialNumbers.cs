using System.Globalization;
using Bellowsmith.Quality.Serials;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Check characters MOD 37,36 [ISO 7064 2003] of published identifiers, the first three printed by those who use them, and week dates
/// of [ISO 8601 2019]. The serial of 13 characters is our own example: all its 455 single wrong characters and all 11 swaps of
/// unlike neighbours, the check character's among them, are caught, as an independent count says.
/// </summary>
public sealed class SerialNumbers
{
    [Theory]
    [InlineData("A12425GABC1234002", 'M')]
    [InlineData("DADPIDA3897722461", 'J')]
    [InlineData("123AB", 'X')]
    [InlineData("AS25W07K00042", 'M')]
    [InlineData("KIT2025W42003", 'Z')]
    public void CheckCharacter_OfAPublishedIdentifier_IsThePublished(string text, char expected) => Assert.Equal(expected, CheckCharacter.Of(text));

    [Fact]
    public void CheckCharacter_EverySlipInASerial_IsCaught()
    {
        const string serial = "AS25W07K00042M";
        int wrong = 0, swapped = 0;
        for (int i = 0; i < serial.Length; i++)
        {
            foreach (char other in CheckCharacter.Alphabet.Where(c => i < 13 && c != serial[i]))
                if (!CheckCharacter.Holds(serial[..i] + other + serial[(i + 1)..])) wrong++;
            if (i > 0 && serial[i] != serial[i - 1] && !CheckCharacter.Holds(serial[..(i - 1)] + serial[i] + serial[i - 1] + serial[(i + 1)..])) swapped++;
        }

        Assert.Equal(455, wrong);
        Assert.Equal(11, swapped);
    }

    [Theory]
    [InlineData("1985-04-12", 1985, 15)]
    [InlineData("2006-12-31", 2006, 52)]
    [InlineData("2019-12-30", 2020, 1)]
    [InlineData("1996-12-30", 1997, 1)]
    [InlineData("1997-01-05", 1997, 1)]
    [InlineData("2008-12-29", 2009, 1)]
    [InlineData("2010-01-03", 2009, 53)]
    [InlineData("2005-01-01", 2004, 53)]
    [InlineData("2020-12-31", 2020, 53)]
    [InlineData("2021-01-03", 2020, 53)]
    [InlineData("2024-12-30", 2025, 1)]
    [InlineData("2026-12-31", 2026, 53)]
    [InlineData("2027-01-01", 2026, 53)]
    public void Week_OfADate_IsThePublished(string date, int year, int week) =>
        Assert.Equal(new SerialWeek(year, week), SerialWeek.Of(DateOnly.Parse(date, CultureInfo.InvariantCulture)));

    [Fact]
    public void Week_53_ExistsInThePublishedYears() => Assert.Equal(
        [2004, 2009, 2015, 2020, 2026, 2032], Enumerable.Range(2000, 34).Where(year => new SerialWeek(year, 53).Exists));

    [Fact] // counted by the Thursday of 28 December's week
    public void Week_53_StandsIn71Of400Years() => Assert.Equal(71, Enumerable.Range(2000, 400).Count(year => SerialWeek.Of(new(year, 12, 28)).Week == 53));
}
