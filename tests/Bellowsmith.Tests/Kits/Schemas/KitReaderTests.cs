using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class KitReaderTests : IDisposable
{
    private readonly SampleFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_SoundKit_GivesEveryFieldInSi()
    {
        var kit = KitReader.Read(_folder.PathOf("kit.json"));

        Assert.Equal("Sample kit", kit.Name);
        Assert.Equal(450, kit.Altitude_m);
        Assert.Null(kit.Ambient_Pa);
        var front = kit.Front!;
        Assert.Equal(new Target(TargetKind.RideFrequency, 1.6), front.Target);
        Assert.Equal("two up", front.Load);
        Assert.Equal(0.08, front.DriveHeight_m);
        Assert.Null(front.StrutLengthAtDrive_m);
        Assert.Equal(0.045, front.UpperStack_m);
        Assert.Equal(0.21, front.LowerStack_m);
        Assert.Equal(0.23, front.SpringToDamper_m);
        Assert.Equal(new ThreadDesign(0.002, 0.005, 0.06, 0.005, ShearStrength_Pa: 180e6), front.Thread);
        Assert.Equal(1.54e-4, front.SealAreaInAir_m2!.Value, 1e-18);
        Assert.Equal(95e-6, front.DisplacedVolume_m3);
        Assert.Equal(40e-6, front.LineVolume_m3);
        Assert.Equal(new TravelLimits(Droop_m: 0.03), front.Limits);
        Assert.Equal(new LinearSpringPart(25_000), kit.Rear!.Spring);
        Assert.Equal(new LinearDamperPart(1500), kit.Rear.Damper);
        Assert.Equal(new TravelLimits(), kit.Rear.Limits);
    }

    [Fact]
    public void Read_SoundKit_GivesTheCar()
    {
        var car = KitReader.Read(_folder.PathOf("kit.json")).Car;

        Assert.Equal(["empty", "two up"], car.Loads.Select(load => load.Name));
        Assert.Equal(420, car.Loads[1].LeftFront_kg, 1e-9);
        Assert.Equal(345, car.Loads[1].RightRear_kg);
        Assert.Equal(0.96, car.Front!.SpringRatio.At(0));
        Assert.Equal(2500, car.Front.ParasiticRate_N_per_m);
        Assert.Equal(220_000, car.Front.TyreRate_N_per_m);
        Assert.Equal(0.75, car.Rear!.SpringRatio.At(0), 1e-15);
        Assert.Equal(0.8, car.Rear.DamperRatio.At(0), 1e-15);
    }

    [Fact]
    public void Read_SoundKit_GivesSpringAndDamper()
    {
        var kit = KitReader.Read(_folder.PathOf("kit.json"));

        var spring = Assert.IsType<AirSpringPart>(kit.Front!.Spring);
        Assert.Equal((0.055, 0.13, 800_000, 1.36), (spring.LeastHeight_m, spring.GreatestHeight_m, spring.MaxGaugePressure_Pa, spring.Exponent));
        var rows = Assert.IsType<MeasuredSpring>(spring.Data).Rows;
        Assert.Equal(8, rows.Count);
        Assert.Equal(new SpringRow(0.06, 500_000, 4321.5, 0.61e-3, null, AirMode.Regulated, SweepDirection.Compressing, Line: 3), rows[0]);
        Assert.Equal(new SpringRow(0.09, 500_000, 3300, null, null, AirMode.SealedFast, SweepDirection.Extending, Line: 8), rows[4]);
        var damper = Assert.IsType<TelescopicDamperPart>(kit.Front.Damper);
        Assert.Equal((0.014, 0.26, 0.39, 2.4e6, 95e-6), (damper.RodDiameter_m, damper.Shortest_m, damper.Longest_m, damper.GasGaugePressure_Pa, damper.GasVolume_m3));
        Assert.Equal((0.06, 0.022, 0.0), (damper.BumpStop!.FreeLength_m, damper.BumpStop.SolidLength_m, damper.BumpStop.RodAtShortest_m));
        Assert.Equal(new StopForce(0.035, 2900), damper.BumpStop.Curve[3]);
    }

    [Fact]
    public void Read_KitInMixedUnits_RemembersTheKitsOwn()
    {
        _folder.Edit("kit.json", "\"driveHeight\": \"80 mm\"", "\"driveHeight\": \"3.15 in\"");
        _folder.Edit("kit.json", "\"rodDiameter\": \"14 mm\"", "\"rodDiameter\": \"0.551 in\"");

        var units = KitReader.Read(_folder.PathOf("kit.json")).WrittenUnits;

        Assert.Equal("in", units[Dimension.Length]);
        Assert.Equal("bar", units[Dimension.GaugePressure]);
        Assert.Equal("N/mm", units[Dimension.Rate]);
        Assert.Equal("MPa", units[Dimension.Stress]);
    }

    /// <summary>Strut travel 0.9 times wheel travel throughout, so the ratio is 0.9 everywhere.</summary>
    [Fact]
    public void Read_RatioTable_GivesTheMotionRatio()
    {
        _folder.Edit("car.json", "0.96", "{ \"table\": \"ratio.csv\" }");
        _folder.Write("ratio.csv", "wheel travel [cm],strut travel [mm]\n-4,-36\n-2,-18\n0,0\n2,18\n4,36\n");
        Assert.Equal(0.9, KitReader.Read(_folder.PathOf("kit.json")).Car.Front!.SpringRatio.At(0.01), 1e-6);
    }

    [Fact]
    public void Read_FilesBelowTheCurrentDirectory_NamesThemRelative()
    {
        var fault = Assert.Single(Assert.Throws<FaultsException>(() => KitReader.Read("no such kit.json")).Faults);
        Assert.Equal("no such kit.json", fault.File);
    }

    [Fact]
    public void Read_FaultsInSeveralFiles_ReportsAllAtOnce()
    {
        _folder.Edit("kit.json", "\"80 mm\"", "80");
        _folder.Edit("car.json", "\"38 kg\"", "\"38 kN\"");
        _folder.Edit("springs/double.csv", "4321,5", "4.321,5");
        _folder.Edit("springs/double.json", "1.36", "13.6");
        _folder.Edit("stop.csv", "10,150", "10,150,");

        var found = _folder.Faults().Select(fault => (Path.GetRelativePath(_folder.Root, fault.File), fault.Where));

        Assert.Equal(
            [
                ("kit.json", "struts.front.driveHeight"),
                ("car.json", "axles.front.unsprungMass"),
                ("springs/double.json", "exponent"),
                ("springs/double.csv", "row 3, column force [N]"),
                ("stop.csv", "row 3"),
            ],
            found);
    }

    [Theory] // the wheel's centre stands 769 mm out and 304 mm up, its radius is 304 mm
    [InlineData("9000 mm", "struts.front.adjusters.knuckleSlot.pivot")]
    [InlineData("668 mm", null)]
    public void Read_ASlotsPivot_StandsOnTheKnuckle(string outward, string? where)
    {
        string text = File.ReadAllText(ExampleFolder.PathOf("kits/ostrane-street.json")).Replace("\"../", $"\"{ExampleFolder.Root.Replace('\\', '/')}/", StringComparison.Ordinal)
            .Replace("\"adjusters\": {", $"\"adjusters\": {{ \"knuckleSlot\": {{ \"least\": \"-2 deg\", \"greatest\": \"2 deg\", \"pivot\": [\"-6 mm\", \"{outward}\", \"400 mm\"] }},", StringComparison.Ordinal);
        using SampleFolder folder = new();
        folder.Write("slot.json", text);

        Assert.Equal(where, Faults().SingleOrDefault()?.Where);

        IReadOnlyList<Fault> Faults()
        {
            try
            {
                KitReader.Read(folder.PathOf("slot.json"));
                return [];
            }
            catch (FaultsException faulty)
            {
                return faulty.Faults;
            }
        }
    }
}
