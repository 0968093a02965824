using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class LowerMountReaderTests : IDisposable
{
    private const string Mount = """
        "lowerMount": {
          "bracket": { "thickness": "8 mm", "material": "S355J2", "holes": [["44 mm", "30 mm"], ["44 mm", "90 mm"]], "holeDiameter": "12.5 mm", "width": "60 mm", "height": "110 mm", "slot": "20 mm" },
          "knuckle": { "holes": [["0 mm", "0 mm"], ["0 mm", "60.4 mm"]], "holeDiameter": "12.2 mm", "tolerance": "0.3 mm" },
          "bolts": { "size": "M12x1.25", "strengthClass": "10.9", "count": 2, "shearPlanes": 2 },
          "clamp": { "diameter": "52 mm", "height": "60 mm", "bolts": { "size": "M10", "strengthClass": "8.8", "count": 2, "friction": 0.12 } },
          "hoseBracket": ["30 mm", "60 mm"]
        },
        """;

    private readonly SampleFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_AMount_HasItsPartsInMetres()
    {
        LowerMount mount = Read(Mount)!;

        Assert.Equal([new PlanePoint(0.044, 0.03), new PlanePoint(0.044, 0.09)], mount.Bracket.Holes);
        Assert.Equal("S355J2", mount.Bracket.Material);
        Assert.Equal((0.0004, 1), (Math.Round(mount.Knuckle.Holes[1].Y_m - 0.06, 9), mount.SlottedHole));
        Assert.Equal((0.012, 0.00125, 1000e6), (mount.Bolts.Bolt.Diameter_m, mount.Bolts.Bolt.Pitch_m, mount.Bolts.Bolt.TensileStrength_Pa));
        Assert.Equal((0.2, 0.1e-3, 2), (mount.Bolts.FrictionOrUsual, mount.Bracket.Position_m, mount.Bolts.ShearPlanes));
        Assert.Equal((0.052, 2, 0.0015, 0.12), (mount.Clamp!.Diameter_m, mount.Clamp.Bolts, mount.Clamp.Bolt.Pitch_m, mount.Clamp.FrictionOrUsual));
        Assert.Equal((new PlanePoint(0.026, 0), new PlanePoint(0.086, 0.11)), mount.Plate);
        Assert.Equal((new PlanePoint(0.03, 0.06), null), (mount.HoseBracket, mount.SensorBracket));
    }

    [Fact]
    public void Read_NoMount_IsNone() => Assert.Null(Read(""));

    [Theory]
    [InlineData("[\"0 mm\", \"60.4 mm\"]]", "[\"0 mm\", \"60.4 mm\"], [\"0 mm\", \"90 mm\"]]", "knuckle.holes")]
    [InlineData("[[\"44 mm\", \"30 mm\"], ", "[", "bracket.holes", "knuckle.holes", "bolts.count")]
    [InlineData("[\"44 mm\", \"30 mm\"]", "[\"44 mm\", \"85 mm\"]", "bracket.holes[1]")]
    [InlineData("[\"0 mm\", \"60.4 mm\"]", "[\"0 mm\", \"0 mm\"]", "knuckle.holes[1]")]
    [InlineData("[\"0 mm\", \"60.4 mm\"]", "[\"0 mm\", \"12.1 mm\"]", "knuckle.holes[1]")]
    [InlineData("[\"44 mm\", \"30 mm\"]", "[\"20 mm\", \"30 mm\"]", "bracket.holes[0]")]
    [InlineData("[\"44 mm\", \"30 mm\"]", "[\"44 mm\"]", "bracket.holes[0]")]
    [InlineData("\"slot\": \"20 mm\"", "\"slot\": \"12 mm\"", "bracket.slot")]
    [InlineData("\"count\": 2, \"shearPlanes\"", "\"count\": 3, \"shearPlanes\"", "bolts.count")]
    [InlineData("M12x1.25", "M12x2", "bolts.size")]
    [InlineData("\"10.9\"", "\"5.6\"", "bolts.strengthClass")]
    [InlineData("\"tolerance\": \"0.3 mm\"", "\"tolerence\": \"0.3 mm\"", "knuckle.tolerence", "knuckle.tolerance")]
    public void Read_Fault_NamesThePlace(string good, string bad, params string[] where)
    {
        FaultsException faulty = Assert.Throws<FaultsException>(() => Read(Mount.Replace(good, bad, StringComparison.Ordinal)));

        Assert.Equal(where.Select(place => $"struts.front.lowerMount.{place}").Order(), faulty.Faults.Select(fault => fault.Where).Order());
    }

    private LowerMount? Read(string mount)
    {
        _folder.Write("kit.json", SampleFolder.Kit.Replace("\"sealAreaInAir\"", mount + "\"sealAreaInAir\"", StringComparison.Ordinal));
        return KitReader.Read(_folder.PathOf("kit.json")).Front!.LowerMount;
    }
}
