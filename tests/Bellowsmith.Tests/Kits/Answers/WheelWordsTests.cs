using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Answers;

public sealed class WheelWordsTests
{
    private static readonly Kit _street = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")) with { Rear = null };

    [Fact]
    public void Answer_CamberPastTheSlide_SaysItFitsWithout()
    {
        string answer = Words(_street, "18x8 ET45 225/40R18", -1.5).Answer();

        Assert.StartsWith("It fits as measured: ", answer, StringComparison.Ordinal);
        Assert.Contains("not with −1.50° of camber added: the top mount would have to stand ", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_NothingToMakeTheCamber_SaysSo() => Assert.Contains(
        "of camber would do, but the kit names nothing that makes it", Words(_street with { Front = _street.Front! with { Adjusters = null } }, "18x8.5 ET30 225/40R18", 0, archMargin_m: 0.0158).Answer(), StringComparison.Ordinal);

    [Fact] // a size alone is 3 % open: of 248 mm half of 7.4 mm to either side
    public void Answer_OnlyCamberAndOffsetHelp_SaysTheLeastAndHowOpen()
    {
        string answer = Words(_street, "18x9 ET38 235/40R18", 0).Answer();

        Assert.Contains("It would fit with −0.44° of camber added and ET36.6, or 1.4 mm of spacer; with −1.14°, the most the top mount makes, ET33 to ET36, or", answer, StringComparison.Ordinal);
        Assert.EndsWith(" of spacer, ±3.7 mm at the arch.", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_WithoutTowerPoints_SayThatTheyAreNotAsked()
    {
        Axle axle = _street.Car.Front!;
        Kit bare = _street with { Car = _street.Car with { Front = axle with { Suspension = axle.Suspension! with { Tower = [] } } } };

        Assert.Contains("tower", Words(bare, "18x8 ET45 225/40R18", 0).Notes().Select(note => note.About));
        Assert.DoesNotContain("tower", Words(_street, "18x8 ET45 225/40R18", 0).Notes().Select(note => note.About));
    }

    private static WheelWords Words(Kit kit, string wheel, double camber_deg, double archMargin_m = 0.006)
    {
        WheelCorner corner = WheelCorner.Of(kit, new StudyConditions());
        WheelFitQuestion question = new(corner.MeasuredWheel, WheelText.Wheel(wheel)!, 0, camber_deg * Math.PI / 180) { ArchMargin_m = archMargin_m };
        return new(WheelFitStudy.Answer(corner, question), DisplayUnits.Metric);
    }
}
