namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>
/// The least lean inward that clears: strides inward, each twice the last up to 0.25°, then halves back to within 0.005° of a place that does
/// not clear. What clears over less than a stride may be stepped over.
/// </summary>
internal static class LeastCamber
{
    /// <summary>Strides, rad: the longest, and how near the answer lies to what does not clear.</summary>
    public const double Longest_rad = 0.25 * Math.PI / 180, Close_rad = 0.005 * Math.PI / 180;

    /// <summary>Null where nothing met on the way clears.</summary>
    /// <param name="tooLittle_rad">A camber that does not clear, top out +.</param>
    /// <param name="most_rad">The furthest inward to look, looked at too.</param>
    /// <param name="stride_rad">The first stride.</param>
    /// <param name="clears">Whether a camber does.</param>
    public static double? Of(double tooLittle_rad, double most_rad, double stride_rad, Func<double, bool> clears)
    {
        double? enough = null;
        for (double stride = stride_rad; enough is null && tooLittle_rad > most_rad; stride = Math.Min(2 * stride, Longest_rad))
            Try(Math.Max(tooLittle_rad - stride, most_rad));
        while (enough is { } found && tooLittle_rad - found > Close_rad) Try((tooLittle_rad + found) / 2);
        return enough;

        void Try(double camber)
        {
            if (clears(camber)) enough = camber;
            else tooLittle_rad = camber;
        }
    }
}
