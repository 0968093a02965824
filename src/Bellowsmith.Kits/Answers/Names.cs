using Bellowsmith.Kits.Studies;

namespace Bellowsmith.Kits.Answers;

/// <summary>What answers call things.</summary>
public static class Names
{
    public static string Of(AxleEnd end) => end == AxleEnd.Front ? "front" : "rear";

    public static string Of(ExponentSource source) => source switch
    {
        ExponentSource.Document => "document",
        ExponentSource.SealedFastRows => "sealed fast rows",
        _ => "in-service default",
    };
}
