using System.Globalization;
using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class DamperReaderTests : IDisposable
{
    private const string Body = "\"bellowsmith\": \"damper/1\", \"name\": \"d\", \"rodDiameter\": \"14 mm\", \"shortest\": \"26 cm\", \"longest\": \"39 cm\"";
    /// <summary>Every force drives the rod as the signs stand.</summary>
    private const string Crossed = "click,velocity [m/s],force [N]\n1,0.1,-100\n1,0.2,-200\n1,-0.1,60\n1,-0.2,90\n";

    private readonly SampleFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_DeclaredDyno_IsTurnedAsDeclared()
    {
        _folder.Write("d.csv", "click,velocity [m/s],force [N]\n1,-0.1,-100\n1,-0.2,-200\n1,0.1,60\n1,0.2,90\n");
        var part = Read("\"dyno\": \"d.csv\", \"dynoSign\": \"compression positive\", \"dynoClicks\": \"from open\", \"clickCount\": 9, \"dynoGas\": \"out\", "
            + "\"dynoBeyond\": { \"rebound\": \"700 N*s/m\", \"compression\": \"500 N*s/m\" }");

        var damper = part.Fit([])!.Damper!;
        Assert.Equal([8], damper.Clicks);
        Assert.Equal(-60, damper.Force_N(8, -0.1), 1e-9);
        Assert.Equal(270, damper.Force_N(8, 0.3), 1e-9);
        Assert.Equal(-140, damper.Force_N(8, -0.3), 1e-9);
    }

    [Theory]
    [InlineData("\"dyno\": \"none.csv\"", "dyno")]
    [InlineData("\"dyno\": \"d.csv\", \"dynoClicks\": \"from open\"", "clickCount")]
    [InlineData("\"dyno\": \"d.csv\", \"dynoSign\": \"up\"", "dynoSign")]
    [InlineData("\"dyno\": \"d.csv\", \"dynoBeyond\": { \"rebound\": \"700 N*s/m\" }", "dynoBeyond.compression")]
    public void Read_OneFault_NamesThePlace(string fields, string where)
    {
        _folder.Write("d.csv", Crossed);

        Assert.Equal(where, Assert.Single(Assert.Throws<FaultsException>(() => Read(fields)).Faults).Where);
    }

    [Fact]
    public void Fit_CrossedSigns_NamesTheRows()
    {
        _folder.Write("d.csv", Crossed);
        var faults = new List<Fault>();

        Assert.Null(Read("\"dyno\": \"d.csv\"").Fit(faults));
        Assert.Equal("rows 2, 3, 4, 5", faults[0].Where);
    }

    /// <summary>50 mm strokes at three frequencies, 1200 N·s/m, 25 N of friction and 300 N of gas in, at two clicks.</summary>
    [Fact]
    public void Fit_RawSweeps_FindsTheDamper()
    {
        var text = new StringBuilder("time [s];position [mm];force [N];click\n");
        foreach (var click in (double[])[2, 4])
            foreach (var frequency in (double[])[0.3, 0.8, 1.6])
                for (var i = 0; i <= 600; i++)
                {
                    var (omega, time) = (2 * Math.PI * frequency, i / 100.0);
                    var v = omega * 0.025 * Math.Cos(omega * time);
                    text.Append(CultureInfo.InvariantCulture, $"{time:0.00};{25 * Math.Sin(omega * time):0.00};{1200 * (6 - click) / 2 * v + 25 * Math.Sign(v) - 300:0.0};{click}\n");
                }
        _folder.Write("d.csv", text.ToString());

        var fit = Read("\"dyno\": \"d.csv\"").Fit([])!;

        Assert.Equal(300, fit.GasForce_N!.Value, 2.0);
        Assert.Equal(25, fit.Friction!.Value.Force_N, 2.0);
        Assert.Equal([2, 4], fit.Damper!.Clicks);
        Assert.Equal(2400 * 0.2513 + 25, fit.Damper.Force_N(2, 0.2513), 3.0);
        Assert.Equal(-1800 * 0.1257 - 25, fit.Damper.Force_N(3, -0.1257), 3.0);
    }

    private TelescopicDamperPart Read(string fields)
    {
        _folder.Write("damper.json", $"{{ {Body}, {fields} }}");
        return (TelescopicDamperPart)DamperReader.Read(_folder.PathOf("damper.json"));
    }
}
