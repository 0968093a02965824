using Bellowsmith.Quality.Serials;
using CsCheck;

namespace Bellowsmith.Tests.Quality.Serials;

public sealed class SerialTests
{
    private static readonly Gen<SerialNumber> _serial =
        from prefix in Gen.String[Gen.Char["ABKZ019"], 0, 8]
        from day in Gen.Int[0, 36000]
        from number in Gen.Int[1, 99_999]
        from mark in Gen.String[Gen.Char["AKWZ"], 0, 4]
        select SerialNumber.New(prefix, new DateOnly(2000, 1, 10).AddDays(day), number, mark.Replace("W", "K", StringComparison.Ordinal));

    [Fact] // check characters computed by hand with the standard's recursion
    public void New_FirstDayOf2027_BelongsToWeek53Of2026()
    {
        Assert.Equal("26W5300042U", SerialNumber.New("", new(2027, 1, 1), 42).ToString());
        Assert.Equal("AS26W53000422", SerialNumber.New("AS", new(2027, 1, 1), 42).ToString());
    }

    [Theory]
    [InlineData("as", 42, "")]
    [InlineData("ABCDEFGHI", 42, "")]
    [InlineData("AS", 0, "")]
    [InlineData("AS", 100_000, "")]
    [InlineData("AS", 42, "K1")]
    public void New_WhatCannotStandInASerial_Throws(string prefix, int number, string mark) =>
        Assert.Throws<ArgumentException>(() => SerialNumber.New(prefix, new(2027, 1, 1), number, mark));

    [Fact]
    public void New_OutsideTheCentury_Throws() => Assert.Throws<ArgumentException>(() => SerialNumber.New("", new(1999, 6, 1), 1));

    [Fact]
    public void Check_OfAnySerial_GivesItBack() => _serial.Sample(serial =>
    {
        SerialCheck check = SerialCheck.Of(serial.ToString());

        Assert.True(check.IsValid);
        Assert.Equal(serial, check.Number);
        Assert.Empty(check.LikelySlips());
    });

    [Fact]
    public void Check_AnySingleWrongCharacter_IsInvalidAndAmongTheSlips() => _serial.Select(Gen.Int[0, 40], Gen.Int[1, 35]).Sample((serial, at, by) =>
    {
        string text = serial.ToString();
        at %= text.Length;
        char wrong = CheckCharacter.Alphabet[(CheckCharacter.Alphabet.IndexOf(text[at], StringComparison.Ordinal) + by) % 36];
        SerialCheck check = SerialCheck.Of(text[..at] + wrong + text[(at + 1)..]);

        Assert.False(check.IsValid);
        Assert.Contains(text, check.LikelySlips().Select(s => s.Serial));
    });

    [Theory]
    [InlineData("as-26w53 00042/2")]
    [InlineData(" AS26W53.00042-2 ")]
    [InlineData("AS_26W53_00042–2")]
    public void Check_WithSeparatorsAndSmallLetters_IsTheSame(string text) => Assert.Equal("AS26W53000422", SerialCheck.Of(text) is { IsValid: true } c ? c.Serial : "");

    [Fact]
    public void Check_ALetterOForAZero_IsNamedFirst() =>
        Assert.Equal(new SerialSlip("AS26W53000422", 8, false), SerialCheck.Of("AS26W53O00422").LikelySlips()[0]);

    [Fact]
    public void Check_SwappedNeighbours_IsNamedFirst() =>
        Assert.Equal(new SerialSlip("AS26W53000422", 11, true), SerialCheck.Of("AS26W53000242").LikelySlips()[0]);

    [Fact] // 2027 has 52 weeks
    public void Check_AWeekThatDoesNotExist_IsInvalidThoughTheCharacterStands()
    {
        string text = "27W5300042";
        SerialCheck check = SerialCheck.Of(text + CheckCharacter.Of(text));

        Assert.True(check.WeekIsMissing);
        Assert.False(check.IsValid);
    }

    [Theory]
    [InlineData("")]
    [InlineData("M")]
    [InlineData("ÄS26W53000422")]
    public void Check_WhatHasNoCheckCharacter_IsInvalid(string text)
    {
        Assert.Null(SerialCheck.Of(text).Expected);
        Assert.False(SerialCheck.Of(text).IsValid);
    }

    [Fact]
    public void Check_AnotherLayout_IsValidWithoutAWeek()
    {
        SerialCheck check = SerialCheck.Of("A1-2425G-ABC1234-002-M");

        Assert.True(check.IsValid);
        Assert.Null(check.Number);
    }

    [Theory]
    [InlineData("ab")]
    [InlineData("A-B")]
    public void CheckCharacter_OutsideTheAlphabet_Throws(string text) => Assert.Throws<ArgumentException>(() => CheckCharacter.Of(text));
}
