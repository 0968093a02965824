using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Schemas;

/// <summary>A shelf is what lies in its folders and can be used; what cannot is left out by name.</summary>
public sealed class ShelfReaderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("shelf").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void FoldersOf_TheDemo_AreThoseOfItsSpringsAndDampers() =>
        Assert.Equal(
            [ExampleFolder.PathOf("dampers"), ExampleFolder.PathOf("springs")],
            ShelfReader.FoldersOf(KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"))).Order());

    [Fact]
    public void Read_TheDemosFolders_HasEveryPart()
    {
        Shelf shelf = ShelfReader.Read([ExampleFolder.PathOf("springs"), ExampleFolder.PathOf("dampers"), ExampleFolder.PathOf("cars")]);

        Assert.Equal(["Double 146", "Single 140", "Single 152"], shelf.Springs.Select(s => s.Name));
        Assert.Equal(["Front street", "Rear street"], shelf.Dampers.Select(d => d.Name));
        Assert.Empty(shelf.LeftOut);
    }

    [Fact]
    public void Read_FaultyDocuments_AreLeftOutByName()
    {
        foreach (string file in Directory.GetFiles(ExampleFolder.PathOf("springs")).Concat(Directory.GetFiles(ExampleFolder.PathOf("dampers"))))
            File.Copy(file, Path.Combine(_folder, Path.GetFileName(file)));
        Directory.CreateDirectory(Path.Combine(_folder, "moulds"));
        Rewrite("single-152.json", "\"../moulds/single-152.json\"", "\"nowhere.json\"");
        Rewrite("single-140.json", "\"mould\": \"../moulds/single-140.json\",", "");
        Rewrite("double-146.json", "\"mould\": \"../moulds/double-146.json\",", "\"colour\": \"black\",");
        Rewrite("rear-street.json", "\"dyno\": \"rear-street.csv\",", "");
        File.WriteAllText(Path.Combine(_folder, "torn.json"), "{ \"bellowsmith\": ");
        File.WriteAllText(Path.Combine(_folder, "rate.json"), "{ \"bellowsmith\": \"air-spring/1\", \"rate\": \"20 N/mm\" }");
        File.WriteAllText(Path.Combine(_folder, "other.json"), "[1, 2]");

        Shelf shelf = ShelfReader.Read([_folder]);

        Assert.Equal(["Single 140"], shelf.Springs.Select(s => s.Name));
        Assert.Equal(["Front street"], shelf.Dampers.Select(d => d.Name));
        Assert.Equal(["double-146.json", "rear-street.json", "single-152.json", "torn.json"], shelf.LeftOut.Select(d => Path.GetFileName(d.File)));
        Assert.All(shelf.LeftOut, d => Assert.NotEmpty(d.Faults));
    }

    [Fact]
    public void Read_AFolderThatDoesNotExist_IsAFault()
    {
        FaultsException faulty = Assert.Throws<FaultsException>(() => ShelfReader.Read([_folder, "nowhere", "nothing"]));

        Assert.Equal(["nowhere", "nothing"], faulty.Faults.Select(f => f.File));
    }

    private void Rewrite(string file, string from, string to)
    {
        string path = Path.Combine(_folder, file), text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }
}
