using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Tables;

namespace Bellowsmith.Tests.Kits.Tables;

public sealed class GroundRuleTableTests : IDisposable
{
    private const string Rules = "market,rule,clearance [in],over,state,parts,source,read\nHere,town code,3.5,road,aired out,fixed,town hall,2026-05-04\nThere,no part below the rim,0,rim,drive,,a friend,2026\n";

    private readonly string _file = Path.GetTempFileName();

    public void Dispose() => File.Delete(_file);

    [Fact]
    public void Read_OwnRules_AreHadWithUnitsAndDefaults()
    {
        IReadOnlyList<GroundRule> rules = Read(Rules);

        Assert.Equal(new GroundRule("Here", "town code", 0.0889, GroundDatum.Road, GroundState.AiredOut, "town hall", "2026-05-04"), rules[0]);
        Assert.Equal((GroundDatum.Rim, GroundState.Drive, false), (rules[1].Over, rules[1].State, rules[1].Flexible));
    }

    [Fact] // what the trade notes have, each with who wrote it and when it was read
    public void Usual_HasTheMarketsThatWereRead()
    {
        Assert.Equal(["Austria", "Austria", "Austria", "Germany", "Germany", "Australia", "California"], GroundRuleTable.Usual.Select(rule => rule.Market));
        Assert.Equal([110, 90, 80, 80, 60, 100, 0], GroundRuleTable.Usual.Select(rule => Math.Round(rule.Clearance_m * 1000, 9)));
        Assert.All(GroundRuleTable.Usual, rule => Assert.True(rule.Source.Length > 0 && rule.Read.Length > 0));
    }

    [Theory]
    [InlineData("aired out", "lifted", "row 2, column state")]
    [InlineData("3.5", "35", "row 2, column clearance [in]")]
    [InlineData("town hall", "", "row 2, column source")]
    [InlineData("market,", "place,", "header")]
    [InlineData("\nHere,town code,3.5,road,aired out,fixed,town hall,2026-05-04\nThere,no part below the rim,0,rim,drive,,a friend,2026", "", "rows")]
    public void Read_OneFault_NamesThePlace(string from, string to, string where) =>
        Assert.Contains(Assert.Throws<FaultsException>(() => Read(Rules.Replace(from, to, StringComparison.Ordinal))).Faults, fault => fault.Where.StartsWith(where, StringComparison.Ordinal));

    [Fact]
    public void Read_NoSuchFile_IsAFault() => Assert.Equal("file", Assert.Single(Assert.Throws<FaultsException>(() => GroundRuleTable.Read("nowhere.csv")).Faults).Where);

    private IReadOnlyList<GroundRule> Read(string text)
    {
        File.WriteAllText(_file, text);
        return GroundRuleTable.Read(_file);
    }
}
