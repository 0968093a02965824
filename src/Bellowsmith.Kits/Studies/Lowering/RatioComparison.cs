using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

/// <summary>
/// A motion ratio measured on the car beside the one its points make. The measured one is used; where the two part by more than a tape
/// explains, one of them is wrong or bushes give.
/// </summary>
/// <param name="Measured">Strut per wheel at drive height, as measured.</param>
/// <param name="FromPoints">The same from the points.</param>
/// <param name="Tape">± what a tape's error leaves of it.</param>
/// <param name="At_m">The wheel travel at which the two strut travels part most.</param>
/// <param name="Parting_m">By how much: points less measured, compression +.</param>
/// <param name="PartingTape_m">± what a tape's error leaves of it.</param>
/// <param name="IsTable">Measured over travel, not a single number.</param>
public sealed record RatioComparison(
    double Measured, double FromPoints, double Tape, double At_m, double Parting_m, double PartingTape_m, bool IsTable)
{
    private const double Every_m = 0.002;

    /// <summary>Points over measured at drive height, less one.</summary>
    public double Share => FromPoints / Measured - 1;

    public bool ExplainedAtDrive => Math.Abs(FromPoints - Measured) <= Tape;

    public bool Explained => Math.Abs(Parting_m) <= PartingTape_m;

    /// <summary>Over a table's own travel; of a single number over the travel asked for.</summary>
    internal static RatioComparison Of(SuspensionPart part, MotionRatio measured, LoweringQuestion question)
    {
        (double from, double to) = measured.Range ?? (question.From_m, question.To_m);
        LinkageQuestion over = new([.. LinkageQuestion.Range(from, to, Every_m), 0], [0]);
        LinkagePoint[] points = LinkageStudy.Sweep(part.Linkage(), over);
        LinkageState[] reached = [.. points.Select(point => point.State).OfType<LinkageState>()];
        LinkageState rest = reached[^1], most = reached.MaxBy(state => Math.Abs(Parting(state)))!;
        IReadOnlyList<TapeSpread?> tape = TapeSpread.Of(
            part, over with { Travels_m = [0, most.Travel_m] }, LinkageStudy.Sweep(part.Linkage(), over with { Travels_m = [0, most.Travel_m] }), TapeSpread.Usual_m);
        return new(
            measured.At(0), rest.Strut.MotionRatio, tape[0]?.MotionRatio ?? 0, most.Travel_m, Parting(most), tape[1]?.StrutTravel_m ?? 0,
            measured.Range is not null);

        double Parting(LinkageState state) => state.Strut.Compression_m - measured.StrutTravel_m(state.Travel_m);
    }
}
