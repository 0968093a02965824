using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Bellowsmith.Kits.Answers;

/// <summary>Writes machine answers as JSON: names begin with a small letter, a field without a value is null, never NaN.</summary>
public static class AnswerJson
{
    private static readonly AnswerJsonContext _context = new(new JsonSerializerOptions(AnswerJsonContext.Default.Options)
    {
        // Answers go to terminals and files, never into a page: letters such as ° and ∂ may stand as they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    public static string Write(HeightAnswer answer) => JsonSerializer.Serialize(answer, _context.HeightAnswer);

    public static string Write(TravelAnswer answer) => JsonSerializer.Serialize(answer, _context.TravelAnswer);

    public static string Write(SpringAnswer answer) => JsonSerializer.Serialize(answer, _context.SpringAnswer);

    public static string Write(BellowsAnswer answer) => JsonSerializer.Serialize(answer, _context.BellowsAnswer);

    public static string Write(LinkageAnswer answer) => JsonSerializer.Serialize(answer, _context.LinkageAnswer);

    public static string Write(AlignmentAnswer answer) => JsonSerializer.Serialize(answer, _context.AlignmentAnswer);

    public static string Write(LoweringAnswer answer) => JsonSerializer.Serialize(answer, _context.LoweringAnswer);

    public static string Write(ClearanceAnswer answer) => JsonSerializer.Serialize(answer, _context.ClearanceAnswer);

    public static string Write(WheelAnswer answer) => JsonSerializer.Serialize(answer, _context.WheelAnswer);

    public static string Write(MountAnswer answer) => JsonSerializer.Serialize(answer, _context.MountAnswer);

    public static string Write(DampingAnswer answer) => JsonSerializer.Serialize(answer, _context.DampingAnswer);

    public static string Write(DynoAnswer answer) => JsonSerializer.Serialize(answer, _context.DynoAnswer);

    public static string Write(RideAnswer answer) => JsonSerializer.Serialize(answer, _context.RideAnswer);

    public static string Write(MapAnswer answer) => JsonSerializer.Serialize(answer, _context.MapAnswer);

    public static string Write(SearchAnswer answer) => JsonSerializer.Serialize(answer, _context.SearchAnswer);

    public static string Write(SheetAnswer answer) => JsonSerializer.Serialize(answer, _context.SheetAnswer);

    public static string Write(LeakAnswer answer) => JsonSerializer.Serialize(answer, _context.LeakAnswer);

    public static string Write(PairAnswer answer) => JsonSerializer.Serialize(answer, _context.PairAnswer);

    public static string Write(SerialAnswer answer) => JsonSerializer.Serialize(answer, _context.SerialAnswer);

    public static string Write(CapabilityAnswer answer) => JsonSerializer.Serialize(answer, _context.CapabilityAnswer);

    public static string Write(ClicksAnswer answer) => JsonSerializer.Serialize(answer, _context.ClicksAnswer);

    public static string Write(GaugeAnswer answer) => JsonSerializer.Serialize(answer, _context.GaugeAnswer);

    public static string Write(LifeAnswer answer) => JsonSerializer.Serialize(answer, _context.LifeAnswer);

    public static string Write(LifePlanAnswer answer) => JsonSerializer.Serialize(answer, _context.LifePlanAnswer);

    /// <summary>Faults as an array of { file, where, found, allowed, fix }.</summary>
    public static string Write(IReadOnlyList<Fault> faults) => JsonSerializer.Serialize(faults, _context.IReadOnlyListFault);
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true)]
[JsonSerializable(typeof(HeightAnswer))]
[JsonSerializable(typeof(TravelAnswer))]
[JsonSerializable(typeof(SpringAnswer))]
[JsonSerializable(typeof(BellowsAnswer))]
[JsonSerializable(typeof(LinkageAnswer))]
[JsonSerializable(typeof(AlignmentAnswer))]
[JsonSerializable(typeof(LoweringAnswer))]
[JsonSerializable(typeof(WheelAnswer))]
[JsonSerializable(typeof(ClearanceAnswer))]
[JsonSerializable(typeof(MountAnswer))]
[JsonSerializable(typeof(DampingAnswer))]
[JsonSerializable(typeof(DynoAnswer))]
[JsonSerializable(typeof(RideAnswer))]
[JsonSerializable(typeof(MapAnswer))]
[JsonSerializable(typeof(SearchAnswer))]
[JsonSerializable(typeof(SheetAnswer))]
[JsonSerializable(typeof(LeakAnswer))]
[JsonSerializable(typeof(PairAnswer))]
[JsonSerializable(typeof(SerialAnswer))]
[JsonSerializable(typeof(CapabilityAnswer))]
[JsonSerializable(typeof(ClicksAnswer))]
[JsonSerializable(typeof(GaugeAnswer))]
[JsonSerializable(typeof(LifeAnswer))]
[JsonSerializable(typeof(LifePlanAnswer))]
[JsonSerializable(typeof(IReadOnlyList<Fault>))]
internal sealed partial class AnswerJsonContext : JsonSerializerContext;
