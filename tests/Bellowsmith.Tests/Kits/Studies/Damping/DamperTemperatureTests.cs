using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Damping;

/// <summary>Damping and ride at a damper temperature: a kit whose damper was run at 24 and 56 °C and fades by 0.2 % a kelvin.</summary>
public sealed class DamperTemperatureTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("warm").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Answer_AWarmDamper_IsWeakerByTheLaw()
    {
        DampingResult cold = Damped(Kit(24, 56, 24), 24), warm = Damped(Kit(24, 56, 24), 56);

        Assert.Equal(Math.Exp(-0.002 * 32), warm.Clicks[0].Ratio / cold.Clicks[0].Ratio, 1e-4);
        Assert.Contains(new DampingWords(warm, DisplayUnits.Metric).Notes(), note => note.Text.Contains("brought to 56 °C", StringComparison.Ordinal));
        Assert.Equal(56, DampingAnswer.Of([warm]).Struts["front"].DamperTemperature_degC!.Value, 1e-9);
    }

    [Fact]
    public void Struts_OfARide_TakeTheSameTemperature()
    {
        double Force(double? degC) => RideStruts.Of(Kit(24, 56, 24), At(degC))[0].Damper.Force_N(0, 0.26);

        Assert.Equal(Math.Exp(-0.002 * 32), Force(56) / Force(24), 1e-4);
        Assert.InRange(Force(null), Force(56), Force(24));
    }

    [Theory]
    [InlineData(60)]
    [InlineData(20)]
    public void Of_OutsideTheMeasuredTemperatures_IsAFaultThatNamesThem(double degC)
    {
        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => DampingCases.Of(Kit(24, 56, 24), At(degC))).Faults);

        Assert.Equal(("column temperature", $"{degC} degC asked for"), (fault.Where, fault.Found));
        Assert.StartsWith("24 to 56 degC", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_WhereTemperatureWasNotMeasured_IsAFaultThatSaysWhatToRun()
    {
        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => RideStruts.Of(Kit(26, 34, 26), At(30))).Faults);

        Assert.StartsWith("Run one click cold, at least 10 K warmer and cold again", fault.Fix, StringComparison.Ordinal);
        Assert.Contains("coefficient", Assert.Single(Assert.Throws<FaultsException>(() => RideStruts.Of(Read("{ \"coefficient\": \"1500 N*s/m\" }"), At(30))).Faults).Fix, StringComparison.Ordinal);
    }

    [Fact] // invented: 0.15 % a kelvin
    public void Notes_OfTheWarmedExample_TellTheLaw()
    {
        DynoAnswer answer = DynoAnswer.Of(Example("measured/rear-street-warm"));

        Assert.Equal(-0.15, answer.ForceByTemperature_percent_per_K!.Value, 0.01);
        Assert.InRange(-0.15, answer.ForceByTemperatureLow_percent_per_K!.Value, answer.ForceByTemperatureHigh_percent_per_K!.Value);
        Assert.Equal((24.0, 56.0, false), (Math.Round(answer.ForceByTemperatureLeast_degC!.Value, 9), Math.Round(answer.ForceByTemperatureGreatest_degC!.Value, 9), answer.TemperatureMixedWithRuns!.Value));
        Assert.Matches(@"^Measured from 24 to 56 °C: force changes by −0\.1\d\d % a kelvin \(−0\.1\d\d to −0\.1\d\d, 95 %\), known from 24 to 56 °C", Temperature("measured/rear-street-warm"));
    }

    [Fact]
    public void Notes_OfTheFrontExample_SayThatEightKelvinAreTooNarrow()
    {
        Assert.StartsWith("Measured from 26 to 34 °C, 8 K: too narrow", Temperature("dampers/front-street"), StringComparison.Ordinal);
        Assert.Null(DynoAnswer.Of(Example("dampers/front-street")).ForceByTemperature_percent_per_K);
    }

    [Fact]
    public void Notes_OfADamperThatOnlyWarmed_SayThatRunsAreMixedIn() =>
        Assert.Contains("Temperature only went one way from run to run", Temperature(Study(((TelescopicDamperPart)Kit(24, 40, 56).Front!.Damper))), StringComparison.Ordinal);

    private static StudyConditions At(double? degC) => new(DamperTemperature_K: degC + 273.15);

    private static DampingResult Damped(Kit kit, double degC) => DampingStudy.Answer(DampingCases.Of(kit, At(degC))[0], 0.3);

    private static DynoResult Example(string damper) => Study((TelescopicDamperPart)DamperReader.Read(ExampleFolder.PathOf($"{damper}.json")));

    private static DynoResult Study(TelescopicDamperPart part) => DynoStudy.Answer(new DynoUnit(part, part.ReadDyno([])!));

    private static string Temperature(string damper) => Temperature(Example(damper));

    private static string Temperature(DynoResult result) => new DynoWords(result, DisplayUnits.Metric).Notes().Single(note => note.About == "temperature").Text;

    private Kit Kit(params double[] runs_degC)
    {
        File.WriteAllLines(Path.Combine(_folder, "dyno.csv"),
        [
            "click,velocity [m/s],force [N],temperature [degC],run",
            .. from run in Enumerable.Range(0, runs_degC.Length)
               from v in new[] { 0.05, -0.05, 0.13, -0.13, 0.26, -0.26 }
               let force = (v > 0 ? 4000 : 2000) * v * Math.Exp(-0.002 * (runs_degC[run] - 24))
               select string.Create(CultureInfo.InvariantCulture, $"0,{v},{force:F6},{runs_degC[run]},{run + 1}"),
        ]);
        return Read("""{ "bellowsmith": "damper/1", "name": "Warmed", "rodDiameter": "14 mm", "shortest": "260 mm", "longest": "390 mm", "dyno": "dyno.csv" }""");
    }

    private Kit Read(string damper)
    {
        string path = Path.Combine(_folder, "kit.json");
        File.WriteAllText(path, $$"""
            {
              "bellowsmith": "kit/1", "name": "Bench",
              "car": { "bellowsmith": "car/1", "name": "Bench", "loads": { "one": { "leftFront": "376 kg", "rightFront": "376 kg", "leftRear": "276 kg", "rightRear": "276 kg" } },
                       "axles": { "front": { "unsprungMass": "36 kg", "motionRatio": 1, "tyreRate": "200 N/mm" } } },
              "struts": { "front": { "spring": { "rate": "30 N/mm" }, "damper": {{damper}} } }
            }
            """);
        return KitReader.Read(path);
    }
}
