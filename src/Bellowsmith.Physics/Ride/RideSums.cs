using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>What has been summed, counted and found greatest so far, lane by lane.</summary>
internal struct RideSums<T>
    where T : struct, ILane<T>
{
    private const double Far = 1e6;

    public T Square, WeightedSquare, WeightedFourth, PeakSquare, Travel, TravelSquare, Tyre, TyreSquare, Lifted;
    public T LeastTravel, GreatestTravel, LeastVelocity, GreatestVelocity, PeakStop;

    /// <summary>The running r.m.s.: squares of this block, of the last second, and the most of any second.</summary>
    public T Block, Window, GreatestWindow;

    /// <summary>Stop contacts, and the least travel since the last one.</summary>
    public T Contacts, SinceContact;

    public static RideSums<T> None => new()
    {
        LeastTravel = T.All(Far),
        GreatestTravel = T.All(-Far),
        LeastVelocity = T.All(Far),
        GreatestVelocity = T.All(-Far),
        SinceContact = T.All(Far),
    };

    /// <summary>Sets the least travel far above every clearance again, where a lane is 1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Forget(T touching, T least) => T.MultiplyAdd(touching, T.All(Far), least);
}
