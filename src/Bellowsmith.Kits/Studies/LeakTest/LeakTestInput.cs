using Bellowsmith.Kits.Tables;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Studies.LeakTest;

/// <summary>A pressure decay test as written down: two readings, or a log. What is not known is null.</summary>
public sealed record LeakTestInput
{
    public required Quantity Volume { get; init; }

    /// <summary>Null with a log.</summary>
    public Quantity? StartGauge { get; init; }

    public Quantity? EndGauge { get; init; }
    public Quantity? StartTemperature { get; init; }
    public Quantity? EndTemperature { get; init; }

    /// <summary>With a log, the time the limit is for; the log's own where it is null.</summary>
    public Quantity? Time { get; init; }

    public DecayTable? Log { get; init; }

    /// <summary>How long after the first reading of a log its settling ends.</summary>
    public Quantity? Settle { get; init; }

    public double Ambient_Pa { get; init; }

    /// <summary>The ambient pressure as written; null where it was not.</summary>
    public Quantity? Ambient { get; init; }

    /// <summary>At the end, where it was read again.</summary>
    public Quantity? EndAmbient { get; init; }

    public Quantity? ReferenceTemperature { get; init; }

    /// <summary>Greatest corrected loss over the test's time, at the start temperature.</summary>
    public Quantity? Limit { get; init; }

    /// <summary>Standard uncertainties; null where half of the last written digit is to stand for them.</summary>
    public Quantity? GaugeUncertainty { get; init; }

    public Quantity? TemperatureUncertainty { get; init; }
    public Quantity? VolumeUncertainty { get; init; }
    public Quantity? TimeUncertainty { get; init; }

    /// <summary>Standard uncertainty of the volume's change between the readings, as a share of it.</summary>
    public double Creep { get; init; }

    /// <summary>What held the part's height; null where nothing is said.</summary>
    public string? Fixture { get; init; }
}
