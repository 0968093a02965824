using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Ride;

/// <summary>The example's front strut on waves: digressive damper, air that stiffens, a stop and a tyre that may lift.</summary>
public sealed class ResponseTests
{
    private static readonly RideStrut _strut = RideStruts.Of(KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")), new StudyConditions())[0];
    private static readonly RideResponse _response = ResponseStudy.Answer(_strut, new RideSetting(), 10e-3)!;

    [Fact] // a linear corner answers every amplitude alike; a digressive damper holds large waves less
    public void Answer_LargerWaves_SwingTheBodyFurther()
    {
        Assert.Equal([5e-3, 10e-3, 20e-3], _response.All.Select(waves => waves.Amplitude_m));
        Assert.True(_response.Half.Body.BodyTransmissibility < 0.95 * _response.Asked.Body.BodyTransmissibility);
    }

    [Fact]
    public void Answer_LargerWaves_MeetTheStopAndLeaveTheRoad()
    {
        Assert.DoesNotContain(_response.Half.Points, p => p.StopTouched || p.LeavesRoad);
        Assert.Contains(_response.Twice.Points, p => p.StopTouched && p.Frequency_Hz < 4);
        Assert.Contains(_response.Twice.Points, p => p.LeavesRoad && p.Frequency_Hz > 8);
        Assert.All(_response.Twice.Points, p => Assert.True(p.StopTouched || p.TravelAmplitude_m < 0.1));
    }

    [Fact] // far below the body's mode the wheel carries the body along, far above it the body stands still
    public void Answer_AtBothEnds_FollowsTheRoadAndIsLeftBehind()
    {
        Assert.InRange(_response.Asked.Points[0].BodyTransmissibility, 1, 1.15);
        Assert.InRange(_response.Asked.Points[^1].BodyTransmissibility, 0, 0.2);
    }

    [Fact]
    public void Answer_WhereTheStrutCannotStand_IsNone() =>
        Assert.Null(ResponseStudy.Answer(_strut, new RideSetting(Click: 99), 5e-3));

    [Fact]
    public void Words_OfTheResponse_NameBodyHopAndEnds()
    {
        ResponseWords asked = new(_response, DisplayUnits.Metric), twice = new(_response with { Asked = _response.Twice }, DisplayUnits.Metric);

        Assert.Matches(@"^On waves of ± 10\.0 mm the body answers most at \d\.\d Hz, \d\.\d times the road; the wheel hops at \d\d Hz, tyre load ± \d+ N\. ", asked.Answer());
        Assert.Matches(@"The stop is touched from \d\.\d Hz to \d\.\d Hz.*, the tyre leaves the road from [\d.]+ Hz", twice.Answer());
        Assert.InRange(_response.Twice.Hop!.Frequency_Hz, 8, 25);
        Assert.StartsWith("At ± 5.0 mm the body answers most at", asked.Beside(), StringComparison.Ordinal);
    }

    [Fact] // the dyno went to 0.52 m/s and a little: fast waves go beyond it
    public void Notes_BeyondTheDynosSpeeds_SayWhere() => Assert.Contains(
        new ResponseWords(_response with { Asked = _response.Twice }, DisplayUnits.Metric).Notes(), note => note.Text.Contains("faster than its dyno data reach", StringComparison.Ordinal));

    [Fact]
    public void Transmissibility_OfThreeAmplitudes_MarksTheStop()
    {
        Chart chart = new ResponseFigures(_response, DisplayUnits.Metric).Transmissibility();

        Assert.Equal(["± 5.0 mm", "± 20.0 mm", "± 10.0 mm"], chart.Curves.Select(curve => curve.Label));
        Assert.Contains(chart.Measured, points => points is { Label: "stop touched", Shape: PointShape.Cross });
        Assert.All(chart.Curves, curve => Assert.All(curve.Y.Zip(curve.Outside), pair => Assert.True(double.IsFinite(pair.First) || double.IsFinite(pair.Second))));
        Assert.Equal(_response.Asked.Body.BodyTransmissibility, Assert.Single(chart.Marks).Y);
    }
}
