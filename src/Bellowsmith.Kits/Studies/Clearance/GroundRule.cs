namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>At which height of the car a rule is meant.</summary>
public enum GroundState { Drive, AiredOut }

/// <summary>What a clearance is counted from: the road, or the rim's lowest point.</summary>
public enum GroundDatum { Road, Rim }

/// <summary>One rule of one market as somebody read it; never asserted as law.</summary>
public sealed record GroundRule(string Market, string Rule, double Clearance_m, GroundDatum Over, GroundState State, string Source, string Read)
{
    /// <summary>Only for parts that give way, which are not measured here.</summary>
    public bool Flexible { get; init; }
}
