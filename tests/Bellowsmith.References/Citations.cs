using System.Text.RegularExpressions;

namespace Bellowsmith.References;

/// <summary>
/// A citation is written <c>[Author Year]</c> or <c>[Author Year, eq. n]</c>; its key in references.bib is its letters
/// and digits up to the year: [Barton Fieldhouse 2018, eq. 3.29] is BartonFieldhouse2018.
/// </summary>
public sealed partial class Citations
{
    private static readonly string Bibliography = File.ReadAllText(Path.Combine(Repository.Root, "references", "references.bib"));

    [Theory]
    [InlineData("src", "*.cs")]
    [InlineData("tests/Bellowsmith.References", "*.cs")]
    [InlineData("docs", "*.md")]
    public void Citation_InText_HasAnEntry(string folder, string pattern)
    {
        var cited = Cited(Path.Combine(Repository.Root, folder), pattern).ToList();

        Assert.NotEmpty(cited);
        Assert.Empty(cited.ExceptBy(Keys(), citation => citation.Key).Select(citation => $"{citation.Text} in {citation.File}"));
    }

    [Fact]
    public void Entry_Key_StandsOnce() => Assert.Equal(Keys().Distinct(), Keys());

    [Theory]
    [InlineData("law [Pelz Buttenbender 2004] of", "PelzButtenbender2004")]
    [InlineData("[FED-STD-H28 1978, p. 3]", "FEDSTDH281978")]
    [InlineData("[Barton Fieldhouse 2018, eqs 3.29–3.33]", "BartonFieldhouse2018")]
    public void Citation_AsWritten_NamesItsKey(string text, string key) => Assert.Equal(key, KeyOf(Citation().Match(text)));

    [Theory]
    [InlineData("[InlineData(2018)]")]
    [InlineData("values[2018]")]
    [InlineData("[1, 2, 2018]")]
    public void Citation_CodeInBrackets_IsNone(string text) => Assert.DoesNotMatch(Citation(), text);

    private static IEnumerable<(string Key, string Text, string File)> Cited(string folder, string pattern) =>
        from file in Directory.EnumerateFiles(folder, pattern, SearchOption.AllDirectories)
        where Path.GetFileName(file) != "Citations.cs"
        from match in Citation().Matches(File.ReadAllText(file))
        select (KeyOf(match), match.Value, Path.GetRelativePath(Repository.Root, file));

    private static string KeyOf(Match match) =>
        string.Concat(match.Groups["author"].Value.Where(char.IsLetterOrDigit)) + match.Groups["year"].Value;

    private static string[] Keys() => [.. Entry().Matches(Bibliography).Select(match => match.Groups["key"].Value)];

    [GeneratedRegex(@"\[(?<author>\p{Lu}[\p{L}\d&.' -]*?) (?<year>(?:1[89]|20)\d\d[a-z]?)(?:, [^\]]+)?\]")]
    private static partial Regex Citation();

    [GeneratedRegex(@"^@\w+\{(?<key>[^,\s]+),", RegexOptions.Multiline)]
    private static partial Regex Entry();
}
