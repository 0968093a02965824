using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class JsonSourceKeyTests
{
    [Theory]
    [InlineData("{\n  \"a\": 1\n}\n", "{\n  \"a\": 1,\n  \"b\": 2\n}\n")]
    [InlineData("{\n  \"a\": 1,\n}\n", "{\n  \"a\": 1,\n  \"b\": 2,\n}\n")]
    [InlineData("{\n  \"a\": 1, // why\n}\n", "{\n  \"a\": 1, // why\n  \"b\": 2,\n}\n")]
    [InlineData("{\n  \"a\": 1 // why\n}\n", "{\n  \"a\": 1, // why\n  \"b\": 2\n}\n")]
    [InlineData("{\r\n\t\"a\": { \"c\": 1 },\r\n}", "{\r\n\t\"a\": { \"c\": 1 },\r\n\t\"b\": 2,\r\n}")]
    [InlineData("{ \"a\": 1 }", "{ \"a\": 1, \"b\": 2 }")]
    [InlineData("{}", "{ \"b\": 2 }")]
    public void WithKey_NewKey_StandsBehindTheOthersAsTheyDo(string text, string expected) =>
        Assert.Equal(expected, Text(Parse(text).WithKey("b", "2")));

    [Fact]
    public void WithKey_KnownKey_ReplacesItsValue() =>
        Assert.Equal("{ \"a\": 3 } // é", Text(Parse("{ \"a\": 1 } // é").WithKey("a", "3")));

    [Fact]
    public void WithKey_NestedObject_IsFilled() =>
        Assert.Equal("{\n  \"s\": {\n    \"f\": { \"x\": 1 },\n    \"r\": 2\n  }\n}", Text(Parse("{\n  \"s\": {\n    \"f\": { \"x\": 1 }\n  }\n}").WithKey("s.r", "2")));

    [Theory]
    [InlineData("a.b")]
    [InlineData("c.d")]
    public void WithKey_NoObjectThere_Throws(string path) =>
        Assert.Throws<ArgumentException>(() => Parse("{ \"a\": [1] }").WithKey(path, "1"));

    [Theory]
    [InlineData("{\n  \"a\": 1,\n  \"b\": 2\n}", "b", "{\n  \"a\": 1\n}")]
    [InlineData("{\n  \"a\": 1,\n  \"b\": 2\n}", "a", "{\n  \"b\": 2\n}")]
    [InlineData("{\n  \"a\": 1, // why\n  \"b\": 2,\n}", "b", "{\n  \"a\": 1, // why\n}")]
    [InlineData("{ \"a\": 1, \"b\": 2 }", "b", "{ \"a\": 1  }")]
    [InlineData("{ \"a\": 1, \"b\": 2 }", "a", "{  \"b\": 2 }")]
    public void WithoutValue_AKey_TakesItsCommaAndItsLine(string text, string key, string expected) =>
        Assert.Equal(expected, Text(Parse(text).WithoutValue(key)));

    [Fact]
    public void WithKey_ThenWithoutValue_GivesTheDocumentBack() => Gen.Select(Gen.Int[0, 4], Gen.Bool, Gen.Bool, Gen.OneOf("\n", "\r\n")).Sample((count, comma, inLine, end) =>
    {
        string between = inLine ? " " : end + "  ";
        string members = string.Join(",", Enumerable.Range(0, count + 1).Select(k => $"{between}\"k{k}\": {k}"));
        string text = $"{{{members}{(comma && !inLine ? "," : "")}{(inLine ? " " : end)}}}";
        byte[] added = Parse(text).WithKey("new", "\"x\"");
        Assert.True(Parse(Text(added)).Has("new"));
        string back = Text(Parse(Text(added)).WithoutValue("new"));
        Assert.Equal(inLine ? text.Replace(" ", "", StringComparison.Ordinal) : text, inLine ? back.Replace(" ", "", StringComparison.Ordinal) : back);
    });

    [Theory]
    [InlineData("{ \"a\": \"1,5 mm\" }", ',')]
    [InlineData("{ \"a\": \"15 mm\", \"b\": [\"1.5 mm\"] }", '.')]
    [InlineData("{ \"a\": 1 }", '.')]
    public void DecimalMark_OfADocument_IsTheFirstWritten(string text, char mark) =>
        Assert.Equal(mark, Parse(text).DecimalMark());

    [Theory]
    [InlineData("struts.front.thread.pitch", 3)]
    [InlineData("struts.front.upperStack", 2)]
    [InlineData("elsewhere", 1)]
    public void LineOf_APlace_IsItsLineOrThatOfWhatHoldsIt(string path, int line) =>
        Assert.Equal(line, Parse("{\n\"struts\": { \"front\": { \"thread\": {\n\"pitch\": 1 } } } }").LineOf(path));

    [Theory]
    [InlineData("k.json", "a.b", 3, "\"b\": \"2 km\",")]
    [InlineData("k.json", "line 2, column 3", 2, "\"a\": {")]
    [InlineData("t.csv", "row 2, column force [N]", 2, "80;x")]
    public void FaultLine_OfAFault_QuotesTheLineThatCausedIt(string file, string where, int number, string text)
    {
        string folder = Directory.CreateTempSubdirectory().FullName, path = Path.Combine(folder, file);
        File.WriteAllText(path, file == "k.json" ? "{\n  \"a\": {\n    \"b\": \"2 km\",\n  }\n}" : "height [mm];force [N]\n80;x\n");
        Assert.Equal(new FaultLine(number, text), FaultLine.Of(new Fault(path, where, "", "", "")));
        Directory.Delete(folder, recursive: true);
    }

    private static JsonSource Parse(string text) => JsonSource.Parse(Encoding.UTF8.GetBytes(text), "/k.json", [])!;

    private static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes);
}
