using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.LowerMounting;
using Bellowsmith.Tests.Kits.Figures;
using Bellowsmith.Tests.Kits.Studies;

namespace Bellowsmith.Tests.Kits.Answers;

public sealed class LowerMountWordsTests
{
    [Theory] // M12; 0.3 mm of tolerance on the car and 0.1 in the bracket
    [InlineData(11, 15, "No bolt goes in: the bracket's holes of 11.00 mm are smaller than the bolt of 12.00 mm;", "Bracket holes of 12.00 mm let every bolt in for sure, those there are smaller than the bolt.")]
    [InlineData(15, 11, "No bolt goes in: the knuckle's holes of 11.00 mm are smaller than the bolt of 12.00 mm;", "Bore the knuckle's holes to 12.00 mm: they are smaller than the bolt.")]
    [InlineData(12, 12.5, "The bolts go in with 0.25 mm to spare, not for sure:", "Bracket holes of 12.30 mm let every bolt in for sure; no single hole made elsewhere helps.")]
    [InlineData(12.5, 12.5, "The bolts go in with 0.50 mm to spare, for sure;", null)]
    public void Mend_OfHolesThatMeet_BoresWhatIsTooSmall(double bracket_mm, double knuckle_mm, string begins, string? mend)
    {
        LowerMount mount = SampleMount.Of((0, 0), (0, 60));
        (LowerMountResult result, LowerMountWords words) = Answer(mount with
        {
            Bracket = mount.Bracket with { HoleDiameter_m = bracket_mm * 1e-3 },
            Knuckle = mount.Knuckle with { HoleDiameter_m = knuckle_mm * 1e-3 },
        });

        Assert.StartsWith(begins, words.Answer(), StringComparison.Ordinal);
        Assert.Equal(mend, words.MendOf(result.Findings.Single(f => f.Rule == LowerMountRule.BoltsGoInForSure)));
    }

    [Fact] // 1 MPa instead of 170: 58 mm engaged at the stop less what is exposed cannot hold
    public void Answer_ShortThread_NamesWhatMayNotBeWaived()
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        LowerMountResult result = LowerMountStudy.Answer(new(strut with
        {
            Design = strut.Design with { LowerMount = SampleMount.Of((0, 0), (0, 60)), Thread = strut.Design.Thread! with { ShearStrength_Pa = 1e6 } },
        }, null));
        LowerMountFinding thread = result.Findings.Single(f => !f.CanBeWaived);

        Assert.Equal((LowerMountRule.ThreadEngagement, false), (thread.Rule, thread.Holds));
        Assert.Matches(@" Not to be waived: [0-9.]+ mm of thread engaged, [0-9.]+ mm needed\. Missed: the joint slips\.$", new LowerMountWords(result, DisplayUnits.Metric).Answer());
    }

    private static (LowerMountResult Result, LowerMountWords Words) Answer(LowerMount mount)
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        LowerMountResult result = LowerMountStudy.Answer(new(strut with { Design = strut.Design with { LowerMount = mount } }, null));
        return (result, new(result, DisplayUnits.Metric));
    }
}
