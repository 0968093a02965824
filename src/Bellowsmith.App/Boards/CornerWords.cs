using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Boards;

/// <summary>The texts of the two questions about the car's corner: what its geometry does, and which wheel fits.</summary>
public static class CornerWords
{
    private const string NotThisSetting = "\0";
    private const double LeastShown_m = 5e-5;

    public static void Geometry(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        BoardCornerView corner = view.Corner;
        say["geometry.answer"] = corner.Lowering is { } lowering ? new LoweringWords(lowering, view.Units).Answer() : BoardWords.NotYet(board.GeometryFaults);
        IReadOnlyList<string>[] columns = [PlaceWords.Of(corner.Here, view.Units), PlaceWords.Of(corner.Linkage?.Rest, view.Units), PlaceWords.Of(corner.Before, view.Units)];
        for (int row = 0; row < PlaceWords.Labels.Count; row++)
            for (int column = 0; column < columns.Length; column++) say[$"place.{row}.{column}"] = columns[column][row];
        say["place.moved"] = corner.Asked is { Travel_m: 0, Rack_m: 0 } ? "" : "Back to drive height, straight ahead";
        say["place.end"] = corner.Linkage is { } linkage && corner.Here is null ? LinkageWords.Reason(linkage.At(corner.Asked.Travel_m, corner.Asked.Rack_m).Limit!, view.Units) : "";
    }

    public static void Alignment(BoardView view, Dictionary<string, string> say)
    {
        if (view.Corner.Aligned is not { } aligned) return;
        AlignmentWords words = new(aligned, view.Units);
        say["align.answer"] = words.Answer();
        say["align.reason"] = words.Reason() ?? "";
        say["align.thread"] = Math.Abs(aligned.StrutLonger_m) < LeastShown_m ? "" : words.Thread();
        for (int k = 0; k < aligned.Adjusters.Count; k++) say[$"align.{k}"] = words.Adjuster(aligned.Adjusters[k]);
    }

    public static void Touch(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        BoardCornerView corner = view.Corner;
        if (corner.Swept is not { } swept)
        {
            say["touch.answer"] = board.TouchFor.Faults.Count > 0 ? BoardWords.NotYet(board.TouchFor.Faults) : "Opened, every pair of wheel, strut and body is swept over travel and lock.";
            return;
        }

        ClearanceWords words = new(swept, view.Units);
        say["touch.answer"] = words.Answer();
        say["touch.camber"] = words.Camber() ?? "";
        say["touch.clear"] = swept.Camber?.Camber_rad is { } enough ? $"Take {LinkageWords.Angle(enough)}" : "";
        say["touch.back"] = corner.Asked.Touch is null ? "" : "Where it has least room";
        say["touch.here"] = corner.Look is { Pairs: [var least, ..] }
            ? $"At {words.Place(corner.Touch.Travel_m, corner.Touch.Rack_m)} the least room has {ClearanceWords.Name(least.Pair)}: {view.Units.Text(Dimension.Length, least.Gap.Distance_m)}, asked {view.Units.Text(Dimension.Length, least.Margin_m)}."
            : "The parts do not go there.";
    }

    public static void Wheel(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        BoardCornerView corner = view.Corner;
        if (corner.Fit is not { } fit)
        {
            BoardWords.Split(say, "wheel.answer", corner.Own is null ? "Not answered yet: name the car's wheel, \"wheel\": \"18x8.5 ET35 225/40R18\", in the car's axle." : "", NotThisSetting, NotThisSetting);
            return;
        }

        WheelWords words = new(fit, view.Units);
        bool own = fit.Question.New == corner.Own;
        BoardWords.Split(say, "wheel.answer", own ? $"The car's own {corner.OwnWheel}: {words.Answer()}" : words.Answer(), NotThisSetting, NotThisSetting);
        say["wheel.change"] = own ? "" : words.Change();
        say["wheel.road"] = own ? "" : words.Road();
        say["wheel.made"] = fit.New is { } gaps ? $"Camber is changed by the {WheelWords.MadeAt(fit.Corner.Adjuster.MadeAt)}: {words.Place(gaps)}." : "";
        say["wheel.enough"] = board.Open == Questions.Wheel && fit.LeastCamber is { Camber_rad: < -1e-5 } least && Math.Abs(least.Camber_rad - corner.Asked.CamberChange_rad) > 1e-5 ? $"Take {LinkageWords.Angle(least.Camber_rad)}" : "";
        say["wheel.looked"] = corner.Asked.LookedAt_m is null ? "" : "Where it comes nearest";
    }
}
