using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class TopMountReaderTests : IDisposable
{
    private const string Before = "\"limits\": { \"droop\"";

    private const string Fields = """
        "topMount": {
          "sphericalBearing": { "dynamicRating": "30 kN", "sphereDiameter": "29 mm", "tiltLimit": "9 deg", "surface": "steel on steel" },
          "turningBearing": { "dynamicRating": "22 kN", "elements": "rollers", "count": 28 },
          "tiltAtDrive": "-1.5 deg",
          "parts": [{ "name": "plate", "height": "14 mm" }, { "name": "seat", "height": "31 mm" }],
        },
        "guides": { "topToGuide": "112 mm", "guideToPiston": "84 mm" },
        "springTilt": "2 deg",
        "springOffset": "-8 mm",
        """;

    private readonly SampleFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_TopMountAndGuides_GivesThemInSi()
    {
        StrutDesign strut = Read(Fields).Front!;
        TopMount mount = strut.TopMount!;

        Assert.Equal(new SphericalPlainBearing(30e3, 100e6, 0.029, SlidingSurface.SteelOnSteel, mount.SphericalBearing!.TiltLimit_rad), mount.SphericalBearing);
        Assert.Equal(9, mount.SphericalBearing.TiltLimit_rad * 180 / Math.PI, 1e-12);
        Assert.Equal(1, mount.LifeFactor);
        Assert.Equal(new TurningBearing(new(22e3, 10.0 / 3), 28), mount.TurningBearing);
        Assert.Equal(-1.5, mount.TiltAtDrive_rad * 180 / Math.PI, 1e-12);
        Assert.Equal([new StackPart("plate", 0.014), new StackPart("seat", 0.031)], mount.Parts);
        Assert.Equal(0.045, mount.StackHeight_m!.Value, 1e-15);
        Assert.Equal(new RodGuides(0.112, 0.084, 0.1), strut.Guides);
        Assert.Equal(2, strut.SpringTilt_rad * 180 / Math.PI, 1e-12);
        Assert.Equal(-0.008, strut.SpringOffset_m);
    }

    [Fact]
    public void Read_Nothing_LeavesItOpen()
    {
        StrutDesign strut = Read("").Front!;

        Assert.Equal((null, null, 0, null), (strut.TopMount, strut.Guides, strut.SpringTilt_rad, strut.SpringOffset_m));
    }

    [Theory] // from memory of makers' catalogues
    [InlineData("steel on bronze", 100e6)]
    [InlineData("steel on fabric", 300e6)]
    public void Read_Surface_SetsTheUsualLoadFactor(string surface, double factor_Pa) =>
        Assert.Equal(factor_Pa, Read(Fields.Replace("steel on steel", surface, StringComparison.Ordinal)).Front!.TopMount!.SphericalBearing!.LoadFactor_Pa);

    [Fact] // a rating in kN says nothing of how forces are read
    public void Read_Rating_SetsNoUnit() => Assert.Equal("N", Read(Fields).WrittenUnits.GetValueOrDefault(Dimension.Force, "N"));

    [Theory]
    [InlineData("steel on steel", "steel on sand", "struts.front.topMount.sphericalBearing.surface", "Write \"steel on")]
    [InlineData("\"rollers\"", "\"needles\"", "struts.front.topMount.turningBearing.elements", "Write \"")]
    [InlineData("28 }", "2.5 }", "struts.front.topMount.turningBearing.count", "Check the number")]
    [InlineData("\"9 deg\"", "\"9 mm\"", "struts.front.topMount.sphericalBearing.tiltLimit", "Write a")]
    [InlineData("\"topToGuide\": \"112 mm\", ", "", "struts.front.guides.topToGuide", "Add \"topToGuide\"")]
    [InlineData("\"height\": \"31 mm\"", "\"hight\": \"31 mm\"", "struts.front.topMount.parts[1].hight", "Did you mean height?")]
    public void Read_Mistake_NamesItsPlace(string sound, string mistake, string where, string fix)
    {
        Fault fault = Assert.Throws<FaultsException>(() => Read(Fields.Replace(sound, mistake, StringComparison.Ordinal))).Faults[0];

        Assert.Equal(where, fault.Where);
        Assert.StartsWith(fix, fault.Fix, StringComparison.Ordinal);
    }

    private Kit Read(string fields)
    {
        string path = _folder.PathOf("kit.json");
        File.WriteAllText(path, SampleFolder.Kit.Replace(Before, fields + Before, StringComparison.Ordinal));
        return KitReader.Read(path);
    }
}
