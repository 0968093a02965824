using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>What friction in the strut means at the wheel.</summary>
/// <param name="AtWheel_N">Friction·i.</param>
/// <param name="Breakaway_m_per_s2">What the body must be pushed with before the strut moves: AtWheel/ms.</param>
/// <param name="RestBand_m">± how far from its height the car may come to rest: AtWheel/kw; null without a wheel rate.</param>
/// <param name="Still_m">
/// A bump met at once that the tyre takes alone: held, strut and wheel are pushed with kt·z and the body feels kt·z·ms/(ms + mu), so
/// z = AtWheel·(ms + mu)/(ms·kt); null without a tyre rate (derived).
/// </param>
public sealed record StrutFriction(double AtWheel_N, double Breakaway_m_per_s2, double? RestBand_m, double? Still_m)
{
    internal static StrutFriction Of(MountCase mount, double friction_N)
    {
        double atWheel = friction_N * mount.Corner.Axle.DamperRatio.At(0), sprung = mount.WheelLoad_N / StandardGravity.Value_m_per_s2;
        return new(
            atWheel, atWheel / sprung, atWheel / mount.WheelRate_N_per_m,
            atWheel * (sprung + mount.Corner.Axle.UnsprungMass_kg) / sprung / mount.Corner.Axle.TyreRate_N_per_m);
    }
}
