namespace Bellowsmith.Physics;

/// <summary>
/// What people in public transport are likely to say of a weighted r.m.s. acceleration [ISO 2631-1 1997, annex C], from memory but for
/// 0.315 and 0.63. The bands overlap: a value inside two of them has two words, and neither is wrong.
/// </summary>
/// <param name="Words">As in "fairly uncomfortable".</param>
/// <param name="Least_m_per_s2">Lower end, belonging to it.</param>
/// <param name="Greatest_m_per_s2">Upper end, belonging to it; null for the last.</param>
public sealed record ComfortReaction(string Words, double Least_m_per_s2, double? Greatest_m_per_s2)
{
    /// <summary>All of them, from the mildest.</summary>
    public static IReadOnlyList<ComfortReaction> All { get; } =
    [
        new("not uncomfortable", 0, 0.315),
        new("a little uncomfortable", 0.315, 0.63),
        new("fairly uncomfortable", 0.5, 1),
        new("uncomfortable", 0.8, 1.6),
        new("very uncomfortable", 1.25, 2.5),
        new("extremely uncomfortable", 2, null),
    ];

    /// <summary>One or two reactions to a value, the milder first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not a number.</exception>
    public static IReadOnlyList<ComfortReaction> To(double weightedRms_m_per_s2)
    {
        if (!(weightedRms_m_per_s2 >= 0)) throw new ArgumentOutOfRangeException(nameof(weightedRms_m_per_s2), weightedRms_m_per_s2, "0 or more.");
        return [.. All.Where(reaction => reaction.Holds(weightedRms_m_per_s2))];
    }

    private bool Holds(double value) => value >= Least_m_per_s2 && !(value > Greatest_m_per_s2);
}
