using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Clearance;

/// <summary>The demo's front corner, and the same with something changed.</summary>
internal static class Corners
{
    private static readonly Kit _street = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")) with { Rear = null };

    public static readonly ClearanceCase Front = ClearanceCase.Of(_street, new())[0];

    public static readonly ClearanceQuestion Gaps = new() { WithChanges = false };

    public static ClearanceCase With(Func<StrutDesign, StrutDesign> change) => ClearanceCase.Of(_street with { Front = change(_street.Front!) }, new())[0];

    public static ClearanceCase With(Func<SuspensionPart, SuspensionPart> change) => WithAxle(axle => axle with { Suspension = change(axle.Suspension!) });

    public static ClearanceCase WithAxle(Func<Axle, Axle> change) => ClearanceCase.Of(_street with { Car = _street.Car with { Front = change(_street.Car.Front!) } }, new())[0];
}
