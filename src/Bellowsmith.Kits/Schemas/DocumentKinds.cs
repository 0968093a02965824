namespace Bellowsmith.Kits.Schemas;

/// <summary>Every kind of document there is.</summary>
internal static class DocumentKinds
{
    public static readonly IReadOnlyList<DocumentKind> All =
    [
        CarFields.Kind, AirSpringFields.Kind, DamperFields.Kind, KitFields.Kind, MouldFields.Kind, SuspensionFields.Kind,
    ];
}
