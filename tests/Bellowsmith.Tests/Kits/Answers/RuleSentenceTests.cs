using Bellowsmith.Kits.Answers;
using Bellowsmith.Quality.Charts;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Answers;

public sealed class RuleSentenceTests
{
    public static TheoryData<string, RunRule> Sentences => new()
    {
        { "one point beyond 3 sigma", RunRule.BeyondThreeSigma },
        { "1 point outside the 3-sigma limits", RunRule.BeyondThreeSigma },
        { "a point beyond a limit", RunRule.BeyondThreeSigma },
        { "beyond 3σ", RunRule.BeyondThreeSigma },
        { "two of three beyond 2 sigma on one side", RunRule.Beyond(2, 3, 2) },
        { "2 out of 3 points beyond two sigma on the same side", RunRule.Beyond(2, 3, 2) },
        { "2/3 past 2 standard deviations", RunRule.Beyond(2, 3, 2) },
        { "Four of five consecutive points further than 1 sigma from the centre line, all on one side.", RunRule.Beyond(4, 5, 1) },
        { "eight in a row on one side", RunRule.OnOneSide(8) },
        { "9 successive points above or below the centre", RunRule.OnOneSide(9) },
        { "10 of 11 on one side", RunRule.Beyond(10, 11, 0) },
        { "six in a row rising or falling", RunRule.RisingOrFalling(6) },
        { "7 points steadily increasing or decreasing", RunRule.RisingOrFalling(7) },
        { "fourteen in a row alternating", RunRule.Alternating(14) },
        { "fifteen in a row within 1 sigma", RunRule.Within(15, 1) },
        { "15 points in a row inside 1,5 sd", RunRule.Within(15, 1.5) },
        { "eight in a row beyond 1 sigma on either side", RunRule.Beyond(8, 8, 1, eitherSide: true) },
        { "8 in a row beyond 1 sigma on both sides", RunRule.Beyond(8, 8, 1, eitherSide: true) },
    };

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Read_ASentence_IsTheRule(string text, RunRule rule) => Assert.Equal(rule, RuleSentence.Read(text, out _));

    [Theory]
    [InlineData("eigt in row on one sid", "eight in a row on one side")]
    [InlineData("two of three beyound 2 sigma", "two of three beyond 2 sigma on one side")]
    [InlineData("twelve in a row wihtin 1 sigma", "twelve in a row within 1 sigma")]
    [InlineData("one point above 3 sigma", "one point beyond 3 sigma")] // a rule watches both sides
    [InlineData("three of two beyond 2 sigma on one side", "two of three beyond 2 sigma on one side")]
    [InlineData("eight in a row on either side", "eight in a row on one side")]
    [InlineData("", "one point beyond 3 sigma")]
    public void Read_NoRule_NamesTheNearest(string text, string nearest)
    {
        Assert.Null(RuleSentence.Read(text, out string named));
        Assert.Equal(nearest, named);
    }

    [Theory]
    [InlineData("99 in a row on one side")]
    [InlineData("two and a half in a row on one side")]
    [InlineData("1.5 of three beyond 2 sigma")]
    [InlineData("eight in a row within 0 sigma")]
    [InlineData("two in a row rising or falling")]
    [InlineData("one point beyond 30 sigma")]
    [InlineData("one in a row on one side")]
    public void Read_WhatNoChartCanWatch_IsRefused(string text) => Assert.Null(RuleSentence.Read(text, out _));

    [Fact]
    public void Of_AnyRule_ReadsBackAsItself() =>
        Gen.Select(Gen.Int[1, 64], Gen.Int[0, 63], Gen.Int[0, 40], Gen.Enum<RuleKind>()).Sample((count, more, quarter, kind) =>
        {
            int window = Math.Min(64, count + more);
            double distance = quarter / 4.0;
            RunRule? rule = kind switch
            {
                RuleKind.BeyondLimit => null,
                RuleKind.RisingOrFalling or RuleKind.Alternating => count < 3 ? null : new(kind, count, count, 0),
                RuleKind.Within => quarter == 0 ? null : new(kind, count, window, distance),
                _ => window == 1 ? quarter == 0 ? null : RunRule.Beyond(1, 1, distance) : RunRule.Beyond(count, window, distance, kind == RuleKind.BeyondOnEitherSide && quarter > 0),
            };
            if (rule is not null && (rule.Count > 1 || rule.Window == 1)) Assert.Equal(rule, RuleSentence.Read(RuleSentence.Of(rule), out _));
        });

    [Fact]
    public void Examples_AllOfThem_AreTheirOwnSpelling() =>
        Assert.All(RuleSentence.Examples, text => Assert.Equal(text, RuleSentence.Of(RuleSentence.Read(text, out _)!)));
}
