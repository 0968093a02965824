using System.Text.Json.Nodes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>A wheel as one writes it.</summary>
internal sealed class WheelShape : Shape
{
    public override string Allowed => $"a wheel such as \"{WheelText.WheelExample}\"";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Text || WheelText.Wheel(place.Node.Text) is null) place.Report(Allowed, WheelText.WheelFix(place.Node.Text));
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["description"] = WheelText.WheelMeaning };
}

/// <summary>A tyre's section and the rim it was measured on.</summary>
internal sealed class SectionShape : Shape
{
    public override string Allowed => $"a section such as \"{WheelText.SectionExample}\"";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Text || WheelText.Section(place.Node.Text) is null) place.Report(Allowed, $"Write it as \"{WheelText.SectionExample}\".");
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["description"] = $"Such as \"{WheelText.SectionExample}\"." };
}
