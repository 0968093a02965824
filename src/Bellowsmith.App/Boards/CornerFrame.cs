using System.Text.Json.Nodes;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>The corner over its bump as a page plays it: m from rest, up +, a hundred times a second.</summary>
public static class CornerFrame
{
    private const int Each = 10;

    public static JsonObject Of(Frame frame, BumpRide ride, double height_m, double? stopLength_m)
    {
        RideTrace trace = ride.Trace;
        return new JsonObject
        {
            ["bump"] = ride.Bump.Shape.ToString(),
            ["perSecond"] = Math.Round(1 / (trace.Step_s * Each)),
            ["speed"] = ride.Speed_m_per_s,
            ["height"] = height_m,
            ["gap"] = ride.StopContact_m,
            ["stop"] = stopLength_m,
            ["road"] = frame.Array(Sampled(ride.Road_m, First)),
            ["body"] = frame.Array(Sampled(trace.Body_m, First)),
            ["wheel"] = frame.Array(Sampled([.. trace.Body_m.Zip(trace.Travel_m, (body, travel) => body + travel)], First)),
            // What happens between two samples has happened.
            ["stopForce"] = frame.Array(Sampled(trace.StopForce_N, Math.Max)),
            ["tyreForce"] = frame.Array(Sampled(trace.TyreForce_N, Math.Min)),
        };
    }

    private static double First(double first, double next) => first;

    private static double[] Sampled(double[] steps, Func<double, double, double> of) => [.. steps.Chunk(Each).Select(chunk => chunk.Aggregate(of))];
}
