namespace Bellowsmith.Physics;

/// <summary>
/// A slotted clamp drawn round a tube, as a knuckle holds a damper's body. How the pressure spreads is not known, so there are two ends:
/// a stiff clamp touches along two lines with the bolts' force and holds least; a slack band carries the bolts' force all
/// round, presses evenly with p·D·l = 2F and holds most, π times as much. Equilibrium of either (derived, no source); a clamp that is stiff
/// and loose on its tube holds less still. Nothing is added for a pin or a shoulder.
/// </summary>
/// <param name="Diameter_m">D of the tube.</param>
/// <param name="BoltForce_N">F of all bolts across the slot together.</param>
/// <param name="Friction">μ between clamp and tube.</param>
public sealed record TubeClamp(double Diameter_m, double BoltForce_N, double Friction)
{
    /// <summary>Along the tube, before it slips: 2·μ·F.</summary>
    public double LeastAxial_N => 2 * Friction * BoltForce_N;

    /// <summary>2π·μ·F.</summary>
    public double GreatestAxial_N => Math.PI * LeastAxial_N;

    /// <summary>About the tube: μ·F·D.</summary>
    public double LeastTorque_Nm => LeastAxial_N * Diameter_m / 2;

    /// <summary>π·μ·F·D.</summary>
    public double GreatestTorque_Nm => GreatestAxial_N * Diameter_m / 2;

    /// <summary>Share of the least it holds that force and torque together ask for; at 1 it may slip. Friction points one way only.</summary>
    public double Asked(double axial_N, double torque_Nm) =>
        Math.Sqrt(axial_N * axial_N + 4 * torque_Nm * torque_Nm / (Diameter_m * Diameter_m)) / LeastAxial_N;
}
