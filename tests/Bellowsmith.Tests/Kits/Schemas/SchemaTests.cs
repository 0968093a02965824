using System.Text.Json.Nodes;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class SchemaTests
{
    private const string Mould = """
        {
          "bellowsmith": "mould/1", "name": "Sample mould", "convolutions": 2, "beadRadius": "44 mm", "girdleRadius": "47 mm",
          "cordAngleAtBead": "38°", "cordLength": "96 mm",
        }
        """;

    private const string Strut = """
        {
          "bellowsmith": "suspension/1", "name": "Sample strut axle", "wheelRadius": "318 mm",
          "macpherson": {
            "lowerArmFront": ["150 mm", "340 mm", "190 mm"], "lowerArmRear": ["-180 mm", "350 mm", "195 mm"],
            "lowerBallJoint": ["5 mm", "690 mm", "170 mm"], "strutTop": ["-20 mm", "560 mm", "810 mm"],
            "strutAxisPoint": ["0 mm", "610 mm", "330 mm"], "tieRodInner": ["-120 mm", "360 mm", "230 mm"],
            "tieRodOuter": ["-140 mm", "680 mm", "225 mm"], "wheelCentre": ["0 mm", "745 mm", "300 mm"],
          },
        }
        """;

    private const string Wishbones = """
        {
          "bellowsmith": "suspension/1", "name": "Sample wishbones", "wheelRadius": "318 mm",
          "doubleWishbone": {
            "lowerArmFront": ["15 cm", "34 cm", "19 cm"], "lowerArmRear": ["-18 cm", "35 cm", "19,5 cm"], "lowerBallJoint": ["0 cm", "69 cm", "17 cm"],
            "upperArmFront": ["12 cm", "42 cm", "46 cm"], "upperArmRear": ["-14 cm", "42 cm", "45 cm"], "upperBallJoint": ["-2 cm", "65 cm", "47 cm"],
            "tieRodInner": ["-12 cm", "36 cm", "23 cm"], "tieRodOuter": ["-14 cm", "68 cm", "22,5 cm"], "wheelCentre": ["0 cm", "74 cm", "30 cm"],
            "strutTop": ["0 cm", "55 cm", "80 cm"], "strutBottom": ["0 cm", "60 cm", "22 cm"], "strutOn": "lowerArm",
          },
        }
        """;

    internal static readonly SchemaValidator Validator = new(DocumentKinds.All.ToDictionary(
        kind => kind.Name, kind => JsonNode.Parse(kind.SchemaText())!.AsObject()));

    public static TheoryData<string> Kinds() => [.. DocumentKinds.All.Select(kind => kind.Name)];

    public static TheoryData<string, string> SoundDocuments() => new()
    {
        { "kit", SampleFolder.Kit }, { "car", SampleFolder.Car }, { "air-spring", SampleFolder.Spring }, { "mould", Mould },
        { "suspension", Strut }, { "suspension", Wishbones }, { "air-spring", "{ \"rate\": \"25 N/mm\" }" },
        { "damper", "{ \"coefficient\": \"8.5 lbf*s/in\" }" },
        { "damper", "{ \"bellowsmith\": \"damper/1\", \"name\": \"d\", \"rodDiameter\": \"14 mm\", \"shortest\": \"26 cm\", \"longest\": \"39 cm\" }" },
    };

    /// <summary>Where the field lists have changed, run the tests once with BELLOWSMITH_WRITE_SCHEMAS=1.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void SchemaText_EveryKind_EqualsTheFileOnDisk(string name)
    {
        var path = Path.Combine(RepositoryRoot(), "docs", "schemas", $"{name}.schema.json");
        var text = DocumentKinds.All.Single(kind => kind.Name == name).SchemaText();
        if (Environment.GetEnvironmentVariable("BELLOWSMITH_WRITE_SCHEMAS") == "1") File.WriteAllText(path, text);
        Assert.Equal(text, File.ReadAllText(path));
    }

    [Theory]
    [MemberData(nameof(SoundDocuments))]
    public void Schema_SoundDocument_IsAcceptedByReaderAndSchema(string kind, string document)
    {
        Assert.Empty(Faults(kind, document));
        Assert.True(Validator.Accepts(kind, document));
    }

    [Theory]
    [InlineData("\"24 bar\"", "24")]
    [InlineData("\"24 bar\"", "\"24\"")]
    [InlineData("\"24 bar\"", "\"24 mm\"")]
    [InlineData("\"24 bar\"", "\"1.024,5 kPa\"")]
    [InlineData("\"driveHeight\"", "\"driveHieght\"")]
    [InlineData("\"kit/1\"", "\"car/1\"")]
    [InlineData("\"bellowsmith\": \"kit/1\",", "")]
    [InlineData("\"car.json\"", "5")]
    [InlineData("\"car.json\"", "{ \"bellowsmith\": \"damper/1\" }")]
    [InlineData("\"pitch\": \"2 mm\",", "")]
    [InlineData("{ \"rideFrequency\": \"1.6 Hz\" }", "{}")]
    [InlineData("\"1.6 Hz\" }", "\"1.6 Hz\", \"wheelRate\": \"30 N/mm\" }")]
    [InlineData("\"droop\": \"30 mm\"", "\"threadEngagement\": \"30 mm\"")]
    [InlineData("\"rate\": \"25 N/mm\"", "\"rate\": \"25 N/mm\", \"data\": \"x.csv\"")]
    [InlineData("\"rate\": \"25 N/mm\"", "\"name\": \"x\"")]
    public void Schema_FaultyDocument_IsRefusedByReaderAndSchema(string from, string to)
    {
        var document = SampleFolder.Kit.Replace(from, to, StringComparison.Ordinal);
        Assert.NotEmpty(Faults("kit", document));
        Assert.False(Validator.Accepts("kit", document));
    }

    [Theory]
    [InlineData("\"convolutions\": 2", "\"convolutions\": 1.5", "convolutions")]
    [InlineData("\"38°\"", "\"95°\"", "cordAngleAtBead")]
    [InlineData("\"38°\"", "\"38 mm\"", "cordAngleAtBead")]
    [InlineData("\"beadRadius\"", "\"beadDiameter\"", "beadDiameter")]
    public void Read_FaultyMould_NamesThePlace(string from, string to, string where) =>
        Assert.Contains(where, Faults("mould", Mould.Replace(from, to, StringComparison.Ordinal)).Select(fault => fault.Where));

    [Theory]
    [InlineData("\"lowerArm\"", "\"loverArm\"", "doubleWishbone.strutOn")]
    [InlineData("\"19,5 cm\"", "\"19,5 kg\"", "doubleWishbone.lowerArmRear[2]")]
    [InlineData("\"19,5 cm\"", "\"19.5 cm\"", "doubleWishbone.tieRodOuter[2]")]
    [InlineData("\"34 cm\", ", "", "doubleWishbone.lowerArmFront")]
    [InlineData("\"doubleWishbone\"", "\"macpherson\"", "macpherson.strutAxisPoint")]
    public void Read_FaultySuspension_NamesThePlace(string from, string to, string where) =>
        Assert.Contains(where, Faults("suspension", Wishbones.Replace(from, to, StringComparison.Ordinal)).Select(fault => fault.Where));

    /// <summary>The faults of one document by itself: the files it names are not opened.</summary>
    private static IReadOnlyList<Fault> Faults(string kind, string document)
    {
        using var folder = new SampleFolder();
        folder.Write("document.json", document);
        try
        {
            Reading.Run(folder.PathOf("document.json"), DocumentKinds.All.Single(known => known.Name == kind), (root, _) => root);
            return [];
        }
        catch (FaultsException exception)
        {
            return exception.Faults;
        }
    }

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Bellowsmith.slnx"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
