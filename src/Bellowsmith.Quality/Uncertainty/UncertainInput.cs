namespace Bellowsmith.Quality.Uncertainty;

/// <summary>How an input's possible values are spread, for a simulation; first order needs only the standard uncertainty.</summary>
public enum InputShape
{
    /// <summary>Normal with the standard uncertainty as its standard deviation, whatever the degrees of freedom.</summary>
    Normal,

    /// <summary>Anything within limits, each as likely: half-width √3 standard uncertainties.</summary>
    Rectangular,

    /// <summary>Most likely in the middle: half-width √6 standard uncertainties.</summary>
    Triangular,

    /// <summary>U-shaped, as of a temperature that swings: half-width √2 standard uncertainties.</summary>
    Arcsine,

    /// <summary>Student's t of the degrees of freedom, scaled by the standard uncertainty, as of a mean of few readings: wider than normal.</summary>
    StudentT,
}

/// <summary>One input of an uncertainty budget, in its own unit.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Value">Best estimate.</param>
/// <param name="StandardUncertainty">One standard deviation, not negative.</param>
/// <param name="Shape">Its distribution.</param>
/// <param name="Degrees">Degrees of freedom behind the standard uncertainty; infinite where it is known.</param>
public sealed record UncertainInput(
    string Name, double Value, double StandardUncertainty, InputShape Shape = InputShape.Normal, double Degrees = double.PositiveInfinity)
{
    /// <summary>Standard uncertainty of anything within ± a half-width.</summary>
    /// <exception cref="ArgumentException">Student's t has no half-width, a normal none either.</exception>
    public static double FromHalfWidth(double halfWidth, InputShape shape) => shape switch
    {
        InputShape.Rectangular => halfWidth / Math.Sqrt(3),
        InputShape.Triangular => halfWidth / Math.Sqrt(6),
        InputShape.Arcsine => halfWidth / Math.Sqrt(2),
        _ => throw new ArgumentException("It has no half-width.", nameof(shape)),
    };
}

/// <summary>What is measured, from its inputs in the order of the budget.</summary>
/// <param name="inputs">One value each.</param>
public delegate double MeasurementLaw(ReadOnlySpan<double> inputs);
