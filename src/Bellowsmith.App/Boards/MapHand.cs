using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>A cell of the map taken as the setting.</summary>
public static class MapHand
{
    /// <summary>The setting and what is asked after taking a cell, or why it cannot be taken.</summary>
    public static (StrutSetting Setting, Asked Asked, string? Refused) Taken(BoardView view, MapQuestion question, int column, int row)
    {
        (StrutSetting setting, Asked asked) = (view.Setting, view.Asked);
        foreach ((MapAxis axis, int at) in ((MapAxis, int)[])[(question.X, column), (question.Y, row)])
        {
            if (at < 0 || at >= axis.Values.Count) return (view.Setting, view.Asked, null);
            double value = axis.Values[at];
            switch (axis.Variable)
            {
                case MapVariable.Click: setting = setting with { Click = value }; break;
                case MapVariable.Height: setting = setting with { DriveHeight = new Written(value, view.Units.UnitOf(Dimension.Length).Write(value, 6)) }; break;
                case MapVariable.Load when question.Loads[at] is { } strut: setting = setting with { Load = strut.Load }; break;
                case MapVariable.Speed: asked = asked with { Speed_m_per_s = value }; break;
                case MapVariable.Road: asked = asked with { Road = (RoadClass)(int)value }; break;
                default: return (view.Setting, view.Asked, MapHints.NotSetHere(axis.Variable));
            }
        }

        return (setting, asked, null);
    }
}
