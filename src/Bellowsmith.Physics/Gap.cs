namespace Bellowsmith.Physics;

/// <summary>
/// The least distance between two bodies, m, apart +, one in the other −, and the two places it lies between: on this body and on the
/// other. Where several places are equally near, one of them.
/// </summary>
public readonly record struct Gap(double Distance_m, Point On, Point Other)
{
    /// <summary>Seen from the other body.</summary>
    public Gap Turned() => new(Distance_m, Other, On);

    public static Gap Between(Point one, Point other) => new((other - one).Length, one, other);
}
