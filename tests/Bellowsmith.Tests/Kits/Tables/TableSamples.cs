using System.Globalization;
using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Tables;

/// <summary>Reads tables from text, as the readers of documents do from files.</summary>
internal static class TableSamples
{
    public const string Measured = """
        height [mm];gauge pressure [bar];force [N];volume [L]
        60;5,0;4321,5;0,61
        70;5,0;4012,25;0,70
        80;5,0;3700;0,78
        90;5,0;3390;0,86
        90;5,5;3700;
        80;5,5;4060;
        70;5,5;4380;
        60;5,5;4690;
        """;

    public const string Characteristic = """
        height [mm],effective area [cm2],volume [cm3]
        60,88.5,610
        70,81.25,700
        80,74,780
        """;

    public const string Dyno = """
        click,velocity [m/s],force [N],run
        0,0.05,100,a
        0,0.13,240,a
        0,0.26,400,a
        0,-0.05,-60,a
        0,-0.13,-120,a
        0,-0.26,-200,a
        0,0.05,104,b
        0,-0.05,-62,b
        3,0.05,80,a
        3,0.26,300,a
        3,-0.05,-50,a
        3,-0.26,-150,a
        """;

    public const string WideDyno = """
        direction;velocity [mm/s];click 0 [N];click 2 [N]
        rebound;50;100;80
        rebound;130;240,5;200
        compression;50;60;50
        compression;130;120;100
        """;

    /// <summary>One cycle and a bit at 1 Hz of 30 samples a second, 25 mm, 1000 N·s/m.</summary>
    public static readonly string RawDyno = "time [s],position [mm],force [N],click\n" + string.Concat(Enumerable.Range(0, 40).Select(i =>
        string.Create(CultureInfo.InvariantCulture, $"{i / 30.0:0.000},{25 * Math.Sin(2 * Math.PI * i / 30):0.00},{157 * Math.Cos(2 * Math.PI * i / 30):0},1\n")));

    public static SpringData? Spring(string text, List<Fault> faults, double ambient_Pa = 101_325) =>
        Spring(Encoding.UTF8.GetBytes(text), faults, ambient_Pa);

    public static SpringData? Spring(byte[] bytes, List<Fault> faults, double ambient_Pa = 101_325) =>
        Table.Parse(bytes, "s.csv", faults) is { } table ? SpringTable.Read(table, ambient_Pa, faults) : null;

    public static RatioTable? Ratio(string text, List<Fault> faults) =>
        Table.Parse(Encoding.UTF8.GetBytes(text), "r.csv", faults) is { } table ? RatioTable.Read(table, faults) : null;

    public static IReadOnlyList<StopForce>? Stop(string text, List<Fault> faults) =>
        Table.Parse(Encoding.UTF8.GetBytes(text), "b.csv", faults) is { } table ? StopTable.Read(table, faults) : null;
}
