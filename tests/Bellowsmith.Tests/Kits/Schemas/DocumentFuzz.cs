using System.Collections;
using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Schemas;

[Trait("Kind", "Fuzz")]
public sealed class DocumentFuzz
{
    private static readonly string[] _files = ["kit.json", "car.json", "springs/double.json", "springs/double.csv", "stop.csv"];

    [Fact]
    public void Read_EditedFile_IsAWholeKitOrFaults() => Gen.Select(Gen.OneOf(_files), Mutation.Edits).Sample((file, edits) =>
    {
        using var folder = new SampleFolder();
        folder.Write(file, edits(File.ReadAllText(folder.PathOf(file))));
        CheckWhole(folder);
    }, iter: 200);

    [Fact]
    public void Read_AnyBytes_IsAFault() => Gen.Select(Gen.OneOf(_files), Gen.Byte.Array[0, 100]).Sample((file, bytes) =>
    {
        using var folder = new SampleFolder();
        folder.Write(file, bytes);
        Assert.NotEmpty(folder.Faults());
    }, iter: 200);

    [Fact]
    public void Read_SomeDecimalMarksFlipped_IsTheSameOrFaults() => Mutation.Flips(SampleFolder.Car, ".,").Sample(text =>
    {
        using var folder = new SampleFolder();
        var original = CarReader.Read(folder.PathOf("car.json"));
        folder.Write("car.json", text);
        try
        {
            var car = CarReader.Read(folder.PathOf("car.json"));
            Assert.Equal(original.Loads, car.Loads);
            Assert.Equal(original.Front!.ParasiticRate_N_per_m, car.Front!.ParasiticRate_N_per_m);
            Assert.Equal(original.Rear!.DamperRatio.At(0), car.Rear!.DamperRatio.At(0));
        }
        catch (FaultsException exception)
        {
            Assert.NotEmpty(exception.Faults);
        }
    }, iter: 200);

    /// <summary>What the reader takes the published schema takes too.</summary>
    [Fact]
    public void Read_EditedKitThatIsSound_IsAcceptedByTheSchema() => Mutation.Edits.Sample(edits =>
    {
        using var folder = new SampleFolder();
        folder.Write("kit.json", edits(SampleFolder.Kit));
        if (CheckWhole(folder)) Assert.True(SchemaTests.Validator.Accepts("kit", File.ReadAllText(folder.PathOf("kit.json"))));
    }, iter: 200);

    [Fact]
    public void WithValue_EditedKit_ChangesOneValueOnly() => Gen.Select(Mutation.Edits, Gen.OneOf("name", "struts.front.thread.pitch", "struts.rear")).Sample((edits, path) =>
    {
        var bytes = Encoding.UTF8.GetBytes(edits(SampleFolder.Kit));
        if (JsonSource.Parse(bytes, "/k.json", []) is not { } source || !Has(source, path)) return;
        var changed = source.WithValue(path, "\"@@@\"");
        Assert.NotNull(JsonSource.Parse(changed, "/k.json", []));
        var (before, after) = (Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(changed));
        var at = after.IndexOf("\"@@@\"", StringComparison.Ordinal);
        Assert.StartsWith(after[..at], before, StringComparison.Ordinal);
        Assert.EndsWith(after[(at + 5)..], before, StringComparison.Ordinal);
    }, iter: 2_000);

    private static bool Has(JsonSource source, string path)
    {
        Node? node = source.Root;
        foreach (var step in path.Split('.'))
            node = node?.Members.Where(member => member.Name == step).Select(member => member.Value).FirstOrDefault();
        return node is not null;
    }

    private static bool CheckWhole(SampleFolder folder)
    {
        try
        {
            AssertFinite(KitReader.Read(folder.PathOf("kit.json")));
            return true;
        }
        catch (FaultsException exception)
        {
            Assert.NotEmpty(exception.Faults);
            return false;
        }
    }

    private static void AssertFinite(object? part)
    {
        if (part is double number) Assert.True(double.IsFinite(number));
        if (part is null or string or MotionRatio or FileBytes || part.GetType().IsPrimitive || part.GetType().IsEnum) return;
        if (part is IEnumerable list) foreach (var item in list) AssertFinite(item);
        else foreach (var property in part.GetType().GetProperties()) AssertFinite(property.GetValue(part));
    }
}
