namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>Why a setting cannot be driven, or may not be set: the end of a sentence, and what answers tell it by.</summary>
internal static class NotStanding
{
    public const string OutsideData = "the spring cannot carry the load there within its data";
    public const string OnStop = "the car rests on its stop there";
    public const string ToppedOut = "the strut is topped out there";
    public const string GaugeLimit = "it takes more than the spring's greatest gauge pressure";
    public const string Thread = "the thread does not reach";
}
