using System.Globalization;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Physics;

namespace Bellowsmith.Benchmarks;

/// <summary>An invented kit in a folder of its own in the temporary directory: documents, spring data, stop curve.</summary>
internal sealed class BenchKit : IDisposable
{
    private static readonly (string Name, string Text)[] _documents =
    [
        ("kit.json", """
            {
              "bellowsmith": "kit/1", "name": "Bench kit", "car": "car.json",
              "struts": { "front": {
                "spring": "springs/double.json", "damper": "dampers/front.json", "target": { "rideFrequency": "2.4 Hz" },
                "strutLengthAtDrive": "395 mm", "upperStack": "45 mm", "lowerStack": "230 mm", "springToDamper": "230 mm",
                "thread": { "pitch": "2 mm", "least": "5 mm", "greatest": "60 mm", "exposedAtStop": "5 mm" },
                "sealAreaInAir": "1.54 cm2", "displacedVolume": "95 cm3", "lineVolume": "40 cm3"
              } }
            }
            """),
        ("car.json", """
            {
              "bellowsmith": "car/1", "name": "Bench car",
              "loads": { "two up": { "leftFront": "398 kg", "rightFront": "386 kg", "leftRear": "340 kg", "rightRear": "345 kg" } },
              "axles": { "front": { "unsprungMass": "38 kg", "motionRatio": 0.96, "tyreRate": "220 N/mm" } }
            }
            """),
        ("springs/double.json", """
            {
              "bellowsmith": "air-spring/1", "name": "Bench spring", "shape": "double convolution",
              "heightRange": ["62 mm", "112 mm"], "maxGaugePressure": "8 bar", "data": "double.csv"
            }
            """),
        ("dampers/front.json", """
            {
              "bellowsmith": "damper/1", "name": "Bench damper", "rodDiameter": "14 mm", "shortest": "262 mm", "longest": "329 mm",
              "gasGaugePressure": "20 bar", "gasVolume": "95 cm3",
              "bumpStop": { "freeLength": "45 mm", "solidLength": "30 mm", "curve": "stop.csv" }
            }
            """),
        ("dampers/stop.csv", "compression [mm],force [N]\n0,0\n3,90\n6,280\n9,750\n12,1900\n15,4600\n"),
    ];

    public BenchKit()
    {
        Root = Directory.CreateTempSubdirectory("bellowsmith-bench-").FullName;
        foreach ((string name, string text) in _documents) Write(name, text);
        Write("springs/double.csv", string.Join('\n', LoadFrame.Rows().Select(Line)
            .Prepend("height [m],gauge pressure [Pa],force [N],volume [m3],direction,sweep")));
    }

    public string Root { get; }

    public string Path => System.IO.Path.Combine(Root, "kit.json");

    /// <summary>Every file that reading the kit opens.</summary>
    public string[] Files => Directory.GetFiles(Root, "*", SearchOption.AllDirectories);

    public StrutCase Strut() =>
        StrutCases.Of(KitReader.Read(Path), new StudyConditions(), InstalledHeightStudy.Needs)[0];

    public void Write(string name, string text)
    {
        string path = System.IO.Path.Combine(Root, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);

    private static string Line(SpringRow row) => string.Create(CultureInfo.InvariantCulture,
        $"{row.Height_m},{row.GaugePressure_Pa},{row.Force_N},{row.Volume_m3},{(row.Direction == SweepDirection.Compressing ? "compressing" : "extending")},{row.Sweep}");
}
