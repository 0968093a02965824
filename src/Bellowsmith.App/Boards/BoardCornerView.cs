using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>Everything the studies say of one corner; what the car or the kit does not know is null.</summary>
public sealed record BoardCornerView
{
    public required CornerAsked Asked { get; init; }

    public required SuspensionPart? Part { get; init; }

    /// <summary>What was settled of it at this load and drive height.</summary>
    public required WheelCorner Corner { get; init; }

    /// <summary>The wheel the car was measured with.</summary>
    public required RoadWheel? Own { get; init; }

    public required double FullBump_m { get; init; }

    public required double FullDroop_m { get; init; }

    public required double RackTravel_m { get; init; }

    public required LoweringResult? Lowering { get; init; }

    public required AlignmentResult? Aligned { get; init; }

    public required WheelFitResult? Fit { get; init; }

    public required ClearanceResult? Swept { get; init; }

    public Linkage? Linkage => Corner.Adjuster.Linkage;

    public string OwnWheel => Own is { } wheel ? WheelText.Of(wheel) : "";

    public double StaticCamber_rad => Part?.StaticCamber_rad ?? 0;

    public double StaticToe_rad => Part?.StaticToe_rad ?? 0;

    /// <summary>Where the tried wheel is looked at: as asked, else where it lacks most of a margin.</summary>
    public double LookedAt_m => Math.Min(Asked.LookedAt_m ?? Fit?.New?.Arch?.Travel_m ?? 0, FullBump_m);

    /// <summary>Where the swept corner is looked at: as asked, else where it has least room.</summary>
    public (double Travel_m, double Rack_m) Touch => Asked.Touch ?? (Swept?.Pairs is [var least, ..] ? (least.Travel_m, least.Rack_m) : (0, 0));

    /// <summary>Where the wheel stands as asked; null where it cannot.</summary>
    public LinkageState? Here => Linkage?.At(Asked.Travel_m, Asked.Rack_m).State;

    /// <summary>At the old drive height, straight ahead.</summary>
    public LinkageState? Before => Part?.LoweredBy_m is { } lowered ? Linkage?.At(-lowered).State : null;

    /// <summary>The three views of the geometry; empty without points.</summary>
    public IEnumerable<(string Id, CarView View)> Views(DisplayUnits units, double text_mm)
    {
        if (Here is not { } here) yield break;
        CornerViews views = new(
            new CornerScene { Part = Part!, Here = here, Before = Before, Wheel = Own is { } own ? (own, 0) : null, Bodies = Corner.Bodies }, units, text_mm);
        foreach (CarView view in views.All()) yield return (view.From.ToString().ToLowerInvariant(), view);
    }

    /// <summary>The swept corner at the place looked at, with the pair that has least room there and all that lack some; empty where nothing was swept.</summary>
    public IEnumerable<(string Id, CarView View)> TouchViews(DisplayUnits units, double text_mm)
    {
        if (Swept is not { } swept || Look is not { } look) yield break;
        CornerScene scene = CornerScene.Touching(swept, look) with { Handles = (CornerAsking.TouchTravel, CornerAsking.TouchRack) };
        CornerViews views = new(scene, units, text_mm);
        foreach (CarView view in views.All()) yield return ($"touch{view.From}", view);
    }

    /// <summary>How near every pair is where it is looked at.</summary>
    public ClearanceLook? Look => field ??= Swept is { } swept ? ClearanceLook.Of(swept, Touch.Travel_m, Touch.Rack_m) : null;

    /// <summary>The tried wheel from ahead, with the gaps it leaves where it is looked at; empty without points.</summary>
    public IEnumerable<(string Id, CarView View)> FitViews(DisplayUnits units, double text_mm)
    {
        if (Fit is not { } fit || Part is null || WheelLook.Of(fit, LookedAt_m) is not { } look) yield break;
        CornerScene scene = new()
        {
            Part = Part,
            Here = look.State,
            Wheel = (fit.Question.New, look.Outward_m),
            OtherWheel = fit.Question.New == Own ? null : Linkage?.At(LookedAt_m).State is { } at ? (Own!, at) : null,
            Bodies = Corner.Bodies,
            UpperHalf = true,
            Gaps = [.. look.Gaps.Select(gap => new ViewGap($"gap{gap.Place}", WheelWords.Where(gap.Place), gap.Gap.On, gap.Gap.Other, gap.Gap.Distance_m, gap.Holds))],
        };
        yield return ("fit", new CornerViews(scene, units, text_mm).Front());
    }
}
