namespace Bellowsmith.Physics;

/// <summary>
/// Road classes of [ISO 8608 2016], from very good to hardly passable. A and B are motorways and good roads, C and D worn or poor ones,
/// E and worse unpaved (common practice; A is representative of motorways [Mucka 2018]).
/// </summary>
public enum RoadClass
{
    A,
    B,
    C,
    D,
    E,
    F,
    G,
    H,
}
