using Bellowsmith.Kits;

namespace Bellowsmith.Tests.Kits.Schemas;

/// <summary>A folder of sound documents in the temporary directory, each of which a test may overwrite.</summary>
internal sealed class SampleFolder : IDisposable
{
    public const string Kit = """
        {
          "bellowsmith": "kit/1",
          "name": "Sample kit", // stays where it is
          "car": "car.json",
          "struts": {
            "front": {
              "spring": "springs/double.json",
              "damper": {
                "name": "Sample damper",
                "rodDiameter": "14 mm",
                "shortest": "260 mm",
                "longest": "390 mm",
                "gasGaugePressure": "24 bar",
                "gasVolume": "95 cm³",
                "bumpStop": { "freeLength": "60 mm", "solidLength": "22 mm", "curve": "stop.csv" },
              },
              "target": { "rideFrequency": "1.6 Hz" },
              "load": "two up",
              "driveHeight": "80 mm",
              "upperStack": "45 mm",
              "lowerStack": "210 mm",
              "springToDamper": "230 mm",
              "thread": { "pitch": "2 mm", "least": "5 mm", "greatest": "60 mm", "exposedAtStop": "5 mm", "shearStrength": "180 MPa" },
              "sealAreaInAir": "1.54 cm2",
              "displacedVolume": "95 cm3",
              "lineVolume": "40 mL",
              "limits": { "droop": "30 mm" },
              "notes": "anything",
            },
            "rear": {
              "spring": { "rate": "25 N/mm" },
              "damper": { "coefficient": "1500 N·s/m" },
            },
          },
          "altitude": "450 m",
          "x-colour": { "free": [1, 2] },
        }
        """;

    public const string Car = """
        {
          "bellowsmith": "car/1",
          "name": "Sample car",
          "loads": {
            "empty": { "leftFront": "380 kg", "rightFront": "372 kg", "leftRear": "300 kg", "rightRear": "305 kg" },
            "two up": { "leftFront": "4118,793 N", "rightFront": "412 kg", "leftRear": "340 kg", "rightRear": "345 kg" },
          },
          "axles": {
            "front": { "unsprungMass": "38 kg", "motionRatio": 0.96, "parasiticRate": "2,5 N/mm", "tyreRate": "220 N/mm" },
            "rear": {
              "unsprungMass": "35 kg",
              "springRatio": { "wheelTravel": "40 mm", "strutTravel": "30 mm" },
              "damperRatio": { "wheelPerStrut": 1.25 },
            },
          },
        }
        """;

    public const string Spring = """
        {
          "bellowsmith": "air-spring/1",
          "name": "Sample spring",
          "shape": "double convolution",
          "heightRange": ["55 mm", "130 mm"],
          "maxGaugePressure": "8 bar",
          "exponent": 1.36,
          "data": "double.csv",
        }
        """;

    public const string SpringData = """
        # invented
        height [mm];gauge pressure [bar];force [N];volume [L];mode;direction
        60;5,0;4321,5;0,61;regulated;compressing
        70;5,0;4012,25;0,70;regulated;compressing
        80;5,0;3700;0,78;regulated;compressing
        90;5,0;3390;0,86;regulated;compressing

        90;5,0;3300;;sealed fast;extending
        80;5,0;3640;;sealed slow;extending
        70;5,0;3950;;;
        60;5,0;4260;;;
        """;

    public const string Stop = "compression [mm],force [N]\n0,0\n10,150\n20,480\n35,2900\n";

    private static int _count;

    public SampleFolder()
    {
        Root = Path.Combine(Path.GetTempPath(), $"bellowsmith-{Environment.ProcessId}-{Interlocked.Increment(ref _count)}");
        Write("kit.json", Kit);
        Write("car.json", Car);
        Write("springs/double.json", Spring);
        Write("springs/double.csv", SpringData);
        Write("stop.csv", Stop);
    }

    public string Root { get; }

    public string PathOf(string name) => Path.Combine(Root, name);

    public void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        File.WriteAllText(PathOf(name), text);
    }

    public void Write(string name, byte[] bytes) => File.WriteAllBytes(PathOf(name), bytes);

    /// <summary>Replaces the one place where a text stands in a sound document.</summary>
    public void Edit(string name, string from, string to)
    {
        var text = File.ReadAllText(PathOf(name));
        Assert.Equal(2, text.Split(from).Length);
        Write(name, text.Replace(from, to, StringComparison.Ordinal));
    }

    public IReadOnlyList<Fault> Faults() =>
        Assert.Throws<FaultsException>(() => Bellowsmith.Kits.Schemas.KitReader.Read(PathOf("kit.json"))).Faults;

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
