using Bellowsmith.Quality.Calibration;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Certified regressions [NIST StRD 1998]: Norris (ozone monitor), Pontius (load cell, quadratic), NoInt1 and NoInt2 (through
/// the origin, R² about zero), Wampler1 (fifth degree, every coefficient 1); with the load cell's inverse prediction and the
/// linewidth calibration with its check standards [NIST Handbook 2012, 2.3.6, 2.3.7 and 4.6.1]. The handbook's straight line
/// through the load cell carries single-precision errors from its sixth digit, so it is held to 1e-5. Its 0.062036 as the
/// deviation of the check values is the residual deviation of another fit; 0.119 on the next page is what its data give.
/// </summary>
public sealed class CalibrationCurves
{
    private static readonly double[] _norrisY =
    [
        0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
        0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
        0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
    ];

    private static readonly double[] _norrisX =
    [
        0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
        0.6, 775.5, 666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
        0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
    ];

    private static readonly double[] _loads = [.. Enumerable.Range(0, 40).Select(i => 150000.0 * (i % 20 + 1))];

    private static readonly double[] _deflections =
    [
        0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146,
        1.20001, 1.30822, 1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844,
        0.11052, 0.22018, 0.32939, 0.43886, 0.54798, 0.65739, 0.76596, 0.87474, 0.98300, 1.09150,
        1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829,
    ];

    private static readonly double[] _linewidths = [.. Enumerable.Range(0, 4).SelectMany(_ =>
        (double[])[6.19, 9.17, 1.99, 7.77, 4, 10.77, 4.78, 2.99, 6.98, 9.98])];

    private static readonly double[] _linewidthReadings =
    [
        6.31, 9.27, 2.21, 8, 4.27, 10.93, 4.95, 3.24, 7.14, 10.23,
        6.27, 9.21, 2.19, 7.81, 4.15, 10.73, 4.87, 3.17, 7.07, 10.02,
        6.31, 9.34, 2.22, 7.95, 4.15, 10.92, 5, 3.21, 7.18, 10.07,
        6.28, 9.23, 2.2, 7.84, 4.15, 10.89, 5, 3.21, 7.2, 10.17,
    ];

    private static readonly double[] _checkReadings =
        [1.12, 3.49, 9.11, 0.99, 3.53, 8.89, 1.05, 3.46, 9.02, 0.76, 3.75, 9.30, 0.96, 3.53, 9.05, 1.03, 3.52, 9.02];

    private static readonly PolynomialFit
        _norris = PolynomialFit.Of(_norrisX, _norrisY, 1)!,
        _pontius = PolynomialFit.Of(_loads, _deflections, 2)!,
        _line = PolynomialFit.Of(_loads, _deflections, 1)!,
        _noInt1 = PolynomialFit.Of(Count(60, 11), Count(130, 11), 1, throughOrigin: true)!,
        _noInt2 = PolynomialFit.Of([4, 5, 6], [3, 4, 4], 1, throughOrigin: true)!,
        _linewidth = PolynomialFit.Of(_linewidths, _linewidthReadings, 1)!;

    public static TheoryData<string, double?, double, double> Fits => new()
    {
        { "Norris b0", _norris.Coefficients[0], -0.262323073774029, 1e-10 },
        { "Norris s(b0)", _norris.StandardError(0), 0.232818234301152, 1e-10 },
        { "Norris b1", _norris.Coefficients[1], 1.00211681802045, 1e-12 },
        { "Norris s(b1)", _norris.StandardError(1), 0.429796848199937e-3, 1e-10 },
        { "Norris s", _norris.ResidualDeviation, 0.884796396144373, 1e-10 },
        { "Norris R²", _norris.RSquared, 0.999993745883712, 1e-12 },
        { "Norris F", _norris.F, 5436385.54079785, 1e-10 },
        { "Pontius b0", _pontius.Coefficients[0], 0.673565789473684e-3, 1e-9 },
        { "Pontius s(b0)", _pontius.StandardError(0), 0.107938612033077e-3, 1e-9 },
        { "Pontius b1", _pontius.Coefficients[1], 0.732059160401003e-6, 1e-9 },
        { "Pontius s(b1)", _pontius.StandardError(1), 0.157817399981659e-9, 1e-9 },
        { "Pontius b2", _pontius.Coefficients[2], -0.316081871345029e-14, 1e-9 },
        { "Pontius s(b2)", _pontius.StandardError(2), 0.486652849992036e-16, 1e-9 },
        { "Pontius s", _pontius.ResidualDeviation, 0.205177424076185e-3, 1e-9 },
        { "Pontius R²", _pontius.RSquared, 0.999999900178537, 1e-12 },
        { "load cell line b0", _line.Coefficients[0], 0.00614968421053, 1e-11 },
        { "load cell line s", _line.ResidualDeviation, 0.00217127259606, 1e-11 },
        { "load cell line b0, printed", _line.Coefficients[0], 0.614969e-2, 1e-5 },
        { "load cell line b1, printed", _line.Coefficients[1], 0.722103e-6, 1e-5 },
        { "load cell line s, printed", _line.ResidualDeviation, 0.0021712694, 1e-5 },
        { "NoInt1 b1", _noInt1.Coefficients[1], 2.07438016528926, 1e-13 },
        { "NoInt1 s(b1)", _noInt1.StandardError(1), 0.0165289256198347, 1e-12 },
        { "NoInt1 s", _noInt1.ResidualDeviation, 3.56753034006338, 1e-12 },
        { "NoInt1 R²", _noInt1.RSquared, 0.999365492298663, 1e-13 },
        { "NoInt2 b1", _noInt2.Coefficients[1], 0.727272727272727, 1e-13 },
        { "NoInt2 s(b1)", _noInt2.StandardError(1), 0.0420827318078432, 1e-12 },
        { "NoInt2 s", _noInt2.ResidualDeviation, 0.369274472937998, 1e-12 },
        { "NoInt2 R²", _noInt2.RSquared, 0.993348115299335, 1e-13 },
        { "linewidth a", _linewidth.Coefficients[0], 0.2357622903, 1e-8 },
        { "linewidth b", _linewidth.Coefficients[1], 0.9870377143, 1e-8 },
        { "linewidth s", _linewidth.ResidualDeviation, 0.0620319594, 1e-8 },
        { "linewidth s(a)", _linewidth.StandardError(0), 0.02430034, 5e-7 },
        { "linewidth s(b)", _linewidth.StandardError(1), 0.00344058, 2e-6 },
        { "linewidth cov(a, a)", _linewidth.Covariance(0, 0), 5.905067e-4, 1e-7 },
        { "linewidth cov(a, b)", _linewidth.Covariance(0, 1), -7.649453e-5, 1e-7 },
        { "linewidth cov(b, b)", _linewidth.Covariance(1, 1), 1.183759e-5, 5e-7 },
    };

    [Theory]
    [MemberData(nameof(Fits))]
    public void Fit_OfACertifiedSet_IsTheCertified(string what, double? answer, double published, double relative) =>
        Assert.True(Math.Abs(answer!.Value - published) <= relative * Math.Abs(published), $"{what}: {answer:R} for {published:R}");

    [Fact]
    public void Fit_OfWampler1_HasEveryCoefficientOne()
    {
        double[] x = Count(0, 21), y = [.. x.Select(v => 1 + v * (1 + v * (1 + v * (1 + v * (1 + v)))))];

        PolynomialFit fit = PolynomialFit.Of(x, y, 5)!;

        Assert.All(fit.Coefficients, b => Assert.Equal(1, b, 1e-8));
        Assert.Equal(0, fit.ResidualDeviation!.Value, 1e-8);
    }

    [Fact]
    public void LackOfFit_OfTheLoadCell_RejectsTheLineAndKeepsTheQuadratic()
    {
        CalibrationCurve curve = CalibrationCurve.Of(_loads, _deflections)!;

        Assert.Equal(214.746924, curve.LineMisfit!.Misfit.F!.Value, 1e-5);
        Assert.Equal(214.7464, curve.LineMisfit.Misfit.F!.Value, 1e-5 * 214.7464);
        Assert.Equal((18, 20), (curve.LineMisfit.Misfit.Degrees, curve.LineMisfit.Repeats.Degrees));
        Assert.Equal(0.810724, curve.QuadraticMisfit!.Misfit.F!.Value, 1e-5);
        Assert.Equal(0.666173, curve.QuadraticMisfit.Misfit.P!.Value, 1e-5);
        Assert.Equal((CurveChoice.LineMissesRepeats, 2), (curve.Choice, curve.Degree));
    }

    [Fact]
    public void Inverse_OfTheLoadCell_IsThePublishedLoadAndInterval()
    {
        InverseReading load = InverseReading.Of(CalibrationCurve.Of(_loads, _deflections)!, 1.239722);

        Assert.Equal(1705105.5689, load.Value!.Value, 1e-3);
        Assert.Equal(1704513.373, load.Low!.Value, 1e-2);
        Assert.Equal(1705697.764, load.High!.Value, 1e-2);
        Assert.Equal(1705106, load.Value!.Value, 0.5);
        Assert.Equal(1704513, load.Low!.Value, 0.5);
        Assert.Equal(1705698, load.High!.Value, 0.5);
        Assert.Equal(229899180, load.RejectedRoot!.Value, 0.5);
    }

    [Fact]
    public void Control_OfTheLinewidths_HasThePublishedDeviation()
    {
        double[] days = [.. Enumerable.Range(0, 18).Select(i => i / 3 + 1.0)], references = [.. days.Select((_, i) => (double[])[0.76, 3.29, 8.89]).SelectMany(r => r).Take(18)];

        CalibrationControl control = CalibrationControl.Of(CalibrationCurve.Of(_linewidths, _linewidthReadings, 1)!, days, references, _checkReadings);

        Assert.Equal(0.1193310858, control.Deviation, 1e-7);
    }

    private static double[] Count(int from, int count) => [.. Enumerable.Range(from, count).Select(i => (double)i)];
}
