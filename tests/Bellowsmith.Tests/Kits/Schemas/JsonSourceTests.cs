using System.Text;
using Bellowsmith.Kits.Schemas;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class JsonSourceTests
{
    [Theory]
    [InlineData("struts.front.thread.pitch", "\"2 mm\"", "\"1.5 mm\"")]
    [InlineData("struts.front.damper.bumpStop", "{ \"freeLength\": \"60 mm\", \"solidLength\": \"22 mm\", \"curve\": \"stop.csv\" }", "null")]
    [InlineData("name", "\"Sample kit\"", "\"Ünïcode\"")]
    [InlineData("x-colour.free[1]", "2]", "3]")]
    [InlineData("x-colour.free", "[1, 2]", "[]")]
    public void WithValue_OnePlace_ChangesOnlyItsBytes(string path, string from, string to)
    {
        foreach (var start in new[] { "", "\uFEFF", "\r\n// é\r\n" })
        {
            var text = start + SampleFolder.Kit;
            var changed = Parse(text).WithValue(path, to.TrimEnd(from == "2]" ? ']' : '\0'));
            Assert.Equal(text.Replace(from, to, StringComparison.Ordinal), Encoding.UTF8.GetString(changed));
        }
    }

    [Fact]
    public void WithValue_KeyWithADot_FindsIt() =>
        Assert.Equal("{\"a.b\": {\"c\": 2}}", Encoding.UTF8.GetString(Parse("{\"a.b\": {\"c\": 1}}").WithValue("a.b.c", "2")));

    [Theory]
    [InlineData("struts.middle")]
    [InlineData("x-colour.free[2]")]
    [InlineData("nam")]
    public void WithValue_NoSuchPlace_Throws(string path) =>
        Assert.Throws<ArgumentException>(() => Parse(SampleFolder.Kit).WithValue(path, "1"));

    private static JsonSource Parse(string text) => JsonSource.Parse(Encoding.UTF8.GetBytes(text), "/k.json", [])!;
}
