namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>Which wheel fits, and what it takes where it does not.</summary>
public static class WheelFitStudy
{
    public static WheelFitResult Answer(WheelCorner corner, WheelFitQuestion question) => throw new NotImplementedException();
}
