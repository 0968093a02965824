using Bellowsmith.Kits;

namespace Bellowsmith.App.Boards;

/// <summary>A value a hand set: in SI, and as it will be written into the document.</summary>
public readonly record struct Written(double Si, string Text);

/// <summary>What is wanted of the strut.</summary>
public readonly record struct Wanted(TargetKind Kind, Written Value);

/// <summary>
/// What can be set on one strut. A null drive height follows the recommended one; a null click, counted from fully closed, is
/// the middle of those measured.
/// </summary>
public sealed record StrutSetting(Written? DriveHeight, Wanted? Wanted, string Load, double? Click);

/// <summary>Everything that can be set and undone.</summary>
public sealed record Setting(StrutSetting? Front, StrutSetting? Rear)
{
    public StrutSetting? At(AxleEnd end) => end == AxleEnd.Front ? Front : Rear;

    public Setting With(AxleEnd end, StrutSetting strut) => end == AxleEnd.Front ? this with { Front = strut } : this with { Rear = strut };
}

/// <summary>Settings with undo: moves while a hand is down are one step.</summary>
public sealed class History(Setting first)
{
    private readonly Stack<Setting> _past = [], _future = [];
    private Setting? _before;

    public Setting Now { get; private set; } = first;

    public bool CanUndo => _past.Count > 0;

    public bool CanRedo => _future.Count > 0;

    /// <summary>Moves while the hand is still down.</summary>
    public void Slide(Setting to)
    {
        _before ??= Now;
        Now = to;
    }

    /// <summary>The hand lets go: what it did is one step.</summary>
    public void Release()
    {
        if (_before is { } before && before != Now)
        {
            _past.Push(before);
            _future.Clear();
        }

        _before = null;
    }

    public void Set(Setting to)
    {
        Slide(to);
        Release();
    }

    public void Undo() => Step(_past, _future);

    public void Redo() => Step(_future, _past);

    private void Step(Stack<Setting> from, Stack<Setting> to)
    {
        Release();
        if (!from.TryPop(out Setting? next)) return;
        to.Push(Now);
        Now = next;
    }
}
