namespace Bellowsmith.App.Boards;

/// <summary>Which questions are answered anew in a frame: all of them once a hand has let go, while it moves only the one that is open.</summary>
public readonly record struct Due(string Open, bool IsHeld)
{
    public bool Of(string question) => !IsHeld || Open == question;

    public bool IsOpen(string question) => Open == question;
}
