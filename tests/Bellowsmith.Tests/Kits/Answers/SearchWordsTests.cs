using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Search;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Answers;

/// <summary>The sentences of a search, to the letter.</summary>
public sealed class SearchWordsTests
{
    private static readonly RoadQuestion _road = new(new RoadOfClass(RoadClass.C), 20, 255);
    private static readonly SearchQuestion _question = Question();

    // 250 s at 20 m/s are 5 km.
    private static readonly SearchPoint _point = new(_question.Pairs[0], new(0.074, 3.61e5, 12), Figures(1.67, 880, 16));

    [Theory]
    [InlineData("one click harder", 0, "; at worst, one click harder, 1.72 m/s², ± 884 N and 3.4.")]
    [InlineData("2 psi less", 0.2, "; at worst, 2 psi less, 1.72 m/s², ± 884 N and 3.4, beyond the limits.")]
    public void Sentence_OfAChoice_SaysItAndItsWorstNeighbour(string change, double excess, string end)
    {
        SearchPoint point = _point with { Neighbours = [new(change, Figures(1.72, 884, 17), null, 0.0625, excess)] };

        Assert.Equal(
            "Single 152 at 74.0 mm and 3.61 bar gauge with Front street on click 12: 1.67 m/s² weighted, tyre load ± 880 N, 3.2 stop contacts a kilometre" + end,
            Words(Result([point])).Sentence(point));
    }

    [Fact]
    public void Sentence_WhereTheWorstCannotBeSet_SaysWhy()
    {
        SearchPoint point = _point with { Neighbours = [new("1 mm lower", null, "the car rests on its stop there", double.PositiveInfinity, double.PositiveInfinity)] };

        Assert.EndsWith("; at worst, 1 mm lower, it cannot be set: the car rests on its stop there.", Words(Result([point])).Sentence(point), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_WithChoices_SaysWithinWhat() => Assert.Equal(
        "1234 settings driven within stop contacts a kilometre of at most 4; none is better than these in all of comfort, tyre load and stop contacts.",
        Words(Result([_point])).Answer());

    [Fact]
    public void Answer_WithNone_NamesTheNearestAndThatNothingHelps()
    {
        SearchWords words = Words(Result([]) with { Nearest = _point });

        Assert.StartsWith("None of 1234 settings keeps stop contacts a kilometre of at most 4. Nearest: Single 152 at 74.0 mm", words.Reason(), StringComparison.Ordinal);
        Assert.StartsWith("Nothing to order: ", words.Order(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_WhereOnlyExactSettingsKeepTheLimits_SaysSo()
    {
        SearchWords words = Words(Result([]) with { Nearest = _point, WithinLimits = 7, Question = _question with { Robust = true } });

        Assert.StartsWith(
            "7 of 1234 settings keep stop contacts a kilometre of at most 4 where all is set exactly, none of them also one click, 2 psi, 10 kg and 1 mm aside. Nearest: Single 152",
            words.Reason(), StringComparison.Ordinal);
        Assert.Empty(words.Order());
    }

    [Fact]
    public void Order_OfParts_SaysRateHeightForceAndLengths()
    {
        PartsOrder order = new()
        {
            Change = (0.8, 1.2, 0.005),
            Height_m = 0.074,
            SpringForce_N = 3503,
            SpringRate_N_per_m = 48_200,
            WheelRate_N_per_m = 45_000,
            SpringHeights = (0.0321, 0.1154),
            DamperLengths = (0.2782, 0.3493),
            Forces = [new(0.13, 302, 374), new(1.04, null, null)],
            Figures = Figures(1.48, 870, 5),
        };
        SearchWords words = Words(Result([]) with { Nearest = _point, Order = order });

        Assert.Equal(
            "To order: a spring of 48.2 N/mm at 74.0 mm, carrying 3503 N there and usable from 32.1 to 115.4 mm; a damper with 1.2 times the force of Front street on click 12, "
            + "278.2 mm long with its stop solid and 349.3 mm at full length, a stroke of 71.1 mm. Such parts come to 1.48 m/s² weighted, tyre load ± 870 N and 1.0 stop contacts a kilometre.",
            words.Order());
        Assert.Equal(["0.13 m/s: 302 N in compression, 374 N in rebound"], words.OrderedForces());
    }

    [Fact]
    public void Notes_OfADocumentLeftOut_NameItAndWhy()
    {
        UnusedDocument torn = new("springs/torn.json", [new("springs/torn.json", "data", "nothing", "a CSV file", "Add it."), new("springs/torn.json", "name", "nothing", "text", "Add it.")]);
        SearchResult result = Result([_point]) with { Question = _question with { LeftOut = [torn] } };

        Note note = Assert.Single(Words(result).Notes(), n => n.About == "left out");
        Assert.Equal("springs/torn.json: data: found nothing; allowed: a CSV file. Add it. And 1 more.", note.Text);
    }

    private static SearchWords Words(SearchResult result) => new(result, DisplayUnits.Metric);

    private static SearchResult Result(IReadOnlyList<SearchPoint> front) =>
        new() { Question = _question, Front = front, Nearest = null, Order = null, Present = null, Evaluated = 1234, WithinLimits = 0, NotDriven = [] };

    private static SearchQuestion Question()
    {
        Kit kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")) with { Rear = null };
        return SearchQuestion.Of(kit, new Shelf([], [], []), new StudyConditions(), _road, [new(RideQuantity.StopContacts, 4)]);
    }

    private static RideFigures Figures(double weighted, double tyreLoad, int contacts) => new()
    {
        Rms_m_per_s2 = 0,
        WeightedRms_m_per_s2 = weighted,
        CrestFactor = 0,
        VibrationDose_m_per_s175 = 0,
        GreatestRunningRms_m_per_s2 = 0,
        TravelRms_m = 0,
        TyreLoadRms_N = tyreLoad,
        LiftOffShare = 0,
        StopContacts = contacts,
        PeakStopForce_N = 0,
        LeastTravel_m = 0,
        GreatestTravel_m = 0,
        GreatestCompression_m_per_s = 0,
        GreatestRebound_m_per_s = 0,
        Time_s = 250,
    };
}
