using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// The reference quarter car of road roughness at 80 km/h, one step of 0.25 m [Sayers Gillespie Queiroz 1986], READ in three
/// transcriptions. FLAG: P's first element was printed from single precision, 1.8e-5 off the exact value. FLAG: one public
/// copy has S44 0.4347664 where the others and the exact value have 0.4347564. Modes are DERIVED.
/// </summary>
public sealed class QuarterCarStep
{
    // ks/ms = 63.3, c/ms = 6, kt/ms = 653, mu/ms = 0.15; per kilogram of body.
    private static readonly TwoMass Car = new(1, 0.15, 63.3, 6, 653);
    private static readonly TwoMassStep Step = Car.Step(0.25 / (80 / 3.6));

    [Theory]
    [InlineData(1, 1, 0.9966071)]
    [InlineData(1, 2, 0.01091514)]
    [InlineData(1, 3, -0.002083274)]
    [InlineData(1, 4, 0.0003190145)]
    [InlineData(2, 1, -0.5563044)]
    [InlineData(2, 2, 0.9438768)]
    [InlineData(2, 3, -0.8324718)]
    [InlineData(2, 4, 0.05064701)]
    [InlineData(3, 1, 0.02153176)]
    [InlineData(3, 2, 0.002126763)]
    [InlineData(3, 3, 0.7508714)]
    [InlineData(3, 4, 0.008221888)]
    [InlineData(4, 1, 3.335013)]
    [InlineData(4, 2, 0.3376467)]
    [InlineData(4, 3, -39.12762)]
    [InlineData(4, 4, 0.4347564)] // READ 0.4347664 in one copy
    public void StateTransition_Over250Millimetres_IsTheTable(int row, int column, double published) =>
        Assert.Equal(published, Step.StateTransition[4 * (row - 1) + column - 1], 2e-6 * Math.Abs(published));

    [Theory]
    [InlineData(1, 0.005476107, 1e-3)] // single precision in the source
    [InlineData(2, 1.388776, 1e-5)]
    [InlineData(3, 0.2275968, 1e-5)]
    [InlineData(4, 35.79262, 1e-5)]
    public void HeldRoad_Over250Millimetres_IsTheTable(int row, double published, double relative) =>
        Assert.Equal(published, Step.HeldRoad[row - 1], relative * published);

    [Fact] // DERIVED, to eleven digits
    public void Step_AgainstTheExactDigits_Agrees()
    {
        Assert.Equal(5.4762055866e-3, Step.HeldRoad[0], 1e-12);
        Assert.Equal(0.43475639726, Step.StateTransition[15], 1e-10);
    }

    [Fact]
    public void UndampedFrequencies_OfTheCar_AreDerived()
    {
        Assert.Equal(1.20829, Car.UndampedFrequencies_Hz.Body_Hz, 1e-5);
        Assert.Equal(11.00473, Car.UndampedFrequencies_Hz.Wheel_Hz, 1e-5);
    }

    [Fact]
    public void Modes_OfTheCar_AreDerived()
    {
        var (body, wheel) = Car.Modes;

        Assert.Equal([1.23630, 0.33343, 1.16555], [Rounded(body.NaturalFrequency_Hz), Rounded(body.DampingRatio), Rounded(body.DampedFrequency_Hz!.Value)]);
        Assert.Equal([10.75544, 0.30202, 10.25318], [Rounded(wheel.NaturalFrequency_Hz), Rounded(wheel.DampingRatio), Rounded(wheel.DampedFrequency_Hz!.Value)]);
    }

    private static double Rounded(double value) => Math.Round(value, 5);
}
