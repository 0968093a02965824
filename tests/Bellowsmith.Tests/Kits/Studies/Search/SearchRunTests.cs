using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Search;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Search;

/// <summary>What a search chooses is what a ride of that setting shows, keeps the limits, and says what lies beside it.</summary>
public sealed class SearchRunTests
{
    private static readonly RoadQuestion _road = new(new RoadOfClass(RoadClass.C), 20, 7);
    private static readonly Kit _street = Street();
    private static readonly SearchResult _free = new SearchRun(Question(_road)).All(TestContext.Current.CancellationToken);

    [Fact]
    public void All_OfTheDemo_ChoosesAmongEverySpringAndDamper()
    {
        Assert.Equal(
            ["Single 152 Front street", "Single 152 Rear street", "Double 146 Front street", "Double 146 Rear street", "Single 140 Front street", "Single 140 Rear street"],
            Question(_road).Pairs.Select(p => $"{p.Spring} {p.Damper}"));
        Assert.InRange(_free.Front.Count, 2, 9);
        Assert.Equal(_free.Front.OrderBy(p => p.Figures.WeightedRms_m_per_s2), _free.Front);
        Assert.True(_free.Evaluated > 500);
        Assert.Contains(_free.NotDriven, n => n.Reason == "the thread does not reach");
        Assert.Null(_free.Nearest);
        Assert.Null(_free.Order);
    }

    [Fact]
    public void All_EachChoice_IsTheRideOfItsSetting()
    {
        RideStrut own = RideStruts.Of(_street, new StudyConditions())[0];
        int compared = 0;
        foreach (SearchPoint point in _free.Front)
        {
            RideSetting set = new(Height_m: point.Setting.Height_m, Click: point.Setting.Click);
            RideStrut strut = point.Pair is { Spring: "Single 152", Damper: "Front street" } ? own : With(point.Pair);
            Assert.Equal(RideStudy.Figures(strut, _road, set), point.Figures);
            compared++;
        }

        Assert.Equal(_free.Front.Count, compared);
    }

    [Fact]
    public void All_Choices_AreDominatedByNoneOfTheKitsOwnSettings()
    {
        RideStrut own = RideStruts.Of(_street, new StudyConditions())[0];
        foreach (double height in (double[])[0.066, 0.07, 0.074])
            for (double click = 0; click <= 15; click += 3)
            {
                RideFigures figures = RideStudy.Figures(own, _road, new(Height_m: height, Click: click))!;
                Assert.DoesNotContain(_free.Front, p => figures.WeightedRms_m_per_s2 < p.Figures.WeightedRms_m_per_s2
                    && figures.TyreLoadRms_N < p.Figures.TyreLoadRms_N && figures.StopContacts < p.Figures.StopContacts);
            }
    }

    [Fact]
    public void All_WithinLimits_KeepsThem()
    {
        SearchResult result = new SearchRun(Question(_road, (RideQuantity.StopContacts, 0), (RideQuantity.TyreLoad, 1100))).All(TestContext.Current.CancellationToken);

        Assert.NotEmpty(result.Front);
        Assert.All(result.Front, p => Assert.Equal(0, p.Figures.StopContacts));
        Assert.All(result.Front, p => Assert.True(p.Figures.TyreLoadRms_N <= 1100));
    }

    [Fact]
    public void Worst_OfEachChoice_IsOneOfTheNeighboursAndBetterThanNone()
    {
        string[] changes = ["one click harder", "one click softer", "2 psi less", "2 psi more", "10 kg less", "10 kg more", "1 mm lower", "1 mm higher"];
        foreach (SearchPoint point in _free.Front)
        {
            Assert.InRange(point.Neighbours.Count, 5, 8);
            Assert.All(point.Neighbours, n => Assert.Contains(n.Change, changes));
            Assert.Contains(point.Worst, point.Neighbours);
            Assert.All(point.Neighbours, n => Assert.True(Worsening(point, n) <= Worsening(point, point.Worst!) + 1e-12));
        }
    }

    [Fact]
    public void Neighbours_OfAChoice_AreRidesOfTheirOwn()
    {
        SearchPoint point = _free.Front.First(p => p.Setting.Click is > 0 and < 15);
        (double height, double gauge, double click) = (point.Setting.Height_m!.Value, point.Setting.GaugePressure_Pa!.Value, point.Setting.Click!.Value);
        RideStrut strut = With(point.Pair);

        Assert.Equal(RideStudy.Figures(strut, _road, new(height, Click: click - 1)), Beside("one click harder"));
        Assert.Equal(RideStudy.Figures(strut, _road, new(height, gauge - 13789.514586336722, click)), Beside("2 psi less"));
        RideStrut heavier = strut with { SprungMass_kg = strut.SprungMass_kg + 10, Case = strut.Case! with { Sprung = (strut.Case.Sprung.Left_kg + 10, strut.Case.Sprung.Right_kg + 10) } };
        Assert.Equal(RideStudy.Figures(heavier, _road, new(height, Click: click)), Beside("10 kg more"));

        RideFigures? Beside(string change) => point.Neighbours.Single(n => n.Change == change).Figures;
    }

    [Fact]
    public void Worst_WhereANeighbourCannotBeSet_IsThatOne()
    {
        AirSpringPart weak = (AirSpringPart)_street.Front!.Spring with { MaxGaugePressure_Pa = 3.55e5 };
        SearchQuestion question = SearchQuestion.Of(_street with { Front = _street.Front with { Spring = weak } }, new Shelf([], [], []), new StudyConditions(), _road, []);
        SearchResult result = new SearchRun(question).All(TestContext.Current.CancellationToken);
        SearchPoint[] close = [.. result.Front.Where(p => p.Setting.GaugePressure_Pa > 3.55e5 - 13789)];

        Assert.NotEmpty(close);
        Assert.All(result.Front, p => Assert.True(p.Setting.GaugePressure_Pa <= 3.55e5));
        Assert.All(close, p => Assert.Equal(("it takes more than the spring's greatest gauge pressure", double.PositiveInfinity, false), (p.Worst!.Reason, p.Worst.Worsening, p.Worst.KeepsLimits)));
    }

    [Fact]
    public void All_Robust_HoldsTheLimitsForEveryNeighbour()
    {
        (RideQuantity, double)[] limits = [(RideQuantity.TyreLoad, 1000), (RideQuantity.StopContacts, 40)];
        SearchResult robust = new SearchRun(Question(_road, limits) with { Robust = true }).All(TestContext.Current.CancellationToken);
        SearchResult exact = new SearchRun(Question(_road, limits)).All(TestContext.Current.CancellationToken);

        Assert.NotEmpty(robust.Front);
        Assert.Equal(exact.WithinLimits, robust.WithinLimits);
        foreach (RideFigures figures in robust.Front.SelectMany(p => p.Neighbours.Select(n => n.Figures!).Append(p.Figures)))
            Assert.True(figures.TyreLoadRms_N <= 1000 && figures.StopContactsPerKm(20) <= 40);
        Assert.True(robust.Front.Min(p => p.Figures.WeightedRms_m_per_s2) >= exact.Front.Min(p => p.Figures.WeightedRms_m_per_s2));
    }

    [Fact]
    public void All_RobustWhereOnlyExactSettingsKeepTheLimits_NamesTheNearestOfThose()
    {
        double least = _free.Front.Min(p => p.Figures.WeightedRms_m_per_s2);
        SearchResult result = new SearchRun(Question(_road, (RideQuantity.WeightedRms, least)) with { Robust = true }).All(TestContext.Current.CancellationToken);

        Assert.Empty(result.Front);
        Assert.Equal(1, result.WithinLimits);
        Assert.Equal(least, result.Nearest!.Figures.WeightedRms_m_per_s2);
        Assert.Contains(result.Nearest.Neighbours, n => !n.KeepsLimits);
        Assert.Null(result.Order);
    }

    [Fact]
    public void Order_WhereNoneKeepsTheLimits_IsOfPartsThatWould()
    {
        SearchResult result = new SearchRun(Question(_road, (RideQuantity.WeightedRms, 1.3), (RideQuantity.StopContacts, 1))).All(TestContext.Current.CancellationToken);
        PartsOrder order = result.Order!;

        Assert.Empty(result.Front);
        Corner driven = new VirtualParts(result.Nearest!).Corner(order.Change);
        RideFigures again = RideRun.Over([driven], RideRoads.Heights(_road))[0];
        Assert.True(again.WeightedRms_m_per_s2 <= 1.3);
        Assert.True(again.StopContactsPerKm(20) <= 1);
        Assert.Equal(order.Figures, again);

        // Force at the wheel over travel, without stops: the load, and the wheel rate per metre.
        double centre = -driven.Range.Centre_m / driven.Range.Half_m, aside = (0.01 - driven.Range.Centre_m) / driven.Range.Half_m;
        StrutCase strut = result.Nearest!.Pair.Strut.Case!;
        Assert.Equal(strut.SprungMass_kg * 9.80665, driven.Force.At(centre), 1e-3);
        Assert.Equal(order.WheelRate_N_per_m, (driven.Force.At(aside) - driven.Force.At(centre)) / 0.01, 1e-1);
        Assert.Equal(order.WheelRate_N_per_m, strut.WheelRate_N_per_m(order.SpringRate_N_per_m, order.Height_m), 1e-6);
    }

    [Fact]
    public void Order_OfWhatIsToBeHad_HasLengthsWithinTheMargins()
    {
        SearchResult result = new SearchRun(Question(_road, (RideQuantity.WeightedRms, 1.3), (RideQuantity.StopContacts, 1))).All(TestContext.Current.CancellationToken);
        PartsOrder order = result.Order!;

        (double shortest, double longest) = order.DamperLengths!.Value;
        // Longer than the spring by the kit's 247 mm at drive height.
        Assert.InRange(order.Height_m + 0.247, shortest, longest);
        Assert.Equal([0.05, 0.13, 0.26, 0.52, 1.04], order.Forces.Select(f => f.Speed_m_per_s));
        Assert.All(order.Forces, f => Assert.True(f.Compression_N > 0 && f.Rebound_N > 0));
        Assert.True(order.SpringHeights!.Value.Least_m < order.Height_m && order.Height_m < order.SpringHeights.Value.Greatest_m);
    }

    [Fact] // by hand: 0.9 strut per wheel, damper 218 mm longer than the spring, stop solid at 256 + 13 mm and met 20 mm of wheel travel up
    public void Order_OfTheRear_KeepsDroopAndStopContact()
    {
        Kit rear = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")) with { Front = null };
        SearchQuestion question = SearchQuestion.Of(
            rear, ShelfReader.Read(ShelfReader.FoldersOf(rear)), new StudyConditions(), _road, [new(RideQuantity.WeightedRms, 1.5), new(RideQuantity.StopContacts, 1)]);
        PartsOrder order = new SearchRun(question).All(TestContext.Current.CancellationToken).Order!;

        Assert.Equal(0.082, order.Height_m, 1e-9);
        Assert.Equal(0.082 + 0.218 + 0.9 * 0.035, order.DamperLengths!.Value.Longest_m, 1e-9);
        Assert.Equal(0.269 - 0.9 * Math.Max(order.Change.BumpTravel_m, 0.005), order.DamperLengths.Value.Shortest_m, 1e-9);
        Assert.Equal(order.DamperLengths.Value.Longest_m - 0.218 + 0.0127, order.SpringHeights!.Value.Greatest_m, 1e-9);
    }

    [Fact]
    public void Order_OfWhatNoPartsCanDo_IsNone()
    {
        SearchResult result = new SearchRun(Question(_road, (RideQuantity.WeightedRms, 0.1))).All(TestContext.Current.CancellationToken);

        Assert.Empty(result.Front);
        Assert.NotNull(result.Nearest);
        Assert.Null(result.Order);
    }

    [Fact]
    public void Advance_InPieces_IsTheWholeAtOnce()
    {
        SearchRun pieces = new(Question(_road));
        double share = 0;
        while (!pieces.IsDone)
        {
            pieces.Advance(300, TestContext.Current.CancellationToken);
            Assert.True(pieces.Share > share);
            share = pieces.Share;
        }

        Assert.Equal(1, share);
        Assert.Equal(_free.Front.Select(p => (p.Pair.Spring, p.Pair.Damper, p.Setting, p.Figures)), pieces.Result!.Front.Select(p => (p.Pair.Spring, p.Pair.Damper, p.Setting, p.Figures)));
    }

    [Fact]
    public void Advance_Cancelled_LeavesItsCandidatesToBeDriven()
    {
        SearchRun run = new(Question(_road));

        Assert.Throws<OperationCanceledException>(() => run.Advance(2000, new CancellationToken(canceled: true)));
        Assert.Equal(0, run.Share);
        Assert.Equal(_free.Evaluated, run.All(TestContext.Current.CancellationToken).Evaluated);
    }

    [Theory]
    [InlineData(3, 2, 0.5)]
    [InlineData(2, 2, 0)]
    [InlineData(-3, 2, 0.5)]
    [InlineData(0.5, 0, 0.5)]
    public void Excess_OfALimit_IsAShareOfIt(double value, double greatest, double share) =>
        Assert.Equal(share, new SearchLimit(RideQuantity.WeightedRms, greatest).Excess(value));

    [Fact]
    public void Excess_OfFewStopContacts_IsAgainstOneAKilometre() =>
        Assert.Equal(2, new SearchLimit(RideQuantity.StopContacts, 0.5).Excess(2.5));

    [Fact]
    public void Of_TwoSpringsOfOneName_TellsThemApart()
    {
        Shelf shelf = ShelfReader.Read([ExampleFolder.PathOf("springs")]);
        shelf = shelf with { Springs = [.. shelf.Springs.Select(s => s with { Name = "Single 152" })] };

        Assert.Equal(
            ["Single 152", "Single 152 (double-146.csv)", "Single 152 (single-140.csv)"],
            SearchQuestion.Of(_street, shelf, new StudyConditions(), _road, []).Pairs.Select(p => p.Spring));
    }

    [Fact]
    public void Of_AKitWithoutTargetAndHeight_HasNoPresentSetting()
    {
        Kit kit = _street with { Front = _street.Front! with { Target = null, DriveHeight_m = null } };

        Assert.Null(SearchQuestion.Of(kit, new Shelf([], [], []), new StudyConditions(), _road, []).Present);
        Assert.NotNull(Question(_road).Present);
    }

    [Fact]
    public void Of_APartThatDoesNotFit_IsLeftOutByName()
    {
        Shelf shelf = ShelfReader.Read([ExampleFolder.PathOf("springs")]);
        shelf = shelf with { Springs = [.. shelf.Springs.Select(s => s.Name == "Single 140" ? s with { LeastHeight_m = 0.3, GreatestHeight_m = 0.4 } : s)] };
        SearchQuestion question = SearchQuestion.Of(_street, shelf, new StudyConditions(), _road, []);

        Assert.EndsWith("single-140.csv", Assert.Single(question.LeftOut).File, StringComparison.Ordinal);
        Assert.DoesNotContain(question.Pairs, p => p.Spring == "Single 140");
    }

    private static double Worsening(SearchPoint point, SearchNeighbour beside)
    {
        if (beside.Figures is not { } n) return double.PositiveInfinity;
        RideFigures own = point.Figures;
        double stops = own.StopContactsPerKm(20);
        return new[]
        {
            (n.WeightedRms_m_per_s2 - own.WeightedRms_m_per_s2) / own.WeightedRms_m_per_s2,
            (n.TyreLoadRms_N - own.TyreLoadRms_N) / own.TyreLoadRms_N,
            (n.StopContactsPerKm(20) - stops) / Math.Max(stops, 1),
        }.Max();
    }

    // The kit with other parts written into it, as its author would.
    private static RideStrut With(SearchPair pair)
    {
        Shelf shelf = ShelfReader.Read(ShelfReader.FoldersOf(_street));
        StrutDesign front = _street.Front! with { Spring = shelf.Springs.Single(s => s.Name == pair.Spring), Damper = shelf.Dampers.Single(d => d.Name == pair.Damper) };
        return RideStruts.Of(_street with { Front = front }, new StudyConditions())[0];
    }

    private static SearchQuestion Question(RoadQuestion road, params (RideQuantity Quantity, double Greatest)[] limits) => SearchQuestion.Of(
        _street, ShelfReader.Read(ShelfReader.FoldersOf(_street)), new StudyConditions(), road, [.. limits.Select(l => new SearchLimit(l.Quantity, l.Greatest))]);

    private static Kit Street() => KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")) with { Rear = null };
}
