using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Papers;
using Bellowsmith.Tests.App;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Papers;

public partial class SheetPdfTests
{
    private static readonly DateTimeOffset _day = new(2026, 11, 24, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Write_TheSameSheetTwice_TheSameBytes() => Assert.Equal(Written("ostrane-street", _day), Written("ostrane-street", _day));

    [Fact]
    public void Write_AnotherDay_SaysSo()
    {
        string text = Encoding.Latin1.GetString(Written("ostrane-street", _day.AddDays(1)));
        Assert.Contains("D:20261125", text, StringComparison.Ordinal);
        Assert.DoesNotContain("D:20261124", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ostrane-street", 3)]
    [InlineData("ostrane-too-stiff", 3)]
    public void Write_Kit_MakesAPageForEachStrutAndCornerOfLettersAndLinesOnly(string kit, int pages)
    {
        string text = Encoding.Latin1.GetString(Written(kit, _day));
        Assert.Equal(pages, Page().Count(text));
        Assert.Contains("/ToUnicode", text, StringComparison.Ordinal);
        Assert.Contains("+Inter-Regular", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/Subtype /Image", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_OnLetter_IsElevenInchesHigh()
    {
        string text = Encoding.Latin1.GetString(Written("ostrane-street", _day, Paper.Letter));
        Assert.Contains("/MediaBox [0 0 612 792]", text, StringComparison.Ordinal);
    }

    [Fact] // the rear axle's points were not measured
    public void Corners_OfAKit_AreThoseTheCarNames()
    {
        Kit kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));
        StrutAnswers[] struts = [.. StrutCases.Of(kit, new StudyConditions(), _ => { }).Select(StrutAnswers.Of)];
        CornerAnswers front = CornerAnswers.Of(kit, struts[0], new())!;

        Assert.Null(CornerAnswers.Of(kit, struts[1], new()));
        Assert.Equal(struts[0].Setting_m, front.Clearance.Case.Corner.Bodies!.DriveHeight_m, 1e-12);
        Assert.NotNull(front.Lowering);
        Assert.NotNull(front.Mount);
        Assert.NotNull(front.LowerMount);
    }

    [Fact]
    public async Task Sheet_InTwoProcesses_TheSameBytes() => Assert.Equal(await Printed("one.pdf"), await Printed("two.pdf"));

    [Fact]
    public void Inputs_OfAKit_AreTheFilesItWasReadFrom()
    {
        Kit kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));
        Assert.EndsWith("ostrane-street.json", kit.Inputs[0].File, StringComparison.Ordinal);
        Assert.Equal(14, kit.Inputs.Select(i => i.File).Distinct().Count());
        // SHA-256 of the three letters "abc" [FIPS 180-4 example].
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", new FileBytes("abc", "abc"u8.ToArray()).Sha256());
    }

    private static byte[] Written(string name, DateTimeOffset day, Paper? paper = null)
    {
        Kit kit = KitReader.Read(ExampleFolder.PathOf($"kits/{name}.json"));
        StrutAnswers[] struts = [.. StrutCases.Of(kit, new StudyConditions(), _ => { }).Select(StrutAnswers.Of)];
        CornerAnswers[] corners = [.. struts.Select(strut => CornerAnswers.Of(kit, strut, new())).OfType<CornerAnswers>()];
        return SheetPdf.Write(new Sheet(kit, struts, corners, DisplayUnits.Metric, day, "0"), paper ?? Paper.A4);
    }

    private static async Task<byte[]> Printed(string name)
    {
        string file = Path.Combine(Path.GetTempPath(), $"bellowsmith-{Environment.ProcessId}-{name}");
        ProcessStartInfo start = new("dotnet",
            [Prompt.WithNativeLibraries(), "sheet", ExampleFolder.PathOf("kits/ostrane-street.json"), "-o", file, "--date", "2026-11-24"])
        {
            RedirectStandardOutput = true,
        };
        using Process process = Process.Start(start)!;
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, process.ExitCode);
        byte[] bytes = await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
        File.Delete(file);
        return bytes;
    }

    [GeneratedRegex(@"/Type /Page\b")]
    private static partial Regex Page();
}
