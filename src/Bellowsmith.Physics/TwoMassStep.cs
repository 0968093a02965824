using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// One exact step of a linear corner over a road that is straight between its two ends. The state is (body height, body
/// velocity, wheel height, wheel velocity), about rest, up +:
/// <c>state' = S·state + P·roadFrom + R·(roadTo − roadFrom)</c>.
/// <para>
/// S and P are the S and P of [Sayers Gillespie Queiroz 1986]: where the same step is fed with a road slope held constant
/// over it, the state is the four derivatives, which obey the same equations. S, P and R come out of one exponential of the
/// equations with the road's height and its change per step as two further states (exact but for rounding).
/// </para>
/// </summary>
public sealed class TwoMassStep
{
    private const int States = 4, Size = States + 2;

    private readonly double[] _state = new double[States * States], _held = new double[States], _ramp = new double[States];

    internal TwoMassStep(TwoMass corner, double step_s)
    {
        double body = corner.SprungMass_kg, wheel = corner.UnsprungMass_kg, k = corner.WheelRate_N_per_m,
            c = corner.WheelDamping_N_s_per_m, tyre = corner.TyreRate_N_per_m, h = step_s;
        double[] whole = MatrixExponential.Of(
        [
            0, h, 0, 0, 0, 0,
            -k / body * h, -c / body * h, k / body * h, c / body * h, 0, 0,
            0, 0, 0, h, 0, 0,
            k / wheel * h, c / wheel * h, -(k + tyre) / wheel * h, -c / wheel * h, tyre / wheel * h, 0,
            0, 0, 0, 0, 0, 1,
            0, 0, 0, 0, 0, 0,
        ], Size);
        for (int i = 0; i < States; i++)
        {
            whole.AsSpan(i * Size, States).CopyTo(_state.AsSpan(i * States));
            (_held[i], _ramp[i]) = (whole[i * Size + States], whole[i * Size + States + 1]);
        }
    }

    /// <summary>S, 4 × 4, row by row.</summary>
    public ReadOnlySpan<double> StateTransition => _state;

    /// <summary>P: what a road held at height 1 over the step adds.</summary>
    public ReadOnlySpan<double> HeldRoad => _held;

    /// <summary>R: what a road that rises by 1 over the step, evenly from 0, adds.</summary>
    public ReadOnlySpan<double> RampedRoad => _ramp;

    /// <summary>Moves the state (body height m, body velocity m/s, wheel height m, wheel velocity m/s) one step on.</summary>
    public void Advance(Span<double> state, double roadFrom_m, double roadTo_m)
    {
        double x = state[0], v = state[1], y = state[2], w = state[3], change = roadTo_m - roadFrom_m;
        for (int i = 0; i < States; i++)
            state[i] = _state[4 * i] * x + _state[4 * i + 1] * v + _state[4 * i + 2] * y + _state[4 * i + 3] * w
                + _held[i] * roadFrom_m + _ramp[i] * change;
    }
}
