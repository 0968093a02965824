namespace Bellowsmith.Quality.Uncertainty;

/// <summary>
/// A law's derivatives at the estimates by central differences over one standard uncertainty, each already times its inputs'
/// standard uncertainties, so that all are in the result's unit. The first is carried on to half the step [Richardson 1911]:
/// exact for laws of the fourth degree.
/// </summary>
internal sealed class Differences
{
    private const double RoundingUnit = 2.2e-16;

    private readonly MeasurementLaw _law;
    private readonly IReadOnlyList<UncertainInput> _inputs;
    private readonly double[] _at;

    public Differences(MeasurementLaw law, IReadOnlyList<UncertainInput> inputs)
    {
        (_law, _inputs) = (law, inputs);
        _at = [.. inputs.Select(input => input.Value)];
        Value = law(_at);
    }

    public double Value { get; }

    private double Rounding => 4 * RoundingUnit * Math.Abs(Value);

    /// <summary>u·∂f/∂x and a bound of its error; a change that rounding alone can make is none.</summary>
    public (double Change, double Error) First(int i)
    {
        if (_inputs[i].StandardUncertainty == 0) return (0, 0);
        double whole = (At(i, 1) - At(i, -1)) / 2, half = At(i, 0.5) - At(i, -0.5);
        double change = (4 * half - whole) / 3;
        return (Math.Abs(change) <= Rounding ? 0 : change, Math.Abs(half - whole) / 3 + Rounding);
    }

    /// <summary><c>½(uᵢuⱼ ∂²f/∂xᵢ∂xⱼ)² + uᵢ²uⱼ² ∂f/∂xᵢ·∂³f/∂xᵢ∂xⱼ²</c>.</summary>
    public double Second(int i, int j)
    {
        double mixed, third;
        if (i == j)
        {
            mixed = At(i, 1) - 2 * Value + At(i, -1);
            third = (At(i, 2) - 2 * At(i, 1) + 2 * At(i, -1) - At(i, -2)) / 2;
        }
        else
        {
            double right = At(i, 1, j, 1) - At(i, -1, j, 1), left = At(i, 1, j, -1) - At(i, -1, j, -1);
            mixed = (right - left) / 4;
            third = (right - 2 * (At(i, 1) - At(i, -1)) + left) / 2;
        }

        return 0.5 * Significant(mixed) * Significant(mixed) + First(i).Change * Significant(third);
    }

    public Contribution Contribution(int i)
    {
        UncertainInput input = _inputs[i];
        if (input.StandardUncertainty == 0) return new(input, null, 0, 0, false);
        (double change, double error) = First(i);
        bool hidden = change == 0 && Enumerable.Range(0, _inputs.Count).Any(j => _inputs[j].StandardUncertainty > 0 && Second(i, j) > 0);
        return new(input, change / input.StandardUncertainty, error / input.StandardUncertainty, Math.Abs(change), hidden);
    }

    private double Significant(double change) => Math.Abs(change) <= 2 * Rounding ? 0 : change;

    private double At(int i, double steps) => At(i, steps, i, 0);

    private double At(int i, double steps, int j, double otherSteps)
    {
        double[] at = [.. _at];
        at[i] += steps * _inputs[i].StandardUncertainty;
        at[j] += otherSteps * _inputs[j].StandardUncertainty;
        return _law(at);
    }
}
