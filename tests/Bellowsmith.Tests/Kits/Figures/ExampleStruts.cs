using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Figures;

/// <summary>The struts of the invented workshop's street kit.</summary>
internal static class ExampleStruts
{
    private static readonly Lazy<IReadOnlyList<StrutCase>> _street = new(() =>
        StrutCases.Of(KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")), new StudyConditions(), _ => { }));

    public static StrutCase At(AxleEnd end) => _street.Value.Single(s => s.End == end);
}
