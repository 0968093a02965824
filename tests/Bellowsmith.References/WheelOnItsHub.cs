using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// Another wheel on the same hub face. The numbers of the trade: common practice, none of it published with a source; catalogue sections
/// are from memory, several makers' usual ones.
/// </summary>
public sealed class WheelOnItsHub
{
    [Fact] // 8 in ET35 to 9 in ET30, same tyre: 17.7 mm out, 7.7 mm in. DERIVED
    public void Change_EightToNineInches_IsOutAndIn()
    {
        WheelChange change = new(On(8, 35, new(0.225, 0.40, 0.4572)), On(9, 30, new(0.225, 0.40, 0.4572)));

        Assert.Equal(17.7, change.RimOutward_m * 1e3, 1e-9);
        Assert.Equal(7.7, change.RimTowardStrut_m * 1e3, 1e-9);
        // 0.4 mm of section a millimetre of rim, half to either side.
        Assert.Equal(5 + 5.08, change.TyreOutward_m * 1e3, 1e-9);
        Assert.Equal(-5 + 5.08, change.TyreTowardStrut_m * 1e3, 1e-9);
    }

    [Theory] // a spacer takes its thickness from the offset
    [InlineData(35, 30, 0)]
    [InlineData(35, 35, 5)]
    [InlineData(35, 42, 12)]
    public void Change_ASpacer_IsLessOffset(double oldOffset_mm, double newOffset_mm, double spacer_mm) =>
        Assert.Equal(17.7, new WheelChange(On(8, oldOffset_mm, new(0.225, 0.40, 0.4572)), On(9, newOffset_mm, new(0.225, 0.40, 0.4572)), spacer_mm * 1e-3).RimOutward_m * 1e3, 1e-9);

    [Theory] // common practice: 5.4 to 5.7 mm a degree at 310 to 325 mm
    [InlineData(310, 5.4)]
    [InlineData(325, 5.7)]
    public void TiltOutward_ADegree_IsWhatTheTradeSays(double overHub_mm, double outward_mm) =>
        Assert.Equal(outward_mm, WheelChange.TiltOutward_m(overHub_mm * 1e-3, Math.PI / 180) * 1e3, 0.05);

    [Fact] // 12 mm at 300 mm over the hub: 2.3°. Common practice
    public void TiltOutward_ToRecoverTwelveMillimetres_TakesSoMuch() =>
        Assert.Equal(-12, WheelChange.TiltOutward_m(0.300, -2.3 * Math.PI / 180) * 1e3, 0.1);

    [Fact] // 0.2 in of section for 0.5 in of rim
    public void Section_OnHalfAnInchMore_GrowsByATwentiethOfTwoInches() =>
        Assert.Equal(235.08, new Tyre(0.225, 0.40, 0.4572) { Catalogue = (0.230, 8 * 0.0254) }.Section_m(8.5 * 0.0254) * 1e3, 1e-9);

    [Theory] // catalogue sections on their measuring rims, from memory
    [InlineData(195, 65, 15, 6.0, 201)]
    [InlineData(205, 55, 16, 6.5, 214)]
    [InlineData(225, 45, 17, 7.5, 225)]
    [InlineData(255, 35, 19, 9.0, 260)]
    public void Section_FromTheSizeAlone_IsNearTheCatalogue(double nominal_mm, double aspect, double rim_in, double measuring_in, double section_mm) =>
        Assert.Equal(section_mm, new Tyre(nominal_mm * 1e-3, aspect / 100, rim_in * 0.0254).Section_m(measuring_in * 0.0254) * 1e3, 1.5);

    [Fact] // 225/40 R18: 457.2/2 + 0.40·225; 235/40 R18 is 4 mm higher: 1.255 % faster than shown
    public void SpeedChange_OfAHigherTyre_IsTheRatioOfFreeRadii()
    {
        WheelChange change = new(On(8, 45, new(0.225, 0.40, 0.4572)), On(9, 38, new(0.235, 0.40, 0.4572)));

        Assert.Equal(318.6, change.Old.FreeRadius_m * 1e3, 1e-9);
        Assert.Equal(4, change.FreeRadiusChange_m * 1e3, 1e-9);
        Assert.Equal(0.012555, change.SpeedChange, 1e-6);
    }

    [Fact] // an inch over the nominal width edge to edge: 8 in ET35 has 114.3 + 35 mm from its inner edge to the face
    public void Backspacing_AnEightInchRim_IsOverItsWholeWidth()
    {
        Assert.Equal(149.3, On(8, 35, new(0.225, 0.40, 0.4572)).Rim.Backspacing_m * 1e3, 1e-9);
        Assert.Equal(35, Rim.OfBackspacing(8 * 0.0254, 18 * 0.0254, 0.1493).Offset_m * 1e3, 1e-9);
    }

    private static RoadWheel On(double width_in, double offset_mm, Tyre tyre) => new(new Rim(width_in * 0.0254, 18 * 0.0254, offset_mm * 1e-3), tyre);
}
