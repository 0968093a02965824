using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.BellowsShape;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class MouldReaderTests : IDisposable
{
    private const string Sound = """
        {
          "bellowsmith": "mould/1", "name": "Sample mould", "convolutions": 2, "beadRadius": "44 mm", "girdleRadius": "47 mm",
          "cordAngleAtBead": "38°", "cordLength": "96 mm", "wallThickness": "3,2 mm",
        }
        """;

    private readonly SampleFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_SoundMould_GivesEveryFieldInSi()
    {
        Mould mould = Read(Sound.Replace("\"3,2 mm\"", "\"3,2 mm\", \"plateRadius\": \"50 mm\", \"plateThickness\": \"6 mm\"", StringComparison.Ordinal));

        Assert.Equal(("Sample mould", 2), (mould.Name, mould.Convolutions));
        Assert.Equal(0.044, mould.BeadRadius_m, 1e-15);
        Assert.Equal(0.047, mould.GirdleRadius_m!.Value, 1e-15);
        Assert.Equal(0.663225115757845, mould.CordAngleAtBead_rad, 1e-12);
        Assert.Equal(0.096, mould.CordLength_m, 1e-15);
        Assert.Equal(0.0032, mould.WallThickness_m, 1e-15);
        Assert.Equal(0.050, mould.PlateRadius_m!.Value, 1e-15);
        Assert.Equal(0.006, mould.PlateThickness_m!.Value, 1e-15);
    }

    [Fact]
    public void Read_MouldWithoutItsOptions_LeavesThemToTheBead()
    {
        Mould mould = Read(Sound.Replace("\"girdleRadius\": \"47 mm\",", "", StringComparison.Ordinal).Replace(", \"wallThickness\": \"3,2 mm\"", "", StringComparison.Ordinal));

        Assert.Equal((null, 0, null, null), (mould.GirdleRadius_m, mould.WallThickness_m, mould.PlateRadius_m, mould.PlateThickness_m));
        Assert.Equal(0.044, mould.Bellows().GirdleRadius_m, 1e-15);
        Assert.Equal(0.044, mould.Bellows().PlateRadius_m, 1e-15);
    }

    [Theory]
    [InlineData("\"47 mm\"", "\"72 mm\"", "girdleRadius")] // 44 mm / sin 38° = 71.5 mm
    [InlineData("\"3,2 mm\"", "\"3,2 mm\", \"plateRadius\": \"43 mm\"", "plateRadius")]
    [InlineData("\"96 mm\"", "\"96\"", "cordLength")]
    [InlineData("\"convolutions\": 2", "\"convolutions\": 0", "convolutions")]
    public void Read_FaultyMould_NamesThePlace(string from, string to, string where) => Assert.Equal(
        [where], Assert.Throws<FaultsException>(() => Read(Sound.Replace(from, to, StringComparison.Ordinal))).Faults.Select(f => f.Where));

    [Fact]
    public void Answer_AtAHeight_IsInTheUnitsOfItsNames()
    {
        BellowsAnswer answer = BellowsAnswer.Of(BellowsShapeStudy.Answer(Read(Sound), 0.080));

        Assert.Equal(80, answer.Height_mm, 1e-12);
        Assert.Equal(125.8, answer.OuterDiameter_mm!.Value, 0.5);
        Assert.Equal(2 * answer.CrownRadius_mm!.Value + 3.2, answer.OuterDiameter_mm.Value, 1e-9);
        Assert.InRange(answer.EffectiveArea_cm2!.Value, 65, 72);
        Assert.InRange(answer.Volume_cm3!.Value, 820, 900);
        Assert.Null(answer.Reason);
        Assert.Contains("\"effectiveArea_cm2\"", AnswerJson.Write(answer), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.030, "fold")]
    [InlineData(0.160, "over-extended")]
    [InlineData(-0.010, "plates meet")]
    public void Answer_WhereNoShapeIs_SaysWhy(double height_m, string reason)
    {
        BellowsAnswer answer = BellowsAnswer.Of(BellowsShapeStudy.Answer(Read(Sound), height_m));

        Assert.Null(answer.EffectiveArea_cm2);
        Assert.Null(answer.OuterDiameter_mm);
        Assert.Contains(reason, answer.Reason, StringComparison.Ordinal);
        Assert.Equal(42.28, answer.LeastHeight_mm!.Value, 0.05);
        Assert.Equal(146.44, answer.GreatestHeight_mm!.Value, 0.05);
    }

    private Mould Read(string text)
    {
        _folder.Write("mould.json", text);
        return MouldReader.Read(_folder.PathOf("mould.json"));
    }
}
