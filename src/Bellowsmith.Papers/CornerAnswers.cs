using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Kits.Studies.LowerMounting;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Kits.Tables;

namespace Bellowsmith.Papers;

/// <summary>A strut on its car with what was asked of it; null where the kit lacks what that question needs.</summary>
public sealed record CornerAnswers(ClearanceResult Clearance, LoweringResult? Lowering, MountResult? Mount, LowerMountResult? LowerMount)
{
    /// <summary>
    /// Asks every question the kit says enough for, the strut standing as it is drawn; null where its axle lacks points or wheel.
    /// </summary>
    public static CornerAnswers? Of(Kit kit, StrutAnswers strut, StudyConditions conditions)
    {
        AxleEnd end = strut.Case.End;
        StrutDesign standing = strut.Case.Design with { DriveHeight_m = strut.Travel is null ? strut.Case.Design.DriveHeight_m : strut.Setting_m };
        Kit only = kit.Only(end).With(end, standing);
        return Known(() => ClearanceCase.Of(only, conditions)) is [var corner] ? Of(only, corner, conditions) : null;
    }

    private static CornerAnswers Of(Kit only, ClearanceCase corner, StudyConditions conditions) => new(
        ClearanceStudy.Answer(corner, new() { Margins = corner.Margins, Rules = GroundRuleTable.Usual }),
        Known(() => LoweringQuestion.Of(only, corner.End)) is ({ } part, { } question) ? LoweringStudy.Answer(part, question) : null,
        Known(() => MountCase.Of(only, conditions)) is { } mount ? MountStudy.Answer(mount, new MountQuestion()) : null,
        Known(() => StrutCases.Of(only, conditions, LowerMountStudy.Needs)) is [var settled] ? LowerMountStudy.Answer(new(settled, corner.Part)) : null);

    private static T? Known<T>(Func<T> ask)
    {
        try
        {
            return ask();
        }
        catch (FaultsException)
        {
            return default;
        }
    }
}
