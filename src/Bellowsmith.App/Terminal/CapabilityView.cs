using Bellowsmith.Kits.Answers;
using Bellowsmith.Quality.Capability;

namespace Bellowsmith.App.Terminal;

/// <summary>A capability answer as a person reads it.</summary>
internal static class CapabilityView
{
    public static void Show(Screen screen, ProcessCapability result, string? unit, string file)
    {
        CapabilityWords words = new(result, unit);
        screen.Blank();
        screen.Title($"{Path.GetFileName(file)}: do the parts stay within their limits?");
        if (result.IsShown == true) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (words.WhatItTakes() is { Length: > 0 } more) screen.Say(more);
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
    }
}
