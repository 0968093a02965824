namespace Bellowsmith.Physics.Linkages;

/// <summary>Where the wheel centre is and how the knuckle is turned from rest.</summary>
internal readonly record struct Pose(Point Position, Turn Rotation)
{
    public Pose Moved(in Twist by) => new(Position + by.Velocity, Rotation.Then(by.Spin));
}

/// <summary>Six numbers of a rigid body: velocity of its wheel centre and angular velocity, or small displacements, or accelerations.</summary>
internal readonly record struct Twist(Point Velocity, Point Spin)
{
    // A radian counts as what it moves a third of a metre away.
    private const double Reach_m = 0.3;

    public static Twist operator +(in Twist a, in Twist b) => new(a.Velocity + b.Velocity, a.Spin + b.Spin);

    public static Twist operator *(double s, in Twist a) => new(s * a.Velocity, s * a.Spin);

    public double Size_m => Velocity.Length + Reach_m * Spin.Length;

    public Point Of(Point arm) => Velocity + Spin.Cross(arm);

    public static Twist From(ReadOnlySpan<double> x) => new(new(x[0], x[1], x[2]), new(x[3], x[4], x[5]));
}

/// <summary>A point of the walk: pose and derivatives by travel (first, second) and rack (first).</summary>
internal readonly record struct Place(double Travel_m, double Rack_m, Pose Pose, Twist PerTravel, Twist PerRack, Twist Bend);
