using System.Diagnostics;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;

namespace Bellowsmith.Tests.Kits.Schemas;

/// <summary>One row per fault: what is changed in the sound documents, where the fault stands and what mends it.</summary>
public sealed class FaultTests : IDisposable
{
    private readonly SampleFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("\"24 bar\"", "24", "struts.front.damper.gasGaugePressure", "write \"24 bar\"")]
    [InlineData("\"24 bar\"", "\"24\"", "struts.front.damper.gasGaugePressure", "Write the unit too")]
    [InlineData("\"24 bar\"", "\"24 Bar\"", "struts.front.damper.gasGaugePressure", "Did you mean bar?")]
    [InlineData("\"24 bar\"", "\"24 mm\"", "struts.front.damper.gasGaugePressure", "Write a gauge pressure")]
    [InlineData("\"24 bar\"", "\"2400 bar\"", "struts.front.damper.gasGaugePressure", "Check the number")]
    [InlineData("\"24 bar\"", "\"1.024,5 kPa\"", "struts.front.damper.gasGaugePressure", "no thousands separator")]
    [InlineData("\"24 bar\"", "null", "struts.front.damper.gasGaugePressure", "in quotes")]
    [InlineData("\"24 bar\"", "[\"24 bar\"]", "struts.front.damper.gasGaugePressure", "in quotes")]
    [InlineData("\"1.6 Hz\"", "\"1,6 Hz\"", "struts.front.sealAreaInAir", "same decimal mark")]
    [InlineData("\"driveHeight\"", "\"driveHieght\"", "struts.front.driveHieght", "Did you mean driveHeight?")]
    [InlineData("\"gasGaugePressure\"", "\"gasPressure\"", "struts.front.damper.gasPressure", "Did you mean gasGaugePressure?")]
    [InlineData("\"upperStack\"", "\"lowerStack\"", "struts.front.lowerStack", "stands here 2 times")]
    [InlineData("\"upperStack\": \"45 mm\"", "\"upperStack\": \"-1 m\"", "struts.front.upperStack", "Check the number")]
    [InlineData("\"lowerStack\": \"210 mm\"", "\"lowerStack\": \"-1 m\"", "struts.front.lowerStack", "Check the number")]
    [InlineData("\"name\": \"Sample kit\",", "", "name", "Add \"name\"")]
    [InlineData("\"name\": \"Sample kit\"", "\"name\": \"\"", "name", "Write a text")]
    [InlineData("\"bellowsmith\": \"kit/1\",", "", "bellowsmith", "Begin the document with \"bellowsmith\": \"kit/1\"")]
    [InlineData("\"bellowsmith\": \"kit/1\",", "\"notes\": 1, \"bellowsmith\": \"kit/1\",", "bellowsmith", "to the top")]
    [InlineData("\"kit/1\"", "\"kit/2\"", "bellowsmith", "kind kit/1")]
    [InlineData("\"kit/1\"", "\"car/1\"", "bellowsmith", "kind kit/1")]
    [InlineData("\"kit/1\"", "1", "bellowsmith", "kind kit/1")]
    [InlineData("\"car.json\"", "\"kit.json\"", "bellowsmith", "kind car/1")]
    [InlineData("\"car.json\"", "\"nowhere.json\"", "car", "Check the path")]
    [InlineData("\"car.json\"", "\".\"", "car", "Check the path")]
    [InlineData("\"car.json\"", "\"\"", "car", "relative to this document")]
    [InlineData("\"car.json\"", "5", "car", "relative to this document")]
    [InlineData("\"car.json\"", "{ \"bellowsmith\": \"damper/1\" }", "car.bellowsmith", "kind car/1")]
    [InlineData("\"springs/double.json\"", "\"springs/double.csv\"", "line 1, column 1", "Check the commas")]
    [InlineData("\"stop.csv\"", "\"springs\"", "struts.front.damper.bumpStop.curve", "Check the path")]
    [InlineData("\"pitch\": \"2 mm\",", "", "struts.front.thread.pitch", "Add \"pitch\"")]
    [InlineData("\"least\": \"5 mm\"", "\"least\": \"70 mm\"", "struts.front.thread.least", "least and the greatest")]
    [InlineData("\"260 mm\"", "\"395 mm\"", "struts.front.damper.shortest", "shortest and the longest")]
    [InlineData("\"22 mm\"", "\"60 mm\"", "struts.front.damper.bumpStop.solidLength", "squeezed solid")]
    [InlineData("\"60 mm\", \"solidLength\"", "\"30 mm\", \"solidLength\"", "struts.front.damper.bumpStop.curve", "free length")]
    [InlineData("\"two up\"", "\"three up\"", "struts.front.load", "load cases")]
    [InlineData("{ \"rideFrequency\": \"1.6 Hz\" }", "{}", "struts.front.target", "exactly one")]
    [InlineData("\"1.6 Hz\" }", "\"1.6 Hz\", \"wheelRate\": \"30 N/mm\" }", "struts.front.target.wheelRate", "cannot stand beside rideFrequency")]
    [InlineData("{ \"rideFrequency\": \"1.6 Hz\" }", "\"1.6 Hz\"", "struts.front.target", "Write an object")]
    [InlineData("\"droop\": \"30 mm\"", "\"threadEngagement\": \"30 mm\"", "struts.front.limits.threadEngagement", "this limit can never be waived")]
    [InlineData("\"rate\": \"25 N/mm\"", "\"rate\": \"25 N/mm\", \"data\": \"x.csv\"", "struts.rear.spring.data", "cannot stand beside rate")]
    [InlineData("\"rate\": \"25 N/mm\"", "\"notes\": \"none\"", "struts.rear.spring", "exactly one")]
    [InlineData("\"rate\": \"25 N/mm\"", "\"rate\": \"25 kgf/m\"", "struts.rear.spring.rate", "kgf/mm")]
    [InlineData("\"coefficient\": \"1500 N·s/m\"", "\"coefficient\": 1500", "struts.rear.damper.coefficient", "write \"1500 N*s/m\"")]
    [InlineData("\"altitude\": \"450 m\"", "\"altitude\": \"450 m\", \"ambient\": \"96 kPa\"", "altitude", "Take one of the two out")]
    [InlineData("\"altitude\": \"450 m\"", "\"ambient\": \"0 bar\"", "ambient", "Check the number")]
    [InlineData("\"x-colour\"", "\"clearance\": { \"margins\": { \"slack\": \"0 mm\" } }, \"x-colour\"", "clearance.margins.slack", "this limit can never be waived")]
    [InlineData("\"x-colour\"", "\"clearance\": { \"bellowsTouch\": \"0 mm\" }, \"x-colour\"", "clearance.bellowsTouch", "this limit can never be waived")]
    [InlineData("\"x-colour\"", "\"clearance\": { \"margins\": { \"bearingTilt\": \"20 deg\" } }, \"x-colour\"", "clearance.margins.bearingTilt", "this limit can never be waived")]
    [InlineData("\"x-colour\"", "\"clearance\": { \"margins\": { \"tyreToArc\": \"8 mm\" } }, \"x-colour\"", "clearance.margins.tyreToArc", "Did you mean tyreToArch?")]
    [InlineData("\"x-colour\"", "\"clearance\": { \"margins\": { \"tyreToArch\": \"-1 mm\" } }, \"x-colour\"", "clearance.margins.tyreToArch", "Check the number")]
    [InlineData("\"droop\": \"30 mm\"", "\"springLeastHeight\": \"0 mm\"", "struts.front.limits.springLeastHeight", "this limit can never be waived")]
    [InlineData("\"droop\": \"30 mm\"", "\"gaugePressure\": \"9 bar\"", "struts.front.limits.gaugePressure", "this limit can never be waived")]
    [InlineData("\"x-colour\"", "\"colour\"", "colour", "begins with x-")]
    [InlineData("\"struts\": {", "\"struts\": { \"middle\": {},", "struts.middle", "Did you mean")]
    [InlineData("\"80 mm\"", "80 mm", "line 19, column 25", "Check the commas")]
    [InlineData("\"Sample kit\"", "\"Sample \\ud800\"", "file", "instead of \\u escapes")]
    public void Read_KitWithOneFault_NamesPlaceAndFix(string from, string to, string where, string fix)
    {
        _folder.Edit("kit.json", from, to);
        Assert.Contains(_folder.Faults(), fault => (fault.Where, Has(fault, fix)) == (where, true));
    }

    [Theory]
    [InlineData("car.json", "\"380 kg\"", "\"380 mm\"", "loads.empty.leftFront", "mass or force")]
    [InlineData("car.json", "\"4118,793 N\"", "\"4118.793 N\"", "axles.front.parasiticRate", "same decimal mark")]
    [InlineData("car.json", "\"leftFront\": \"380 kg\", ", "", "loads.empty.leftFront", "Add \"leftFront\"")]
    [InlineData("car.json", "0.96", "\"0.96\"", "axles.front.motionRatio", "Write the number bare")]
    [InlineData("car.json", "0.96", "96", "axles.front.motionRatio", "Check the number")]
    [InlineData("car.json", "0.96", "1e999", "axles.front.motionRatio", "Check the number")]
    [InlineData("car.json", "\"motionRatio\": 0.96", "\"springRatio\": 0.96", "axles.front.damperRatio", "Add \"damperRatio\"")]
    [InlineData("car.json", "\"motionRatio\": 0.96", "\"motionRatio\": 1, \"springRatio\": 0.96", "axles.front.springRatio", "cannot stand beside motionRatio")]
    [InlineData("car.json", "\"motionRatio\": 0.96, ", "", "axles.front", "exactly one")]
    [InlineData("car.json", "\"30 mm\"", "\"0,3 mm\"", "axles.rear.springRatio", "Check both travels")]
    [InlineData("car.json", "{ \"wheelPerStrut\": 1.25 }", "{ \"table\": \"no.csv\" }", "axles.rear.damperRatio.table", "Check the path")]
    [InlineData("car.json", "\"38 kg\"", "\"410 kg\"", "axles.front.unsprungMass", "one corner")]
    [InlineData("car.json", "\"220 N/mm\"", "\"220 N/mm\", \"suspension\": \"no.json\"", "axles.front.suspension", "Check the path")]
    [InlineData("springs/double.json", "[\"55 mm\", \"130 mm\"]", "[\"130 mm\", \"55 mm\"]", "heightRange", "least height first")]
    [InlineData("springs/double.json", "[\"55 mm\", \"130 mm\"]", "[\"55 mm\"]", "heightRange", "Write 2 values")]
    [InlineData("springs/double.json", "\"130 mm\"", "\"13 m\"", "heightRange[1]", "Check the number")]
    [InlineData("springs/double.json", "1.36", "\"1.36\"", "exponent", "Write the number bare")]
    [InlineData("springs/double.json", "maxGaugePressure", "maxPressure", "maxPressure", "Did you mean maxGaugePressure?")]
    [InlineData("springs/double.json", "\"double.csv\"", "\"../stop.csv\"", "header", "Add the column")]
    [InlineData("springs/double.csv", "4321,5", "4321.5", "row 3, column force [N]", "same decimal mark")]
    public void Read_PartWithOneFault_NamesFilePlaceAndFix(string file, string from, string to, string where, string fix)
    {
        _folder.Edit(file, from, to);
        Assert.Contains(_folder.Faults(), fault => fault.Where == where && Has(fault, fix)
            && (fault.File == _folder.PathOf(file) || to.Contains(Path.GetFileName(fault.File), StringComparison.Ordinal)));
    }

    [Fact]
    public void Read_CarWithoutAxleOfAStrut_IsAFault()
    {
        var text = File.ReadAllText(_folder.PathOf("car.json"));
        _folder.Write("car.json", text[..text.IndexOf("\"rear\": {", StringComparison.Ordinal)] + "} }");
        var fault = Assert.Single(_folder.Faults());
        Assert.Equal("struts.rear", fault.Where);
        Assert.Contains("it has front", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_UnknownLoadCase_NamesTheCases()
    {
        _folder.Edit("kit.json", "\"two up\"", "\"three up\"");
        Assert.Equal("a load case of the car: empty, two up", Assert.Single(_folder.Faults()).Allowed);
    }

    [Fact]
    public void Read_SameFaultyPartTwice_SaysItOnce()
    {
        _folder.Edit("kit.json", "{ \"rate\": \"25 N/mm\" }", "\"springs/double.json\"");
        _folder.Edit("springs/double.json", "1.36", "136");
        _folder.Edit("springs/double.csv", "4321,5", "4.321,5");
        Assert.Equal(2, _folder.Faults().Count);
    }

    [Fact]
    public void Read_AirSpringThatIsABareRate_IsAFault()
    {
        _folder.Write("rate.json", "{ \"rate\": \"25 N/mm\" }");
        Assert.Equal("rate", Assert.Throws<FaultsException>(() => AirSpringReader.Read(_folder.PathOf("rate.json"))).Faults[0].Where);
        _folder.Edit("kit.json", "{ \"rate\": \"25 N/mm\" }", "\"rate.json\"");
        Assert.Equal(new LinearSpringPart(25_000), KitReader.Read(_folder.PathOf("kit.json")).Rear!.Spring);
    }

    [Fact]
    public void Read_EachKindByItself_GivesItsModel()
    {
        _folder.Write("damper.json", "{ \"bellowsmith\": \"damper/1\", \"name\": \"d\", \"rodDiameter\": \"14 mm\", \"shortest\": \"26 cm\", \"longest\": \"39 cm\" }");
        Assert.Equal("Sample spring", AirSpringReader.Read(_folder.PathOf("springs/double.json")).Name);
        Assert.Equal("Sample car", CarReader.Read(_folder.PathOf("car.json")).Name);
        Assert.Equal(0.39, Assert.IsType<TelescopicDamperPart>(DamperReader.Read(_folder.PathOf("damper.json"))).Longest_m);
    }

    /// <summary>A command answers at once only if reading costs next to nothing.</summary>
    [Fact]
    public void Read_WarmKit_TakesUnderTwentyMilliseconds()
    {
        KitReader.Read(_folder.PathOf("kit.json"));
        var fastest = Enumerable.Range(0, 10).Min(_ =>
        {
            var watch = Stopwatch.StartNew();
            KitReader.Read(_folder.PathOf("kit.json"));
            return watch.Elapsed;
        });
        Assert.InRange(fastest, TimeSpan.Zero, TimeSpan.FromMilliseconds(20));
    }

    private static bool Has(Fault fault, string fix) => fault.Fix.Contains(fix, StringComparison.OrdinalIgnoreCase);
}
