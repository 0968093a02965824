using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics.Bellows;

public sealed class CordBellowsTests
{
    private const double Degree = Math.PI / 180;
    private static readonly CordBellows _single = new(1, 0.050, 36 * Degree, 0.168, wallThickness_m: 0.0032);
    private static readonly CordBellows _triple = new(3, 0.044, 38 * Degree, 0.096, 0.047);

    private static readonly Gen<CordBellows> _any = Gen.Select(
        Gen.Int[1, 4], Gen.Double[0, 48], Gen.Double[1.8, 4], Gen.Double[0.9, 1.15], Gen.Double[1, 1.3],
        (convolutions, angle, cord, girdle, plate) =>
            new CordBellows(convolutions, 0.05, angle * Degree, cord * 0.05, girdle * 0.05, 0, plate * 0.05));

    [Theory]
    [InlineData(double.NaN, CordLimit.PlatesMeet)]
    [InlineData(-0.01, CordLimit.PlatesMeet)]
    [InlineData(0, CordLimit.PlatesMeet)]
    [InlineData(0.020, CordLimit.Folded)]
    [InlineData(0.070, CordLimit.None)]
    [InlineData(0.1359, CordLimit.None)] // Straight, the wall is 168 mm · cos 36° = 135.915 mm long.
    [InlineData(0.1360, CordLimit.OverExtended)]
    [InlineData(0.5, CordLimit.OverExtended)]
    public void LimitAt_Height_NamesWhyThereIsNoShape(double height_m, CordLimit limit)
    {
        Assert.Equal(limit, _single.LimitAt(height_m));
        Assert.Equal(limit == CordLimit.None, _single.At(height_m) is not null);
    }

    [Fact]
    public void At_DesignHeight_IsAsWideAsItIsCalled()
    {
        CordShape shape = _single.At(0.070)!.Value;

        Assert.Equal(152, shape.OuterDiameter_m * 1e3, 0.1);
        Assert.Equal(shape.OuterDiameter_m - 0.0032, 2 * shape.CrownRadius_m, 1e-15);
        Assert.True(shape.Overhang_m > 0 && shape.AngleAtPlate_rad > Math.PI / 2);
    }

    [Fact]
    public void CordBellows_TooShortForItsGirdle_HasNoShape()
    {
        CordBellows bellows = new(2, 0.044, 30 * Degree, 0.012, 0.060);

        Assert.True(double.IsNaN(bellows.GreatestHeight_m));
        Assert.Equal(CordLimit.NoShape, bellows.LimitAt(0.01));
        Assert.Null(bellows.At(0.01));
    }

    [Theory]
    [InlineData(0, 0.05, 30, 0.1, 0.05, 0, 0.05)]
    [InlineData(1, 0, 30, 0.1, 0.05, 0, 0.05)]
    [InlineData(1, 0.05, 90, 0.1, 0.05, 0, 0.05)]
    [InlineData(1, 0.05, 30, 0, 0.05, 0, 0.05)]
    [InlineData(2, 0.05, 30, 0.1, 0.101, 0, 0.05)] // Cords lie along the circle at 100 mm.
    [InlineData(1, 0.05, 30, 0.1, 0.05, -0.001, 0.05)]
    [InlineData(1, 0.05, 30, 0.1, 0.05, 0, 0.049)]
    public void Constructor_ImpossibleDimension_Throws(
        int convolutions, double bead_m, double angle, double cord_m, double girdle_m, double wall_m, double plate_m) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => new CordBellows(convolutions, bead_m, angle * Degree, cord_m, girdle_m, wall_m, plate_m));

    [Fact] // Below that the wall hangs so far past its bead that the area may fall again.
    public void At_RisingHeight_NarrowsAndLosesArea() => _any.Sample(bellows =>
    {
        CordShape? before = null;
        for (int i = 1; i < 40; i++)
        {
            double share = i / 40.0;
            CordShape shape = bellows.At(bellows.LeastHeight_m * (1 - share) + bellows.GreatestHeight_m * share)!.Value;
            if (shape.AngleAtPlate_rad > Math.PI / 2) continue;
            Assert.True(before is not { } b
                || (shape.CrownRadius_m < b.CrownRadius_m && shape.EffectiveArea_m2 < b.EffectiveArea_m2));
            before = shape;
        }
    });

    [Fact] // Never another branch: the angle at the plate falls, and with it every height has one shape only.
    public void At_RisingHeight_TurnsTheWallAtThePlateOneWay() => _any.Sample(bellows =>
    {
        double angle = Math.PI, edge = double.PositiveInfinity;
        for (int i = 1; i < 60; i++)
        {
            double share = i / 60.0;
            CordShape shape = bellows.At(bellows.LeastHeight_m * (1 - share) + bellows.GreatestHeight_m * share)!.Value;
            Assert.True(shape.AngleAtPlate_rad <= angle && shape.PlateContactRadius_m <= edge);
            (angle, edge) = (shape.AngleAtPlate_rad, shape.PlateContactRadius_m);
        }
    });

    [Fact]
    public void Sweep_InAnyOrder_IsAtForEach() => Gen.Select(_any, Gen.Double[-0.1, 1.2].Array[1, 60]).Sample((bellows, shares) =>
    {
        double[] heights = [.. shares.Select(s => bellows.LeastHeight_m + s * (bellows.GreatestHeight_m - bellows.LeastHeight_m))];
        CordShape?[] shapes = new CordShape?[heights.Length];

        bellows.Sweep(heights, shapes);

        for (int i = 0; i < heights.Length; i++)
        {
            CordShape? alone = bellows.At(heights[i]);
            Assert.Equal(alone is null, shapes[i] is null);
            if (alone is not { EffectiveArea_m2: > 0 } a) continue; // Towards taut the area, and with it dV, has no bound.
            Assert.Equal(a.Volume_m3, shapes[i]!.Value.Volume_m3, 1e-9 * a.Volume_m3);
            Assert.Equal(a.EffectiveArea_m2, shapes[i]!.Value.EffectiveArea_m2, 1e-8 * Math.PI * bellows.BeadRadius_m * bellows.BeadRadius_m);
        }
    });

    [Fact]
    public void Sweep_ManyHeights_AllocatesNothing()
    {
        double[] heights = [.. Enumerable.Range(0, 200).Select(i => 0.09 + i * 0.0005)];
        CordShape?[] shapes = new CordShape?[heights.Length];
        _triple.Sweep(heights, shapes);

        long before = GC.GetAllocatedBytesForCurrentThread();
        _triple.Sweep(heights, shapes);

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    [Fact]
    public void Sweep_TooLittleRoom_Throws() =>
        Assert.Throws<ArgumentException>(() => _single.Sweep([0.06, 0.07], new CordShape?[1]));

    [Theory]
    [InlineData(1, 0.050, 0.070)]
    [InlineData(1, 0.062, 0.045)]
    [InlineData(2, 0.050, 0.110)]
    [InlineData(3, 0.050, 0.140)]
    public void Wall_OfAShape_RunsFromPlateToPlateAndEnclosesTheVolume(int convolutions, double plate_m, double height_m)
    {
        CordShape shape = new CordBellows(convolutions, 0.050, 36 * Degree, 0.150, 0.052, 0, plate_m).At(height_m)!.Value;

        IReadOnlyList<(double Z_m, double Radius_m)> wall = shape.Wall(400);

        Assert.Equal([(0, 0), (0, 0.050)], wall.Take(2));
        Assert.Equal((0.050, 0), (wall[^2].Radius_m, wall[^1].Radius_m));
        Assert.Equal(height_m, wall[^2].Z_m, 1e-9);
        Assert.Equal(height_m, wall[^1].Z_m, 1e-9);
        Assert.Equal(shape.CrownRadius_m, wall.Max(p => p.Radius_m), 1e-12);
        Assert.Equal(-shape.Overhang_m, Math.Min(0, wall.Min(p => p.Z_m)), 2e-6);
        Assert.Equal(shape.Volume_m3, Enclosed(wall), 1e-4 * shape.Volume_m3);
    }

    [Fact] // A gauge pressure that widens a spring stiffens it: what a designer expects of any convolute.
    public void SealedRate_WhereTheWallStandsClearOfThePlate_IsPositive() => _any.Sample(bellows =>
    {
        const double step = 1e-5;
        for (int i = 1; i < 20; i++)
        {
            double height = bellows.LeastHeight_m + (bellows.GreatestHeight_m - bellows.LeastHeight_m) * i / 20;
            if (bellows.At(height) is not { } shape || shape.AngleAtPlate_rad > Math.PI / 2 || shape.EffectiveArea_m2 <= 0) continue;
            double slope = (bellows.At(height + step)!.Value.EffectiveArea_m2 - bellows.At(height - step)!.Value.EffectiveArea_m2) / (2 * step);
            Assert.True(slope < 0);
        }
    });

    // Frustums between the points, each seen from the axis.
    private static double Enclosed(IReadOnlyList<(double Z_m, double Radius_m)> wall)
    {
        double sum = 0;
        for (int i = 1; i < wall.Count; i++)
        {
            (double a, double b) = (wall[i - 1].Radius_m, wall[i].Radius_m);
            sum += Math.PI / 3 * (a * a + a * b + b * b) * (wall[i].Z_m - wall[i - 1].Z_m);
        }

        return sum;
    }
}
