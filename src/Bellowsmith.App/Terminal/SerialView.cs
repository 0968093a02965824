using Bellowsmith.Kits.Answers;
using Bellowsmith.Quality.Serials;

namespace Bellowsmith.App.Terminal;

/// <summary>A serial as a person reads it.</summary>
internal static class SerialView
{
    public static void Show(Screen screen, SerialCheck check)
    {
        screen.Blank();
        if (check.IsValid) screen.Answer(SerialWords.Answer(check));
        else screen.Warn(SerialWords.Answer(check));
        string about = "it may be";
        foreach (string slip in SerialWords.Slips(check))
        {
            screen.Point(about, slip);
            about = "or";
        }

        if (about == "or") screen.Quiet("These are guesses. Look at the part.");
    }
}
