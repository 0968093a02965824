namespace Bellowsmith.App.Boards;

/// <summary>Names of a kit's questions, as page and board call them.</summary>
public static class Questions
{
    public const string Height = "height", Travel = "travel", Damping = "damping", Ride = "ride", Settings = "settings", Geometry = "geometry", Wheel = "wheel", Touch = "touch";
}
