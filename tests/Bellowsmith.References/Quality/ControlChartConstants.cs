using Bellowsmith.Quality.Charts;

namespace Bellowsmith.References.Quality;

/// <summary>
/// The factors of control charts as textbooks print them to six digits (recomputed by numerical integration); the three or four
/// digits of printed tables agree [NIST Handbook 2012, sec. 6.3.2]. Published errors: every printed table gives D4 of 3 as 2.574,
/// but 2.574591 rounds to 2.575; one public table gives D4 of 11 as 1.774 where 1.744 is right.
/// </summary>
public sealed class ControlChartConstants
{
    // n, d2, d3, c4, A2, A3, D3, D4, B3, B4
    public static TheoryData<int, double[]> Sizes => new()
    {
        { 2, [1.128379, 0.852502, 0.797885, 1.879971, 2.658681, 0, 3.266532, 0, 3.266532] },
        { 3, [1.692569, 0.888368, 0.886227, 1.023327, 1.954410, 0, 2.574591, 0, 2.568170] },
        { 4, [2.058751, 0.879808, 0.921318, 0.728597, 1.628103, 0, 2.282052, 0, 2.266047] },
        { 5, [2.325929, 0.864082, 0.939986, 0.576819, 1.427299, 0, 2.114499, 0, 2.088998] },
        { 6, [2.534413, 0.848040, 0.951533, 0.483246, 1.287128, 0, 2.003830, 0.030363, 1.969637] },
        { 7, [2.704357, 0.833205, 0.959369, 0.419284, 1.181916, 0.075708, 1.924292, 0.117685, 1.882315] },
        { 8, [2.847201, 0.819831, 0.965030, 0.372527, 1.099095, 0.136171, 1.863829, 0.185090, 1.814910] },
        { 9, [2.970026, 0.807834, 0.969311, 0.336697, 1.031661, 0.184013, 1.815987, 0.239133, 1.760867] },
        { 10, [3.077505, 0.797051, 0.972659, 0.308264, 0.975350, 0.223023, 1.776977, 0.283706, 1.716294] },
        { 11, [3.172873, 0.787315, 0.975350, 0.285084, 0.927394, 0.255582, 1.744418, 0.321280, 1.678720] },
        { 12, [3.258455, 0.778478, 0.977559, 0.265778, 0.885906, 0.283269, 1.716731, 0.353512, 1.646488] },
        { 13, [3.335980, 0.770416, 0.979406, 0.249417, 0.849546, 0.307176, 1.692824, 0.381556, 1.618444] },
        { 14, [3.406763, 0.763023, 0.980971, 0.235351, 0.817336, 0.328081, 1.671919, 0.406245, 1.593755] },
        { 15, [3.471827, 0.756211, 0.982316, 0.223109, 0.788541, 0.346559, 1.653441, 0.428200, 1.571800] },
        { 20, [3.734950, 0.728686, 0.986934, 0.179606, 0.679701, 0.414702, 1.585298, 0.510231, 1.489769] },
        { 25, [3.930629, 0.708441, 0.989640, 0.152647, 0.606281, 0.459292, 1.540708, 0.564786, 1.435214] },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Of_ASize_IsThePrinted(int size, double[] printed)
    {
        ChartConstants c = ChartConstants.Of(size);

        double[] computed = [c.RangeMean, c.RangeDeviation, c.DeviationMean, c.A2, c.A3, c.D3, c.D4, c.B3, c.B4];
        Assert.All(computed.Zip(printed), pair => Assert.Equal(pair.Second, pair.First, 1.1e-6));
    }

    [Fact] // 2/√π, √(2 − 4/π), 3/√π
    public void Of_TwoAndThree_AreTheClosedForms()
    {
        Assert.Equal(1.1283791670955126, ChartConstants.Of(2).RangeMean, 1e-10);
        Assert.Equal(0.8525024664274213, ChartConstants.Of(2).RangeDeviation, 1e-10);
        Assert.Equal(1.6925687506432689, ChartConstants.Of(3).RangeMean, 1e-10);
    }
}
