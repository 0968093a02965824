using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Ride;

/// <summary>A kit that names neither height nor target stands nowhere of itself, but rides at any height it is asked at.</summary>
public sealed class RideStrutTests
{
    private static readonly RoadQuestion _road = new(new RoadOfClass(RoadClass.B), 20, 7);

    [Fact]
    public void DriveHeight_WithoutTargetAndHeight_IsNone()
    {
        Assert.Null(Undecided().DriveHeight_m());
        Assert.StartsWith("the kit fixes no spring height", RideStudy.Answer(Undecided(), [], _road, new RideSetting()).Reason, StringComparison.Ordinal);
        Assert.NotNull(RideStudy.Answer(Undecided(), [], _road, new RideSetting(Height_m: 0.074)).Figures);
    }

    private static RideStrut Undecided()
    {
        Kit kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));
        return RideStruts.Of(kit with { Rear = null, Front = kit.Front! with { Target = null } }, new StudyConditions())[0];
    }
}
