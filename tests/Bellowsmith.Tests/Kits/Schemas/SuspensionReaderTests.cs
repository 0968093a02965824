using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Schemas;

public sealed class SuspensionReaderTests : IDisposable
{
    private const string Strut = """
        "macpherson": {
          "lowerArmFront": ["10 mm", "370 mm", "215 mm"], "lowerArmRear": ["-300 mm", "380 mm", "220 mm"], "lowerBallJoint": ["-2 mm", "715 mm", "200 mm"],
          "strutTop": ["-25 mm", "580 mm", "880 mm"], "strutAxisPoint": ["-8 mm", "650 mm", "430 mm"],
          "tieRodInner": ["-120 mm", "360 mm", "262 mm"], "tieRodOuter": ["-135 mm", "690 mm", "250 mm"], "wheelCentre": ["0 mm", "760 mm", "310 mm"]
        }
        """;

    private const string Wishbones = """
        "doubleWishbone": { "lowerArmFront": ["140 mm", "390 mm", "190 mm"], "lowerArmRear": ["-160 mm", "380 mm", "195 mm"], "lowerBallJoint": ["5 mm", "710 mm", "190 mm"],
          "upperArmFront": ["90 mm", "450 mm", "460 mm"], "upperArmRear": ["-130 mm", "450 mm", "452 mm"], "upperBallJoint": ["-15 mm", "680 mm", "480 mm"],
          "tieRodInner": ["-130 mm", "400 mm", "255 mm"], "tieRodOuter": ["-140 mm", "700 mm", "260 mm"], "wheelCentre": ["0 mm", "760 mm", "310 mm"],
          "strutTop": ["-10 mm", "520 mm", "740 mm"], "strutBottom": ["0 mm", "600 mm", "210 mm"], "strutOn": "lowerArm" }
        """;

    private const string Trailing = """
        "trailingArm": { "pivotOuter": ["420 mm", "610 mm", "290 mm"], "pivotInner": ["330 mm", "280 mm", "300 mm"], "wheelCentre": ["0 mm", "760 mm", "310 mm"],
          "strutTop": ["90 mm", "560 mm", "720 mm"], "strutBottom": ["60 mm", "580 mm", "250 mm"] }
        """;

    private const string Beam = """
        "beamAxle": { "trailingArmFront": ["520 mm", "520 mm", "280 mm"], "trailingArmRear": ["10 mm", "540 mm", "240 mm"],
          "upperLinkFront": ["420 mm", "60 mm", "420 mm"], "upperLinkRear": ["30 mm", "60 mm", "430 mm"],
          "panhardRodFrame": ["-90 mm", "480 mm", "360 mm"], "panhardRodAxle": ["-90 mm", "-470 mm", "330 mm"], "wheelCentre": ["0 mm", "760 mm", "310 mm"],
          "strutTop": ["200 mm", "530 mm", "620 mm"], "strutBottom": ["190 mm", "530 mm", "265 mm"], "strutOn": "trailingArm" }
        """;

    private const string Links = """
        "fiveLink": { "lowerFrontInner": ["150 mm", "400 mm", "195 mm"], "lowerFrontOuter": ["40 mm", "705 mm", "180 mm"],
          "lowerRearInner": ["-150 mm", "380 mm", "200 mm"], "lowerRearOuter": ["-45 mm", "710 mm", "190 mm"],
          "upperFrontInner": ["110 mm", "450 mm", "455 mm"], "upperFrontOuter": ["35 mm", "685 mm", "470 mm"],
          "upperRearInner": ["-120 mm", "445 mm", "450 mm"], "upperRearOuter": ["-40 mm", "680 mm", "480 mm"],
          "tieRodInner": ["-210 mm", "400 mm", "255 mm"], "tieRodOuter": ["-150 mm", "700 mm", "260 mm"], "wheelCentre": ["0 mm", "760 mm", "310 mm"],
          "strutTop": ["-60 mm", "540 mm", "740 mm"], "strutBottom": ["-90 mm", "590 mm", "210 mm"], "strutOn": "lowerRearLink" }
        """;

    private readonly SampleFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_AStrut_HasItsPoints()
    {
        SuspensionPart part = Read(Strut, "\"staticCamber\": \"-1 deg\", \"halfshaftInner\": [\"0 mm\", \"180 mm\", \"320 mm\"]");

        Assert.Equal(SuspensionKind.MacPherson, part.Kind);
        Assert.Equal(new Point(-0.135, 0.69, 0.25), part.Points["tieRodOuter"]);
        Assert.Equal(-Math.PI / 180, part.Linkage().Rest.Camber_rad, 1e-12);
        Assert.NotNull(part.Linkage().Rest.Halfshaft);
    }

    [Fact] // 40 mm outward along the spin axis, 1 mm down and 0.5 mm forward: top out, toe in
    public void Read_WheelAxisPoint_SetsCamberAndToe()
    {
        SuspensionPart part = Read(Strut.Replace("\"wheelCentre\"", "\"wheelAxisPoint\": [\"0.5 mm\", \"800 mm\", \"309 mm\"], \"wheelCentre\"", StringComparison.Ordinal));

        Assert.Equal(Math.Atan2(0.5, 40), part.Linkage().Rest.Toe_rad, 1e-12);
        Assert.Equal(Math.Asin(1 / Math.Sqrt(40 * 40 + 1 + 0.25)), part.Linkage().Rest.Camber_rad, 1e-12);
    }

    [Fact]
    public void Read_LinesDiametersAndUnderbody_AreHad()
    {
        SuspensionPart part = Read(Strut, """
            "diameters": { "tieRod": "15 mm", "halfshaft": "1 in" }, "underbody": [["0 mm", "300 mm", "110 mm"]],
            "lines": [{ "name": "hose", "body": ["0 mm", "500 mm", "500 mm"], "via": [["0 mm", "550 mm", "500 mm"]], "wheel": ["0 mm", "650 mm", "500 mm"], "length": "180 mm" }]
            """);

        Assert.Equal((0.015, 0.0254), (part.Diameters.Of_m(LinkagePart.TieRod), part.Diameters.Halfshaft_m));
        Assert.Null(part.Diameters.Given_m(LinkagePart.LowerArm));
        Assert.Equal(new Point(0, 0.3, 0.11), Assert.Single(part.Underbody));
        Assert.Equal(0.03, Assert.Single(part.Lines).Slack_m(part.Linkage().Rest), 1e-12);
    }

    [Theory]
    [InlineData("slack", "can never be waived")]
    [InlineData("lenght", "Did you mean length?")]
    public void Read_ALineWithAKeyItCannotHave_IsAFault(string key, string fix)
    {
        string line = $$"""{ "name": "hose", "body": ["0 mm", "500 mm", "500 mm"], "wheel": ["0 mm", "650 mm", "500 mm"], "length": "180 mm", "{{key}}": "5 mm" }""";

        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => Read(Strut, $"\"lines\": [{line}]")).Faults);

        Assert.Equal($"lines[0].{key}", fault.Where);
        Assert.Contains(fix, fault.Fix, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"wheelCentre\": [\"0 mm\", \"760 mm\"", "\"wheelCentre\": [\"0 mm\", \"-760 mm\"", "", "macpherson.wheelCentre")]
    [InlineData("[\"-300 mm\", \"380 mm\", \"220 mm\"]", "[\"10 mm\", \"370 mm\", \"215 mm\"]", "", "macpherson.lowerArmRear")]
    [InlineData("\"strutAxisPoint\": [\"-8 mm\", \"650 mm\", \"430 mm\"]", "\"strutAxisPoint\": [\"-25 mm\", \"580 mm\", \"861 mm\"]", "", "macpherson.strutAxisPoint")]
    [InlineData("\"tieRodOuter\": [\"-135 mm\", \"690 mm\", \"250 mm\"]", "\"tieRodOuter\": [\"-120 mm\", \"360 mm\", \"258 mm\"]", "", "macpherson.tieRodOuter")]
    [InlineData("\"lowerBallJoint\": [\"-2 mm\", \"715 mm\", \"200 mm\"]", "\"lowerBallJoint\": [\"165 mm\", \"375 mm\", \"212.5 mm\"]", "", "macpherson")]
    [InlineData("[\"-300 mm\", \"380 mm\", \"220 mm\"]", "[\"-300 mm\", \"380 mm\"]", "", "macpherson.lowerArmRear")]
    [InlineData("\"wheelCentre\":", "\"wheelAxisPoint\": [\"0 mm\", \"800 mm\", \"310 mm\"], \"wheelCentre\":", "\"staticToe\": \"0.1 deg\"", "staticToe")]
    [InlineData("\"wheelCentre\":", "\"wheelAxisPoint\": [\"40 mm\", \"760 mm\", \"310 mm\"], \"wheelCentre\":", "", "macpherson.wheelAxisPoint")]
    public void Read_OneFault_NamesThePlace(string good, string bad, string beside, string where)
    {
        string text = Strut.Replace(good, bad, StringComparison.Ordinal);

        Assert.Equal(where, Assert.Single(Assert.Throws<FaultsException>(() => Read(text, beside)).Faults).Where);
    }

    [Theory] // of the other side, in the wheel's middle, of another car, under the road
    [InlineData("archEdge", "[\"0 mm\", \"-860 mm\", \"660 mm\"]", "left side")]
    [InlineData("liner", "[\"0 mm\", \"760 mm\", \"320 mm\"]", "outside the wheel")]
    [InlineData("tower", "[\"0 mm\", \"560 mm\", \"2.9 m\"]", "within 1.5 m")]
    [InlineData("underbody", "[\"0 mm\", \"-300 mm\", \"-50 mm\"]", "over the road")]
    public void Read_APointOfNoSuchBody_IsAFault(string name, string point, string allowed)
    {
        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => Read(Strut, $"\"{name}\": [{point}]")).Faults);

        Assert.Equal($"{name}[0]", fault.Where);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }

    [Fact] // the independent solution of these points in tests/Bellowsmith.References/StrutInSpace.cs
    public void CarReader_SuspensionInPlaceOfARatio_FollowsIt()
    {
        _folder.Write("car.json", $$"""
            {
              "bellowsmith": "car/1", "name": "c", "loads": { "one": { "leftFront": "300 kg", "rightFront": "300 kg", "leftRear": "300 kg", "rightRear": "300 kg" } },
              "axles": { "front": { "unsprungMass": "30 kg", "suspension": { "name": "s", "wheelRadius": "310 mm", {{Strut}} } } }
            }
            """);

        Axle axle = CarReader.Read(_folder.PathOf("car.json")).Front!;

        Assert.Equal(0.959521, axle.SpringRatio.At(0), 1e-5);
        Assert.Equal(0.45572909 - 0.43640982, axle.DamperRatio.StrutTravel_m(0.020), 1e-7);
        Assert.Equal(0.45572909 - 0.49363930, axle.DamperRatio.StrutTravel_m(-0.040), 1e-7);
    }

    [Fact]
    public void CarReader_AxleWithNeither_IsOneFault()
    {
        _folder.Write("car.json", """
            {
              "bellowsmith": "car/1", "name": "c", "loads": { "one": { "leftFront": "300 kg", "rightFront": "300 kg", "leftRear": "300 kg", "rightRear": "300 kg" } },
              "axles": { "front": { "unsprungMass": "30 kg" } }
            }
            """);

        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => CarReader.Read(_folder.PathOf("car.json"))).Faults);
        Assert.Equal("axles.front", fault.Where);
        Assert.Contains("suspension", fault.Allowed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SuspensionKind.DoubleWishbone, Wishbones)]
    [InlineData(SuspensionKind.TrailingArm, Trailing)]
    [InlineData(SuspensionKind.BeamAxle, Beam)]
    [InlineData(SuspensionKind.FiveLink, Links)]
    public void Read_EveryKind_Moves(SuspensionKind kind, string text)
    {
        SuspensionPart part = Read(text);

        Assert.Equal(kind, part.Kind);
        Assert.NotNull(part.Linkage().At(0.05).State);
        // A strut on an arm moves less than the wheel; on the hub side of it, more than a third.
        Assert.InRange(part.Linkage().Rest.Strut.MotionRatio, 0.3, 1.0);
    }

    [Theory] // the strut stood on its own top: a length of nothing has no direction
    [InlineData(Wishbones, "doubleWishbone", "[\"0 mm\", \"600 mm\", \"210 mm\"]", "[\"-10 mm\", \"520 mm\", \"740 mm\"]", "0 mm")]
    [InlineData(Trailing, "trailingArm", "[\"60 mm\", \"580 mm\", \"250 mm\"]", "[\"90 mm\", \"560 mm\", \"701 mm\"]", "19 mm")]
    [InlineData(Beam, "beamAxle", "[\"190 mm\", \"530 mm\", \"265 mm\"]", "[\"200 mm\", \"530 mm\", \"620 mm\"]", "0 mm")]
    [InlineData(Links, "fiveLink", "[\"-90 mm\", \"590 mm\", \"210 mm\"]", "[\"-60 mm\", \"540 mm\", \"740 mm\"]", "0 mm")]
    public void Read_AStrutOfNoLength_IsOneFault(string points, string kind, string good, string bad, string apart)
    {
        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => Read(points.Replace(good, bad, StringComparison.Ordinal))).Faults);

        Assert.Equal(
            ($"{kind}.strutBottom", $"{apart} from strutTop", "a point at least 20 mm from strutTop", "Measure strutTop and strutBottom again: they are two places."),
            (fault.Where, fault.Found, fault.Allowed, fault.Fix));
    }

    [Fact]
    public void Read_EveryLinkOfNoLength_IsAFaultEach()
    {
        string points = Links.Replace("[\"40 mm\", \"705 mm\", \"180 mm\"]", "[\"150 mm\", \"400 mm\", \"195 mm\"]", StringComparison.Ordinal)
            .Replace("[\"-150 mm\", \"700 mm\", \"260 mm\"]", "[\"-210 mm\", \"400 mm\", \"255 mm\"]", StringComparison.Ordinal);

        Assert.Equal(
            ["fiveLink.tieRodOuter", "fiveLink.lowerFrontOuter"],
            Assert.Throws<FaultsException>(() => Read(points)).Faults.Select(fault => fault.Where));
    }

    [Fact] // the example's points with the tie rod put on the lower ball joint: nothing is left to steer by
    public void Read_TieRodOnTheBallJoint_IsOneFault()
    {
        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => Read(Strut.Replace(
            "[\"-135 mm\", \"690 mm\", \"250 mm\"]", "[\"-2 mm\", \"715 mm\", \"200 mm\"]", StringComparison.Ordinal))).Faults);

        Assert.Equal(("macpherson.tieRodOuter", "0 mm from lowerBallJoint"), (fault.Where, fault.Found));
    }

    [Fact] // the tie rod's lever in line with the steering axis: a wheel that only turns
    public void Read_AWheelThatHardlyTravels_SaysWhatHoldsIt()
    {
        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => Read(Strut.Replace(
            "[\"-135 mm\", \"690 mm\", \"250 mm\"]", "[\"-5 mm\", \"695 mm\", \"310 mm\"]", StringComparison.Ordinal))).Faults);

        Assert.Equal(("macpherson", "points that leave the wheel one way to go, at least 10 mm up and down"), (fault.Where, fault.Allowed));
        Assert.Contains("holds it: check its points", fault.Fix, StringComparison.Ordinal);
    }

    [Fact] // any eight points are a suspension that goes somewhere, or a fault
    [Trait("Kind", "Fuzz")]
    public void Read_AnyPoints_IsASuspensionOrFaults() => Gen.Int[-900, 900].Array[24].Sample(at =>
    {
        string[] names = ["lowerArmFront", "lowerArmRear", "lowerBallJoint", "strutTop", "strutAxisPoint", "tieRodInner", "tieRodOuter", "wheelCentre"];
        string points = string.Join(", ", names.Select((name, k) => $"\"{name}\": [\"{at[3 * k]} mm\", \"{at[3 * k + 1]} mm\", \"{at[3 * k + 2]} mm\"]"));
        try
        {
            LinkagePoint point = Read($"\"macpherson\": {{ {points} }}").Linkage().At(0.08, 0.02);
            Assert.True(point.State is null != point.Limit is null);
            Assert.True(point.State is null || double.IsFinite(point.State.Camber_rad));
        }
        catch (FaultsException faulty)
        {
            Assert.NotEmpty(faulty.Faults);
        }
    }, iter: 200);

    private SuspensionPart Read(string points, string beside = "")
    {
        _folder.Write("s.json", $"{{ \"bellowsmith\": \"suspension/1\", \"name\": \"s\", \"wheelRadius\": \"310 mm\", {(beside.Length > 0 ? beside + "," : "")} {points} }}");
        return SuspensionReader.Read(_folder.PathOf("s.json"));
    }
}
