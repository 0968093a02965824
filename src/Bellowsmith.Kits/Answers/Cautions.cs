namespace Bellowsmith.Kits.Answers;

/// <summary>Short words where the hazard is. They defer to local codes, the part makers' limits and licensed practice.</summary>
public static class Cautions
{
    public const string CompressedAir =
        "Compressed air stores energy: keep to the spring maker's greatest gauge pressure, never inflate a spring whose length nothing holds, stand clear of fittings.";

    public const string RaisedCar =
        "A car on air can drop: support it on stands at its jacking points, air let out, before anything is reached under it.";

    public const string AiredOut = "Do not drive aired out or fully lifted: stops, shafts and tyres are then at their ends.";

    public const string DriveTest =
        "Drive tests belong off public roads, with the strut's clearances checked first; a corner on paper has no roll, pitch, brakes or kerbs.";

    public const string Local = "Local codes, the part makers' limits and licensed practice come first; what stands here is a calculation, not an approval.";
}
