using System.CommandLine;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Commands;

/// <summary>What a ride may have set otherwise than the kit says.</summary>
internal sealed class SettingOptions
{
    private readonly Option<double?> _click = new("--click") { Description = "Damper click, counted from fully closed.", HelpName = "number" };
    private readonly Option<Quantity?> _height = QuantityOption.Create("--height", "Spring height at drive, set by the thread", "80 mm", Dimension.Length);
    private readonly Option<Quantity?> _gauge = QuantityOption.Create("--gauge-pressure", "Gauge pressure at load, with the thread left alone", "60 psi", Dimension.GaugePressure);
    private readonly Option<Quantity?> _stop = QuantityOption.Create(
        "--stop", "Free length of the bump stop", "35 mm", Dimension.Length, QuantityOption.Within(1e-3, 1, "between 1 and 1000 mm"));

    public SettingOptions(Command command)
    {
        foreach (Option option in new Option[] { _click, _height, _gauge, _stop }) command.Add(option);
    }

    public RideSetting Setting(ParseResult parsed) =>
        new(parsed.GetValue(_height)?.Si, parsed.GetValue(_gauge)?.Si, parsed.GetValue(_click), parsed.GetValue(_stop)?.Si);
}
