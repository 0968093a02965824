using Bellowsmith.Physics.Numerics;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Tests.Physics.Numerics;

/// <summary>Student's t against MathNet's quantile.</summary>
public class StudentTests
{
    [Fact]
    public void TwoSided95_AsTabulated_IsTheQuantile()
    {
        for (int degrees = 1; degrees <= 10; degrees++) Assert.Equal(StudentT.InvCDF(0, 1, degrees, 0.975), Student.TwoSided95(degrees), 6e-4);
    }

    [Fact]
    public void TwoSided95_BeyondTheTable_IsWithinThreeThousandths()
    {
        for (int degrees = 11; degrees <= 400; degrees++) Assert.Equal(StudentT.InvCDF(0, 1, degrees, 0.975), Student.TwoSided95(degrees), 0.003);
    }
}
