namespace Bellowsmith.Kits.Schemas;

/// <summary>Limits no document may set: what they guard breaks a hose, a bellows, a bearing, a thread or a spring.</summary>
internal static class NeverWaived
{
    private const string Reason = "Take it out: this limit can never be waived.";

    /// <summary>Keys that are refused wherever limits or margins are written.</summary>
    public static readonly IReadOnlyDictionary<string, string> Keys =
        ((string[])["slack", "bellowsTouch", "bearingTilt", "springLeastHeight", "threadEngagement", "gaugePressure"]).ToDictionary(key => key, _ => Reason);
}
