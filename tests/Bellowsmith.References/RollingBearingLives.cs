using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>Basic rating lives L10. A page's 91 million turns for a 30207 bearing (56 on 14 kN) is wrong, its own numbers make 101.6.</summary>
public sealed class RollingBearingLives
{
    [Theory] // kN, million turns: RECOMPUTED from READ inputs, 0.1 %
    [InlineData(55.3, 10, RollingBearing.Ball, 169.112)] // [Rolling Bearings Catalogue 2018], example 1: READ 169
    [InlineData(30, 5, RollingBearing.Ball, 216)] // a machine-calculations page: READ 216
    [InlineData(30, 5, RollingBearing.Roller, 392.50)] // the same: READ 392
    [InlineData(56, 14, RollingBearing.Roller, 101.6)] // 30207: printed 91, wrong
    public void Turns_OfAnExample_AreThePublishedOnes(double rating_kN, double load_kN, double exponent, double million) =>
        Assert.Equal(million, new RollingBearing(rating_kN * 1e3, exponent).Turns(load_kN * 1e3) / 1e6, million * 1e-3);

    [Theory] // kN, 1/min, hours
    [InlineData(55.3, 10, 3000, 939.5)] // [Rolling Bearings Catalogue 2018], example 1: READ 940
    [InlineData(30, 5, 1500, 2400)] // a machine-calculations page: READ 2400
    public void Life_OfAnExample_IsThePublishedOne(double rating_kN, double load_kN, double perMinute, double hours) =>
        Assert.Equal(hours, new RollingBearing(rating_kN * 1e3, RollingBearing.Ball).Life_s(load_kN * 1e3, perMinute / 60) / 3600, hours * 1e-3);

    [Fact] // DERIVED: ±90° passes a whole turn each swing, ±45° half of one
    public void Swings_ToAndFro_CountTheAnglePassed()
    {
        RollingBearing bearing = new(30e3, RollingBearing.Ball);

        Assert.Equal(216e6, bearing.Swings(5e3, Math.PI / 2), 1);
        Assert.Equal(432e6, bearing.Swings(5e3, Math.PI / 4), 1);
        Assert.Equal(18, RollingBearing.LeastAmplitude_rad(20) * 180 / Math.PI, 1e-12);
    }
}
